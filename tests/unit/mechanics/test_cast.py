"""A cast as the rest of the program asks for it."""

from __future__ import annotations

from collections.abc import Callable
from math import inf, pi, radians
from typing import Any

import numpy as np
import pytest

from spoolwright.mechanics import cast

SURF: dict[str, Any] = {
    "payload_mass": 0.150,
    "payload_drag_area": 1.6e-4,
    "release_speed": 60.0,
    "release_angle": radians(40),
    "spool_inertia": 2e-5,
    "full_radius": 0.022,
    "arbor_radius": 0.013,
    "spool_width": 0.042,
    "packing": 0.7,
    "line_diameter": 0.31e-3,
    "line_density": 1140.0,
    "line_length": 385.0,
    "line_drag": 0.0045,
    "bearing_constant": 2e-4,
    "windage": 3e-9,
    "brake_magnetic": 2e-6,
}


def fly(**other: Any) -> cast.Casts:
    return cast.simulate(**{**SURF, **other})


def test_one_cast_gives_plain_numbers_by_name_and_by_key() -> None:
    flown = fly()
    assert isinstance(flown.distance, float)
    assert flown["distance"] == flown.distance
    assert dict(flown)["peak_slack"] == flown.peak_slack
    assert bool(flown.landed) is True


def test_many_casts_have_the_shape_of_all_their_arguments_together() -> None:
    flown = fly(wind=np.array([[-5.0], [0.0], [5.0]]), release_speed=[50.0, 60.0])
    assert flown.distance.shape == flown.landed.shape == (3, 2)
    assert np.all(np.diff(flown.distance, axis=0) > 0)
    assert flown.distance[1, 1] == fly().distance
    assert fly(wind=np.zeros(0)).distance.shape == (0,)


def test_no_argument_is_changed_by_it() -> None:
    winds = np.array([1.0, 2.0])
    fly(wind=winds)
    assert list(winds) == [1.0, 2.0]


def test_more_than_a_block_of_casts_are_flown_alike() -> None:
    flown = fly(wind=np.zeros(cast.CHUNK + 3))
    assert np.all(flown.distance == fly().distance)


def test_frozen_values_of_one_cast_guard_against_a_change() -> None:
    """Frozen: our own numbers at a fine tolerance, no reference."""
    flown = fly(rtol=1e-11)
    assert flown.distance == pytest.approx(242.458742, abs=1e-5)
    assert flown.flight_time == pytest.approx(7.46968930, abs=1e-7)
    assert flown.peak_slack == pytest.approx(15.7999280, abs=1e-5)


def test_line_that_is_at_its_end_ends_the_cast_in_the_air() -> None:
    flown = fly(line_length=100.0)
    assert bool(flown.landed) is False
    assert flown.line_out == pytest.approx(100.0, rel=1e-6)
    assert flown.distance < 100.0


def test_line_that_does_not_fit_on_the_spool_is_not_there() -> None:
    room = 4 * 0.7 * 0.042 * (0.022**2 - 0.018**2) / 0.31e-3**2
    flown = fly(arbor_radius=0.018, line_length=1000.0)
    assert flown.line_out == pytest.approx(room, rel=1e-6)


def test_a_spool_that_is_nearly_held_lets_the_payload_hang() -> None:
    flown = fly(bearing_constant=1.0, release_speed=5.0)
    assert bool(flown.landed) is False
    assert flown.distance < 1.0


def test_a_spool_that_stands_still_is_caught_up_with() -> None:
    """Heavy friction while the line is slack stops the spool; the payload draws the slack and jerks it on."""
    flown = fly(payload_drag_area=0.02, bearing_constant=2e-3, thumb_force=30.0, slack_limit=0.3)
    assert flown.join_energy > 0
    assert flown.thumb_energy > 0


def test_a_payload_dropped_at_the_water_has_landed() -> None:
    flown = fly(release_angle=-pi / 2, release_height=0.0)
    assert (flown.distance, flown.flight_time, bool(flown.landed)) == (0.0, 0.0, True)


def test_blocks_that_come_off_their_drum_stop_braking() -> None:
    turning = {"brake_magnetic": 0.0, "brake_centrifugal": 3e-9}
    bound, freed = fly(**turning), fly(**turning, brake_engages=2000.0)
    assert 0 < freed.brake_energy < bound.brake_energy
    assert freed.distance > bound.distance
    assert fly(**turning, brake_engages=1e5).brake_energy == 0.0


def test_a_fixed_spool_does_not_turn_and_its_lip_takes_some() -> None:
    free, rough = fly(variant="fixed spool"), fly(variant="fixed spool", lip_friction=0.1)
    assert free.peak_spool_speed == free.brake_energy == free.guide_energy == 0.0
    assert rough.guide_energy == pytest.approx(0.1 * rough.arc, rel=1e-6)
    assert rough.distance < free.distance


