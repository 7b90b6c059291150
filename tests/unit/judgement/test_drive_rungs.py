"""Anti-reverse, drive shaft, star thread, handle."""

from __future__ import annotations

from math import pi, sqrt

import numpy as np
import pytest

from spoolwright.judgement.drive_rungs import drive_rungs
from spoolwright.sheets.materials import structural_material
from tests.unit.judgement.ladder_loads import changed, loads_of, middles

OLDER = middles(drive_rungs(loads_of("tarvak-52")))


def rungs(sheet, part: str):
    return next(limit for limit in drive_rungs(loads_of(sheet)) if limit.part == part)


def test_every_reel_has_what_it_has() -> None:
    assert set(OLDER) == {"anti-reverse", "drive shaft", "star thread", "handle"}
    fly = {limit.part for limit in drive_rungs(loads_of("brekkas-9-10"))}
    assert "drive shaft" not in fly
    lever = {limit.part for limit in drive_rungs(loads_of("pellmar-30-2"))}
    assert "star thread" not in lever


def test_where_dog_and_rollers_are_there_the_stronger_is_told() -> None:
    both = rungs("tarvak-54c", "anti-reverse")
    assert both.name == "anti-reverse (dog and ratchet)"
    assert "leaves it to the dog" in both.what_gives
    rollers = rungs(changed("tarvak-54c", anti_reverse={"ratchet_teeth": None, "dogs": None}), "anti-reverse")
    assert "roller" in rollers.name
    assert np.median(rollers.pull) < np.median(both.pull)
    assert "leaves it" not in rungs("tarvak-52", "anti-reverse").what_gives


def test_no_anti_reverse_no_rung() -> None:
    sheet = changed("tarvak-52", anti_reverse={"ratchet_teeth": None, "dogs": None, "roller_clutch": False})
    assert "anti-reverse" not in {limit.part for limit in drive_rungs(loads_of(sheet))}
    bare = sheet.model_copy(update={"anti_reverse": None, "handle": None})
    assert {limit.part for limit in drive_rungs(loads_of(bare))} == {"drive shaft", "star thread"}


def test_a_fixed_spool_s_anti_reverse_feels_no_gears() -> None:
    straight = changed("lumvik-4000", gears={"main_teeth": 22})
    held, geared = (np.median(rungs(s, "anti-reverse").pull) for s in (straight, "lumvik-4000"))
    assert held == pytest.approx(geared)


def test_drive_shaft_by_hand() -> None:
    """52: 7 mm shaft of stainless steel; T = pi d^3 / 12 tau, less 10 to 30 % for its flats."""
    shaft = rungs("tarvak-52", "drive shaft")
    steel = structural_material("stainless steel").yield_strength
    whole = pi * 7e-3**3 / 12 * steel.middle / sqrt(3) / (0.022 * 50 / 12)
    assert np.median(shaft.pull) / whole == pytest.approx(0.8, abs=0.05)


def test_a_longer_arm_asks_less_of_the_hand_and_the_same_of_the_arm_s_root() -> None:
    longer = changed("tarvak-52", handle={"arm_length": 0.06})
    assert np.median(rungs(longer, "handle").pull) == pytest.approx(OLDER["handle"], rel=0.02)
    wider = changed("tarvak-52", handle={"section_width": 18e-3})
    assert np.median(rungs(wider, "handle").pull) == pytest.approx(4 * OLDER["handle"], rel=0.02)


def test_what_the_sheet_does_not_state_is_a_guess_and_says_so() -> None:
    fields = {"ratchet_diameter": None, "tooth_height": None, "tooth_root": None, "tooth_width": None}
    guessed = rungs(changed("tarvak-52", anti_reverse=fields), "anti-reverse")
    stated = rungs("tarvak-52", "anti-reverse")
    assert "judgement prior" in guessed.mark
    assert "from the sheet" in stated.mark
    assert np.std(guessed.pull) / np.mean(guessed.pull) > np.std(stated.pull) / np.mean(stated.pull)


def test_the_star_s_thread_is_far_above_what_a_hand_clamps() -> None:
    for slug in ("tarvak-52", "tarvak-58r", "tarvak-54c", "pellmar-70"):
        assert np.median(rungs(slug, "star thread").pull) > 200
