"""The gears' noise in the diary: judged and drawn before it is written, readable afterwards."""

from __future__ import annotations

from functools import cache
from typing import Any

import pytest
from django.test import Client

from spoolwright.sheets import reel_sheet
from tests import meshing
from tests.pages.diary.at_the_desk import arrived, count, file, form, last, send, text, way
from tests.pages.diary.test_bearing import wav

pytestmark = pytest.mark.django_db
GEARS = reel_sheet.load("tarvak-58r").gears
assert GEARS is not None
SENT = {"wheels": "high", "speed": "136", "speed_unit": "rpm"}


@cache
def turned() -> bytes:
    wheels = {"main": GEARS.main_teeth, "pinion": GEARS.pinion_teeth}
    made = meshing.Mesh("pinion", clear=0.1, seed=3, seconds=7.0, turns_a_second=2.2, **wheels)
    return wav(meshing.recording(made))


def look(client: Client, visit: Any, data: bytes, **sent: Any) -> Any:
    return send(client, way(visit, "gears"), "look", signal=file(data, "g.wav", "audio/wav"), **sent)


def test_it_is_drawn_with_its_verdict_then_written_and_read(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    assert "stay off whatever turns" in text(bench.get(way(visit, "gears")))
    answer = look(bench, visit, turned(), **SENT)
    assert answer.status_code == 200
    assert count(visit) == 1
    assert "A tooth of the pinion knocks" in text(answer)
    assert form(answer).drawn["chart"].spec["description"].endswith("Verdict: pinion.")
    kept = form(answer).file.last.pk
    assert send(bench, way(visit, "gears"), signal_kept=kept, **SENT).status_code == 302
    assert last(visit).part.way == "gear noise"
    assert "A tooth of the pinion knocks" in text(bench.get(f"/diary/{visit.tag}/"))
    chart = bench.get(f"/diary/{visit.tag}/trace/{last(visit).entry.pk}/")
    assert "the noise of the gears" in text(chart)


@pytest.mark.parametrize(
    ("sent", "says"),
    [
        ({"wheels": "high"}, "No speed was typed"),
        (SENT | {"clicks": "24"}, "one of them is enough"),
        (SENT | {"wheels": "typed"}, "no teeth of gears"),
        (SENT | {"wheels": "typed", "teeth": "98, 3"}, "5 to 400 teeth"),
    ],
)
def test_what_is_missing_or_cannot_be_is_said_and_nothing_is_written(
    bench: Client, torbal: Any, sent: dict[str, str], says: str
) -> None:
    visit = arrived(torbal)
    answer = look(bench, visit, turned(), **sent)
    assert answer.status_code == 422
    assert says in text(answer)
    assert count(visit) == 1


def test_a_reel_without_a_sheet_takes_typed_teeth(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal, sheet="")
    sent = {"wheels": "typed", "teeth": "98, 17", "speed": "20", "speed_unit": "rpm"}
    answer = look(bench, visit, turned(), **sent)
    assert "turns of the slowest wheel" in text(answer)
