"""A spool without ticks hums: the tone that falls with its speed, followed through talk and mains hum."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.recording import Recording
from spoolwright.bench.unreadable import Unreadable

FASTEST_SPEED = 660.0
"""Speed of a spool in rad/s above which no tone is looked for."""

LOWEST_TONE = 15.0
"""Hz below which no telephone hears."""

Array = NDArray[np.float64]

_WINDOWS = (0.1, 0.2, 0.4)
_OVERTONES = ((1, 1.0), (2, 0.4), (3, 0.3))
_MOST_LOG = 5.0
_FALL, _RISE, _PRICE = 8, 1, 0.15
_NEEDED = 3.0
_LEAST_SECONDS, _LEAST_FRAMES = 1.0, 12
_LEAST_FALL = 0.05
_HALF_FULL = 2
_LOBE = 6
_ACCEPTED = "a recording in which the hum of the spool falls as it slows down, close to the microphone"


@dataclass(frozen=True, eq=False)
class Hum:
    """The tone as it falls: times [s of the recording], frequency [Hz], seconds from one to the next."""

    time: Array
    tone: Array
    step: float


def follow(recording: Recording, *, orders: float = 1.0) -> Hum:
    """Follow the tone of a coasting spool.

    Parameters
    ----------
    recording : Recording
        Sound of one channel, full scale 1 [1], with its rate [Hz].
    orders : float
        How many waves of the tone there are to one turn of the spool [-], above zero.

    Returns
    -------
    Hum
        Times [s] and frequency of the tone [Hz], shape (n,), n >= 12.

    Raises
    ------
    Unreadable
        No tone that falls stands out for a second or more.
    ValueError
        Orders that are not above zero.

    Notes
    -----
    Power in overlapping windows of 0.1, 0.2 or 0.4 s, each frequency divided by its own median over the whole
    recording: mains hum and its overtones, which stay where they are, fall away. The path that gathers most
    (logarithm of that power, with its second and third overtone), falling by at most eight steps and rising
    by at most one from window to window, is the tone (Viterbi's way); the part of it that gathers more than
    noise would is kept, so it begins and ends by itself. The length of window that gathers most is taken.

    Source
    ------
    Short-time Fourier transform: any text on signals; best path: Viterbi, IEEE Trans. Information Theory 13
    (1967) (from memory). Limits are our own.

    Examples
    --------
    >>> t = np.arange(32000) / 8000
    >>> sound = np.sin(2 * np.pi * (200 * t - 15 * t**2)) + np.random.default_rng(1).normal(0, 0.1, 32000)
    >>> heard = follow(Recording(sound.astype(np.float32), 8000.0), orders=4.0)
    >>> bool(abs(np.interp(2.0, heard.time, heard.tone) - 140) < 2)
    True
    """
    if not orders > 0:
        raise ValueError(f"orders must be above zero; came {orders}")
    highest = min(FASTEST_SPEED * orders / (2 * np.pi), recording.rate / 2.2)
    samples, rate = _slower(recording, highest)
    tries = [_followed(samples, rate, window, highest) for window in _WINDOWS]
    worth, heard = max(tries, key=lambda one: one[0])
    if heard is None or worth <= 0:
        raise Unreadable("no tone that falls stands out of the noise", "", _ACCEPTED)
    if heard.tone.min() > (1 - _LEAST_FALL) * heard.tone.max():
        raise Unreadable("the tone that is heard does not fall", "", _ACCEPTED)
    return heard


def _slower(recording: Recording, highest: float) -> tuple[Array, float]:
    """Averaged over whole numbers of samples, as far as the highest tone allows."""
    every = max(1, int(recording.rate / (5.0 * highest)))
    whole = len(recording.samples) // every * every
    samples = recording.samples[:whole].astype(np.float64).reshape(-1, every).mean(axis=1)
    return samples, recording.rate / every


def _followed(samples: Array, rate: float, window: float, highest: float) -> tuple[float, Hum | None]:
    length = int(window * rate)
    hop = max(1, length // 2)
    if len(samples) < length + _LEAST_FRAMES * hop:
        return 0.0, None
    frames = np.lib.stride_tricks.sliding_window_view(samples, length)[::hop] * np.hanning(length)
    padded = 4 * length
    power = np.abs(np.fft.rfft(frames, padded, axis=1)) ** 2 + 1e-20
    width = rate / padded
    low, high = int(max(LOWEST_TONE, 1.5 / window) / width), min(int(highest / width), power.shape[1] - 2)
    score = _gathered(power, low, high)
    path, worth = _best_path(score)
    first, last, total = _best_part(worth - _NEEDED)
    first, last = first + _HALF_FULL, last - _HALF_FULL
    if (last - first) < _LEAST_FRAMES or (last - first) * hop / rate < _LEAST_SECONDS:
        return 0.0, None
    kept = np.arange(first, last)
    tone = _between(power, kept, path[first:last] + low) * width
    time = np.asarray((kept * hop + 0.5 * length) / rate, dtype=np.float64)
    return total * hop / rate, Hum(time, tone, hop / rate)


def _gathered(power: Array, low: int, high: int) -> Array:
    """Logarithm of the power over each frequency's own median, overtones counted in, for each window."""
    level = np.log(power / np.median(power, axis=0))
    level = np.clip(level - np.median(level, axis=1)[:, None], 0.0, _MOST_LOG)
    bins = np.arange(low, high)
    total = np.zeros((len(power), len(bins)))
    for overtone, weight in _OVERTONES:
        there = bins * overtone < level.shape[1]
        total[:, there] += weight * level[:, bins[there] * overtone]
    return total


def _best_path(score: Array) -> tuple[NDArray[np.int64], Array]:
    """The path that gathers most, and what it gathers in each window."""
    windows, bins = score.shape
    best = score[0].copy()
    came = np.zeros((windows, bins), dtype=np.int16)
    shifts = range(-_RISE, _FALL + 1)
    for k in range(1, windows):
        tried = np.full((len(shifts), bins), -np.inf)
        for row, shift in enumerate(shifts):
            price = _PRICE * (4 * abs(shift) if shift < 0 else 0)
            if shift >= 0:
                tried[row, : bins - shift] = best[shift:] - price
            else:
                tried[row, -shift:] = best[:shift] - price
        row = np.argmax(tried, axis=0)
        came[k] = row - _RISE
        best = np.take_along_axis(tried, row[None], axis=0)[0] + score[k]
    path = np.empty(windows, dtype=np.int64)
    path[-1] = int(np.argmax(best))
    for k in range(windows - 1, 0, -1):
        path[k - 1] = path[k] + came[k, path[k]]
    return path, score[np.arange(windows), path]


def _best_part(worth: Array) -> tuple[int, int, float]:
    """The stretch with the largest sum."""
    total = np.concatenate(([0.0], np.cumsum(worth)))
    lowest = np.minimum.accumulate(total)
    end = int(np.argmax(total - lowest))
    begin = int(np.argmin(total[: end + 1]))
    return begin, end, float(total[end] - total[begin])


def _between(power: Array, rows: NDArray[np.int64], bins: NDArray[np.int64]) -> Array:
    """The top of a parabola through the logarithm of three neighbouring powers [bins]; mains left out."""
    near = np.clip(bins + np.arange(-_LOBE, _LOBE + 1)[:, None], 1, power.shape[1] - 2)
    level = power[rows[None], near] / np.median(power, axis=0)[near]
    top = near[np.argmax(level, axis=0), np.arange(len(bins))]
    before, at, after = (np.log(power[rows, top + k]) for k in (-1, 0, 1))
    bend = before - 2 * at + after
    shift = np.where(bend < -1e-9, 0.5 * (before - after) / np.minimum(bend, -1e-9), 0.0)
    answer: Array = top + np.clip(shift, -0.5, 0.5)
    return answer
