"""Heat into a washer, and through a stack of them."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics import heat
from spoolwright.mechanics.heat import Body, Face, Layer, Link, constant_run, stack_temperatures

STEEL = (54.0, 7833.0, 465.0)
AREA = 4.5e-4
DISC = Layer(0.7e-3, 15.0, 7950.0, 500.0, AREA)
FIBRE = Layer(0.8e-3, 0.3, 1300.0, 1500.0, AREA)
GEAR = Layer(2.5e-3, 118.0, 8470.0, 377.0, 9e-4, 0.01)
STACK = [GEAR, FIBRE, DISC, FIBRE, DISC]
PAIRS = [Face(0, 0.5), Face(2, 0.5)]
RUN = constant_run(25.0, 4.0, 10.0)


def test_no_time_no_rise_and_heat_drawn_out_cools() -> None:
    assert heat.semi_infinite_rise(3e5, 0.0, *STEEL) == 0.0
    assert heat.semi_infinite_rise(-3e5, 2.0, *STEEL) == -heat.semi_infinite_rise(3e5, 2.0, *STEEL)


def test_what_carries_heat_away_stays_cooler() -> None:
    steel = heat.semi_infinite_rise(3e5, 2.0, *STEEL)
    assert heat.semi_infinite_rise(3e5, 2.0, 160.0, 2800.0, 880.0) < steel
    assert heat.semi_infinite_rise(3e5, 2.0, 17.0, 7900.0, 460.0) > steel


def test_deeper_is_cooler_and_nothing_has_arrived_far_below() -> None:
    depths = np.array([0.0, 1e-3, 5e-3, 1.0])
    rises = heat.semi_infinite_rise(3e5, 2.0, *STEEL, depth=depths)
    assert np.all(np.diff(rises) < 0)
    assert rises[0] == pytest.approx(heat.semi_infinite_rise(3e5, 2.0, *STEEL))
    assert rises[-1] == pytest.approx(0.0, abs=1e-12)
    assert heat.semi_infinite_rise(3e5, 0.0, *STEEL, depth=1e-3) == 0.0


@pytest.mark.parametrize(
    ("place", "bad", "named"),
    [
        (0, float("nan"), "heat_flux must be a finite number"),
        (1, -1.0, "time must be zero or more"),
        (2, 0.0, "conductivity must be above zero"),
        (3, -1.0, "density must be above zero"),
        (4, float("inf"), "specific_heat must be above zero"),
        (5, -1.0, "depth must be zero or more"),
    ],
)
def test_bad_values_are_refused_by_name(place: int, bad: float, named: str) -> None:
    values = [3e5, 2.0, *STEEL, 0.0]
    values[place] = bad
    with pytest.raises(ValueError, match=named):
        heat.semi_infinite_rise(*values)


def test_a_side_that_is_held_takes_the_whole_energy() -> None:
    assert heat.slip_energy(2e-5, float("inf"), 100.0) == pytest.approx(0.1)
    assert heat.slip_energy(2e-5, 2e-5, 100.0) == pytest.approx(0.05)
    with pytest.raises(ValueError, match="other_inertia"):
        heat.slip_energy(2e-5, 0.0, 100.0)


def test_floats_give_one_case_and_arrays_a_case_axis() -> None:
    one = stack_temperatures(STACK, PAIRS, RUN, steps=20)
    assert isinstance(one.after_run, float)
    assert one.faces.shape == (2, len(one.time))
    softer = Layer(0.8e-3, np.array([0.3, 0.6]), 1300.0, 1500.0, AREA)
    two = stack_temperatures([GEAR, softer, DISC, softer, DISC], PAIRS, RUN, steps=20)
    assert two.faces.shape == (2, 2, len(two.time))
    assert two.after_run[0] == pytest.approx(one.after_run, abs=1e-9)  # type: ignore[index]
    assert two.after_run[1] < two.after_run[0]  # type: ignore[index]


def test_cases_may_differ_in_their_pull_alone() -> None:
    pulls = constant_run(25.0, 4.0, np.array([5.0, 10.0, 20.0]))
    rise = stack_temperatures(STACK, PAIRS, pulls, steps=20).after_run - heat.ROOM
    assert rise / rise[1] == pytest.approx([0.5, 1.0, 2.0])  # type: ignore[index]


def test_a_sleeve_takes_heat_and_gives_it_on_to_the_housing() -> None:
    links = [Link(2, 5, 0.05), Link(4, 5, 0.05), Link(5, 6, 0.2)]
    bodies = [Body(8.0), Body(100.0, 0.1)]
    bare = stack_temperatures(STACK, PAIRS, RUN, wait=600.0, steps=20)
    held = stack_temperatures(STACK, PAIRS, RUN, wait=600.0, steps=20, bodies=bodies, links=links)
    assert held.after_run < bare.after_run
    assert heat.ROOM < held.bodies[1, -1] < held.bodies[0, -1] < held.layers[2, held.run_end]


def test_friction_that_fades_makes_less_heat_and_less_pull() -> None:
    fading = [Face(0, 0.5, fade=2e-3), Face(2, 0.5, fade=2e-3)]
    plain, faded = (stack_temperatures(STACK, pairs, RUN, steps=40) for pairs in (PAIRS, fading))
    assert plain.pull_lost == 0.0
    assert 0.02 < faded.pull_lost < 0.5
    assert faded.after_run < plain.after_run
    assert faded.heat_in < plain.heat_in
    assert np.all(np.diff(faded.pull_left[: faded.run_end + 1]) <= 1e-12)


def test_it_never_fades_below_the_least_and_not_at_all_when_cold() -> None:
    steep = [Face(0, 0.5, fade=1.0, least=0.3), Face(2, 0.5, fade=1.0, least=0.3)]
    held = stack_temperatures(STACK, steep, RUN, steps=40)
    assert held.pull_lost == pytest.approx(0.7)
    cold = stack_temperatures(STACK, steep, constant_run(1.0, 4.0, 0.1), start=273.15, surroundings=273.15)
    assert cold.pull_lost == 0.0


def test_thin_metal_between_worse_conductors_needs_one_cell() -> None:
    plain = stack_temperatures(STACK, PAIRS, RUN, steps=40, cells=6)
    lean = stack_temperatures(STACK, PAIRS, RUN, steps=40, cells=[1, 2, 1, 2, 1])
    rise = plain.after_run - heat.ROOM
    assert lean.after_run - heat.ROOM == pytest.approx(rise, rel=5e-3)


def test_a_reel_that_starts_hot_cools_while_nothing_runs() -> None:
    still = constant_run(10.0, 0.0, 10.0)
    lossy = [Layer(**{**vars(layer), "loss": 0.02}) for layer in STACK]
    warm = stack_temperatures(lossy, PAIRS, still, start=340.0, wait=60.0)
    assert np.all(np.diff(warm.hottest) <= 1e-9)
    assert warm.heat_in == 0.0
    assert warm.heat_lost == pytest.approx(-warm.heat_stored, rel=1e-9)


@pytest.mark.parametrize(
    ("changed", "named"),
    [
        ({"layers": [GEAR]}, "layers must be a whole number of 2 or more"),
        ({"layers": [GEAR, Layer(0.0, 1.0, 1.0, 1.0, 1.0)]}, r"layers\[1\].thickness must be above zero"),
        ({"faces": [Face(4, 1.0)]}, r"faces\[0\].below must be between 0 and 3"),
        ({"faces": [Face(0, 0.4), Face(2, 0.4)]}, "sum of the faces' shares must be between"),
        ({"faces": []}, "faces must be a whole number of 1 or more"),
        ({"links": [Link(0, 5, 1.0)]}, r"links\[0\].other must be between 0 and 4"),
        ({"bodies": [Body(0.0)]}, r"bodies\[0\].heat_capacity must be above zero"),
        ({"wait": -1.0}, "wait must be zero or more"),
        ({"start": -1.0}, "start must be above zero"),
        ({"steps": 0}, "steps must be a whole number"),
        ({"cells": 0}, "cells must be a whole number"),
        ({"cells": [2, 2]}, "number of cells must be a whole number of 5 or more"),
    ],
)
def test_a_stack_that_cannot_be_is_refused(changed: dict, named: str) -> None:
    given = {"layers": STACK, "faces": PAIRS, "run": RUN, **changed}
    with pytest.raises(ValueError, match=named):
        stack_temperatures(**given)
