"""The state of a reel: as built, as found, after works."""

from dataclasses import replace

import pytest

from spoolwright.judgement.reel_state import Range, after, as_built, as_found, spool_lubricant
from spoolwright.judgement.works import Effect, all_works
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")
WORKS = all_works()


def test_a_reel_as_found_is_less_well_known_than_a_sound_one() -> None:
    built, found = as_built(SHEET), as_found(SHEET)
    for name, held in built.ranges.items():
        assert found.ranges[name].high >= held.high


def test_every_range_says_how_far_to_trust_it() -> None:
    assert all(held.mark for held in as_found(SHEET).ranges.values())


def test_carbon_discs_change_every_face_and_the_start() -> None:
    changed = after(as_found(SHEET), SHEET, [WORKS["carbon-drag-set"]])
    assert {pair.face_material for pair in changed.pairs} == {"woven carbon"}
    assert changed.new_discs
    assert changed.ranges["start_up_ratio"].high < as_found(SHEET).ranges["start_up_ratio"].low + 0.05


def test_dressing_keeps_the_material() -> None:
    changed = after(as_found(SHEET), SHEET, [WORKS["dress-drag"]])
    assert {pair.face_material for pair in changed.pairs} == {"hard fibre"}
    assert not changed.new_discs
    assert changed.ranges["drag_condition"].low > as_found(SHEET).ranges["drag_condition"].low


def test_one_more_pair_is_one_more() -> None:
    changed = after(as_built(SHEET), SHEET, [WORKS["under-gear-disc"]])
    assert len(changed.pairs) == len(as_built(SHEET).pairs) + 1


def test_what_no_work_touches_stays_the_very_same() -> None:
    before = as_found(SHEET)
    changed = after(before, SHEET, [WORKS["new-pawl"]])
    assert changed.ranges["drag_condition"] is before.ranges["drag_condition"]
    assert changed.ranges["train_drag"] != before.ranges["train_drag"]


def test_new_bearings_bring_their_oil() -> None:
    assert after(as_found(SHEET), SHEET, [WORKS["new-spool-bearings"]]).bearing_lubricant == "O1"
    assert spool_lubricant(SHEET) == "Tysna 10"


def test_an_effect_on_nothing_is_refused() -> None:
    odd = replace(WORKS["new-pawl"], effects=(Effect("paint", "becomes", (1.0, 2.0), "none"),))
    with pytest.raises(ValueError, match="paint"):
        after(as_found(SHEET), SHEET, [odd])


def test_a_range_multiplies_end_by_end() -> None:
    assert Range(1.0, 2.0).times(0.5, 3.0) == Range(0.5, 6.0)
    assert Range(1.0, 2.0).middle == 1.5
