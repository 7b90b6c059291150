"""Hears ticks in a recording: short bursts that stand above the noise and are not softer than those near."""

from __future__ import annotations

from collections.abc import Callable, Iterator

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.recording import Recording
from spoolwright.bench.unreadable import Unreadable

FASTEST_TICKS = 110.0
"""Ticks a second above which no spool turns (600 rad/s are 95 turns a second)."""

FASTEST_CLICKS = 700.0
"""Ticks a second of a clicker above which single ones are not told apart: that is a hum."""

Samples = NDArray[np.float64]
Frames = NDArray[np.int64]
Band = Callable[[Samples, float], Samples]

_FRAMES = 4000.0
_BLOCK = 1 << 20
_FLOOR_SECONDS = 0.25
_ABOVE_FLOOR = (2.5, 4.0, 8.0)
_CHANCE = 0.3
_SPREAD = 0.002
_LEAST_FLOOR = 0.02
_BESIDE = 9
_OF_NEIGHBOURS = 0.22
_REFRACTORY = 0.35
_STRONGER = 1.5
_RISE = 0.5
_REGULAR = 0.12
_SLOW_PART = 0.003
_QUICK_PART = 0.00025

_ACCEPTED = "a recording in which each turn of the spool is heard as a tick, close to the microphone"


def find(recording: Recording, *, marks: int = 1) -> Samples:
    """Times of the ticks in a recording.

    Parameters
    ----------
    recording : Recording
        Sound of one channel, full scale 1 [1], with its rate [Hz].
    marks : int
        Marks on the spool [-], 1 or more: so many ticks to a turn are listened for, up to 700 a second.

    Returns
    -------
    array
        Tick times from the start of the recording [s], shape (n,), rising; doubles and strays still in it.

    Raises
    ------
    Unreadable
        No ticks that stand out of the noise.

    Notes
    -----
    Listened to in three bands: the change from sample to sample (a hard click; leaves hum and most of a voice
    out), all above about 200 Hz, and 200 to 2000 Hz (a dull knock); in each with three thresholds above the
    floor (what the quieter quarter of each quarter second peaks at within 2 ms). The hearing with most even
    steps, less what chance would give, is kept. A tick also rises above 0.22 of the louder ticks near it; of
    two within 0.35 of the local period the later counts as the echo unless it is half as loud again. Its time
    is where the sound first reaches half of its peak.

    Source
    ------
    Bello et al., A tutorial on onset detection in music signals, IEEE Trans. Speech Audio Processing 13
    (2005), for several bands and an adaptive threshold (from memory).

    Examples
    --------
    >>> sound = np.zeros(16000, dtype=np.float32)
    >>> sound[4000::2000] = 0.5
    >>> np.round(find(Recording(sound + 1e-3 * np.sin(np.arange(16000)).astype(np.float32), 8000.0)), 2)
    array([0.5 , 0.75, 1.  , 1.25, 1.5 , 1.75])
    """
    hop = max(1, round(recording.rate / _FRAMES))
    fastest = min(FASTEST_TICKS * marks, max(FASTEST_TICKS, FASTEST_CLICKS))
    heard = [
        (band, frames)
        for band in (_change, _above_hum, _dull)
        for frames in _hear(recording, hop, band, fastest)
    ]
    if not heard:
        raise Unreadable("no ticks stand out of the noise", "", _ACCEPTED)
    quickest = recording.rate / hop / fastest
    band, frames = max(heard, key=lambda hearing: _evenness(hearing[1], quickest))
    return np.array([_onset(recording, int(frame) * hop, hop, band) for frame in frames])


def _evenness(frames: Frames, quickest: float) -> float:
    """How many steps are like the one before, less what chance gives; the pitch of a voice is too quick."""
    steps = np.diff(frames)
    even = np.abs(np.diff(steps)) < np.maximum(_REGULAR * np.minimum(steps[1:], steps[:-1]), 1.5)
    return float(np.count_nonzero(even & (steps[1:] > quickest))) - _CHANCE * len(frames)


def _hear(recording: Recording, hop: int, band: Band, fastest: float) -> Iterator[Frames]:
    """Frames with a tick, for each threshold under which there are any."""
    loudness = _loudness(recording, hop, band)
    frame_rate = recording.rate / hop
    floor = _floor(loudness, frame_rate, fastest)
    for above in _ABOVE_FLOOR:
        frames = _stand_out(loudness, above * floor, frame_rate, fastest)
        if len(frames) >= 3:
            frames = frames[loudness[frames] > _OF_NEIGHBOURS * _near_height(loudness[frames])]
            yield _without_echoes(frames, loudness[frames])


