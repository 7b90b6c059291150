"""What should not come comes all the time: each a clear message, nothing written, nothing lost."""

from __future__ import annotations

import io
import wave
from typing import Any

import pytest
from django.test import Client

from tests.pages.diary.at_the_desk import (
    PULL,
    SPIN,
    arrived,
    count,
    file,
    form,
    photo,
    pull_csv,
    send,
    text,
    typed_way,
    way,
)
from tests.shop import walk

pytestmark = pytest.mark.django_db


def silent_wav(seconds: float = 2.0) -> bytes:
    out = io.BytesIO()
    with wave.open(out, "wb") as sound:
        sound.setparams((1, 2, 22050, 0, "NONE", ""))
        sound.writeframes(b"\x00\x00" * int(seconds * 22050))
    return out.getvalue()


BROKEN = b"time [s];pull [kg]\n" + b"".join(b"0,%d;1,5\n" % k for k in range(10, 40)) + b"oops;none\n" * 2
NO_NUMBERS = b"Dear Ingjerd,\nthe reel catches at one end.\n"
FALLING = b"time [s];pull [kg]\n" + b"".join(b"%d;1,5\n" % (40 - k) for k in range(30))
WORKBOOK = b"PK\x03\x04" + b"\x00" * 400

FILES = [
    ("pull", "photo as a trace", photo(), "gauge.csv", "this is a photo (JPEG)"),
    ("pull", "workbook", WORKBOOK, "gauge.csv", "save the sheet as CSV first"),
    ("pull", "no numbers", NO_NUMBERS, "letter.csv", "no rows of numbers"),
    ("pull", "time backwards", FALLING, "gauge.csv", "time runs backwards"),
    ("pull", "too short", b"time [s];pull [kg]\n0;1\n1;2\n", "gauge.csv", "2 samples"),
    ("pull", "empty", b"", "gauge.csv", "the file is empty"),
    ("pull", "nothing pulled", b"s;kg\n" + b"".join(b"%d;0\n" % k for k in range(30)), "g.csv", "same value"),
    ("spin", "silent WAV", silent_wav(), "spin.wav", "the recording is silent"),
    ("spin", "photo as a WAV", photo(), "spin.wav", "this is a photo"),
    ("spin", "cut short", silent_wav()[:2000], "spin.wav", "cut short"),
    ("spin", "a pull trace", pull_csv(), "spin.csv", "this is a pull trace"),
    ("spin", "few ticks", b"0\n0.2\n0.4\n", "spin.csv", "3 ticks"),
    ("spin", "a program", b"MZ" + b"\x00\x01" * 300, "spin.wav", "a program"),
]


@pytest.mark.parametrize(
    ("what", "data", "name", "words"),
    [(what, data, name, words) for what, _, data, name, words in FILES],
    ids=[told for _, told, *_ in FILES],
)
def test_a_file_that_cannot_be_read_is_named_for_what_it_is(
    bench: Client, torbal: Any, what: str, data: bytes, name: str, words: str
) -> None:
    visit = arrived(torbal)
    sent = (PULL if what == "pull" else SPIN) | {"words": "second try"}
    answer = send(bench, way(visit, what), "look", signal=file(data, name), **sent)
    assert answer.status_code == 422
    assert words in text(answer)
    assert "second try" in answer.content.decode()
    assert count(visit) == 1
    if data:
        assert form(answer).file.last.original_name == name


