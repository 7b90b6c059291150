"""Where in a noise its loudness lies, and how spiky it is."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.faintest import band_shares

HIGH_ABOVE = 1500.0
"""Frequency in Hz above which small bearings ring when they are knocked: judgement prior."""

_HALVES_AND_QUARTERS, _AUDIBLE = 7, 0.01
_PIECES = 9


@dataclass(frozen=True)
class Loudness:
    """Share of the noise that lies high, how spiky the spikiest band is, and the share in each band."""

    high: float
    spikiness: float
    shares: tuple[float, ...]


def of(samples: NDArray[np.floating], rate: float, bands: Sequence[tuple[float, float]]) -> Loudness:
    """Loudness of a noise in bands.

    Parameters
    ----------
    samples : array
        Sound, full scale 1 [1], shape (n,).
    rate : float
        Samples a second [Hz], above zero.
    bands : sequence
        Lower and upper edge of each band [Hz], the widest first.

    Returns
    -------
    Loudness
        Share above 1.5 kHz of all above the lowest edge [1]; kurtosis of the spikiest of the first seven
        bands that hold a hundredth or more [1], 0 for plain noise; share of each band [1].

    Notes
    -----
    The kurtosis is that of the band's complex signal, mean square of its squared size over the square of the
    mean, less 2; the middle one of nine pieces, so that one bang does not count.

    Source
    ------
    Antoni, The spectral kurtosis, Mechanical Systems and Signal Processing 20 (2006), for the kurtosis of a
    band (from memory).

    Examples
    --------
    >>> found = of(np.random.default_rng(1).normal(size=24000), 12000.0, [(500.0, 5700.0)])
    >>> round(found.high, 1), round(found.spikiness, 1) + 0.0
    (0.8, 0.0)
    """
    whole = np.fft.rfft(np.asarray(samples, dtype=np.float64))
    step = rate / len(samples)
    power = np.abs(whole) ** 2
    low = bands[0][0]
    split = max(HIGH_ABOVE, 2 * low)
    all_of_it = float(power[int(low / step) :].sum())
    high = float(power[int(split / step) :].sum()) / all_of_it if all_of_it > 0 else 1.0
    shares = tuple(band_shares(power, step, bands))
    heard = [
        whole[int(a / step) : int(b / step)]
        for (a, b), share in zip(bands[:_HALVES_AND_QUARTERS], shares, strict=False)
        if share > _AUDIBLE
    ]
    return Loudness(high, max((_kurtosis(part) for part in heard), default=0.0), shares)


def _kurtosis(part: NDArray[np.complex128]) -> float:
    """Of a band's own sound, without the ends, where the recording breaks off; the middle of nine pieces."""
    swelling = np.abs(np.fft.ifft(part)) ** 2
    ends = len(swelling) // 50
    swelling = swelling[ends : len(swelling) - ends]
    each = len(swelling) // _PIECES
    if each < 1:
        return 0.0
    pieces = swelling[: each * _PIECES].reshape(_PIECES, each)
    mean = pieces.mean(axis=1)
    return float(np.median((pieces**2).mean(axis=1) / np.maximum(mean, 1e-300) ** 2)) - 2.0
