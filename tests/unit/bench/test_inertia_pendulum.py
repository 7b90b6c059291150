"""Pendulums: the amplitude's part, the mass's own part, and what is too wide."""

import numpy as np
import pytest
from scipy.integrate import solve_ivp
from scipy.special import ellipk

from spoolwright.bench import inertia_pendulum
from spoolwright.bench.unreadable import Unreadable
from tests.unit.bench import spools


@pytest.mark.parametrize("amplitude", [0.01, 0.2, 0.4, inertia_pendulum.WIDEST])
def test_a_wide_swing_takes_as_long_as_the_elliptic_integral_says(amplitude: float) -> None:
    """Source: T / T0 = 2 K(sin^2(a/2)) / pi (Abramowitz and Stegun, 17.3, from memory), K by SciPy."""
    exact = 2 * float(ellipk(np.sin(amplitude / 2) ** 2)) / np.pi
    assert inertia_pendulum.widened(amplitude) == pytest.approx(exact, abs=2e-4)


def test_two_threads_swing_as_their_own_equation_of_motion() -> None:
    """The full motion of the two-thread pendulum, rise and all, by scipy.integrate: within 0.2 %."""
    half, length, mass, inertia = 0.02, 0.5, spools.MASS, spools.INERTIA

    def rise(angle: float) -> tuple[float, float]:
        root = np.sqrt(length**2 - 4 * half**2 * np.sin(angle / 2) ** 2)
        return root, half**2 * np.sin(angle) / root

    def motion(_: float, state: np.ndarray) -> list[float]:
        angle, rate = state
        _, slope = rise(angle)
        return [rate, -mass * spools.G * slope / (inertia + mass * slope**2)]

    def crossing(_: float, state: np.ndarray) -> float:
        return float(state[0])

    crossing.terminal, crossing.direction = True, -1  # type: ignore[attr-defined]
    run = solve_ivp(motion, (0, 5), [0.17, 0.0], events=crossing, rtol=1e-9, atol=1e-12)
    values = {**spools.truth("threads"), "period": 4 * float(run.t_events[0][0])}
    found = inertia_pendulum.read(inertia_pendulum.THREADS, spools.inputs("threads", values))
    assert found.inertia.value == pytest.approx(inertia, rel=2e-3)


def test_how_much_is_the_spools_own_is_said() -> None:
    found = inertia_pendulum.read(inertia_pendulum.PIN, spools.inputs("pin", spools.truth("pin")))
    assert found.notes[0].startswith("Of what swings about the pin ")


@pytest.mark.parametrize(
    ("change", "said"), [({"amplitude": 0.8}, "too wide"), ({"period": 0.15}, "faster than the spool's mass")]
)
def test_what_cannot_be_is_refused(change: dict[str, float], said: str) -> None:
    with pytest.raises(Unreadable, match=said):
        inertia_pendulum.read(inertia_pendulum.PIN, spools.inputs("pin", spools.truth("pin") | change))


def test_a_method_that_is_none_is_refused() -> None:
    with pytest.raises(ValueError, match="accepted"):
        inertia_pendulum.read("rolling", {})
