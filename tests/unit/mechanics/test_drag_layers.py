"""The stack and the run before any heat flows."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics.drag_layers import Face, Layer, Run, check, check_run, constant_run

DISC = Layer(1e-3, 15.0, 8000.0, 500.0, 4e-4)


def test_a_discs_heat_capacity_is_its_mass_times_specific_heat() -> None:
    assert DISC.heat_capacity == pytest.approx(1e-3 * 4e-4 * 8000.0 * 500.0)


def test_the_energy_of_a_run_is_pull_times_way() -> None:
    assert constant_run(25.0, 4.0, 30.0).energy == pytest.approx(3000.0)
    recorded = Run(np.array([0.0, 10.0, 20.0]), np.array([0.0, 4.0, 0.0]), np.full(3, 30.0))
    assert recorded.energy == pytest.approx(30.0 * 40.0)
    assert constant_run(25.0, 4.0, np.array([10.0, 20.0])).energy == pytest.approx([1000.0, 2000.0])


@pytest.mark.parametrize(
    ("time", "pull", "named"),
    [
        ([0.0, 2.0, 1.0], 5.0, "step of run.time must be above zero"),
        ([0.0, 1.0, 2.0], -5.0, "run.pull must be zero or more"),
        ([0.0], 5.0, "number of moments in run.time"),
    ],
)
def test_a_run_that_cannot_be_is_refused(time: list[float], pull: float, named: str) -> None:
    at = np.array(time)
    with pytest.raises(ValueError, match=named):
        check_run(Run(at, np.full(len(at), 4.0), np.full(len(at), pull)))


def test_shares_have_to_add_up_for_every_case() -> None:
    good, bad = np.array([0.3, 0.5]), np.array([0.7, 0.6])
    check([DISC, DISC], [Face(0, good), Face(0, 1 - good)], [], [])
    with pytest.raises(ValueError, match="at element 1"):
        check([DISC, DISC], [Face(0, good), Face(0, bad)], [], [])
