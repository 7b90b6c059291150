"""What the spool's bearings stand."""

from __future__ import annotations

import pytest

from spoolwright.judgement.bearing_lives import bearing_lives
from spoolwright.judgement.worn_face import Use
from spoolwright.sheets import reel_sheet

PIER = reel_sheet.load("tarvak-58r")


def test_twice_the_pull_is_half_the_safety() -> None:
    once, twice = (bearing_lives(PIER, {}, use=Use(fish_pull=p)).bearings[0] for p in (20.0, 40.0))
    assert twice.safety.middle == pytest.approx(once.safety.middle / 2)
    assert twice.life.middle < once.life.middle / 7
    assert twice.torque > once.torque


def test_ceramic_balls_dent_their_rings_at_seven_tenths() -> None:
    for one in bearing_lives(PIER, {}).bearings:
        assert one.hybrid_safety.middle == pytest.approx(0.72 * one.safety.middle, rel=0.02)


def test_a_hybrid_on_the_sheet_is_rated_so() -> None:
    hybrids = tuple(b.model_copy(update={"kind": "hybrid"}) for b in PIER.bearings)
    steel, hybrid = (
        bearing_lives(sheet, {}).bearings[0]
        for sheet in (PIER, PIER.model_copy(update={"bearings": hybrids}))
    )
    assert hybrid.safety.high < steel.safety.high
    assert "ceramic" not in hybrid.words


def test_grit_shortens_the_life_and_not_the_safety() -> None:
    clean, dirty = (bearing_lives(PIER, {}, use=Use(grit=grit)).bearings[0] for grit in (0.0, 0.1))
    assert dirty.life.middle < clean.life.middle
    assert dirty.safety == clean.safety


def test_too_hard_a_pull_is_said_plainly() -> None:
    assert "may dent it" in bearing_lives(PIER, {}, use=Use(fish_pull=900.0)).bearings[0].words


def test_without_a_standard_bearing_it_says_why_not() -> None:
    found = bearing_lives(PIER.model_copy(update={"bearings": ()}), {})
    assert "no ball bearing" in found.why_not
    assert not found.notes


def test_hybrid_bearings_that_are_fitted_are_rated_so() -> None:
    fitted = bearing_lives(PIER, {}, ("hybrid-spool-bearings",)).bearings[0]
    assert fitted.kind == "hybrid"
    assert fitted.safety.high < bearing_lives(PIER, {}).bearings[0].safety.high
