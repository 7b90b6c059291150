"""Spins made from known physics: hand before, thumb after, steps, unequal teeth, a hum, noises of a shop."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from spoolwright.mechanics import coastdown

Samples = NDArray[np.float64]
TURN = 2 * np.pi


def coast(speed: float, *drags: float, marks: int = 1, most: int = 4000) -> Samples:
    """Times at which each mark passes until the spool rests [s]."""
    whole = float(coastdown.angle(1e7, speed, 1.0, *drags)) * marks / TURN
    turns = np.arange(min(int(whole * 0.999), most) + 1)
    return np.asarray(coastdown.time_at_angle(TURN * turns / marks, speed, 1.0, *drags))


def drags_for(speed: float, stop: float, shares: tuple[float, float, float]) -> tuple[float, float, float]:
    """Drags per inertia with these shares at the first speed, scaled so that the spool rests after `stop`."""
    a, b, c = (share * speed ** (1 - k) for k, share in enumerate(shares))
    now = float(coastdown.stop_time(speed, 1.0, a, b, c))
    return a * now / stop, b * now / stop, c * now / stop


def pushed(speed: float, turns: int = 12) -> Samples:
    """Ticks of a hand that brings the spool to a speed within some turns, the last tick at zero [s]."""
    angle = TURN * np.arange(turns + 1)
    gain = speed**2 / (2 * angle[-1])
    at = np.sqrt(2 * angle / gain)
    return at - at[-1]


def braked(speed: float, seconds: float) -> Samples:
    """Ticks after a thumb that stops a spool within some seconds; the first tick at zero is not in it [s]."""
    slowing = speed / seconds
    turns = int(speed * seconds / 2 / TURN)
    angle = TURN * np.arange(1, turns + 1)
    return (speed - np.sqrt(np.maximum(speed**2 - 2 * slowing * angle, 0))) / slowing


def faulty(times: Samples, rng: np.random.Generator, missed: float, doubled: float) -> Samples:
    """The same ticks, some not heard, some heard twice."""
    step = np.append(np.diff(times), times[-1] - times[-2])
    kept = rng.random(len(times)) >= missed
    again = kept & (rng.random(len(times)) < doubled)
    extra = times[again] + rng.uniform(0.05, 0.3, int(again.sum())) * step[again]
    return np.sort(np.concatenate((times[kept], extra)))


def jittered(times: Samples, rng: np.random.Generator, turn: float = 0.002, clock: float = 5e-5) -> Samples:
    step = np.append(np.diff(times), times[-1] - times[-2])
    return np.sort(
        times
        + rng.normal(0, turn, len(times)) * np.minimum(step, 20 * step[0])
        + rng.normal(0, clock, len(times))
    )


def coast_under(
    slowing, speed: float, marks: int = 1, losses: tuple[tuple[float, float], ...] = ()
) -> Samples:
    """Times of the marks of a spool that slows down by slowing(speed) [rad/s^2], until 3 % of its speed.

    `losses` are (share of the first speed at which, share of it that is lost at once).
    """
    w = np.linspace(speed, 0.03 * speed, 6000)
    for at, lost in losses:
        w = w[(w >= at * speed) | (w <= (at - lost) * speed)]
    step = -np.diff(w)
    sudden = step > 1.5 * float(np.median(step))
    middle = 0.5 * (w[1:] + w[:-1])
    dt = np.where(sudden, 1e-9, step / slowing(middle))
    time, angle = (np.concatenate(([0.0], np.cumsum(part))) for part in (dt, middle * dt))
    turns = np.arange(int(angle[-1] * marks / TURN) + 1)
    return np.interp(TURN * turns / marks, angle, time)
