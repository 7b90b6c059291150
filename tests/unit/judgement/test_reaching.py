"""What would have to change to reach a pull."""

import pytest

from spoolwright.judgement.reaching import ways_to_reach
from spoolwright.sheets import reel_sheet

POUND = 4.4482216152605
OLDER = reel_sheet.load("tarvak-52")


def sets(target: float, sheet=OLDER) -> list[tuple[str, ...]]:
    return [
        tuple(work.id for work in way.works) for way in ways_to_reach(sheet, {}, target * POUND, samples=500)
    ]


def test_every_way_reaches_it_and_no_way_holds_a_smaller_one() -> None:
    ways = ways_to_reach(OLDER, {}, 10 * POUND, samples=500)
    assert ways
    assert all(way.pull.middle >= 10 * POUND for way in ways)
    found = [{work.id for work in way.works} for way in ways]
    assert not any(one < other for one in found for other in found)


def test_a_way_beyond_what_we_would_do_says_so() -> None:
    way = next(w for w in ways_to_reach(OLDER, {}, 12 * POUND, samples=500))
    assert not way.within_guard
    assert "further than we would take" in way.words


def test_what_cannot_be_reached_has_no_way() -> None:
    assert sets(60.0) == []


def test_a_reel_without_a_drag_has_no_way() -> None:
    assert sets(5.0, OLDER.model_copy(update={"drag": None})) == []


def test_a_pull_of_nothing_is_refused() -> None:
    with pytest.raises(ValueError, match="target_pull"):
        ways_to_reach(OLDER, {}, 0.0)
