"""Loudness tooth by tooth, and which tooth of a wheel is loud each time it comes round."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import log

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.mesh_track import MeshTrack

Array = NDArray[np.float64]

PLACES_A_TOOTH = 2
_WINDOW_TEETH = 25
_LOUDEST = 20.0
_LOUD_SHARE = 0.1
_NEAR_TEETH = 1.5
_RINGS_OVER = PLACES_A_TOOTH


@dataclass(frozen=True, eq=False)
class LoudTooth:
    """The tooth of a wheel that is loud most often.

    `log_chance` is the natural logarithm of the chance that even noise does it at any place of the wheel,
    `swelling` how much louder it is than the middle one on average [1], `rival` how much of that the next
    loudest place away from it has [1], `turns` how often the wheel came round. `profile` is the mean loudness
    at each place of the wheel [1], two to a tooth.
    """

    teeth: int
    place: int
    turns: int
    swelling: float
    rival: float
    log_chance: float
    low: float
    high: float
    profile: Array


def series(
    samples: NDArray[np.floating], rate: float, track: MeshTrack, bands: list[tuple[float, float]]
) -> Iterator[tuple[tuple[float, float], Array]]:
    """Loudness of each half tooth in each band, over the middle one of its neighbours.

    Parameters
    ----------
    samples : array
        Sound, full scale 1 [1], shape (n,).
    rate : float
        Samples a second [Hz], above zero.
    track : MeshTrack
        Teeth [-] over time [s].
    bands : list
        Lower and upper edge of each band [Hz].

    Returns
    -------
    iterator
        Each band with its loudness [1], two places a tooth.

    Notes
    -----
    Mean squared envelope in each place, divided by the running median over 25 teeth: a hand that is uneven
    once a turn falls out, a tooth that knocks stays.

    Source
    ------
    Envelope by angle: Randall, Vibration-based Condition Monitoring (2011), chapters 5 and 6 (from memory);
    25 teeth: judgement prior.

    Examples
    --------
    >>> track = MeshTrack(np.array([0.0, 1.0]), np.array([0.0, 200.0]), 200.0, 0.0, 1.0)
    >>> hiss = np.random.default_rng(1).normal(size=12000)
    >>> ((band, loud),) = series(hiss, 12000.0, track, [(1000.0, 5000.0)])
    >>> len(loud), round(float(np.median(loud)), 1)
    (400, 1.0)
    """
    whole = np.fft.rfft(np.asarray(samples, dtype=np.float64))
    step = rate / len(samples)
    count = int(track.teeth[-1]) * PLACES_A_TOOTH
    edges = np.interp(np.arange(count + 1) / PLACES_A_TOOTH, track.teeth, track.time)
    for low, high in bands:
        part = whole[int(low / step) : int(high / step)]
        loud = np.abs(np.fft.ifft(part, 2 * len(part))) ** 2
        seconds = np.arange(len(loud) + 1) * len(samples) / rate / len(loud)
        summed = np.interp(edges, seconds, np.concatenate([[0.0], np.cumsum(loud)]))
        mean = np.diff(summed) / np.maximum(np.diff(edges), 1e-12)
        yield (low, high), _over_neighbours(mean)


def _over_neighbours(mean: Array) -> Array:
    from scipy import ndimage

    wide = min(_WINDOW_TEETH * PLACES_A_TOOTH + 1, max(1, len(mean) // 2 * 2 - 1))
    middle = ndimage.median_filter(mean, wide, mode="nearest")
    floor = 1e-6 * float(mean.mean()) + 1e-300
    return np.asarray(np.minimum(mean / np.maximum(middle, floor), _LOUDEST), dtype=np.float64)


def loud_tooth(
    loud: Array, teeth: int, band: tuple[float, float], hidden: NDArray[np.bool_] | None = None
) -> LoudTooth:
    """The tooth of a wheel that is loud most often.

    Parameters
    ----------
    loud : array
        Loudness of each half tooth [1], as `series` has it, shape (n,).
    teeth : int
        Teeth of the wheel [-], above zero.
    band : tuple
        Edges of the band it was heard in [Hz].
    hidden : array of bool or None
        Places that something else explains [-], shape (n,).

    Returns
    -------
    LoudTooth
        Its place, how much louder it is [1], and the chance of noise.

    Notes
    -----
    A tooth of any wheel passes in the time of one tooth of the mesh, so the series folds by the wheel's own
    count. Counted is how often each place is among the loudest tenth: in even noise that is binomial,
    whatever the noise; a bang counts once however loud it was.

    Source
    ------
    Synchronous averaging: McFadden, A revised model for the extraction of periodic waveforms by time domain
    averaging, Mechanical Systems and Signal Processing 1 (1987) (from memory). Sign test: Conover, Practical
    Nonparametric Statistics (from memory).

    Examples
    --------
    >>> loud = np.random.default_rng(1).exponential(size=40 * 34)
    >>> loud[::34] += 10.0
    >>> found = loud_tooth(loud, 17, (1000.0, 5000.0))
    >>> found.place, found.turns, found.log_chance < -30
    (0, 40, True)
    """
    from scipy import stats

    places = teeth * PLACES_A_TOOTH
    turns = len(loud) // places
    folded = loud[: turns * places].reshape(turns, places)
    counted = np.ones_like(folded, dtype=bool)
    if hidden is not None:
        counted = ~hidden[: turns * places].reshape(turns, places)
    limit = float(np.quantile(loud, 1 - _LOUD_SHARE))
    hits = ((folded > limit) & counted).sum(axis=0)
    seen = counted.sum(axis=0)
    profile = np.where(counted, folded, 0.0).sum(axis=0) / np.maximum(seen, 1)
    chances = stats.binom.logsf(hits - 1, np.maximum(seen, 1), _LOUD_SHARE)
    chances = np.where(hits > 0, chances, 0.0)
    best = int(np.argmin(chances))
    level = float(np.median(profile[seen > 0])) if (seen > 0).any() else 1.0
    swelling = float(profile[best] / max(level, 1e-12)) - 1
    apart = np.abs((np.arange(places) - best + places // 2) % places - places // 2)
    others = profile[(apart > _NEAR_TEETH * PLACES_A_TOOTH) & (seen > 0)]
    rival = (float(others.max()) / max(level, 1e-12) - 1) / swelling if len(others) and swelling > 0 else 1.0
    log_chance = min(0.0, float(chances[best]) + log(places))
    return LoudTooth(teeth, best, turns, swelling, rival, log_chance, band[0], band[1], profile / level)


def explained(found: LoudTooth, count: int) -> NDArray[np.bool_]:
    """Places of the series at which the loud tooth of a wheel passes.

    Parameters
    ----------
    found : LoudTooth
        The wheel's loud tooth, its place in half teeth [-].
    count : int
        Places of the series [-].

    Returns
    -------
    array
        True there and a tooth to either side, over which a knock rings [-], shape (count,).

    Source
    ------
    Common practice.

    Examples
    --------
    >>> tooth = LoudTooth(5, 3, 2, 1.0, 0.0, -20.0, 0.0, 1.0, np.ones(10))
    >>> np.flatnonzero(explained(tooth, 20)).tolist()
    [1, 2, 3, 4, 5, 11, 12, 13, 14, 15]
    """
    places = found.teeth * PLACES_A_TOOTH
    off = (np.arange(count) - found.place + places // 2) % places - places // 2
    return np.asarray(np.abs(off) <= _RINGS_OVER, dtype=np.bool_)
