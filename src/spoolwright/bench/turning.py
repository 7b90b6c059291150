"""How far a coasting spool has turned at any moment of the recording, from its ticks."""

from __future__ import annotations

from dataclasses import dataclass
from math import pi

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.spin_down import SpinDown

Array = NDArray[np.float64]

SLOWEST_SHARE = 0.2
"""Share of the first speed below which a room drowns the bearing: judgement prior."""

_SMOOTHED = 5


@dataclass(frozen=True, eq=False)
class Turning:
    """Turns [-] at moments of the recording's clock [s], both rising."""

    time: Array
    turns: Array

    @property
    def seconds(self) -> float:
        return float(self.time[-1] - self.time[0])

    @property
    def whole(self) -> float:
        """Turns from the first moment to the last."""
        return float(self.turns[-1] - self.turns[0])

    @property
    def fastest(self) -> float:
        """Highest rate of turning [Hz]."""
        return float((np.diff(self.turns) / np.diff(self.time)).max())

    def at(self, time: Array) -> Array:
        """Turns at moments [s] between the first and the last, in one straight line between two ticks."""
        return np.asarray(np.interp(time, self.time, self.turns), dtype=np.float64)


def of_coast(spin: SpinDown) -> Turning:
    """Turned angle over time from a coast-down that was read.

    Parameters
    ----------
    spin : SpinDown
        The coast-down: speeds between its ticks [rad/s] and what was fitted to them.

    Returns
    -------
    Turning
        Turns [-] at each used tick [s] from the start of the coast until a fifth of its first speed is left.

    Notes
    -----
    The fitted law's angle and what the ticks differ from it, smoothed over five ticks: a tick that is heard a
    little late does not shake the angle, while a law that fits badly does not bend it.

    Source
    ------
    Fyfe and Munck, Analysis of computed order tracking, Mechanical Systems and Signal Processing 11 (1997),
    for the angle from one mark a turn (from memory); smoothing and the fifth are judgement priors.

    Examples
    --------
    >>> from spoolwright.bench import mending, spin_down
    >>> k = np.arange(60)
    >>> ticks = 20 - np.sqrt(400 - 4 * np.pi * k / 5)
    >>> turned = of_coast(spin_down.fit(mending.Mended(ticks, k, 0, 0)))
    >>> bool(abs(turned.at(ticks[20:21])[0] - turned.at(ticks[10:11])[0] - 10) < 0.02)
    True
    """
    span = 2 * pi * spin.turns / _marks(spin)
    steps = span / spin.speed
    ticks = np.append(spin.time - steps / 2, spin.time[-1] + steps[-1] / 2)
    measured = np.concatenate([[0.0], np.cumsum(spin.speed * steps)])
    fitted = np.concatenate([[0.0], np.cumsum(spin.fitted * steps)])
    angle = fitted + _smooth(measured - fitted)
    fast = np.append(spin.fitted >= SLOWEST_SHARE * spin.initial_speed.value, False)
    last = max(2, int(np.count_nonzero(fast)) + 1)
    kept = np.concatenate([[True], np.diff(angle) > 0])[:last] & (np.diff(ticks, prepend=-1.0)[:last] > 0)
    return Turning(spin.start + ticks[:last][kept], angle[:last][kept] / (2 * pi))


def _marks(spin: SpinDown) -> float:
    """Ticks in a turn, from the time between the middles of neighbouring steps and the speed there."""
    if len(spin.time) < 2:
        return 1.0
    turned = 2 * pi * (spin.turns[1:] + spin.turns[:-1]) / 2
    mean = 2 / (1 / spin.speed[1:] + 1 / spin.speed[:-1])
    return max(1.0, float(round(np.median(turned / (mean * np.diff(spin.time))))))


def _smooth(residual: Array) -> Array:
    if len(residual) < _SMOOTHED:
        return residual
    half = _SMOOTHED // 2
    padded = np.pad(residual, half, mode="edge")
    return np.asarray(np.convolve(padded, np.ones(_SMOOTHED) / _SMOOTHED, mode="valid"), dtype=np.float64)