def test_a_broken_row_is_named_with_its_line(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    data = b"time [s];pull [kg]\n" + b"".join(
        b"0,%02d;%s\n" % (k, b"1,5" if k != 33 else b"--") for k in range(60)
    )
    answer = send(bench, way(visit, "pull"), "look", signal=file(data, "gauge.csv"), **PULL)
    assert answer.status_code == 422
    assert "gauge.csv, line 35" in text(answer)


TYPED = [
    ("end_float", {"values": "0.42"}, "unit"),
    ("end_float", {"values": "0.42 kg"}, "“0.42 kg”"),
    ("end_float", {"values": "-0.42 mm"}, "below zero"),
    ("end_float", {"values": "a bit"}, "“a bit”"),
    ("end_float", {"values": ""}, "required"),
    ("end_float", {"values": "0.42 mm; 0.40 g"}, "“0.40 g”"),
    ("end_float", {"values": "9**9**9 m"}, "“9**9**9 m”"),
    ("end_float", {"values": "1e400 mm"}, "1e400"),
    ("mass", {"values": "338 g"}, "cannot be compared with any other"),
    ("mass", {"values": "338 g", "line": "sideways"}, "sideways"),
    ("click_pull", {"values": "120 g", "line": "on", "radius": "-23.5 mm"}, "not more than nothing"),
    ("click_pull", {"values": "120 g", "line": "on", "radius": "23.5"}, "unit"),
    ("click_pull", {"values": "120 g", "line": "on", "radius": "23.5 kg"}, "“23.5 kg”"),
    ("feel", {"values": "11"}, "11"),
    ("teeth", {"values": "51; 52", "place_measured": "main gear"}, "the counts differ"),
    ("teeth", {"values": "51.5", "place_measured": "main gear"}, "51.5"),
    ("anti_reverse_slips", {"values": "0"}, "cannot be compared with any other"),
]


@pytest.mark.parametrize(
    ("kind", "sent", "words"), TYPED, ids=[f"{k} {list(s.values())}" for k, s, _ in TYPED]
)
def test_a_typed_reading_that_cannot_stand_is_refused_beside_its_field(
    bench: Client, torbal: Any, kind: str, sent: dict[str, str], words: str
) -> None:
    visit = arrived(torbal)
    answer = send(bench, typed_way(visit, kind), **sent)
    assert answer.status_code == 422
    assert words in text(answer)
    assert count(visit) == 1


def test_a_pull_that_is_not_one_of_so_many(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    sent = PULL | {"pull_number": "4"}
    looked = send(bench, way(visit, "pull"), "look", signal=file(pull_csv()), **sent)
    answer = send(bench, way(visit, "pull"), signal_kept=form(looked).file.last.pk, **sent)
    assert answer.status_code == 422
    assert "a number up to 3" in text(answer)
    assert form(answer).file.last == form(looked).file.last


@pytest.mark.parametrize("key", ["radius", "star_turns", "temperature", "line", "pull_number", "pulls_of"])
def test_a_trace_without_one_of_its_conditions_is_not_written(bench: Client, torbal: Any, key: str) -> None:
    visit = arrived(torbal)
    looked = send(bench, way(visit, "pull"), "look", signal=file(pull_csv()), **PULL)
    kept = form(looked).file.last.pk
    sent = {name: value for name, value in PULL.items() if not name.startswith(key)}
    answer = send(bench, way(visit, "pull"), signal_kept=kept, **sent)
    assert answer.status_code == 422
    assert "cannot be compared with any other" in text(answer)
    assert count(visit) == 1


def test_a_script_in_words_is_words(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    bad = "<script>alert('caught')</script>"
    name = "<img src=x onerror=alert(1)>.csv"
    send(bench, way(visit, "finding"), part=bad, evidence=bad, words=bad)
    looked = send(bench, way(visit, "pull"), "look", signal=file(pull_csv(), name), **PULL)
    for page in (bench.get(f"/diary/{visit.tag}/"), looked):
        assert "<script>alert" not in page.content.decode()
        assert "<img src=x" not in page.content.decode()
    assert bad in text_unescaped(bench.get(f"/diary/{visit.tag}/"))


def text_unescaped(response: Any) -> str:
    import html

    return html.unescape(response.content.decode())


def test_a_zero_byte_in_words_is_refused_and_the_rest_kept(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = send(bench, way(visit, "finding"), part="pawl", evidence="tip\x00worn")
    assert answer.status_code == 422
    assert 'value="pawl"' in answer.content.decode()
    assert count(visit) == 1


def test_two_hundred_megabytes_are_refused_before_they_are_read(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    for headers, whole in (({}, True), ({"HX-Request": "true"}, False)):
        answer = bench.post(
            way(visit, "pull"),
            b"x",
            content_type="multipart/form-data; boundary=b",
            headers=headers,
            CONTENT_LENGTH=str(200 * 2**20),
        )
        assert answer.status_code == 413
        assert "200 MB" in text(answer)
        assert ("<h1>" in answer.content.decode()) is whole
    assert count(visit) == 1


@pytest.mark.parametrize(
    ("data", "name", "words"),
    [
        (photo()[:900], "slate.jpg", "cannot be opened as one"),
        (b"\x89PNG\r\n\x1a\n" + b"0" * 200, "slate.png", "cannot be opened as one"),
        (b"", "slate.jpg", "the file is empty"),
    ],
)
def test_a_photo_that_is_none_is_refused_and_the_good_ones_are_kept(
    bench: Client, torbal: Any, data: bytes, name: str, words: str
) -> None:
    visit = arrived(torbal)
    sent = {"part": "pawl", "evidence": "tip worn", "photos": [file(photo(), "good.jpg"), file(data, name)]}
    answer = send(bench, way(visit, "finding"), **sent)
    assert answer.status_code == 422
    assert words in text(answer)
    assert [f.original_name for f in form(answer).files_beside.attachments] == ["good.jpg"]
    assert count(visit) == 1


@pytest.mark.parametrize(
    ("what", "sent", "words"),
    [
        ("work", {"minutes": "-5", "done": "service", "left": "nothing"}, "greater than or equal to 0"),
        ("work", {"minutes": "74", "left": "nothing"}, "at least one piece of work"),
        ("work", {"minutes": "74", "done": "service"}, "required"),
        ("work", {"minutes": "74", "done": "service", "left": "something"}, "Say what lies there"),
        ("work", {"minutes": "74", "done": "not-a-work", "left": "nothing"}, "not-a-work"),
        ("payment", {"amount_minor": "much", "way": "in", "paid_by": "cash"}, "“much” is not an amount"),
        ("payment", {"amount_minor": "0", "way": "in", "paid_by": "cash"}, "A payment needs a sum"),
        ("payment", {"amount_minor": "12.345", "way": "in", "paid_by": "cash"}, "more decimals"),
        ("dispatch", {"went_by": "post"}, "Weigh the closed parcel"),
        ("dispatch", {"went_by": "post", "mass_kg": "-2 kg"}, "not more than nothing"),
        ("dispatch", {"went_by": "post", "mass_kg": "745"}, "unit"),
        (
            "promise",
            {"p50": "2026-06-10", "p90": "2026-06-03", "version": "1"},
            "may not be before the first",
        ),
        ("promise", {"p50": "soon", "p90": "2026-06-03", "version": "1"}, "This is not a day"),
        ("word", {"words": "   "}, "required"),
        ("move", {"moved_to": "the moon", "version": "1"}, "the moon"),
        ("move", {"moved_to": "bath", "version": "77"}, "changed by somebody else"),
        ("finding", {"part": "pawl", "evidence": "worn", "fault": "F99"}, "F99"),
    ],
)
def test_every_other_form_refuses_in_words(
    bench: Client, torbal: Any, what: str, sent: dict[str, str], words: str
) -> None:
    visit = walk.agreed(torbal)
    before = count(visit)
    answer = send(bench, way(visit, what), **sent)
    assert answer.status_code == 422
    assert words in text(answer)
    assert count(visit) == before
