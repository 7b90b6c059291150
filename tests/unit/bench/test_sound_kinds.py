"""What a file is, by its first bytes: each kind as the library writes it, and what is no sound."""

import pytest

from spoolwright.bench import sound_kinds
from spoolwright.bench.unreadable import Unreadable
from tests.encoded import KINDS, clicks, encode

CONTAINERS = {"m4a": "mov", "mp4": "mov", "webm": "matroska", "mkv": "matroska", "3gp": "mov"}


@pytest.mark.parametrize("kind", [*KINDS, "aac"])
def test_each_kind_is_known_by_its_first_bytes(kind: str) -> None:
    start = encode(kind, clicks(0.1, (0.05,)))[: sound_kinds.START]
    found = sound_kinds.find(start, "x")
    assert found.container == CONTAINERS.get(kind, kind)
    assert found.says_delay is (kind != "aac")
    assert f".{kind}" in sound_kinds.ENDINGS


@pytest.mark.parametrize(
    ("start", "words"),
    [
        (b"", "the file is empty"),
        (b"\xff\xd8\xff\xe0JFIF", "this is a photo"),
        (b"\x00\x00\x00\x1cftypheic" + bytes(20), "this is a photo"),
        (b"PK\x03\x04" + bytes(40), "a workbook or a zip archive"),
        (b"MZ" + bytes(40), "a program"),
        (b"#EXTM3U\nhttp://example.invalid/a.mp3\n", "no recording that is known here"),
        (b"ffconcat version 1.0\nfile /etc/hostname\n", "no recording that is known here"),
        ("tick\n1\n".encode("utf-16"), "no recording that is known here"),
        (b"RIFF\x10\x00\x00\x00AVI LIST", "no recording that is known here"),
    ],
)
def test_what_is_no_sound_is_named_for_what_it_is(start: bytes, words: str) -> None:
    with pytest.raises(Unreadable, match=words) as refused:
        sound_kinds.find(start, "spin.m4a")
    assert refused.value.where == "spin.m4a"
    assert "10 minutes" in refused.value.accepted
    assert sound_kinds.known(start) is None
