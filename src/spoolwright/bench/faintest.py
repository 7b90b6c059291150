"""The faintest knocks that a recording would have shown: what "sound" is worth."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import log, log10

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.envelope import LineSpectrum

NEEDED = -13.0
"""Natural logarithm of the chance of noise at each of the first three lines, from which a family is sure to
be noticed: three such lines outweigh all that is searched."""

_SCATTER = 2.0
"""A line of twice the power that is needed falls short of it by chance once in ten times or less."""


@dataclass(frozen=True)
class Faintest:
    """Power of the faintest knocks that would have shown, in dB over that of the whole noise.

    `level` is for knocks that ring in the band where the noise hides them best, from `low` to `high` [Hz];
    `best` for the band where it hides them least.
    """

    level: float
    low: float
    high: float
    best: float


def faintest(spectra: Sequence[LineSpectrum], shares: Sequence[float], rate: float) -> Faintest | None:
    """The faintest knocks at a rate that would have shown in one of the bands.

    Parameters
    ----------
    spectra : sequence of LineSpectrum
        Envelope spectra of the bands, power over the floor and share by which loudness swells [1].
    shares : sequence of float
        Share of the whole noise's power that lies in each band [1], 0 to 1.
    rate : float
        Rate of the knocks [Hz], above zero.

    Returns
    -------
    Faintest or None
        Levels in dB over the whole noise; None where the spectra do not reach three multiples of the rate.

    Notes
    -----
    Knocks that hold the share p of a band's power make it swell by 2 p at each of the first multiples of
    their rate, for they are short. So p is half the swelling that stands clear of the floor there, and their
    power over the whole is p times the band's share over (1 - p). The floor is taken at the highest of the
    three multiples. A narrower band within a wider one counts where it shows more.

    Source
    ------
    Fourier series of a train of short pulses: all first lines are twice the mean. Limit of the chance:
    judgement prior, tried on simulations.

    Examples
    --------
    >>> above, size = np.ones(400), np.full(400, 0.01)
    >>> quiet = LineSpectrum.of((500.0, 5500.0), 1.0, above, size, 1)
    >>> round(faintest([quiet], [1.0], 100.0).level)
    -16
    """
    found = []
    for spectrum, share in zip(spectra, shares, strict=True):
        need = _needed_swelling(spectrum, rate)
        if need is None or share <= 0:
            continue
        part = min(need / 2, 0.99)
        found.append((10 * log10(part / (1 - part) * share), spectrum.low, spectrum.high))
    if not found:
        return None
    narrow = min(high - low for _, low, high in found)
    seen = [_where(found, low, high) for _, low, high in found if high - low < 1.01 * narrow]
    level, low, high = max(seen)
    return Faintest(level, low, high, min(seen)[0])


def _where(found: list[tuple[float, float, float]], low: float, high: float) -> tuple[float, float, float]:
    """The best level of all bands that hold this one: knocks that ring in it are in those too."""
    return min((level for level, a, b in found if a <= low + 1 and b >= high - 1)), low, high


def _needed_swelling(spectrum: LineSpectrum, rate: float) -> float | None:
    around = [round(multiple * rate / spectrum.step) for multiple in (1, 2, 3)]
    wide = max(3, round(0.1 * rate / spectrum.step))
    if around[-1] + wide >= len(spectrum.above):
        return None
    floors = [_floor(spectrum, at - wide, at + wide) for at in around]
    return float(max(floors) * np.sqrt(_SCATTER * _multiple(spectrum)))


def _floor(spectrum: LineSpectrum, first: int, last: int) -> float:
    """Swelling of the noise floor itself: size of a place over the root of how far it stands above."""
    part = slice(max(1, first), last)
    above, size = spectrum.above[part], spectrum.size[part]
    kept = above > 0
    return float(np.median(size[kept] / np.sqrt(above[kept]))) if kept.any() else 1.0


def _multiple(spectrum: LineSpectrum) -> float:
    """How far above the floor a line must stand: from the spectrum's own pairs of height and chance."""
    from scipy import special

    return float(special.gammainccinv(spectrum.looks, np.exp(NEEDED))) / spectrum.looks


def band_shares(power: NDArray[np.float64], step: float, bands: Sequence[tuple[float, float]]) -> list[float]:
    """Share of the whole noise's power in each band.

    Parameters
    ----------
    power : array
        Power of the sound at each place of its spectrum [1], shape (n,).
    step : float
        Distance of the places [Hz], above zero.
    bands : sequence
        Lower and upper edge of each band [Hz].

    Returns
    -------
    list of float
        Shares [1], of all that lies above the lowest edge.

    Source
    ------
    Parseval's theorem.

    Examples
    --------
    >>> band_shares(np.ones(100), 1.0, [(10.0, 100.0), (10.0, 55.0)])
    [1.0, 0.5]
    """
    whole = float(power[int(min(low for low, _ in bands) / step) :].sum())
    if whole <= 0:
        return [0.0 for _ in bands]
    return [float(power[int(low / step) : int(high / step)].sum()) / whole for low, high in bands]


def as_ratio(level: float) -> str:
    """A level below the noise as a plain fraction.

    Parameters
    ----------
    level : float
        Power over the noise in dB [-].

    Returns
    -------
    str
        "a fiftieth of" and so on, rounded coarsely.

    Source
    ------
    Common practice.

    Examples
    --------
    >>> as_ratio(-17.0), as_ratio(3.0)
    ('1/50 of', '2 times')
    """
    ratio = 10 ** (abs(level) / 10)
    places = 10 ** int(log(max(ratio, 1.0)) / log(10))
    rounded = int(round(ratio / places) * places)
    return f"1/{rounded} of" if level < 0 else f"{rounded} times"
