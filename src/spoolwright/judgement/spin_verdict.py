"""What does a spin-down say of the spool's bearings: free, dry, gritty, dragging, or that it cannot tell?"""

from __future__ import annotations

import tomllib
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np

from spoolwright import quantities
from spoolwright.bench.speed_steps import Steps
from spoolwright.bench.spin_down import SpinDown
from spoolwright.judgement import free_spin
from spoolwright.judgement.monte_carlo import Sample, draw
from spoolwright.judgement.reel_state import as_built
from spoolwright.sheets.reel_sheet import ReelSheet

VERDICTS = ("free", "dry", "gritty", "dragging", "cannot tell")
SLOW, FAST = 0.35, 0.9
"""Shares of the first speed at which measured and foretold drag are compared."""

INERTIA_UNSURE = 0.05
"""Standard uncertainty of a bare spool's inertia from its sheet, as a share: judgement prior."""

_DRAWS = 2000
_KINDS = ("at any speed", "growing with speed", "growing with its square")


@dataclass(frozen=True)
class SpinVerdict:
    """One of VERDICTS, the words that stand for it, and what it rests on, sentence by sentence."""

    name: str
    words: str
    evidence: tuple[str, ...]


@dataclass(frozen=True)
class _Beside:
    """Measured over foretold torque of a good oiled spool, slow and fast; shape (n,) each."""

    slow: Sample
    fast: Sample
    over_slow: Sample
    over_fast: Sample


def spin_verdict(
    spin: SpinDown, steps: Steps, sheet: ReelSheet | None, *, bare: bool, system: str = "metric"
) -> SpinVerdict:
    """Name the condition of a free spool from its coast-down.

    Parameters
    ----------
    spin : SpinDown
        The fitted coast-down **[SI]**.
    steps : Steps
        What was found when sudden losses of speed were looked for **[SI]**.
    sheet : ReelSheet or None
        The model **[SI]**; None: nothing is foretold, so only steps can be named.
    bare : bool
        Whether line and brakes were off **[-]**; with them on the bearings are not what holds the spool.
    system : str
        Units of the sentences **[-]**.

    Returns
    -------
    SpinVerdict
        Verdict and evidence **[-]**.

    Notes
    -----
    Steps come first: three sudden losses beyond scatter, half as much again as the gains. Else the torque at
    35 % and at 90 % of the first speed is set beside that of 2,000 drawn good oiled spools of the sheet. One
    that 5 % of them reach is free. What is too much and does not grow with speed is dry friction; what grows
    is oil, grease, a magnet or air, and much of either kind is dragging. Between the lines: cannot tell.

    Source
    ------
    Palmgren (mechanics.rolling) for oiled bearings; the lines are judgement priors, in spin_verdict.toml.

    Examples
    --------
    >>> from spoolwright.bench import spin_down
    >>> from spoolwright.bench.mending import Mended
    >>> from spoolwright.bench.speed_steps import NOT_LOOKED
    >>> read = spin_down.fit(Mended(20 - np.sqrt(400 - 4 * np.pi * np.arange(30) / 5), np.arange(30), 0, 0))
    >>> spin_verdict(read, NOT_LOOKED, None, bare=True).name
    'cannot tell'
    """
    looked = _of_steps(spin, steps, system)
    if _in_steps(steps):
        return _said("gritty", looked)
    evidence = (*_of_shares(spin), *looked)
    against = _against(spin, sheet, bare)
    if against:
        return _said("cannot tell", (against, *evidence))
    assert sheet is not None
    beside = _beside(spin, sheet)
    name, why = _named(beside)
    if name == "free" and len(steps.losses) >= _lines()["steps"]["doubtful"]:
        name, why = (
            "cannot tell",
            "Its drag is that of good bearings, but its speed fell suddenly more than once.",
        )
    return _said(name, (why, *_in_numbers(beside), *evidence, *_hints(name)))


def _said(name: str, evidence: Iterable[str]) -> SpinVerdict:
    return SpinVerdict(name, _lines()["says"][name], tuple(evidence))


@cache
def _lines() -> dict[str, Any]:
    return tomllib.loads(Path(__file__).with_suffix(".toml").read_text(encoding="utf-8"))


def _in_steps(steps: Steps) -> bool:
    line = _lines()["steps"]
    lost, gained = (sum(abs(step.change) for step in part) for part in (steps.losses, steps.gains))
    return bool(len(steps.losses) >= line["least_losses"] and lost >= line["over_gains"] * gained)


def _of_steps(spin: SpinDown, steps: Steps, system: str) -> Iterable[str]:
    if not steps.looked:
        few = spin.heard_as == "ticks"
        why = "there are too few ticks" if few else "a hum shows no single turns"
        yield f"Whether the speed falls in steps was not looked for: {why}."
    elif steps.losses:
        usual = float(np.median([abs(step.change) for step in steps.losses]))
        size = quantities.show(usual, "rotation", system)
        gains = f", against {len(steps.gains)} sudden gains" if steps.gains else ", and no sudden gain"
        yield (
            f"{len(steps.losses)} sudden losses of speed stand out of the ticks’ scatter (usually "
            f"about {size}){gains}; even scatter shows one in {1 / steps.false_alarm:.0f} spins."
        )
    else:
        least = quantities.show(steps.smallest, "rotation", system)
        yield f"No step of the speed was found; one of about {least} or more would have been seen."


