"""Riccati's equation dw/dt = -(a + b w + e w^2), solved so that any of a, b, e may be small or zero.

The law is the same whether b^2 - 4 a e is above, below or at zero; the text-book formulas for the three cases
lose their digits where one case turns into another. The forms used here do not; see
docs/derivations/coastdown.md.
"""

from __future__ import annotations

from typing import Any, NamedTuple

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
SERIES_REACH = 3.0
SERIES_TERMS = 28


class _Knock(NamedTuple):
    """G, the answer of u'' + b u' + a e u = 0 to a knock: its slope and itself, both over `decay`."""

    slope: Array
    reach: Array
    decay: Array
    p: Array
    d: Array


class Slowing(NamedTuple):
    """Something that slows down from `start` with dw/dt = -(a + b w + e w^2); all zero or more, unchecked."""

    start: Array
    a: Array
    b: Array
    e: Array

    def stop_time(self) -> Array:
        """Time to rest; infinite where a is zero."""
        return self.time_down_to(np.zeros(()))

    def time_down_to(self, slow: Array) -> Array:
        """Time from `start` down to `slow`: the arctangent or the logarithm, by the sign of b^2 - 4 a e."""
        fast, a, b, e = self
        lost = fast - slow
        square = b * b - 4 * a * e
        swings = square < 0
        root = np.sqrt(np.abs(square))
        mean = 2 * a + b * (fast + slow) + 2 * e * fast * slow
        less_root = _ratio(4 * a * e, b + root, 0.0)
        tilted = 2 * a + less_root * fast + (b + root) * slow + 2 * e * fast * slow
        step = _ratio(2 * lost, np.where(swings, mean, tilted), np.inf)
        x = root * np.where(np.isfinite(step), step, 0.0)
        bent = np.where(swings, _ratio(np.arctan(x / 2), x / 2, 1.0), _ratio(np.log1p(x), x, 1.0))
        return np.where(lost > 0, step * bent, 0.0)

    def speed(self, t: Array) -> Array:
        """Speed at a time that is not past the stop."""
        g = self._knock(t)
        slower = (self.start * g.slope - self.a * g.reach) / (
            g.slope + (self.b + self.e * self.start) * g.reach
        )
        return np.clip(slower, 0.0, self.start)

    def angle(self, t: Array) -> Array:
        """Way gone at a time that is not past the stop."""
        g = self._knock(t)
        y = self.start * g.reach * g.decay - self.a * t * t * _second_integral(t, g)
        return y * _ratio(np.log1p(self.e * y), self.e * y, 1.0)

    def whole_angle(self) -> Array:
        """Way to rest; where a is zero, the limit that b sets, and none where b is zero too."""
        stop = self.stop_time()
        ended = self.angle(np.where(np.isfinite(stop), stop, 0.0))
        fading = _ratio(self.start, self.b, np.inf)
        grown = self.e * np.where(np.isfinite(fading), fading, 0.0)
        return np.where(np.isfinite(stop), ended, fading * _ratio(np.log1p(grown), grown, 1.0))

    def _knock(self, t: Array) -> _Knock:
        p, d = self.b * t, self.a * self.e * t * t
        square = p * p - 4 * d
        swings = square < 0
        root = np.sqrt(np.abs(square))
        less = _ratio(2 * d, p + root, 0.0)
        bulk = np.where(swings, np.sinc(root / (2 * np.pi)), _fading(root))
        slope = np.where(swings, np.cos(root / 2) - p / 2 * bulk, np.exp(-root) - less * bulk)
        return _Knock(slope, bulk * t, np.exp(-np.where(swings, p / 2, less)), p, d)


def _second_integral(t: Array, g: _Knock) -> Array:
    """Integral of G from 0 to t over t^2, by whichever of three equal forms keeps its digits."""
    near = g.p + 2 * np.sqrt(g.d) < SERIES_REACH
    answer = _series(np.where(near, g.p, 0.0), np.where(near, g.d, 0.0))
    even = 8 * g.d >= g.p**2
    closed = 1 - g.decay * (g.slope + g.p * _ratio(g.reach, t, 1.0))
    root = np.sqrt(np.maximum(g.p**2 - 4 * g.d, 0.0))
    less = _ratio(2 * g.d, g.p + root, 0.0)
    apart = _ratio(_fading(less) - _fading(less + root), root, 0.5)
    return np.where(near, answer, np.where(even, _ratio(closed, g.d, 0.5), apart))


def _series(p: Array, d: Array) -> Array:
    """Sum of (-1)^n h_n / (n + 2)!, where h_n = p h_(n-1) - d h_(n-2) and h_0 = 1."""
    total: Array = np.zeros(np.broadcast(p, d).shape)
    before, term, scale = np.zeros_like(total), np.ones_like(total), 0.5
    for n in range(SERIES_TERMS):
        total = total + scale * term
        before, term = term, p * term - d * before
        scale = -scale / (n + 3)
    return total


def _fading(x: Array) -> Array:
    """(1 - e^-x) / x, which is 1 at zero."""
    return _ratio(-np.expm1(-x), x, 1.0)


def _ratio(above: Any, below: Any, at_zero: float) -> Array:
    """above / below, with a stated value where below is zero."""
    zero = np.equal(below, 0)
    with np.errstate(over="ignore"):  # a drag of 1e-320 stands for none, and its time for infinity
        answer: Array = np.where(zero, at_zero, above / np.where(zero, 1.0, below))
    return answer
