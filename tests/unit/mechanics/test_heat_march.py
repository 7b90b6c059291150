"""Modes and steps of the stack."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics.drag_layers import Body, Face, Layer, Link, Run, constant_run
from spoolwright.mechanics.heat_march import grid, march, modes_of

DISC = Layer(1e-3, 15.0, 8000.0, 500.0, 4e-4)
SOFT = Layer(1e-3, 0.3, 1300.0, 1500.0, 4e-4)
FACES = [Face(0, 1.0)]


def test_a_stack_that_loses_nothing_keeps_one_mode_for_ever() -> None:
    assert modes_of([DISC, SOFT], FACES, [], [], 4).rates[0, 0] == pytest.approx(0.0, abs=1e-9)
    losing = Layer(**{**vars(DISC), "loss": 0.1})
    assert modes_of([losing, SOFT], FACES, [], [], 4).rates[0, 0] > 1e-3


def test_one_kelvin_everywhere_stores_the_heat_capacity_and_reads_as_one_kelvin() -> None:
    modes = modes_of([DISC, SOFT], FACES, [Body(5.0)], [Link(0, 2, 0.1)], 5)
    stored = float(modes.capacity[0] @ modes.uniform[0])
    assert stored == pytest.approx(DISC.heat_capacity + SOFT.heat_capacity + 5.0)
    assert modes.uniform[0] @ modes.places[0] == pytest.approx(np.ones(3))
    assert modes.uniform[0] @ modes.faces[0] == pytest.approx(np.ones(1))


def test_in_a_long_slip_the_better_conductor_has_taken_more() -> None:
    modes = modes_of([DISC, SOFT], FACES, [], [], 6)
    zero = np.zeros(1)
    done = march(modes, FACES, constant_run(0.01, 1.0, 1.0), np.linspace(0.0, 0.01, 9), zero, zero)
    taken = (done.modes[-1] @ modes.places[0])[0] * [DISC.heat_capacity, SOFT.heat_capacity]
    assert taken.sum() == pytest.approx(0.01)
    assert taken[0] > 5 * taken[1]


def test_the_grid_hits_every_moment_of_the_run_and_its_end() -> None:
    times = np.array([0.0, 3.3, 7.0, 25.0])
    moments, end = grid(times, 100.0, 30)
    assert set(times) <= set(moments)
    assert moments[end] == 25.0
    assert moments[-1] == pytest.approx(125.0)
    assert np.all(np.diff(moments) > 0)
    assert np.max(np.diff(moments[: end + 1])) <= 25.0 / 30 + 1e-9
    assert moments[1] < 0.01
    assert grid(times, 0.0, 30)[0][-1] == 25.0


def test_one_giant_step_stays_finite_and_between_the_true_bounds() -> None:
    """Stable at any length: a step of a million seconds after the run only cools."""
    losing = Layer(**{**vars(DISC), "loss": 0.1})
    modes = modes_of([losing, SOFT], FACES, [], [], 4)
    run = constant_run(1.0, 4.0, 10.0)
    zero = np.zeros(1)
    done = march(modes, FACES, run, np.array([0.0, 1.0, 1e6]), zero, zero)
    assert abs(done.faces[-1, 0, 0]) < 1e-3 * done.faces[1, 0, 0]


def test_heat_stops_with_the_run_and_follows_it_while_it_lasts() -> None:
    modes = modes_of([DISC, SOFT], FACES, [], [], 4)
    run = Run(np.array([0.0, 1.0, 3.0]), np.array([0.0, 2.0, 2.0]), np.array([10.0, 10.0, 20.0]))
    moments, _ = grid(run.time, 50.0, 40)
    zero = np.zeros(1)
    done = march(modes, FACES, run, moments, zero, zero)
    assert done.heat_in[-1, 0] == pytest.approx(run.energy, rel=1e-12)
    assert done.heat_lost[-1, 0] == 0.0
