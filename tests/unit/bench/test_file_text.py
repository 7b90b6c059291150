"""Bytes to text: every encoding that gauges write, and files that are no text."""

import pytest

from spoolwright.bench.file_text import decode, kind_of
from spoolwright.bench.unreadable import Unreadable


@pytest.mark.parametrize(
    ("text", "encoding", "found"),
    [
        ("time;force", "utf-8", "utf-8"),
        ("Zeit;Kraft µs größe", "utf-8", "utf-8"),
        ("time;force", "utf-8-sig", "utf-8-sig"),
        ("Zeit;Größe °C", "utf-16", "utf-16"),
        ("time;force;more", "utf-16-le", "utf-16-le"),
        ("time;force;more", "utf-16-be", "utf-16-be"),
        ("时间,力", "utf-32", "utf-32"),
        ("Größe;Kraft µs", "cp1252", "cp1252"),
        ("Temps (s);Force mesurée", "latin-1", "cp1252"),
        ("时间,位移,力\r\n(s),(mm),(N)", "gb18030", "gb18030"),
    ],
)
def test_the_text_comes_back_whatever_it_was_written_in(text: str, encoding: str, found: str) -> None:
    assert decode(text.encode(encoding)) == (text, found)


def test_a_degree_sign_before_a_letter_is_not_taken_for_chinese() -> None:
    assert decode(b"t;T [\xb0C]\n")[0] == "t;T [°C]\n"


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (b"\xff\xd8\xff\xe0" + b"JFIF" * 9, "photo"),
        (b"\x89PNG\r\n\x1a\n" + b"x" * 40, "picture"),
        (b"PK\x03\x04" + b"xl" * 40, "workbook"),
        (b"%PDF-1.7 ...", "PDF"),
        (b"RIFF\x00\x00\x00\x00WAVEfmt ", "sound"),
        (b"\x00\x00\x00\x18ftypheic" + b"x" * 40, "phone"),
        (b"SQLite format 3\x00", "database"),
    ],
)
def test_what_is_no_text_is_called_by_its_name(data: bytes, words: str) -> None:
    assert words in str(kind_of(data))
    with pytest.raises(Unreadable, match=words):
        decode(data, "pull.csv")


def test_plain_text_is_of_no_kind() -> None:
    assert kind_of(b"time,force\n0,1\n") is None


@pytest.mark.parametrize("data", [b"1;2\n3;4\x00\n", b"abc\x01\x02 1 2", b"\x00" * 64, b"", b" \r\n\t"])
def test_zero_bytes_control_marks_and_nothing_are_refused(data: bytes) -> None:
    with pytest.raises(Unreadable, match=r"pull\.csv"):
        decode(data, "pull.csv")
