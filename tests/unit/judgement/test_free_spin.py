"""How long the free spool spins, and what shortens it."""

import numpy as np
import pytest

from spoolwright.judgement import free_spin
from spoolwright.judgement.monte_carlo import draw
from spoolwright.judgement.reel_state import as_built
from spoolwright.mechanics import coastdown
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-54c")
STATE = as_built(SHEET)
DRAWS = draw(
    {**free_spin.SPIN_DRAWS, **{name: held.distribution for name, held in STATE.ranges.items()}},
    samples=300,
    seed=1,
)


def test_more_drag_spins_shorter() -> None:
    plain = free_spin.spin_time(SHEET, STATE, DRAWS)
    worn = free_spin.spin_time(SHEET, STATE, DRAWS | {"bearing_condition": DRAWS["bearing_condition"] * 3})
    rubbing = free_spin.spin_time(SHEET, STATE, DRAWS | {"end_drag": DRAWS["end_drag"] + 1e-4})
    assert np.all(worn < plain)
    assert np.all(rubbing < plain)


def test_a_full_spool_spins_longer_from_the_same_speed() -> None:
    bare = free_spin.spin_time(SHEET, STATE, DRAWS, initial_speed=200.0)
    full = free_spin.spin_time(SHEET, STATE, DRAWS, initial_speed=200.0, line_on=True)
    assert np.all(full > bare)


def test_it_agrees_with_the_closed_form_where_only_a_constant_drags() -> None:
    # Closed form of mechanics.coastdown: with nothing but a constant torque, t = J w / M.
    idle = {name: np.zeros(300) for name in ("bearing_condition", "air_factor", "train_drag")}
    draws = {**DRAWS, **idle, "end_drag": np.full(300, 5e-5)}
    inertia = free_spin.bare_inertia(SHEET) * DRAWS["inertia_factor"]
    spun = free_spin.spin_time(SHEET, STATE, draws, initial_speed=150.0)
    assert spun == pytest.approx(coastdown.stop_time(150.0, inertia, 5e-5), rel=1e-9)


def test_an_inertia_on_the_sheet_goes_before_one_that_is_worked_out() -> None:
    told = SHEET.model_copy(update={"spool": SHEET.spool.model_copy(update={"inertia": 1.5e-5})})
    assert free_spin.bare_inertia(told) == 1.5e-5
    unweighed = SHEET.model_copy(update={"spool": SHEET.spool.model_copy(update={"mass": None})})
    assert free_spin.bare_inertia(unweighed) == pytest.approx(free_spin.bare_inertia(SHEET), rel=0.6)


def test_only_bearings_that_carry_the_spool_count() -> None:
    assert 0 < len(free_spin.spool_bearings(SHEET)) < len(SHEET.bearings)
