"""Pull and torque by turns of the star. Torque of 2.7 kg at 23.5 mm: 2.7 x 9.80665 x 0.0235 = 0.622 N m."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from spoolwright.pages.gathered import drag_table
from spoolwright.papers.figures import Span
from spoolwright.shop.questions.diary import diary
from tests.pages import pier_reel
from tests.shop import walk


def agreed(hand: Any, *, sheet: bool = True) -> Any:
    visit = pier_reel.on_the_mat(hand, sheet=sheet)
    option = replace(walk.option(), prediction=walk.expected() if sheet else None)
    walk.answered(hand, walk.quoted(hand, visit, option))
    walk.worked(hand, visit)
    return visit


def table(visit: Any) -> Any:
    held = diary(visit.pk)
    last = max(block.entry.seq for block in held.of_kind("work"))
    return drag_table.gathered(held, [b for b in held.blocks if b.entry.seq > last], "metric")


def test_measured_rows_stand_in_the_place_of_expected_ones(hand: Any) -> None:
    visit = agreed(hand)
    pier_reel.pull(hand, visit, 2.7, 1.07)
    pier_reel.read(hand, visit, "pull_full", 6.9 * walk.G, 0.5, "force", **walk.PULLS)
    found = table(visit)
    assert found.radius == "23.5 mm"
    rows = {turns: (pull, torque) for turns, pull, torque in found.rows}
    assert rows["2.5"][1].value == pytest.approx(0.622, abs=0.002)
    assert rows["5"][0].value == pytest.approx(6.9 * walk.G), "hard on is the end of the star's way"
    assert "2.5, expected" not in rows
    assert isinstance(rows["2, expected"][0], Span)
    assert list(rows) == sorted(rows, key=lambda turns: float(turns.partition(",")[0]))


def test_before_any_pull_was_measured_all_is_expected(hand: Any) -> None:
    found = table(agreed(hand))
    assert all("expected" in turns for turns, _, _ in found.rows)
    pull, torque = found.rows[-1][1:]
    assert torque.middle == pytest.approx(pull.middle * 0.0235, rel=0.01)


def test_a_pull_at_another_radius_stays_out(hand: Any) -> None:
    visit = agreed(hand, sheet=False)
    half = {**walk.PULLS, "star_turns": 2.0}
    pier_reel.read(hand, visit, "pull_run", 30.0, 0.5, "force", **half)
    pier_reel.read(hand, visit, "pull_run", 26.0, 0.5, "force", **{**half, "star_turns": 3.0, "radius": 0.02})
    found = table(visit)
    assert [turns for turns, _, _ in found.rows] == ["3"]
    assert found.radius == "20.0 mm"


def test_nothing_known_is_no_table(hand: Any) -> None:
    assert table(agreed(hand, sheet=False)) is None
