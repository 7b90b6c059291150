"""A bearing's noise in the diary: drawn and judged before it is written, readable afterwards."""

from __future__ import annotations

import io
import wave
from functools import cache
from typing import Any

import pytest
from django.test import Client

from spoolwright.bench import bearing_on_sheet
from spoolwright.bench.recording import Recording
from spoolwright.pages.diary import ways
from spoolwright.sheets import reel_sheet
from tests import coasting, knocking
from tests.pages.diary.at_the_desk import arrived, count, file, form, last, send, text, way

pytestmark = pytest.mark.django_db
PLACE = "spool shaft, gear side"
HELD = {"place": PLACE, "turning": "held", "speed": "1790", "speed_unit": "rpm"}
INSIDE = bearing_on_sheet.at(reel_sheet.load("tarvak-58r"), PLACE)[0]
SIZES = {"balls": INSIDE.balls, "ball": INSIDE.ball_diameter, "pitch": INSIDE.pitch_diameter}


def wav(sound: Recording) -> bytes:
    out = io.BytesIO()
    with wave.open(out, "wb") as written:
        written.setparams((1, 2, int(sound.rate), 0, "NONE", ""))
        written.writeframes((sound.samples * 32767).astype("<i2").tobytes())
    return out.getvalue()


@cache
def held(kind: str = "inner") -> bytes:
    return wav(knocking.recording(knocking.Case(kind, 1790.0, clear=0.3, turns=60.0, seed=2, **SIZES)))


@cache
def coast() -> bytes:
    made = coasting.Coast("outer", clear=0.1, seed=3, seconds=4.0, constant=25.0, **SIZES)
    return wav(coasting.recording(made))


def look(client: Client, visit: Any, data: bytes, **sent: Any) -> Any:
    return send(client, way(visit, "bearing"), "look", signal=file(data, "b.wav", "audio/wav"), **sent)


def test_it_is_drawn_with_its_verdict_then_written_and_read(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    assert "fingers, hair and sleeves" in text(bench.get(way(visit, "bearing")))
    answer = look(bench, visit, held(), **HELD)
    assert answer.status_code == 200
    assert count(visit) == 1
    assert "Inner ring damaged" in text(answer)
    assert form(answer).drawn["chart"].spec["description"].endswith("Verdict: inner.")
    kept = form(answer).file.last.pk
    assert send(bench, way(visit, "bearing"), signal_kept=kept, **HELD).status_code == 302
    reading = last(visit).part
    assert reading.way == "bearing noise"
    assert reading.conditions["place_measured"] == PLACE
    told = text(bench.get(f"/diary/{visit.tag}/"))
    assert "Inner ring damaged" in told
    assert "no measured chance" in told
    assert " %" in told.replace("\u00a0", " ")
    chart = bench.get(f"/diary/{visit.tag}/trace/{last(visit).entry.pk}/")
    assert chart.status_code == 200
    assert "the noise of a bearing" in text(chart)
    paper = bench.get(ways.to_paper("reading", last(visit).entry.pk))
    assert (paper.status_code, paper["Content-Type"]) == (200, "application/pdf")
    again = bench.get(f"{way(visit, 'bearing')}?again={last(visit).entry.pk}")
    assert again.context["open"].form.initial["place"] == PLACE


def test_a_coast_is_read_by_its_ticks(bench: Client, torbal: Any) -> None:
    answer = look(bench, arrived(torbal), coast(), place=PLACE, turning="coast", marks="1")
    assert "Outer ring damaged" in text(answer)
    assert form(answer).kept.speed is None
    assert "times a turn" in form(answer).drawn["chart"].description


@pytest.mark.parametrize(
    ("sent", "says"),
    [
        ({"place": PLACE, "turning": "held"}, "No speed was typed"),
        ({"place": "another", "turning": "held", "speed": "900", "speed_unit": "rpm"}, "Missing: without it"),
        (
            {"place": "another", "balls": "12", "ball_diameter": "4 mm", "pitch_diameter": "8 mm"}
            | {"turning": "held", "speed": "900", "speed_unit": "rpm"},
            "do not go on a circle",
        ),
        ({"place": PLACE, "turning": "held", "speed": "-3 rpm"}, "not more than nothing"),
    ],
)
def test_what_is_missing_or_cannot_be_is_said_and_nothing_is_written(
    bench: Client, torbal: Any, sent: dict[str, str], says: str
) -> None:
    visit = arrived(torbal)
    answer = look(bench, visit, held(), **sent)
    assert answer.status_code == 422
    assert says in text(answer)
    assert count(visit) == 1
    assert form(answer).file.last.original_name == "b.wav"


def test_a_reel_without_a_sheet_takes_typed_balls_and_a_short_recording_says_so(
    bench: Client, torbal: Any
) -> None:
    visit = arrived(torbal, sheet="")
    short = wav(knocking.recording(knocking.Case("outer", 1790.0, turns=20.0)))
    sizes = {"balls": "9", "ball_diameter": "7.94 mm", "pitch_diameter": "39.04 mm"}
    sent = {"place": "another", "turning": "held", "speed": "1790", "speed_unit": "rpm"} | sizes
    answer = look(bench, visit, short, **sent)
    assert "The recording holds 20 turns" in text(answer)
    kept = form(answer).file.last.pk
    assert send(bench, way(visit, "bearing"), signal_kept=kept, **sent).status_code == 302
    assert bench.get(f"/diary/{visit.tag}/").status_code == 200
    assert bench.get(f"/diary/{visit.tag}/trace/{last(visit).entry.pk}/").status_code == 404


def test_no_sound_is_refused(bench: Client, torbal: Any) -> None:
    assert look(bench, arrived(torbal), b"not a sound at all", **HELD).status_code == 422
