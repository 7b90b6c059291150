"""A spool on its drag, and a line that pulls it."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics import judder

CASE = {"mass": 1.0, "stiffness": 100.0, "pull_speed": 0.1, "static_force": 4.0, "kinetic_force": 2.5}


def test_the_line_comes_tight_then_breaks_away_then_repeats_itself() -> None:
    told = judder.stick_slip(**CASE, duration=20.0)
    assert told.first_break == pytest.approx(0.4)
    period = told.slip_time + told.stick_time
    assert told.frequency == pytest.approx(1 / period)
    assert told.breaks == 1 + int((20.0 - 0.4) // period)
    at = np.array([0.55, 0.9, 1.1])
    first, later = (judder.stick_slip(**CASE, duration=1.0, times=at + n * period).pull for n in (0, 7))
    assert later == pytest.approx(first, abs=1e-9)


def test_the_trace_holds_still_while_it_sticks_and_its_ends_are_the_told_ones() -> None:
    told = judder.stick_slip(**CASE, duration=4.0, times=np.linspace(0.0, 4.0, 20001))
    assert told.pull[0] == 0.0
    assert np.max(told.pull) == pytest.approx(told.start_up_peak, rel=1e-6)
    assert np.min(told.pull[4000:]) == pytest.approx(told.lowest_pull, rel=1e-5)
    assert told.swing == pytest.approx(told.highest_pull - told.lowest_pull)
    assert np.all(told.speed >= 0)
    assert np.all(told.speed[told.time < told.first_break] == 0)
    assert np.max(np.abs(np.diff(told.pull))) < 0.02


def test_without_damping_no_speed_runs_smooth() -> None:
    told = judder.stick_slip(**{**CASE, "pull_speed": 50.0}, duration=1.0)
    assert told.smooth_above == np.inf
    assert told.runs_smooth is False


@pytest.mark.parametrize("damping", [0.3, 2.0, 8.0])
def test_it_runs_smooth_just_above_the_speed_that_is_told_and_judders_just_below(damping: float) -> None:
    limit = judder.stick_slip(**CASE, duration=1.0, damping=damping).smooth_above
    above, below = (
        judder.stick_slip(**{**CASE, "pull_speed": limit * factor}, duration=1.0, damping=damping)
        for factor in (1.001, 0.999)
    )
    assert above.runs_smooth is True
    assert below.runs_smooth is False
    assert above.frequency == 0.0 < below.frequency
    assert above.highest_pull == above.lowest_pull == 2.5


def test_a_line_damped_beyond_swinging_breaks_away_once() -> None:
    told = judder.stick_slip(**CASE, duration=50.0, damping=40.0)
    assert told.breaks == 1
    assert told.smooth_above == 0.0
    assert told.pull[-1] == pytest.approx(2.5)


def test_a_line_so_damped_that_it_pulls_at_once_needs_no_stretch() -> None:
    told = judder.stick_slip(**{**CASE, "pull_speed": 1.0}, duration=5.0, damping=10.0)
    assert told.first_break == 0.0
    assert told.pull[0] == pytest.approx(10.0)
    assert told.start_up_peak == pytest.approx(np.max(told.pull), rel=1e-3)


def test_no_step_of_friction_no_judder_once_the_line_damps() -> None:
    told = judder.stick_slip(**{**CASE, "static_force": 2.5}, duration=5.0, damping=1.0)
    assert told.runs_smooth is True
    assert told.smooth_above == 0.0


def test_arrays_are_their_scalars() -> None:
    speeds, damping = np.array([0.05, 0.1, 0.4])[:, np.newaxis], np.array([0.0, 1.0])
    many = judder.stick_slip(**{**CASE, "pull_speed": speeds}, duration=3.0, damping=damping)
    assert many.pull.shape == (3, 2, judder.POINTS)
    one = judder.stick_slip(**CASE, duration=3.0, damping=1.0)
    for name in ("start_up_peak", "slip_time", "stick_time", "lowest_pull", "smooth_above", "breaks"):
        assert getattr(many, name)[1, 1] == pytest.approx(getattr(one, name), rel=1e-12)
        assert isinstance(getattr(one, name), float)
    assert many.pull[1, 1] == pytest.approx(one.pull, abs=1e-12)


def test_a_start_so_hard_that_the_line_would_go_slack_says_so() -> None:
    assert judder.stick_slip(**{**CASE, "pull_speed": 0.6}, duration=1.0).slack is True
    assert judder.stick_slip(**CASE, duration=1.0).slack is False


def test_seen_from_the_line_a_fuller_spool_is_lighter_for_the_same_inertia() -> None:
    assert judder.effective_mass(1e-5, 0.02) == pytest.approx(0.025)
    assert judder.effective_mass(1e-5, 0.01) == pytest.approx(0.1)


def test_friction_falls_from_static_to_kinetic() -> None:
    speeds = np.array([0.0, 1e-3, 1.0])
    assert judder.sliding_friction(speeds, 1.5, 1.0, 1e-3) == pytest.approx([1.5, 1 + 0.5 / np.e, 1.0])


@pytest.mark.parametrize(
    ("changed", "named"),
    [
        ({"mass": 0.0}, "mass must be above zero"),
        ({"stiffness": -1.0}, "stiffness must be above zero"),
        ({"pull_speed": 0.0}, "pull_speed must be above zero"),
        ({"static_force": 2.0}, "static_force must be kinetic_force or more"),
        ({"kinetic_force": float("nan")}, "kinetic_force must be above zero"),
        ({"duration": 0.0}, "duration must be above zero"),
        ({"damping": -1.0}, "damping must be zero or more"),
        ({"times": np.array([-1.0])}, "times must be zero or more"),
    ],
)
def test_bad_values_are_refused_by_name(changed: dict, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        judder.stick_slip(**{**CASE, "duration": 1.0, **changed})