def _change(part: Samples, rate: float) -> Samples:
    return np.diff(part, prepend=part[:1])


def _above_hum(part: Samples, rate: float) -> Samples:
    return part - _smooth(part, round(_SLOW_PART * rate))


def _dull(part: Samples, rate: float) -> Samples:
    return _smooth(part, round(_QUICK_PART * rate)) - _smooth(part, round(_SLOW_PART * rate))


def _smooth(part: Samples, width: int) -> Samples:
    """Centred running mean."""
    width = max(1, min(width | 1, len(part)))
    total = np.concatenate(
        ([0.0], np.cumsum(np.pad(part, (width // 2, width - 1 - width // 2), mode="edge")))
    )
    mean: Samples = (total[width:] - total[:-width]) / width
    return mean


def _loudness(recording: Recording, hop: int, band: Band) -> Samples:
    """Highest swing of a band in each frame, block by block so that memory stays small."""
    samples, rate = recording.samples, recording.rate
    frames = len(samples) // hop
    out = np.empty(frames, dtype=np.float64)
    step, edge = max(1, _BLOCK // hop), int(2 * _SLOW_PART * rate) + 1
    for first in range(0, frames, step):
        last = min(frames, first + step)
        before = max(0, first * hop - edge)
        part = samples[before : last * hop + edge].astype(np.float64)
        swing = np.abs(band(part, rate))[first * hop - before :][: (last - first) * hop]
        out[first:last] = swing.reshape(-1, hop).max(axis=1)
    return out


def _floor(loudness: Samples, frame_rate: float, fastest: float) -> Samples:
    """What the quieter part of each quarter second peaks at, smoothed over five of them, for every frame."""
    from scipy.ndimage import maximum_filter1d

    size = max(8, int(_FLOOR_SECONDS * frame_rate))
    spread = _SPREAD * FASTEST_TICKS / fastest
    peaks = maximum_filter1d(loudness, max(1, int(spread * frame_rate)))
    parts = np.array_split(peaks, max(1, len(peaks) // size))
    low = np.array([np.percentile(part, 25.0) for part in parts])
    padded = np.pad(low, 2, mode="edge")
    smooth = np.median(np.lib.stride_tricks.sliding_window_view(padded, 5), axis=1)
    least = _LEAST_FLOOR * float(np.percentile(loudness, 99.9))
    return np.repeat(np.maximum(smooth, max(least, 1e-9)), [len(part) for part in parts])


def _stand_out(loudness: Samples, threshold: Samples, frame_rate: float, fastest: float) -> Frames:
    from scipy.signal import find_peaks

    apart = max(1, int(0.35 * frame_rate / fastest))
    peaks, _ = find_peaks(loudness, height=threshold, distance=apart)
    return np.asarray(peaks, dtype=np.int64)


def _near_height(heights: Samples) -> Samples:
    """How loud the louder ticks near each one are: the third quartile of nine on either side."""
    padded = np.pad(heights, _BESIDE, mode="reflect" if len(heights) > _BESIDE else "edge")
    around = np.lib.stride_tricks.sliding_window_view(padded, 2 * _BESIDE + 1)
    near: Samples = np.percentile(around, 75.0, axis=1)
    return near


def _without_echoes(frames: Frames, heights: Samples) -> Frames:
    """Of two ticks closer than a part of the period near them, one goes; the longer steps tell the period."""
    steps = np.diff(frames)
    if len(steps) < 3:
        return frames
    padded = np.pad(steps, 6, mode="reflect" if len(steps) > 6 else "edge")
    period = np.percentile(np.lib.stride_tricks.sliding_window_view(padded, 13), 75.0, axis=1)
    kept = [0]
    for i in range(1, len(frames)):
        if frames[i] - frames[kept[-1]] >= _REFRACTORY * period[i - 1]:
            kept.append(i)
        elif heights[i] > _STRONGER * heights[kept[-1]]:
            kept[-1] = i
    return frames[kept]


def _onset(recording: Recording, at: int, hop: int, band: Band) -> float:
    """Where, around a frame, the band first reaches half of its highest swing: to within a sample."""
    edge = int(2 * _SLOW_PART * recording.rate) + 1
    first = max(0, at - 4 * hop)
    before = max(0, first - edge)
    part = recording.samples[before : at + 4 * hop + edge].astype(np.float64)
    swing = np.abs(band(part, recording.rate))[first - before : at + 4 * hop - before]
    top = int(np.argmax(swing))
    begin = max(0, top - 6 * hop)
    rise = int(np.argmax(swing[begin : top + 1] >= _RISE * swing[top]))
    return (first + begin + rise) / recording.rate
