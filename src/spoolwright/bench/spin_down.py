"""Counted turns to what a coast-down says: first speed, three drags, time to rest, how well it fits."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import coast_fit, coast_values, free_part, tooth_pattern
from spoolwright.bench.budget import Contribution
from spoolwright.bench.coast_fit import TURN, CoastFit
from spoolwright.bench.free_part import CutOff
from spoolwright.bench.mending import FEWEST, Mended
from spoolwright.bench.recount import recount
from spoolwright.bench.silences import dense, settle
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable

WORST_FIT = 0.05
"""Residual speed over first speed above which the ticks are no coast-down."""

LEAST_HEARD, LEAST_OF_FEW = 0.25, 0.5
"""Share of good ticks among good, stray and missing ones below which a count is not believed; the second
where there are few, which chance finds even more easily."""

LEAST_LOSS = 0.005
"""Share of the first speed that must be lost for a drag to be seen at all."""

_COUNTS = 3
_MANY = 40
_CHANCE = 6.0
_NOTHING = 1e-12
_MEAN_OF_HALF = float(np.sqrt(2 / np.pi))
_LEAST_SHARE = 1e-6

Array = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class SpinDown:
    """What one coast-down says; each value with its standard uncertainty.

    With an inertia the drags are torques [N m, N m s, N m s^2]; without one they are per unit inertia
    [rad/s^2, 1/s, 1/rad]. `initial_speed` is the speed at `start` (s on the recording's clock), `stop_time`
    the time from there to rest. `relative_rms` is the root mean square of measured less fitted mean speed
    between used ticks, over the initial speed. `time` [s from start], `speed` and `fitted` [rad/s] are the
    curve, with the `turns` [-] that each of its points spans (more than one where ticks were not heard);
    `residuals` [rad] is the turned angle less the fitted angle at each used tick, at the times `used` [s from
    start]. `cut_off` holds what the hand did before and after.
    """

    initial_speed: Measured
    constant: Measured
    viscous: Measured
    quadratic: Measured
    stop_time: Measured
    ticks_used: int
    ticks_mended: int
    relative_rms: float
    start: float
    time: Array
    speed: Array
    fitted: Array
    turns: NDArray[np.int64]
    residuals: Array
    per_inertia: bool
    budget: tuple[Contribution, ...]
    notes: tuple[str, ...]
    used: Array = field(default_factory=lambda: np.empty(0))
    cut_off: CutOff = CutOff()
    heard_as: str = "ticks"

    @property
    def drags(self) -> tuple[Measured, Measured, Measured]:
        """Constant, viscous and quadratic drag, as they stand."""
        return self.constant, self.viscous, self.quadratic


def fit(mended: Mended, inertia: Measured | None = None, *, ticks_per_turn: int = 1) -> SpinDown:
    """Read a coast-down from counted turns.

    Parameters
    ----------
    mended : Mended
        Tick times [s] with turn numbers [-], 8 or more.
    inertia : Measured or None
        Moment of inertia of all that turns [kg m^2], above zero; None: drags per unit inertia.
    ticks_per_turn : int
        Marks on the spool [-], 1 or more.

    Returns
    -------
    SpinDown
        Values with standard uncertainties [rad/s, N m or rad/s^2 and so on, s].

    Raises
    ------
    Unreadable
        Speeds that no spool has, too few ticks after the fastest moment, ticks that no drag explains,
        turns of which most were not heard, a spool that does not slow down.
    ValueError
        An inertia or a number of marks that is not above zero.

    Notes
    -----
    inertia dw/dt = -(constant + viscous w + quadratic w^2), fitted to 2 pi k at the k-th turn. Ticks before
    the fastest moment belong to the hand and are left out, and so are those after something touched the
    spool. Several marks on one spool need not be evenly spaced: their places are found with the law. Where
    the best fit has no constant drag the spool would never stop; then a fit with one of the other two left
    out is taken if it is as good, else one with the constant drag that chance may have hidden, and the notes
    say so.
    Time to rest: uncertainty from the covariance, first order.

    Source
    ------
    JCGM 100:2008, 5.2.2 (correlated inputs) and H.3; `mechanics.coastdown` for the law.

    Examples
    --------
    >>> turns = np.arange(0, 30)
    >>> read = fit(Mended(20 - np.sqrt(400 - 4 * np.pi * turns / 5), turns, 0, 0))
    >>> round(read.initial_speed.value, 4), round(read.stop_time.value, 3)
    (100.0, 20.0)
    """
    if inertia is not None and not inertia.value > 0:
        raise ValueError(f"inertia must be above zero; came {inertia.value}")
    if ticks_per_turn < 1:
        raise ValueError(f"ticks_per_turn must be 1 or more; came {ticks_per_turn}")
    part = free_part.find(mended, ticks_per_turn)
    first, touch, free = part.first, part.touched, part.counted
    start = float(mended.times[first])
    time, turns, full = _count_again(free, first)
    places, full = tooth_pattern.places(time, turns, full, ticks_per_turn)
    found, notes = _best(time, places, full)
    found = _per_mark(found, ticks_per_turn)
    angle = TURN * places[found.used] / ticks_per_turn
    middle, seen, fitted = _curve(time[found.used], angle, found.values)
    rms = float(np.sqrt(np.mean((seen - fitted) ** 2))) / float(found.values[1])
    if rms > WORST_FIT:
        reason = f"no drag explains these ticks: the speed is off by {rms:.0%} of the first speed"
        raise Unreadable(reason, "", "one tick a turn from a spool that slows down by itself")
    _check_slowing(time, found)
    used = int(np.count_nonzero(found.used))
    faults = _faults(free, start, time[found.used], turns[found.used])
    _check_heard(used, faults)
    said = coast_values.values(found, inertia)
    return SpinDown(
        *said.measured,
        ticks_used=used,
        ticks_mended=faults,
        relative_rms=rms,
        start=start,
        time=middle,
        speed=seen,
        fitted=fitted,
        turns=np.diff(turns[found.used]),
        residuals=found.residual,
        per_inertia=inertia is None,
        budget=said.budget,
        notes=(*notes, *_notes(found, start, mended, time, touch)),
        used=time[found.used],
        cut_off=free_part.cut_off(mended, part, start + float(time[found.used][-1]), ticks_per_turn),
    )


def _count_again(mended: Mended, first: int) -> tuple[Array, NDArray[np.int64], CoastFit]:
    """Fit, number every tick by the fit, and so on until the numbers stay."""
    start = mended.times[first]
    time, turns = mended.times[first:] - start, mended.turns[first:] - mended.turns[first]
    heard = mended.heard[mended.heard >= start] - start
    sure = dense(turns)
    time, turns = time[:sure], settle(time[:sure], turns[:sure])
    found = coast_fit.fit(time, turns)
    for _ in range(_COUNTS if len(heard) else 0):
        now, number = recount(heard, time, turns, found)
        same = np.array_equal(now, time) and np.array_equal(number, turns)
        if same or len(now) < max(FEWEST, len(time) - 2):
            break
        time, turns = now, number
        found = coast_fit.fit(time, turns)
    return time, turns, found


def _faults(mended: Mended, start: float, time: Array, turns: NDArray[np.int64]) -> int:
    """Ticks that were dropped and turns that were counted in, from the first used tick to the last."""
    if not len(mended.heard):
        return mended.mended
    heard = np.count_nonzero((mended.heard >= start + time[0]) & (mended.heard <= start + time[-1]))
    return int(heard - len(time)) + int(turns[-1] - turns[0]) + 1 - len(time)


def _check_slowing(time: Array, found: CoastFit) -> None:
    """A spool that is driven, or was heard for a moment only, says nothing about its drag."""
    last = float(coast_fit.speed_at(time[-1:], found.values)[0]) / float(found.values[1])
    if last > 1 - LEAST_LOSS:
        reason = f"the spool hardly slows down: {last:.1%} of the first speed is left at the end"
        raise Unreadable(reason, "", "a recording that goes on while the spool slows down by itself")


def _check_heard(used: int, faults: int) -> None:
    """Where most ticks are strays or unheard, a count that looks even may be chance."""
    least = LEAST_HEARD if used >= _MANY else LEAST_OF_FEW
    if used < least * (used + faults):
        reason = f"only {used} ticks fall on turns, beside {faults} that are strays or missing"
        raise Unreadable(reason, "", f"a recording in which {least:.0%} of the turns or more are heard")


def _best(time: Array, turns: Array, full: CoastFit) -> tuple[CoastFit, tuple[str, ...]]:
    if full.values[2] > 0:
        return full, ()
    fewer = [coast_fit.fit(time, turns, free) for free in ((True, False, True), (True, True, False))]
    stopping = [found for found in fewer if found.values[2] > 0 and _as_good(found, full)]
    if stopping:
        note = "The recording does not part constant from viscous drag; a law that comes to rest was taken."
        return min(stopping, key=_per_tick), (note,)
    note = (
        "The recording shows no drag that stays when the spool is slow; the least that could hide in it was"
        " taken, so the time to rest is a guess."
    )
    return coast_fit.fit(time, turns, least_constant=_hidden(full)), (note,)


def _per_tick(found: CoastFit) -> float:
    return float(np.mean(found.residual**2))


def _as_good(simpler: CoastFit, full: CoastFit) -> bool:
    """Whether leaving a drag out costs no more than chance would give."""
    dropped = np.count_nonzero(full.used) - np.count_nonzero(simpler.used)
    freedom = max(len(full.residual) - 5, 1)
    return bool(dropped <= 1 and _per_tick(simpler) <= _per_tick(full) * (1 + _CHANCE / freedom) + _NOTHING)


def _hidden(full: CoastFit) -> float:
    """The mean of a normal value that is known to be zero at least and was found at zero."""
    slowing = float(full.values[1] * full.values[3] + full.values[1] ** 2 * full.values[4])
    return max(_MEAN_OF_HALF * float(full.deviations[2]), _LEAST_SHARE * slowing)


def _per_mark(found: CoastFit, marks: int) -> CoastFit:
    """Angles counted as one turn a tick are marks times too large: so are the speeds and the first drag."""
    scale = np.array([1 / marks, 1 / marks, 1 / marks, 1.0, float(marks)])
    return CoastFit(
        found.values * scale, found.covariance * np.outer(scale, scale), found.used, found.residual / marks
    )


def _curve(time: Array, angle: Array, values: Array) -> tuple[Array, Array, Array]:
    """Middle of each interval, mean speed in it as measured, and as fitted."""
    steps = np.maximum(np.diff(time), 1e-9)
    fitted = np.diff(coast_fit.angle_at(time, values)) / steps
    return 0.5 * (time[1:] + time[:-1]), np.diff(angle) / steps, fitted


def _notes(found: CoastFit, start: float, mended: Mended, time: Array, touch: bool) -> Iterable[str]:
    before = int(np.count_nonzero(mended.heard < start))
    if before:
        yield f"{before} ticks before {start:.2f} s were left out: still driven, or they fit no count."
    last = float(coast_fit.speed_at(time[-1:], found.values)[0]) / float(found.values[1])
    if touch:
        yield f"Left out from {time[-1]:.2f} s after the start on: the spool was touched or pushed there."
    if last > 0.25:
        yield f"The recording ends at {last:.0%} of the first speed; the time to rest is foretold, not seen."
    viscous, quadratic = (bool(found.deviations[i] > 0.5 * found.values[i]) for i in (3, 4))
    if viscous and quadratic:
        yield "The recording does not part viscous from quadratic drag; look at their uncertainties."