def _of_shares(spin: SpinDown) -> Iterable[str]:
    for share, words in ((FAST, "near the first speed"), (SLOW, "at a third of it")):
        parts = np.array(
            [d.value * (share * spin.initial_speed.value) ** k for k, d in enumerate(spin.drags)]
        )
        of_all = parts / max(float(parts.sum()), 1e-300)
        said = ", ".join(f"{part:.0%} {kind}" for part, kind in zip(of_all, _KINDS, strict=True))
        yield f"What slows it {words}: {said}."


def _against(spin: SpinDown, sheet: ReelSheet | None, bare: bool) -> str:
    if sheet is None:
        return "There is no reel sheet, so nothing foretells what good oiled bearings would show."
    if not free_spin.spool_bearings(sheet):
        return "The sheet names no ball bearing for the spool, so nothing foretells its drag."
    if not bare:
        return "Line or brakes were on: what holds the spool is not its bearings alone."
    return ""


def _beside(spin: SpinDown, sheet: ReelSheet) -> _Beside:
    state = as_built(sheet)
    ranges = {name: held.distribution for name, held in state.ranges.items()}
    draws = draw({**free_spin.SPIN_DRAWS, **ranges}, samples=_DRAWS, seed=1)
    noise = np.random.default_rng(2).normal(0.0, 1.0, (2, _DRAWS))
    seen, foretold = [], []
    scale = 1.0
    if spin.per_inertia:
        scale = free_spin.bare_inertia(sheet)
    unsure = 1 + (INERTIA_UNSURE if spin.per_inertia else 0.0) * noise[0]
    for share in (SLOW, FAST):
        speed = share * spin.initial_speed.value
        terms = [(d.value * speed**k, d.uncertainty * speed**k) for k, d in enumerate(spin.drags)]
        # The three are fitted together: their errors cancel in the sum, so only the largest counts.
        total, spread = sum(value for value, _ in terms), max(u for _, u in terms)
        seen.append(scale * unsure * np.maximum(total + min(spread, 0.3 * total) * noise[1], 0.05 * total))
        foretold.append(free_spin.spool_torque(sheet, state, draws, speed))
    middle = [float(np.median(one)) for one in foretold]
    over = [np.asarray(one - m) for one, m in zip(seen, middle, strict=True)]
    return _Beside(*(np.asarray(s / f) for s, f in zip(seen, foretold, strict=True)), *over)


def _named(beside: _Beside) -> tuple[str, str]:
    lines = _lines()
    reached = float(np.mean(beside.slow <= 1.0)), float(np.mean(beside.fast <= 1.0))
    over = float(np.median(beside.slow)), float(np.median(beside.fast))
    if min(reached) >= lines["free"]["reached_by"]:
        return "free", "It drags no more than good oiled bearings of this sheet may."
    if max(over) < lines["dry"]["least_over"]:
        return "cannot tell", "It drags a little more than good oiled bearings would, too little to name why."
    if min(over) > lines["dry"]["most_over"]:
        return "dragging", "It drags far more than dry bearings alone explain, at any speed."
    growth = np.asarray(beside.over_fast / np.maximum(beside.over_slow, 1e-12))
    low, high = (float(v) for v in np.quantile(growth, (0.1, 0.9)))
    dry = lines["dry"]
    if high < dry["growth"] and over[0] >= dry["least_over"]:
        return "dry", "What is too much does not grow with speed, as dry friction does not."
    if low > lines["dragging"]["growth"]:
        return (
            "dragging",
            "What is too much grows with speed: oil or grease that is too thick, a magnet, air.",
        )
    return "cannot tell", "It drags too much, but dry friction and thick oil are not told apart."


def _in_numbers(beside: _Beside) -> Iterable[str]:
    for ratio, share in ((beside.slow, SLOW), (beside.fast, FAST)):
        low, middle, high = np.quantile(ratio, (0.05, 0.5, 0.95))
        yield (
            f"At {share:.0%} of the first speed it drags {middle:.2g} times as much as foretold "
            f"({low:.2g} to {high:.2g}; {np.mean(ratio <= 1.0):.0%} of good spools drag as much)."
        )


def _hints(name: str) -> Iterable[str]:
    if name == "dry":
        yield "A cast cap too tight or a rim that rubs looks the same: slack the cap and spin it again."
    if name == "dragging":
        yield "Look for thick grease, a magnet left near, a rim that rubs, the cap: spin it again after each."
    if name == "free":
        yield "This compares with this sheet only; a spin time is no measure of one reel against another."
    yield "Where the lines lie is a judgement prior."
