"""One slip of a mass on a pulled spring: from the moment it breaks away until it is still again, if ever.

Written in u = stretch - kinetic / stiffness the motion is u'' + 2 a u' + w^2 u = 0, solved in closed form;
only the moment of standing still is a root, closed in between two known turning points. Derivation in the
house: docs/derivations/judder.md.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

NEWTON_STEPS = 60
"""Steps at most towards the moment of standing still; half a dozen are usual, halving would need 55."""

ROUNDS = 40
"""Rounds of the fixed point for the speed of smooth running."""

MOST_RATIO = 0.999
"""Damping ratio beyond which every speed runs smooth: the friction would have to fall by exp(70) of it."""

GRAZE = 1e-12
"""A mass that comes so close to standing still stands still: without a step of friction it does exactly."""


@dataclass(frozen=True)
class Slip:
    """Motion after a break-away at `pull`; every field is an array of one shape, `mass` in kg and so on."""

    mass: Array
    natural: Array
    decay: Array
    speed: Array
    kinetic: Array
    pull: Array

    @property
    def _fall(self) -> Array:
        """u'' at break-away: minus the first acceleration of the mass."""
        return np.asarray(-(self.pull - self.kinetic) / self.mass)

    @property
    def _jerk(self) -> Array:
        return np.asarray(-2 * self.decay * self._fall - self.natural**2 * self.speed)

    def stretch_rate(self, time: Array) -> Array:
        """u' [m/s]: the pulled end's speed less the mass's."""
        even, odd = _responses(self.natural, self.decay, time)
        return np.asarray(self.speed * (even + self.decay * odd) + self._fall * odd)

    def tension(self, time: Array) -> Array:
        """Pull of the line [N] while the mass slips: kinetic friction and what accelerates the mass."""
        even, odd = _responses(self.natural, self.decay, time)
        bend = self._fall * (even + self.decay * odd) + self._jerk * odd
        return np.asarray(self.kinetic - self.mass * bend)

    def stretch(self, time: Array) -> Array:
        """Stretch of the spring [m]."""
        even, odd = _responses(self.natural, self.decay, time)
        start = -(self._fall + 2 * self.decay * self.speed) / self.natural**2
        u = start * (even + self.decay * odd) + self.speed * odd
        return np.asarray(u + self.kinetic / (self.mass * self.natural**2))

    def stops_after(self) -> Array:
        """Time until the mass is still again [s]; infinite where it never is."""
        fast = np.sqrt(np.maximum(self.natural**2 - self.decay**2, 0.0))
        wave = np.where(fast > 0, fast, 1.0)
        turn = _turn_angle(self._fall, (self.decay * self._fall + self._jerk) / wave)
        low, high = turn / wave, (turn + np.pi) / wave
        reaches = (fast > 0) & (self._swing(high, wave)[0] >= self.speed * (1 - GRAZE))
        return np.where(reaches, self._standstill(low, high, wave), np.inf)

    def _swing(self, time: Array, wave: Array) -> tuple[Array, Array]:
        """u' and u'' below critical damping: stretch_rate without the branches, and its slope."""
        fade = np.exp(-self.decay * time)
        even, odd = fade * np.cos(wave * time), fade * np.sin(wave * time) / wave
        full = even + self.decay * odd
        rate = np.asarray(self.speed * full + self._fall * odd)
        return rate, np.asarray(self._fall * full + self._jerk * odd)

    def _standstill(self, low: Array, high: Array, wave: Array) -> Array:
        """Newton's method on u' = speed, kept between the two turns of u' by halving."""
        time = (low + high) / 2
        for _ in range(NEWTON_STEPS):
            rate, slope = self._swing(time, wave)
            above = rate >= self.speed
            low, high = np.where(above, low, time), np.where(above, time, high)
            step = (rate - self.speed) / np.where(slope > 0, slope, 1.0)
            tried = np.where(slope > 0, time - step, low)
            new = np.where((tried > low) & (tried < high), tried, (low + high) / 2)
            if np.all(np.abs(new - time) <= 1e-15 * new):
                break
            time = new
        return time

    def peak(self) -> Array:
        """Highest pull of the line in this slip [N]."""
        rises = self._jerk < 0
        return np.where(rises, np.maximum(self.tension(self._turn()), self.pull), self.pull)

    def trough(self, until: Array) -> Array:
        """Lowest pull of the line from break-away to `until` [N]; kinetic friction where it settles there."""
        fast = np.sqrt(np.maximum(self.natural**2 - self.decay**2, 0.0))
        half = np.where(fast > 0, np.pi / np.where(fast > 0, fast, 1.0), 0.0)
        turn = np.where(self._jerk < 0, self._turn() + half, self._turn())
        lowest = self.tension(np.minimum(turn, until))
        return np.where(fast > 0, np.minimum(lowest, self.kinetic), self.kinetic)

    def _turn(self) -> Array:
        """The first moment at which the pull turns: w_d cot(w_d t) = a + w^2 u''(0) / u'''(0)."""
        jerk = np.where(self._jerk == 0, -1e-30 * self.natural**2 * self.speed, self._jerk)
        steep = self.decay + self.natural**2 * self._fall / jerk
        square = self.natural**2 - self.decay**2
        wave = np.sqrt(np.maximum(np.abs(square), 1e-24 * self.natural**2))
        under = np.arctan2(wave, steep) / wave
        over = np.arctanh(np.clip(wave / np.maximum(steep, wave * (1 + 1e-15)), 0.0, 1 - 1e-16)) / wave
        return np.where(square > 0, under, over)


