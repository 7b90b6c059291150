"""What does a spin-down that was fitted say of the free spool's drag? Draws that agree with it are kept."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from spoolwright.judgement import free_spin
from spoolwright.judgement.monte_carlo import Sample, effective, resample, weights_for
from spoolwright.judgement.narrowing import ENOUGH, Known
from spoolwright.judgement.taken import Taken

SCATTER = 0.12
"""How far the torque of a fitted spin-down may lie from a right draw, its own uncertainty apart: the model's
and the day's scatter, judgement prior."""

KINDS = ("spin_constant", "spin_viscous", "spin_quadratic")
DIMENSIONS = ("torque", "viscous_drag", "quadratic_drag")
SHARES = (0.35, 0.9)
"""Shares of the first speed at which fitted and drawn torque are compared."""


@dataclass(frozen=True)
class Witness:
    """What is known after the fitted spin-down was heard, and what stood against hearing it."""

    known: Known
    notes: tuple[str, ...]


def spin_witness(known: Known) -> Witness:
    """Keep the draws whose torque agrees with a spin-down's fitted drags, at two speeds.

    Parameters
    ----------
    known : Known
        The reel as it stands, its readings among it **[SI]**.

    Returns
    -------
    Witness
        Draws that agree, and notes in words; the same draws where no such reading is there or it stands
        under other conditions.

    Notes
    -----
    The drags are torques only where the inertia was known when they were fitted. They hold at the speeds of a
    spin, a tenth of a cast's: the law of the bearings carries them on, a straight line would not.

    Source
    ------
    Bayes' rule with a normal likelihood; JCGM 101:2008.

    Examples
    --------
    >>> from spoolwright.judgement.narrowing import know
    >>> from spoolwright.sheets import reel_sheet
    >>> known = know(reel_sheet.load("tarvak-52"), {}, samples=200, seed=1)
    >>> spin_witness(known).known is known
    True
    """
    fitted = [next((t for t in known.taken if t.kind == kind), None) for kind in KINDS]
    if not any(fitted) or known.start_speed is None or not free_spin.spool_bearings(known.sheet):
        return Witness(known, ())
    said = [one for one in fitted if one is not None]
    if any(one.measured.dimension not in DIMENSIONS for one in said):
        return Witness(known, (_NO_INERTIA,))
    if any(one.word("line") == "on" or one.word("brakes") == "on" for one in said):
        return Witness(known, (_OTHERWISE,))
    return Witness(_kept(known, said, known.start_speed), ())


_NO_INERTIA = (
    "The spin-down was fitted without the spool's inertia, so its drags are no torques: only its time to "
    "rest counts here."
)
_OTHERWISE = "The spin-down was taken with line or brakes on: its drags say nothing of the bare spool."


def _kept(known: Known, said: list[Taken], start: float) -> Known:
    weights: Sample = np.zeros(known.samples)
    for share in SHARES:
        speed = share * start
        parts = {one.kind: one.measured for one in said}
        terms = [(parts[kind], speed**power) for power, kind in enumerate(KINDS) if kind in parts]
        torque = sum(value.value * scale for value, scale in terms)
        # The three are fitted together: their errors cancel in the torque, so only the largest counts.
        unsure = max(value.uncertainty * scale for value, scale in terms)
        drawn = free_spin.spool_torque(known.sheet, known.state, known.draws, speed)
        weights = weights + weights_for(drawn, torque, float(np.hypot(unsure, SCATTER * torque)))
    while effective(weights) < min(ENOUGH, known.samples / 4):
        weights = weights / 1.5
    chosen = np.random.default_rng(known.seed).permutation(resample(weights, known.samples, known.seed))
    names = {*free_spin.SPIN_DRAWS, "bearing_condition", "end_drag", "train_drag"}
    draws = {name: values[chosen] if name in names else values for name, values in known.draws.items()}
    return replace(known, draws=draws)
