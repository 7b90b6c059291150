"""From the star to the line."""

import numpy as np
import pytest

from spoolwright.judgement import drag_train
from spoolwright.judgement.reel_state import as_built
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")
DRAG = SHEET.drag
assert DRAG is not None
ONES = {name: np.ones(3) for name in ("hand", "thread_friction", "drag_condition")}
DRAWS = ONES | {
    "take_up": np.array([0.0, 0.5, 1.0]),
    "face": np.zeros(3),
    "hard fibre, greased": np.full(3, 0.13),
}


def test_the_clamp_rises_with_the_star_and_ends_with_flat_springs() -> None:
    clamps = [drag_train.clamp_at(DRAG, turns, DRAWS, np.ones(3)) for turns in np.linspace(0.0, 5.0, 26)]
    assert np.all(np.diff(np.array(clamps), axis=0) >= 0)
    assert clamps[0].tolist() == [0.0, 0.0, 0.0]
    assert clamps[-1] == pytest.approx(np.full(3, drag_train.travel(DRAG).flat_force))


def test_loose_travel_comes_first_and_gives_nothing() -> None:
    way = drag_train.travel(DRAG)
    loose_turns = way.spare / way.per_turn
    clamp = drag_train.clamp_at(DRAG, 0.9 * loose_turns, DRAWS, np.ones(3))
    assert clamp[2] == 0.0
    assert clamp[0] > clamp[1] > 0.0


def test_a_weak_hand_is_the_limit_before_the_springs() -> None:
    weak = DRAWS | {"hand": np.full(3, 0.5)}
    clamp, shares = drag_train.greatest_clamp(DRAG, weak, np.ones(3))
    assert shares["the hand on the star"] == 1.0
    assert clamp == pytest.approx(drag_train.clamp_by_hand(DRAG, weak))


def test_turns_that_end_before_the_springs_are_flat_are_the_limit() -> None:
    short = DRAG.model_copy(update={"turns_to_full": 1.0})
    clamp, shares = drag_train.greatest_clamp(short, DRAWS, np.ones(3))
    assert shares["the turns of the star"] == 1.0
    assert clamp[0] < drag_train.travel(DRAG).flat_force


def test_torque_grows_with_pairs_and_with_even_pressure() -> None:
    state = as_built(SHEET)
    clamp = np.full(3, 1000.0)
    torque = drag_train.spool_torque(SHEET, state, DRAWS, clamp)
    by_hand = len(state.pairs) * 0.13 * 1000.0 * 0.009 / 5.1
    assert torque == pytest.approx(np.full(3, by_hand))
    even = drag_train.spool_torque(SHEET, state, DRAWS | {"face": np.ones(3)}, clamp)
    assert np.all(even > torque)


def test_half_of_the_line_is_half_of_the_volume() -> None:
    full, half, bare = (drag_train.radius_at_fill(SHEET, share) for share in (1.0, 0.5, 0.0))
    assert bare == pytest.approx(SHEET.spool.arbor_radius)
    assert half**2 - bare**2 == pytest.approx((full**2 - bare**2) / 2)
    with pytest.raises(ValueError, match="share"):
        drag_train.radius_at_fill(SHEET, 1.5)