def _responses(natural: Array, decay: Array, time: Array) -> tuple[Array, Array]:
    """exp(-a t) cos(w_d t) and exp(-a t) sin(w_d t) / w_d, and what they become beyond critical damping."""
    square = natural**2 - decay**2
    wave = np.sqrt(np.abs(square))
    fade = np.exp(-decay * time)
    slow = np.exp(-(natural**2) / (decay + wave) * time)
    half = np.where(wave > 0, -np.expm1(-2 * wave * time) / np.where(wave > 0, 2 * wave, 1.0), time)
    even = np.where(square >= 0, fade * np.cos(wave * time), slow * (1 + np.exp(-2 * wave * time)) / 2)
    odd = np.where(square >= 0, fade * time * np.sinc(wave * time / np.pi), slow * half)
    return even, odd


def _turn_angle(cosine: Array, sine: Array) -> Array:
    """Smallest angle above zero at which cosine * cos + sine * sin is zero."""
    angle = np.mod(-np.arctan2(cosine, sine), np.pi)
    return np.where(angle == 0, np.pi, angle)


def smooth_step(damping_ratio: Array) -> Array:
    """The largest step of friction that still runs smooth, over speed times sqrt(stiffness mass).

    Parameters
    ----------
    damping_ratio : array
        Damping over critical damping [-], zero or more.

    Returns
    -------
    array
        (static - kinetic) / (speed sqrt(k m)) [-], shape of the input: 0 undamped, infinite from critical
        damping on.

    Notes
    -----
    A slip that begins at static friction comes just to rest at its second turn: with w_d = sqrt(1 - z^2),
    A^2 - 2 z A + 1 = exp(2 z (q + pi) / w_d) and tan q = A w_d / (z A - 1), solved for A by a fixed point.
    For little damping A is sqrt(4 pi z).

    Source
    ------
    Mass on a belt; Derjaguin, Push & Tolstoi 1957 and later texts on stick-slip (from memory); derivation in
    the house.

    Examples
    --------
    >>> step = smooth_step(np.array([0.0, 1e-4, 1.0]))
    >>> round(float(step[1] / np.sqrt(4 * np.pi * 1e-4)), 2), float(step[2])
    (1.0, inf)
    """
    given = np.asarray(damping_ratio, dtype=np.float64)
    ratio = np.clip(given, 0.0, MOST_RATIO)
    wave = np.sqrt(1 - ratio**2)
    step = np.sqrt(4 * np.pi * ratio)
    for _ in range(ROUNDS):
        angle = np.arctan2(step * wave, ratio * step - 1)
        step = ratio + np.sqrt(np.expm1(2 * ratio * (angle + np.pi) / wave) + ratio**2)
    return np.where(given > MOST_RATIO, np.inf, step)
