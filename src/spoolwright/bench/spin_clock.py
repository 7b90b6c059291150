"""The clock that timed a coast-down: what it may be off goes into each of its values."""

from __future__ import annotations

from dataclasses import replace
from math import hypot

from spoolwright.bench.budget import RECTANGLE, Contribution
from spoolwright.bench.spin_down import SpinDown

POWERS = {"initial_speed": 1, "constant": 2, "viscous": 1, "quadratic": 0, "stop_time": 1}
"""How often time stands in the dimension of each value, up or down, the inertia being known."""

WORDS = "clock of what recorded it, as stated"


def with_clock(spin: SpinDown, share: float) -> SpinDown:
    """A coast-down with what its clock leaves open.

    Parameters
    ----------
    spin : SpinDown
        As it was fitted, by a clock taken as true [s, rad].
    share : float
        Largest error of the clock as a share of any time [-], zero or more.

    Returns
    -------
    SpinDown
        The same values with wider uncertainties and a row for each [rad/s, N m or rad/s^2 and so on, s].

    Raises
    ------
    ValueError
        A share below zero.

    Notes
    -----
    A clock that runs fast by a share e makes every time longer by that share, so a value in s^n changes by
    n e: u = |n value| e / sqrt 3. The quadratic drag, 1/rad times an inertia, holds no time.

    Source
    ------
    JCGM 100:2008, 4.3.7 (rectangular limits), 5.1.2 and 5.1.3 (sensitivities).

    Examples
    --------
    >>> import numpy as np
    >>> from spoolwright.bench import spin_reading
    >>> spin = spin_reading.read(20 - np.sqrt(400 - 4 * np.pi * np.arange(0, 150) / 5))
    >>> round(with_clock(spin, 0.01).stop_time.uncertainty, 3)
    0.115
    """
    if not share >= 0:
        raise ValueError(f"share must be zero or more; came {share}")
    if share == 0:
        return spin
    found = {key: getattr(spin, key) for key in POWERS}
    spread = {key: abs(power * found[key].value) * share * RECTANGLE for key, power in POWERS.items()}
    wider = {key: replace(one, uncertainty=hypot(one.uncertainty, spread[key])) for key, one in found.items()}
    rows = [Contribution(key, WORDS, "B", open_) for key, open_ in spread.items() if open_]
    if all(row.result != "stop_time" for row in spin.budget):
        rows.append(Contribution("stop_time", "scatter of the ticks", "A", spin.stop_time.uncertainty))
    return replace(spin, budget=(*spin.budget, *rows), **wider)
