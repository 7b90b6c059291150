"""Stick-slip: the closed form, published parameters, other solvers, and a trap that is not walked into."""

from __future__ import annotations

from math import atan, exp, pi, sqrt

import numpy as np
import pytest
from scipy.integrate import solve_ivp

from spoolwright.mechanics import judder
from tests.reference.published import Published, each

BELT = "mass on a belt, Den Hartog, Mechanical Vibrations; cf. Thomsen & Fidlin 2003"
WORKED = "formula from memory; value worked out by an event-driven Runge-Kutta integration, not by our code"
LUGRE = "Canudas de Wit, Olsson, Astrom, Lischinsky 1995, table I"

CASE_A = (1.0, 100.0, 0.1, 4.0, 2.5)
CASE_B = (0.02, 500.0, 0.05, 3.0, 2.4)

CHECKS = [
    Published(
        "slip of case a, s", lambda: judder.stick_slip(*CASE_A, 5.0).slip_time, 0.43176, 1e-6, BELT, WORKED
    ),
    Published(
        "peak stretch of case a, m",
        lambda: judder.stick_slip(*CASE_A, 5.0).highest_pull / 100.0,
        0.0430278,
        1e-7,
        BELT,
        WORKED,
    ),
    Published(
        "slip of case b, s", lambda: judder.stick_slip(*CASE_B, 5.0).slip_time, 0.023128, 1e-6, BELT, WORKED
    ),
    Published(
        "peak stretch of case b, m",
        lambda: judder.stick_slip(*CASE_B, 5.0).highest_pull / 500.0,
        0.006041,
        1e-7,
        BELT,
        WORKED,
    ),
    Published(
        "steady friction at 1 mm/s, N",
        lambda: judder.sliding_friction(0.001, 1.5, 1.0, 0.001, 0.4),
        1.18434,
        1e-6,
        LUGRE,
        "parameters opened (a script headed with the table); value worked out from the formula, from memory",
    ),
]


@each(CHECKS)
def test_printed(check: Published) -> None:
    check.agrees()


@pytest.mark.parametrize("case", [CASE_A, CASE_B, (0.03, 12.0, 0.4, 55.0, 50.0)])
def test_every_part_of_the_cycle_is_the_closed_form(case: tuple[float, ...]) -> None:
    """Undamped; source: Den Hartog, Mechanical Vibrations, self-excited vibrations, from memory."""
    m, k, v, static, kinetic = case
    step, w = static - kinetic, sqrt(k / m)
    swing = sqrt(step**2 + v**2 * k * m)
    told = judder.stick_slip(*case, 5.0)
    assert told.slip_time == pytest.approx((2 / w) * (pi - atan(step * w / (k * v))), rel=1e-12)
    assert told.stick_time == pytest.approx(2 * step / (k * v), rel=1e-9)
    assert told.highest_pull == told.start_up_peak == pytest.approx(kinetic + swing, rel=1e-12)
    assert told.lowest_pull == pytest.approx(kinetic - swing, rel=1e-9)


def test_a_slow_pull_swings_between_static_and_twice_kinetic_less_static() -> None:
    """The quasi-static limit of the same closed form, from memory."""
    told = judder.stick_slip(1.0, 100.0, 1e-5, 4.0, 2.5, 1.0)
    assert (told.highest_pull, told.lowest_pull) == pytest.approx((4.0, 1.0), rel=1e-6)


def test_the_trap_of_the_first_stick_is_not_taken_for_all_of_them() -> None:
    """A page gives Fs / (k v) as the time of sticking: that is the first one only, from a slack spring."""
    m, k, v, static, kinetic = CASE_A
    told = judder.stick_slip(*CASE_A, 5.0)
    assert told.first_break == pytest.approx(static / (k * v))
    assert told.stick_time == pytest.approx(2 * (static - kinetic) / (k * v))
    assert told.stick_time < 0.8 * static / (k * v)


def test_little_damping_runs_smooth_above_the_textbook_speed() -> None:
    """v = (Fs - Fk) / sqrt(4 pi z k m) for little damping z; Derjaguin, Push & Tolstoi 1957, from memory."""
    ratio = np.array([1e-6, 1e-5, 1e-4])
    told = judder.stick_slip(1.0, 100.0, 0.1, 4.0, 2.5, 1.0, damping=2 * ratio * 10.0)
    expected = 1.5 / np.sqrt(4 * pi * ratio * 100.0)
    assert np.asarray(told.smooth_above) == pytest.approx(expected, rel=4e-2)
    assert np.asarray(told.smooth_above)[0] == pytest.approx(expected[0], rel=4e-3)


def regularised(
    case: tuple[float, ...], damping: float, end: float, blur: float
) -> tuple[np.ndarray, np.ndarray]:
    """Pull against time from a friction law without corners, by SciPy's Radau: rest is a creep."""
    m, k, v, static, kinetic = case

    def friction(speed: float) -> float:
        return float(
            np.tanh(speed / blur) * (kinetic + (static - kinetic) * exp(-((speed / (30 * blur)) ** 2)))
        )

    def rates(_: float, y: np.ndarray) -> list[float]:
        tension = k * y[0] + damping * (v - y[1])
        return [v - y[1], (tension - friction(y[1])) / m]

    found = solve_ivp(rates, (0.0, end), [0.0, 0.0], "Radau", rtol=1e-7, atol=1e-9, max_step=0.02)
    return found.t, k * found.y[0] + damping * (v - np.asarray(found.y[1]))


@pytest.mark.parametrize("damping", [0.0, 0.5])
def test_a_friction_law_without_corners_gives_the_same_trace(damping: float) -> None:
    """Source: SciPy solve_ivp (Radau) on a smooth friction law, run here."""
    case = (1.0, 100.0, 0.05, 4.0, 2.5)
    t, pull = regularised(case, damping, 1.8, 2e-5)
    told = judder.stick_slip(*case, 1.8, damping=damping, times=t)
    settled = t > 0.02  # the smooth law takes a moment to carry the line's own damping
    assert told.pull[settled] == pytest.approx(pull[settled], abs=0.08)
    assert told.start_up_peak == pytest.approx(np.max(pull), rel=2e-3)


@pytest.mark.parametrize("damping", [0.0, 0.3, 3.0])
def test_event_by_event_with_scipy_gives_the_same_events(damping: float) -> None:
    """Source: SciPy solve_ivp (DOP853 with a located event), run here."""
    m, k, v, static, kinetic = 0.03, 12.0, 0.4, 55.0, 50.0
    told = judder.stick_slip(m, k, v, static, kinetic, 5.0, damping=damping)
    start = (static - damping * v) / k

    def stops(_: float, y: np.ndarray) -> float:
        return float(y[1] - 1e-14)

    stops.terminal, stops.direction = True, -1  # type: ignore[attr-defined]
    found = solve_ivp(
        lambda _, y: [v - y[1], (k * y[0] + damping * (v - y[1]) - kinetic) / m],
        (0.0, 5.0), [start, 1e-12], "DOP853", events=stops, rtol=1e-11, atol=1e-13,
    )  # fmt: skip
    if found.status == 1:
        assert told.slip_time == pytest.approx(found.t[-1], rel=1e-6)
        assert told.stick_time == pytest.approx((start - found.y[0, -1]) / v, rel=1e-6)
    else:
        assert told.runs_smooth is True
