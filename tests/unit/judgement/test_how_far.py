"""How far a drag may be raised."""

from __future__ import annotations

from spoolwright.judgement.how_far import too_far
from spoolwright.judgement.load_ladder import load_ladder
from spoolwright.sheets import reel_sheet
from tests.unit.judgement.ladder_loads import changed

SHEET = reel_sheet.load("tarvak-58r")


def said(works: list[str], sheet=SHEET, system: str = "metric") -> str:
    ladder = load_ladder(sheet, works=works, samples=400, system=system)
    return too_far(ladder, ladder.before.drag.limit, system)


def test_a_carbon_set_is_within_what_the_pier_reel_carries_and_a_disc_more_is_not() -> None:
    assert said(["carbon-drag-set"]) == ""
    both = said(["carbon-drag-set", "under-gear-disc"])
    assert "the teeth of the main gear behind it would hold only" in both
    assert "judgement prior" in both
    assert " lb" in said(["carbon-drag-set", "under-gear-disc"], system="imperial")


def test_works_that_do_not_raise_the_pull_are_not_held_back_by_a_weak_part() -> None:
    weak = changed("tarvak-58r", gears={"face_width": 1e-3})
    assert said(["strip-and-wash"], weak) == ""
    assert said(["carbon-drag-set"], weak) != ""


def test_without_a_ladder_or_a_build_to_compare_with_nothing_is_said() -> None:
    assert too_far(None, None) == ""