def test_a_level_wind_takes_its_torque_times_the_angle() -> None:
    flown = fly(level_wind_torque=1e-3, variant="ideal thumb")
    assert flown.guide_energy > 1e-3 * flown.arc / 0.022
    assert flown.distance < fly(variant="ideal thumb").distance


def test_a_trace_ends_where_the_cast_does_and_names_the_same_numbers() -> None:
    flown = cast.trace(**SURF)
    assert flown.summary.distance == fly().distance == pytest.approx(flown.x[-1], abs=1e-4)
    assert flown.time[-1] == pytest.approx(flown.summary.flight_time)
    assert flown["slack"].max() == pytest.approx(flown.summary.peak_slack, rel=1e-2)
    assert np.all(np.diff(flown.time) >= 0)
    assert flown.line_out == pytest.approx(flown.arc + flown.slack)


def test_where_the_trace_is_tight_line_and_payload_go_at_one_speed() -> None:
    flown = cast.trace(**{**SURF, "brake_magnetic": 6e-6})
    tight = flown.tension > 0
    assert np.all(tight[1:])
    assert flown.line_speed[tight] == pytest.approx(flown.speed[tight])
    assert flown.radius == pytest.approx(
        np.sqrt(0.022**2 - 0.31e-3**2 / (4 * 0.7 * 0.042) * flown.line_out), rel=1e-9
    )
    loose = cast.trace(**SURF)
    assert np.all(loose.tension[loose.slack > 0.01] == 0)


def test_a_finer_trace_has_more_lines_and_the_same_end() -> None:
    coarse, fine = cast.trace(points=1, **SURF), cast.trace(points=2000, **SURF)
    assert len(fine.time) > cast.FIRST_LINES > len(coarse.time)
    assert fine.summary.distance == coarse.summary.distance


def test_a_trace_of_a_fixed_spool_runs_out_as_fast_as_the_payload_flies() -> None:
    flown = cast.trace(**SURF, variant="fixed spool", lip_friction=0.05)
    assert np.array_equal(flown.line_speed, flown.speed)
    assert np.all(flown.spool_speed == 0)
    assert np.all(flown.tension > 0.05)


def test_warming_it_costs_no_more_than_having_it() -> None:
    cast.warm()
    assert cast._kernel() is cast._kernel()


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: fly(payload_mass=0.0), "payload_mass must be above zero and finite; came 0"),
        (lambda: fly(payload_drag_area=-1.0), "payload_drag_area must be zero or more"),
        (lambda: fly(release_speed=float("nan")), "release_speed must be above zero"),
        (lambda: fly(release_angle=2.0), "release_angle must be between"),
        (lambda: fly(release_height=-1.0), "release_height must be zero or more"),
        (lambda: fly(wind=inf), "wind must be a finite number"),
        (lambda: fly(wind="a breeze"), "wind must be a number or an array of numbers"),
        (lambda: fly(air_density=-1.0), "air_density must be zero or more"),
        (lambda: fly(spool_inertia=-1.0), "spool_inertia must be zero or more"),
        (lambda: fly(arbor_radius=0.022), "arbor_radius must be less than full_radius"),
        (lambda: fly(spool_width=0.0), "spool_width must be above zero"),
        (lambda: fly(packing=1.1), "packing must be above 0 and at most 1"),
        (lambda: fly(line_length=[100.0, float("nan")]), "came nan at element 1"),
        (lambda: fly(slack_limit=-0.1), "slack_limit must be between 0 and inf"),
        (lambda: fly(slack_limit=float("nan")), "slack_limit must be between 0 and inf"),
        (lambda: fly(rtol=0.5), "rtol must be between 1e-13 and 0.01"),
        (lambda: fly(lip_friction=-1.0), "lip_friction must be zero or more"),
        (lambda: fly(variant="slingshot"), 'variant must be "multiplier" or "ideal thumb" or "fixed spool"'),
        (lambda: fly(wind=[1.0, 2.0], release_speed=[1.0, 2.0, 3.0]), "shape that fits the others"),
        (lambda: cast.trace(**{**SURF, "wind": [0.0, 1.0]}), "trace follows one cast; came 2"),
        (lambda: cast.trace(points=0, **SURF), "points must be a whole number of 1 or more"),
    ],
)
def test_a_value_out_of_range_is_refused_by_its_name(call: Callable[[], Any], named: str) -> None:
    with pytest.raises(ValueError, match=named.replace("(", r"\(")):
        call()


def test_a_name_that_no_cast_has_and_one_that_is_missing_are_told() -> None:
    with pytest.raises(TypeError, match="a cast has no line_colour"):
        cast.trace(**SURF, line_colour=1.0)
    with pytest.raises(TypeError, match="a cast needs payload_mass"):
        cast.trace(**{name: value for name, value in SURF.items() if name != "payload_mass"})


def test_a_torque_far_too_large_for_its_spool_is_told_and_not_answered() -> None:
    with pytest.raises(ArithmeticError, match="its torques are far too large"):
        fly(bearing_viscous=1e4)
