"""What a fitted spin-down says of a free spool's drag."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement import free_spin
from spoolwright.judgement.narrowing import Known, know
from spoolwright.judgement.spin_witness import spin_witness
from spoolwright.judgement.taken import Taken
from spoolwright.mechanics import coastdown
from spoolwright.sheets import reel_sheet

START = 320.0
SHEET = reel_sheet.load("tarvak-58r")
KIND = {"spin_constant": "torque", "spin_viscous": "viscous_drag", "spin_quadratic": "quadratic_drag"}


def one_reel(number: int) -> tuple[Known, list[float]]:
    """A reel among those that may come in, and the three drags that a spin-down would fit to it."""
    found = know(SHEET, {"mass": Measured(0.286, 0.001, "mass")}, samples=400, seed=9)
    speed = np.linspace(0.2, 1.0, 30) * START
    column = {name: values[number : number + 1] for name, values in found.draws.items()}
    torque = free_spin.spool_torque(SHEET, found.state, column, speed)
    return found, list(np.polynomial.polynomial.polyfit(speed, torque, 2))


def read(drags: list[float], *, per_inertia: bool = False, line: str = "off") -> Known:
    conditions = {"line": line, "brakes": "off"}
    start = Taken("spin_initial_speed", Measured(START, 0.5, "rotation"), conditions)
    readings = {"spin_initial_speed": start}
    for (kind, dimension), value in zip(KIND.items(), drags, strict=True):
        named = "deceleration" if per_inertia else dimension
        readings[kind] = Taken(kind, Measured(value, 0.03 * abs(value), named), conditions)
    stop = coastdown.stop_time(START, free_spin.bare_inertia(SHEET), *(max(value, 0.0) for value in drags))
    readings["stop_time"] = Taken("stop_time", Measured(stop, 0.05 * stop, "time"), conditions)
    return know(SHEET, readings, samples=400, seed=2)


def torque(known: Known, speed: float) -> float:
    return float(np.median(free_spin.spool_torque(known.sheet, known.state, known.draws, speed)))


@pytest.mark.parametrize("number", [3, 17, 40])
def test_the_draws_come_to_what_was_fitted(number: int) -> None:
    _, drags = one_reel(number)
    heard = spin_witness(read(drags)).known
    for share in (0.4, 0.9):
        speed = share * START
        wanted = drags[0] + drags[1] * speed + drags[2] * speed**2
        assert torque(heard, speed) == pytest.approx(wanted, rel=0.15)


def test_only_the_spool_is_narrowed() -> None:
    known = read(one_reel(3)[1])
    assert spin_witness(known).known.draws["hand"] is known.draws["hand"]


def test_drags_per_inertia_are_no_torques_and_it_is_said() -> None:
    known = read(one_reel(3)[1], per_inertia=True)
    heard = spin_witness(known)
    assert heard.known is known
    assert "without the spool's inertia" in heard.notes[0]


def test_a_spin_with_the_line_on_says_nothing_of_the_bare_spool() -> None:
    known = read(one_reel(3)[1], line="on")
    heard = spin_witness(known)
    assert heard.known is known
    assert "line or brakes on" in heard.notes[0]


def test_without_a_fitted_spin_nothing_changes() -> None:
    known = know(SHEET, {}, samples=200, seed=1)
    assert spin_witness(known).known is known
    assert spin_witness(known).notes == ()
