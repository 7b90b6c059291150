"""A pull typed as it goes: rows in, drawn before it is written, refused beside the field."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.shop.acts.add_instrument import Known, add_instrument
from spoolwright.shop.questions.signals import pull_of
from tests.pages.diary.at_the_desk import PULL, arrived, count, form, last, send, text, way

pytestmark = pytest.mark.django_db
ROWS = "0 0\n1.2 2.9\n2.5 2.41\n3.6 2.35\n4.8 2.38"
TYPED = {**PULL, "rows": ROWS, "unit": "kg"}


def test_it_is_drawn_with_what_it_can_say_before_anything_is_written(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = send(bench, way(visit, "live"), "look", **TYPED)
    assert answer.status_code == 200
    assert count(visit) == 1
    drawn = form(answer).drawn
    assert [line.quantity for line in drawn["told"].lines] == [
        "Start-up pull",
        "Running pull",
        "Start-up ratio",
    ]
    assert "judder and drift cannot" in " ".join(drawn["notes"])
    assert "5 rows, seconds and kg" in text(answer)
    assert "Write the reading" in text(answer)


def test_it_is_written_with_every_number(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    assert send(bench, way(visit, "live"), **TYPED).status_code == 302
    reading = last(visit).part
    kept = pull_of(reading)
    assert kept is not None
    assert len(kept.times) == 5
    assert {value.kind for value in reading.values.all()} == {"pull_start", "pull_run", "start_up_ratio"}
    assert reading.conditions["radius"] == pytest.approx(0.0235)


@pytest.mark.parametrize(
    ("sent", "field", "words"),
    [
        ({"rows": ""}, "rows", "No number was typed"),
        ({"rows": "0 2.9\n1 fish"}, "rows", "Row 2, “1 fish”: the pull cannot be read"),
        ({"rows": "0 2.9\n1 2.4"}, "rows", "After the start (2.90 kg) there is 1 number, too few"),
        ({"held": "2.5 kg"}, "held", "less than a number that was typed (2.90 kg)"),
        ({"unit": "stone"}, "unit", "stone is not one of the available choices"),
    ],
)
def test_what_does_not_fit_is_said_beside_its_field_and_stays(
    bench: Client, torbal: Any, sent: dict[str, str], field: str, words: str
) -> None:
    visit = arrived(torbal)
    answer = send(bench, way(visit, "live"), "look", **{**TYPED, **sent})
    assert answer.status_code == 422
    assert words.lower() in " ".join(form(answer).errors[field]).lower()
    assert form(answer)["rows"].value() == {**TYPED, **sent}["rows"]
    assert count(visit) == 1


def test_a_scale_that_holds_its_highest_gives_the_start(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    assert send(bench, way(visit, "live"), held="3.1", held_unit="kg", **TYPED).status_code == 302
    start = last(visit).part.values.get(kind="pull_start")
    assert start.value_si == pytest.approx(3.1 * 9.80665)


def test_hard_on_it_is_the_most_the_reel_holds(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    sent = {**TYPED, "setting": "hard", "star_turns": ""}
    assert send(bench, way(visit, "live"), **sent).status_code == 302
    assert [value.kind for value in last(visit).part.values.all()] == ["pull_full"]


def test_written_again_its_rows_are_there(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    send(bench, way(visit, "live"), **TYPED)
    answer = bench.get(way(visit, "live"), {"again": last(visit).entry.pk})
    rows = form(answer)["rows"].value().splitlines()
    assert rows[1] == "1.20 28.44"
    assert form(answer)["unit"].value() == "N"


def test_one_of_the_shop_s_own_scales_makes_the_uncertainty(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    scale = add_instrument(hand=torbal, mark="S1", kind="hanging-scale", known=Known("Scale", 0.1, limit=2.0))
    send(bench, way(visit, "live"), **TYPED)
    usual = last(visit).part.values.get(kind="pull_run").standard_uncertainty_si
    assert send(bench, way(visit, "live"), gauge_own="S1", **TYPED).status_code == 302
    own = last(visit).part
    assert own.instrument == scale
    assert own.values.get(kind="pull_run").standard_uncertainty_si > usual


def test_it_is_offered_beside_the_gauge_s_file(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    assert "a pull, typed as it goes" in text(bench.get(f"/diary/{visit.tag}/"))
    assert "a pull, typed as it goes" in text(bench.get(way(visit, "reading"), {"all": 1}))
