"""The rim, and the foot's screws."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.judgement.frame_lean import shaft_slope
from spoolwright.judgement.frame_rungs import frame_rungs
from spoolwright.sheets.materials import structural_material
from tests.unit.judgement.ladder_loads import changed, loads_of


def rungs(sheet, part: str):
    return next((limit for limit in frame_rungs(loads_of(sheet)) if limit.part == part), None)


def test_foot_screws_by_hand() -> None:
    """52: four M3 (5.03 mm2) of stainless steel, pull 30 mm high, screws 20 mm apart."""
    screws = rungs("tarvak-52", "foot screws")
    steel = structural_material("stainless steel").yield_strength.middle
    stress = np.hypot(30 / 20 / 2, 0.25 * np.sqrt(3)) / 5.03e-6
    assert np.median(screws.pull) == pytest.approx(steel / stress, rel=0.05)


def test_a_fine_thread_has_its_own_area_and_an_unknown_one_no_rung() -> None:
    sheet = loads_of("tarvak-52").sheet

    def threaded(thread: str):
        screws = tuple(s.model_copy(update={"thread": thread}) for s in sheet.screws)
        return rungs(sheet.model_copy(update={"screws": screws}), "foot screws")

    assert np.median(threaded("M3 x 0.35").pull) > np.median(threaded("M3").pull)
    assert threaded("6-32") is None
    assert threaded("M3.2") is None


def test_no_screws_no_rung() -> None:
    assert rungs(loads_of("tarvak-52").sheet.model_copy(update={"screws": ()}), "foot screws") is None


def test_a_stiff_frame_leans_by_its_shaft_alone() -> None:
    """54C, one piece: gap (36 - 32 - 2 x 1.4) / 2 = 0.6 mm at a rim of 25 mm radius."""
    rim = rungs("tarvak-54c", "frame")
    slope = shaft_slope(loads_of("tarvak-54c").sheet)
    assert np.median(rim.pull) == pytest.approx(0.6e-3 / (slope * 25e-3), rel=0.02)
    assert "gap from the sheet" in rim.mark


def test_a_gap_that_makes_no_sense_is_guessed() -> None:
    rim = rungs(changed("tarvak-54c", frame={"plate_spacing": 60e-3}), "frame")
    assert "judgement prior" in rim.mark


def test_what_does_not_lean_has_no_rung() -> None:
    assert rungs("lumvik-4000", "frame") is None
