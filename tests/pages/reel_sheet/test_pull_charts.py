"""The pull as charts, with the reel's own readings where they can be compared."""

from __future__ import annotations

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.taken import Taken
from spoolwright.pages.reel_sheet import expected
from spoolwright.pages.reel_sheet.pull_charts import by_fill, by_turns, on_the_way
from tests.unit.papers.section import reels

SHEET = reels.shipped("tarvak-58r")
SOUND = expected.prediction(SHEET, (), "metric")


def pull(kind: str, newtons: float, radius: float, turns: float | None = None) -> Taken:
    conditions = {"radius": radius} if turns is None else {"radius": radius, "star_turns": turns}
    return Taken(kind, Measured(newtons, 0.5, "force"), conditions)


@pytest.mark.parametrize(
    ("slug", "system"), [*((slug, "metric") for slug in reels.SLUGS), ("tarvak-58r", "imperial")]
)
def test_every_shipped_reel_has_both(slug: str, system: str) -> None:
    sheet = reels.shipped(slug)
    sound = expected.prediction(sheet, (), system)
    for chart in (by_turns(sheet, sound, {}, system), by_fill(sheet, sound, {}, system)):
        assert chart is not None
        assert "0 readings" in chart.description
        assert len(chart.rows) >= 4


def test_a_reading_at_the_full_radius_stands_on_the_turns() -> None:
    readings = {"pull_run": (pull("pull_run", 25.5, 0.0235, 1.0), pull("pull_run", 25.5, 0.0180, 2.0))}
    chart = by_turns(SHEET, SOUND, readings, "metric")
    assert chart is not None
    assert "1 readings" in chart.description
    assert any("2.60 kg" in row[2] for row in chart.rows)


def test_a_full_pull_stands_where_its_radius_means_the_line_to_be() -> None:
    """By hand: half of the line is left at the root of the mean of the squared radii, 11 and 23.5 mm."""
    half = ((11**2 + 23.5**2) / 2) ** 0.5 / 1000
    capacity = SOUND.values["line_capacity"]
    found = on_the_way(SHEET, {"pull_full": (pull("pull_full", 70.0, half, 5.0),)}, capacity)
    assert found[0][0] == pytest.approx(capacity.middle / 2, rel=1e-3)
    chart = by_fill(SHEET, SOUND, {"pull_full": (pull("pull_full", 70.0, half, 5.0),)}, "metric")
    assert chart is not None
    assert "1 readings" in chart.description


def test_a_pull_without_its_radius_stands_nowhere() -> None:
    bare = {"pull_full": Measured(70.0, 0.5, "force")}
    assert on_the_way(SHEET, bare, SOUND.values["line_capacity"]) == []


def test_a_reel_without_a_drag_has_neither() -> None:
    fly = reels.fly()
    sound = expected.prediction(fly, (), "metric")
    assert by_turns(fly, sound, {}, "metric") is None
    assert by_fill(fly, sound, {}, "metric") is None
