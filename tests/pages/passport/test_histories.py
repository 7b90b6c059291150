"""Readings by their kind: what can be compared is told apart from what cannot."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.pages.passport.histories import alike, histories
from spoolwright.shop.questions.passport import passport
from tests.pages.coming import came
from tests.people import bench_hand
from tests.shop import walk

pytestmark = pytest.mark.django_db


@pytest.fixture
def here(db: None) -> Any:
    return came()


def take(visit: Any, kind: str, value: float, u: float, dimension: str, **conditions: Any) -> None:
    walk.read(bench_hand(), visit, kind, value, u, dimension, conditions=conditions)


def test_one_reading_is_a_line_and_two_are_a_chart(here: Any) -> None:
    take(here, "pull_full", 57.0, 0.5, "force")
    take(here, "end_float", 0.42e-3, 0.01e-3, "length")
    take(here, "end_float", 0.40e-3, 0.01e-3, "length")
    told = histories(passport(here.reel_id), "metric")
    assert [one.title for one in told.several] == ["Spool end-float"]
    assert [(one.title, one.value, one.spread) for one in told.once] == [
        ("Pull with the drag hard on", "5.81\u00a0kg", "0.10\u00a0kg")
    ]
    assert "as found" in told.once[0].conditions
    assert "radius 23.5\u00a0mm" in told.once[0].conditions


def test_another_radius_is_another_reading(here: Any) -> None:
    for radius in (0.0235, 0.0185, 0.0236):
        take(here, "pull_full", 57.0, 0.5, "force", radius=radius)
    readings = passport(here.reel_id).readings_of("pull_full")
    assert alike(readings, "metric") == [0, 1, 0]


def test_a_share_is_said_in_per_cent_and_a_pull_in_the_readers_unit(here: Any) -> None:
    take(here, "judder", 0.08, 0.01, "ratio")
    take(here, "pull_full", 57.0, 0.5, "force")
    told = {one.title: one.value for one in histories(passport(here.reel_id), "imperial").once}
    assert told["Judder"] == "8.0\u00a0%"
    assert told["Pull with the drag hard on"].endswith("lb")


def test_nothing_read_is_nothing(here: Any) -> None:
    assert not histories(passport(here.reel_id), "metric").is_anything
