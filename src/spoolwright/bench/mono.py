"""Sound of any channels to one: averaged, brought down to a rate that is enough, kept in bounded memory."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.unreadable import Unreadable

SLOWEST_RATE, FASTEST_RATE = 8_000, 192_000
MOST_CHANNELS = 8
LONGEST = 600.0
"""Seconds. Ten minutes outlast every spool."""

SHORTEST = 0.2
"""Seconds in which hardly two ticks of a slow spool fit."""

ENOUGH_RATE = 48_000
"""Samples a second that are kept: faster recordings are averaged down, because a tick lasts a millisecond."""

ACCEPTED = (
    "a recording of up to 10 minutes: WAV, FLAC, M4A or AAC, MP3, Ogg, WebM, or the sound of an MP4 or MOV "
    "video; 8 to 192 kHz, up to 8 channels"
)

_ENDLESS = 1e6
_GROWTH = 1 << 22
_WIDTHS = {"u8": "u1", "s16": "<i2", "s32": "<i4", "s64": "<i8", "flt": "<f4", "dbl": "<f8"}


class Mono:
    """One channel, filled piece by piece. `name` is what the file is called, for messages."""

    def __init__(self, rate: int, name: str = "") -> None:
        self.rate = rate
        self.name = name
        self._every = -(-rate // ENOUGH_RATE)
        self._out = np.empty(0, dtype=np.float32)
        self._kept = 0
        self._rest = np.empty(0, dtype=np.float64)

    @property
    def seconds(self) -> float:
        """How much has come so far."""
        return (self._kept * self._every + len(self._rest)) / self.rate

    def add(self, values: NDArray[np.float64]) -> None:
        """The next moments, of shape (n, channels), full scale 1; refuses what is no number."""
        mono = _mean(values)
        if not np.all(np.abs(mono) < _ENDLESS):
            reason = "the recording holds values that are no sound (NaN or endless)"
            raise Unreadable(reason, self.name, ACCEPTED)
        self._put(np.concatenate((self._rest, mono)) if len(self._rest) else mono)

    def add_silence(self, seconds: float) -> None:
        """Nothing for so long, where sound is missing."""
        self._put(np.concatenate((self._rest, np.zeros(round(seconds * self.rate)))))

    def finish(self) -> tuple[NDArray[np.float32], float]:
        """All samples that were kept, shape (n,), and their samples a second [Hz]."""
        self._out.resize(self._kept, refcheck=False)
        return self._out, self.rate / self._every

    def _put(self, mono: NDArray[np.float64]) -> None:
        whole = len(mono) // self._every
        kept = _mean(mono[: whole * self._every].reshape(whole, self._every))
        self._rest = mono[whole * self._every :].copy()
        needed = self._kept + whole
        if needed > len(self._out):  # in place, so that no second copy of ten minutes is ever made
            self._out.resize(needed + _GROWTH, refcheck=False)
        self._out[self._kept : needed] = kept
        self._kept = needed


def values_of(raw: memoryview | bytes, form: str, channels: int) -> NDArray[np.float64]:
    """Moments of shape (n, channels), full scale 1, from samples as a decoder lays them.

    Parameters
    ----------
    raw : bytes
        Samples [-], channel after channel where the form ends in p, else moment after moment.
    form : str
        "u8", "s16", "s32", "s64", "flt" or "dbl" [-], or one of these with a p.
    channels : int
        How many [-], 1 or more.

    Returns
    -------
    array
        Full scale 1 [1], shape (n, channels).

    Source
    ------
    Names of sample forms as the FFmpeg library has them (opened: its list `av_get_sample_fmt_name`).

    Examples
    --------
    >>> values_of(np.array([16384, -16384], dtype="<i2").tobytes(), "s16p", 2).tolist()
    [[0.5, -0.5]]
    """
    width = _WIDTHS[form.removesuffix("p")]
    read = np.frombuffer(raw, dtype=width).astype(np.float64)
    if width == "u1":
        read = (read - 128.0) / 128.0
    elif "i" in width:
        read /= 2.0 ** (8 * int(width[-1]) - 1)
    return read.reshape(channels, -1).T if form.endswith("p") else read.reshape(-1, channels)


def _mean(values: NDArray[np.float64]) -> NDArray[np.float64]:
    """Of each row: column by column, which is several times as quick for a few columns."""
    columns = values.shape[1]
    if columns == 1:
        return values[:, 0]
    total = values[:, 0] + values[:, 1]
    for column in range(2, columns):
        total += values[:, column]
    total /= columns
    return total
