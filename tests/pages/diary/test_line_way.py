"""Zero, pulley and angle in the form of a pull trace: put right before anything is read."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from tests.pages.diary.at_the_desk import PULL, arrived, file, form, pull_csv, send, text, way

pytestmark = pytest.mark.django_db


def look(client: Client, visit: Any, **sent: Any) -> Any:
    return send(client, way(visit, "pull"), "look", signal=file(pull_csv()), **{**PULL, **sent})


def running(answer: Any) -> float:
    return float(form(answer).pulled.read.running.value)


def test_a_pulley_and_an_angle_change_the_pull_and_its_budget(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    plain = look(bench, visit)
    more = {
        "pulley_up": "5.50", "pulley_up_unit": "kg", "pulley_down": "4.545", "pulley_down_unit": "kg",
        "line_angle": "20", "line_angle_unit": "deg", "zero_before": "0.00", "zero_before_unit": "kg",
    }  # fmt: skip
    put_right = look(bench, visit, **more)
    assert running(put_right) == pytest.approx(running(plain) * 0.9397 / 1.1, rel=0.01)
    drawn = form(put_right).drawn
    assert any("pulley" in note for note in drawn["notes"])
    assert "line's angle and pulley" in {row.source for row in drawn["budget"]}
    assert form(put_right).way_open
    assert not form(plain).way_open


@pytest.mark.parametrize(
    ("more", "field", "words"),
    [
        ({"pulley_up": "5", "pulley_up_unit": "kg"}, "pulley_up", "both ways"),
        ({"line_angle": "75", "line_angle_unit": "deg"}, "line_angle", "60 deg"),
        ({"zero_after": "nothing"}, "zero_after", "nothing"),
    ],
)
def test_what_does_not_fit_is_refused_at_its_field(
    more: dict[str, str], field: str, words: str, bench: Client, torbal: Any
) -> None:
    answer = look(bench, arrived(torbal), **more)
    assert field in form(answer).errors
    assert words in text(answer)
    assert form(answer).drawn is None
