"""What drags on a free spool at the speeds of a cast."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.judgement import free_spin
from spoolwright.judgement.monte_carlo import Sample, draw
from spoolwright.judgement.reel_state import as_built
from spoolwright.judgement.spool_drag import SLOWEST_SHARE, SPOOL_DRAWS, SpoolDrag, spool_drag
from spoolwright.sheets import reel_sheet

TOP = 2200.0


def drawn(slug: str) -> tuple[SpoolDrag, dict[str, Sample]]:
    sheet = reel_sheet.load(slug)
    state = as_built(sheet)
    ranges = {name: held.distribution for name, held in state.ranges.items()}
    draws = draw({**SPOOL_DRAWS, **free_spin.SPIN_DRAWS, **ranges}, samples=300, seed=4)
    return spool_drag(sheet, state, draws, TOP), draws


@pytest.mark.parametrize("slug", ["tarvak-58r", "tarvak-54c", "pellmar-70"])
def test_the_two_terms_follow_the_law_of_the_bearings(slug: str) -> None:
    drag, draws = drawn(slug)
    sheet = reel_sheet.load(slug)
    column = {name: values[:, np.newaxis] for name, values in draws.items()}
    for share in (SLOWEST_SHARE, 0.6, 1.0):
        speed = np.array([share * TOP])
        law = free_spin.bearing_torque(sheet, as_built(sheet), column, speed)[:, 0]
        fitted = drag.bearing_constant - draws["end_drag"] + drag.bearing_viscous * speed
        assert np.allclose(fitted, law, rtol=0.04)


def test_a_level_wind_that_stands_in_the_cast_costs_nothing() -> None:
    drag, _ = drawn("tarvak-54c")
    assert not np.any(drag.train_constant + drag.train_viscous + drag.train_quadratic)


def test_a_level_wind_that_is_driven_costs_what_a_spin_shows_or_more() -> None:
    drag, draws = drawn("tarvak-58r")
    slow = drag.train_constant + drag.train_viscous * 150.0
    assert np.allclose(slow, draws["train_drag"])
    fast = drag.torque(TOP) - drag.without_train().torque(TOP)
    assert np.all(fast > draws["train_drag"] * 0.99)


def test_the_guide_gives_up_its_energy_twice_a_turning_back_at_the_most() -> None:
    drag, draws = drawn("tarvak-58r")
    per_turn = 7.0e-3 * (18 / 24) * (24 / 34)
    guide = per_turn * TOP / (2 * np.pi)
    turns_between = 43e-3 / per_turn
    most = draws["carriage_mass"] * guide**2 / (2 * np.pi * turns_between)
    share = drag.train_quadratic * TOP**2 / most
    assert np.allclose(share, draws["reversal_loss"])


def test_bearings_can_be_freed_alone() -> None:
    drag, _ = drawn("tarvak-58r")
    half = drag.bearings_times(0.5)
    assert np.allclose(half.bearing_constant, drag.bearing_constant / 2)
    assert half.windage is drag.windage
    assert half.train_constant is drag.train_constant


def test_a_spool_that_does_not_turn_is_refused() -> None:
    sheet = reel_sheet.load("tarvak-58r")
    with pytest.raises(ValueError, match="top_speed"):
        spool_drag(sheet, as_built(sheet), {}, 0.0)
