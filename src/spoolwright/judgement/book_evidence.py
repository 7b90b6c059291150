"""What does one proof say of the coefficients? A reading on a reel's sheet, or the minutes of works."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from math import exp, log

import numpy as np

from spoolwright.judgement import free_spin
from spoolwright.judgement.book_fit import Seen
from spoolwright.judgement.book_kinds import (
    MINUTES_SCATTER,
    Kind,
    friction_kinds,
    minutes_kind,
    start_kind,
)
from spoolwright.judgement.book_lessons import bearing_kind_of
from spoolwright.judgement.changed_sheet import changed
from spoolwright.judgement.expected_readings import DAY_TO_DAY, expected
from spoolwright.judgement.job_price import OPENS
from spoolwright.judgement.monte_carlo import Sample, draw
from spoolwright.judgement.narrowing import inputs
from spoolwright.judgement.reel_state import ReelState, after, as_found
from spoolwright.judgement.taken import Taken
from spoolwright.judgement.works import all_works, chosen
from spoolwright.mechanics import clutch
from spoolwright.sheets.reel_sheet import ReelSheet

PULLS = ("pull_full", "pull_run", "drag_torque")
SPINS = ("spin_time", "stop_time")
DRAWS, SPIN_DRAWN = 400, 100
REACH = np.linspace(-2.5, 2.5, 26)
"""Logarithms of the drag factors that are tried against a spin."""
LEAST_PART = 0.15
"""Least share of the slowing that the bearings must have, or a spin says nothing of them: judgement prior."""


@dataclass(frozen=True)
class Source:
    """Where a proof stands and what is said of it: entry of a diary, instrument, words."""

    entry: int = 0
    instrument: str = ""
    told: str = ""
    found: str = ""


NOWHERE = Source()


@dataclass(frozen=True)
class Learnt:
    """What one proof teaches: the coefficients that it speaks of and how; `why_not` where it cannot."""

    kinds: tuple[Kind, ...] = ()
    seen: Seen | None = None
    why_not: str = ""
    entry: int = 0


def of_reading(
    sheet: ReelSheet,
    works: tuple[str, ...],
    one: Taken,
    start_speed: float | None = None,
    source: Source = NOWHERE,
) -> Learnt:
    """What a reading of a reel teaches, after some works or as it was found.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    works : tuple of str
        Ids of the works done before it **[-]**; none: as the reel was found.
    one : Taken
        The reading with its conditions **[SI]**.
    start_speed : float or None
        Measured speed at the start of a spin **[rad/s]**; None: the house's flick.
    source : Source
        Where it stands **[-]**.

    Returns
    -------
    Learnt
        Logarithm of found over expected **[-]**, or in words why it teaches nothing.

    Notes
    -----
    The coefficient's own draw is held at its middle, everything else is drawn: the mean of the logarithms is
    what was expected, their variance, the reading's and the day's are how far it may lie from it. Friction
    and clamp stand in a pull as a product, and so does the state of the discs: the factor is the product's.

    Source
    ------
    mechanics through expected_readings; JCGM 101:2008 for the spread.

    Examples
    --------
    >>> from spoolwright.bench.uncertainty import Measured
    >>> from spoolwright.sheets import reel_sheet
    >>> pull = Taken("pull_full", Measured(60.0, 0.6, "force"), {"radius": 0.02})
    >>> taught = of_reading(reel_sheet.load("tarvak-58r"), ("carbon-drag-set",), pull)
    >>> [kind.key for kind in taught.kinds]
    ['friction-woven-carbon-greased-new-discs']
    """
    if not one.measured.value > 0:
        return Learnt(why_not="A value of nothing at all has no logarithm.")
    if one.kind in PULLS:
        return _of_pull(*_ready(sheet, works), one, source)
    if one.kind == "start_up_ratio":
        return _of_start(_ready(sheet, works)[1], one, source)
    if one.kind in SPINS:
        return _of_spin(*_ready(sheet, works), one, start_speed, source)
    return Learnt(why_not="No coefficient of the book stands behind this reading.")


@lru_cache(maxsize=256)
def _ready(sheet: ReelSheet, works: tuple[str, ...]) -> tuple[ReelSheet, ReelState, Mapping[str, Sample]]:
    done = chosen(works, sheet.reel.kind)
    state, there = after(as_found(sheet), sheet, done), changed(sheet, done)
    return there, state, draw(inputs(state), samples=DRAWS, seed=1)


def _own(one: Taken) -> float:
    """Variance of the reading's own logarithm, the day's scatter in it."""
    return (one.measured.uncertainty / one.measured.value) ** 2 + DAY_TO_DAY[one.kind] ** 2


def _of_pull(
    sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], one: Taken, source: Source
) -> Learnt:
    kinds = friction_kinds(state)
    held = {name: np.full(DRAWS, kind.middle) for name, kind in kinds.items()}
    said = expected(sheet, state, {**draws, **held}, one)
    if not isinstance(said, np.ndarray):
        return Learnt(why_not=said or "This reel has no drag that slips.")
    if not np.all(said > 0):
        return Learnt(why_not="At this setting the sheet expects no pull at all.")
    logs = np.log(said)
    shares = _shares(state, kinds)
    variance = float(np.var(logs)) + _own(one)
    return _learnt(kinds.values(), shares, log(one.measured.value) - float(np.mean(logs)), variance, source)


def _shares(state: ReelState, kinds: Mapping[str, Kind]) -> tuple[tuple[str, float], ...]:
    """Which part of the torque each kind of face carries."""
    torque = dict.fromkeys(kinds, 0.0)
    for pair in state.pairs:
        radius = float(clutch.effective_radius(pair.outer_radius, pair.inner_radius))
        name = f"{pair.face_material}, {pair.lubrication}"
        torque[name] += kinds[name].middle * radius
    whole = sum(torque.values())
    return tuple((kinds[name].key, part / whole) for name, part in torque.items())


def _of_start(state: ReelState, one: Taken, source: Source) -> Learnt:
    kind = start_kind(state)
    if kind is None:
        return Learnt(why_not="This reel has no drag that slips.")
    variance = kind.within**2 + _own(one)
    return _learnt([kind], ((kind.key, 1.0),), log(one.measured.value / kind.middle), variance, source)


def _of_spin(
    sheet: ReelSheet,
    state: ReelState,
    draws: Mapping[str, Sample],
    one: Taken,
    start_speed: float | None,
    source: Source,
) -> Learnt:
    kind = bearing_kind_of(sheet, state)
    if kind is None:
        return Learnt(why_not="Nothing was done to the spool's bearings, or the sheet has none.")
    if one.kind == "stop_time" and start_speed is None:
        return Learnt(why_not="The speed at the start was not measured.")
    few = {name: sample[:SPIN_DRAWN] for name, sample in draws.items()}
    on = one.word("line") == "on"
    logs = np.array([_spins(sheet, state, few, kind, at, on, start_speed) for at in REACH])
    middles = logs.mean(axis=1)
    found = log(one.measured.value)
    if not middles[-1] < found < middles[0]:
        return Learnt(why_not="No drag of the bearings explains this time: look for something else.")
    at = float(np.interp(-found, -middles, REACH))
    slope = float(np.interp(at, REACH, np.gradient(middles, REACH)))
    if -slope < LEAST_PART:
        return Learnt(why_not="The bearings are too small a part of what slows this spool.")
    scatter = float(np.interp(at, REACH, logs.var(axis=1)))
    variance = (scatter + _own(one)) / slope**2
    return _learnt([kind], ((kind.key, 1.0),), at, variance, source, 1 / slope)


def _spins(
    sheet: ReelSheet,
    state: ReelState,
    draws: Mapping[str, Sample],
    kind: Kind,
    at: float,
    on: bool,
    start_speed: float | None,
) -> Sample:
    held = {**draws, kind.draws: np.full(SPIN_DRAWN, kind.middle * exp(at))}
    times = free_spin.spin_time(sheet, state, held, line_on=on, initial_speed=start_speed)
    return np.asarray(np.log(times))


def of_minutes(reel: str, works: Sequence[str], minutes: float, source: Source = NOWHERE) -> Learnt:
    """What the minutes of one entry of work teach.

    Parameters
    ----------
    reel : str
        Kind of reel **[-]**.
    works : sequence of str
        Ids of the works that were done in them **[-]**.
    minutes : float
        How long they took together **[min]**.
    source : Source
        Where it stands **[-]**.

    Returns
    -------
    Learnt
        Logarithm of taken over listed **[-]**, shared among the works by their listed minutes.

    Notes
    -----
    Only the sum is known, so each work learns in proportion to its part of it; many different jobs tell them
    apart.

    Source
    ------
    works.toml: judgement priors.

    Examples
    --------
    >>> of_minutes("round multiplier", ["new-pawl"], 30.0).kinds[0].unit
    'min'
    """
    known = all_works()
    strange = [name for name in works if name not in known or reel not in known[name].kinds]
    if strange or not works:
        return Learnt(why_not=f"Not on the list of works for a {reel}: {', '.join(strange) or 'nothing'}.")
    opened = OPENS in works
    listed = {name: float(known[name].minutes(reel, reel_is_open=opened)) for name in dict.fromkeys(works)}
    whole = sum(listed.values())
    if not whole or not minutes > 0:
        return Learnt(why_not="The list gives these works no minutes of their own.")
    kinds = [minutes_kind(known[name], reel, part) for name, part in listed.items() if part]
    shares = tuple((kind.key, kind.middle / whole) for kind in kinds)
    return _learnt(kinds, shares, log(minutes / whole), MINUTES_SCATTER**2, source)


def _learnt(
    kinds: Iterable[Kind],
    shares: tuple[tuple[str, float], ...],
    found: float,
    variance: float,
    source: Source,
    gain: float = 1.0,
) -> Learnt:
    seen = Seen(shares, found, variance, gain, source.instrument, source.entry, source.told, source.found)
    return Learnt(tuple(kinds), seen)
