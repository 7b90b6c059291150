"""Finds where in a trace the drag slips: the line comes tight, breaks away, runs, and is let go."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import scatter
from spoolwright.bench.unreadable import Unreadable

FIRST = 0.3
"""Seconds from the breakaway in which the start-up pull is looked for (common practice: the highest of the
first 0.3 s)."""

SHORTEST_RUN = 0.5
"""Seconds of slipping after those first 0.3 s below which a mean says little."""

FEWEST_RUNNING = 10

_APART = 0.3
_BUSY = 0.15
_NEAR = 0.7
_LOOK_AHEAD = 0.15
_HAIR = 1e-6
_FEWEST_CALM = 10

_ACCEPTED = "one steady pull of a second or more, recorded from a slack line until it is let go"

Samples = NDArray[np.float64]


@dataclass(frozen=True)
class Slip:
    """One pull: indices of the breakaway, of the first running sample, of the end; level, noise and rest.

    `noise` is the standard deviation of the gauge at rest, found from `calm` samples, and `rest` what it
    shows there; where the trace has no rest, `noise` is found from the slip itself and is an upper bound.
    `tight`: the trace begins with the line pulled, so that a higher pull may have gone before.
    """

    start: int
    running: int
    end: int
    level: float
    noise: float
    rest: float | None
    tight: bool = False
    calm: int = 0


def find(time: Samples, force: Samples) -> tuple[Slip, ...]:
    """Every pull in a trace, in order.

    Parameters
    ----------
    time : array
        Times [s], shape (n,), never falling.
    force : array
        Pull [N], shape (n,).

    Returns
    -------
    tuple of Slip
        At least one [-].

    Raises
    ------
    Unreadable
        No pull above the noise, a trace that begins or ends in the middle, a slip too short, a pull that
        climbs and falls without ever running level.

    Notes
    -----
    The level is the median of what lies above half of the highest pull. Above 0.7 of it, slipping begins
    where the pull climbs at less than a quarter of the rate at which it had climbed; it ends at the last
    sample above the 5th percentile of what the line through the running part leaves over.

    Source
    ------
    Our own rule after common practice (start-up pull: the highest of the first 0.3 s; running pull: the mean
    of what follows).

    Examples
    --------
    >>> t = np.arange(0.0, 5.0, 0.01)
    >>> slip, = find(t, np.clip(40 * (t - 0.5), 0, 20) * (t < 4))
    >>> round(float(t[slip.start]), 2), round(float(t[slip.end]), 2)
    (1.0, 3.99)
    """
    _refuse_noise(force)
    stretches = _stretches(time, force)
    if not stretches:
        raise Unreadable("there is no pull in the trace that lasts", "", _ACCEPTED)
    slips: list[Slip] = []
    fault: Unreadable | None = None
    for first, last in stretches:
        try:
            slips.append(_slip(time, force, first, last))
        except Unreadable as refused:
            fault = fault or refused
    if not slips and fault is not None:
        raise fault
    return tuple(slips)


def _refuse_noise(force: Samples) -> None:
    """Noise alone has no memory from one sample to the next; a pull has."""
    low, high = np.percentile(force, (0.2, 99.8))
    step = noise_between_samples(force)
    centred = force - force.mean()
    memory = float(np.sum(centred[1:] * centred[:-1]) / max(float(np.sum(centred**2)), 1e-300))
    if high - low < 8 * step and memory < 0.5:
        reason = f"there is no pull in it: all {len(force)} samples lie within the gauge's noise"
        raise Unreadable(f"{reason} ({low:.3g} to {high:.3g} N)", "", _ACCEPTED)


def noise_between_samples(force: Samples) -> float:
    """Standard deviation of what changes from one sample to the next; an upper bound of the gauge's noise.

    Parameters
    ----------
    force : array
        Pull [N], shape (n,), n >= 3.

    Returns
    -------
    float
        Standard deviation [N].

    Source
    ------
    Second differences of white noise have 6 times its variance; median absolute deviation x 1.4826.

    Examples
    --------
    >>> noise = np.random.default_rng(1).normal(0.0, 0.1, 5000)
    >>> 0.09 < noise_between_samples(noise) < 0.11
    True
    """
    second = np.diff(force, 2)
    return float(1.4826 * np.median(np.abs(second - np.median(second))) / np.sqrt(6.0))


def _stretches(time: Samples, force: Samples) -> list[tuple[int, int]]:
    """First and last index of each time the line is pulled; a dip shorter than 0.3 s parts nothing."""
    top = float(np.percentile(force, 99.5))
    busy = np.flatnonzero(force > _BUSY * top)
    if not len(busy):
        return []
    apart = (time[busy[1:]] - time[busy[:-1]] > _APART) & (np.diff(busy) > 1)
    cuts = np.flatnonzero(apart)
    firsts = busy[np.concatenate(([0], cuts + 1))]
    lasts = busy[np.concatenate((cuts, [len(busy) - 1]))]
    pairs = zip(firsts.tolist(), lasts.tolist(), strict=True)
    return [(a, b) for a, b in pairs if force[a : b + 1].max() > 0.3 * top and time[b] - time[a] > _APART]


def _slip(time: Samples, force: Samples, first: int, last: int) -> Slip:
    pull = force[first : last + 1]
    level = float(np.median(pull[pull > 0.5 * np.percentile(pull, 99.5)]))
    noise, rest, calm = _at_rest(time, force, first, last, level)
    tight = first == 0 and bool(pull[0] > 0.5 * level)
    if tight and pull[time[: last + 1] <= FIRST].max() < 1.02 * level + 3 * noise:
        raise Unreadable("the trace begins with the line already pulled, past its start", "", _ACCEPTED)
    start = _breakaway(time, force, first, last, level, 2 * noise + 0.01 * level)
    running = int(np.searchsorted(time, time[start] + FIRST))
    end = _let_go(time, force, running, last, level)
    _refuse_short(time, running, end)
    _refuse_gap(time, start, end)
    _refuse_unsteady(time, force, first, start, running, end, level)
    return Slip(start, running, end, level, noise, rest, tight, calm)


def _at_rest(
    time: Samples, force: Samples, first: int, last: int, level: float
) -> tuple[float, float | None, int]:
    """Noise of the gauge while nothing pulls, what it shows then (before the pull, else after), samples."""
    before = (time < time[first] - 0.1) & (np.arange(len(time)) < first)
    after = (time > time[last] + 0.2) & (np.arange(len(time)) > last)
    calm = [force[where & (np.abs(force) < 0.1 * level)] for where in (before, after)]
    calm = [part for part in calm if len(part) >= _FEWEST_CALM]
    if not calm:
        return noise_between_samples(force[first : last + 1]), None, 0
    count = sum(len(part) for part in calm)
    variance = sum(len(part) * float(np.diff(part, 2).var()) for part in calm) / (6.0 * count)
    return float(np.sqrt(variance)), float(np.median(calm[0])), count


def _breakaway(time: Samples, force: Samples, first: int, last: int, level: float, slack: float) -> int:
    """Where the climb ends: the crest of the moments from which the pull climbs at a quarter at most."""
    i = first + int(np.argmax(force[first : last + 1] >= _NEAR * level))
    low = first + int(np.argmax(force[first : i + 1] >= 0.2 * level))
    while i < last:
        stop = max(int(np.searchsorted(time, time[i] + _LOOK_AHEAD)), i + 2) + 1
        climb = float(force[i] - force[low]) / max(float(time[i] - time[low]), 1e-3) if i > low else np.inf
        ahead = force[i : int(np.searchsorted(time, time[i] + FIRST)) + 1]
        calm = _slope(time[i:stop], force[i:stop]) < 0.25 * climb
        if calm and ahead.max() <= 1.2 * force[i] + slack:
            return i + int(np.argmax(force[i:stop] >= force[i:stop].max() - slack))
        i += 1
    return i


def _slope(time: Samples, force: Samples) -> float:
    centred = time - time.mean()
    return float(np.sum(centred * force) / max(float(np.sum(centred**2)), 1e-12))


def _let_go(time: Samples, force: Samples, running: int, last: int, level: float) -> int:
    """The last sample that still belongs to the running part."""
    near = running + np.flatnonzero(force[running : last + 1] >= _NEAR * level)
    if not len(near):
        return running
    inner = force[running : int(np.searchsorted(time, time[near[-1]] - 0.1)) + 1]
    if len(inner) < 3:
        return int(near[-1])
    middle, slope, residual = scatter.line_through(time[running : running + len(inner)], inner)
    floor = float(np.percentile(residual, 5.0)) - _HAIR * level
    centre = float(time[running : running + len(inner)].mean())
    above = force[running : last + 1] - middle - slope * (time[running : last + 1] - centre)
    return int(running + np.flatnonzero(above >= floor)[-1])


def _refuse_short(time: Samples, running: int, end: int) -> None:
    lasts = float(time[min(end, len(time) - 1)] - time[min(running, len(time) - 1)]) + FIRST
    if end - running + 1 < FEWEST_RUNNING or lasts < SHORTEST_RUN + FIRST:
        count = max(end - running + 1, 0)
        reason = f"the drag slips for {max(lasts, 0.0):.1f} s only ({count} samples after its start)"
        accepted = f"{SHORTEST_RUN + FIRST:g} s or more, with {FEWEST_RUNNING} samples or more"
        raise Unreadable(reason, "", accepted)


def _refuse_gap(time: Samples, start: int, end: int) -> None:
    steps = np.diff(time[start : end + 1])
    if steps.max() > max(FIRST, 10 * float(np.median(steps))):
        at = float(time[start + int(np.argmax(steps))])
        reason = f"the gauge stopped for {steps.max():.2f} s at {at:.2f} s"
        raise Unreadable(reason, "", "a trace without gaps while the drag slips")


def _refuse_unsteady(
    time: Samples, force: Samples, first: int, start: int, running: int, end: int, level: float
) -> None:
    """A strip that is stretched and let back climbs and falls alike; a drag that slips runs level."""
    parts = np.array_split(np.arange(running, end + 1), 5)
    levels = np.array([np.median(force[part]) for part in parts])
    lasts = float(time[end] - time[running]) / 5
    rise = first + int(np.argmax(force[first : start + 1] >= 0.2 * level))
    climb = float(force[start] - force[rise]) / max(float(time[start] - time[rise]), 1e-3)
    change = float(np.max(np.abs(np.diff(levels)))) / lasts
    range_of_levels = float(np.ptp(levels)) / level
    if range_of_levels > 0.6 or (range_of_levels > 0.25 and change > 0.3 * climb):
        reason = f"the pull never runs level: it changes by {range_of_levels:.0%} while it should slip"
        raise Unreadable(reason, "", _ACCEPTED)
