"""How the loudness of a sound swells and fades, as a spectrum a band: knocks show at their rate."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Samples = NDArray[np.float64]

TURNS_A_SPECTRUM = 120.0
"""Turns of the shaft in one spectrum: lines a hundredth of a turn's rate apart are told apart."""

_SHORTEST = 0.5
_FINEST = 8
_LOWEST_IN_RATES = 3.0
_NARROWEST_IN_RATES = 4.0
_TOP = 0.95
_MIDDLE = 0.6
_AROUND_TURNS = 2.5


@dataclass(frozen=True, eq=False)
class LineSpectrum:
    """A spectrum with its noise floor taken out: how far each frequency stands above what lies around it.

    `above` is the power over the local noise floor [1], `size` the amplitude of a steady line there: for an
    envelope the share by which loudness swells, for a sound its full-scale amplitude. `looks` spectra were
    averaged, so noise alone has `above` distributed as Gamma(looks) / looks; `log_chance` is the natural
    logarithm of the chance that it stands so high.
    """

    low: float
    high: float
    step: float
    above: Samples
    size: Samples
    log_chance: Samples
    looks: int = 1

    @classmethod
    def of(
        cls, band: tuple[float, float], step: float, above: Samples, size: Samples, looks: int
    ) -> LineSpectrum:
        return cls(band[0], band[1], step, above, size, _log_chance(above, looks), looks)


def bands(rate: float, fastest: float) -> list[tuple[float, float]]:
    """Bands to listen in: all, halves, quarters and eighths of what lies above the machine's own low tones.

    Parameters
    ----------
    rate : float
        Samples a second [Hz].
    fastest : float
        The fastest knock that is looked for [Hz].

    Returns
    -------
    list
        Pairs of lower and upper edge [Hz]; empty where the recording has no room above the knocks.

    Notes
    -----
    From three times the fastest knock to 0.95 of half the sampling rate. A band is at least four times as
    wide as the fastest knock, since a narrower one cannot follow it.

    Source
    ------
    Antoni, Fast computation of the kurtogram, Mechanical Systems and Signal Processing 21 (2007), for the
    tree of bands (from memory); the edges are judgement priors.

    Examples
    --------
    >>> bands(12000.0, 160.0)[:3]
    [(480.0, 5700.0), (480.0, 3090.0), (3090.0, 5700.0)]
    """
    low, high = _LOWEST_IN_RATES * fastest, _TOP * rate / 2
    found = []
    parts = 1
    while parts <= _FINEST:
        width = (high - low) / parts
        if width < _NARROWEST_IN_RATES * fastest:
            break
        found += [(low + k * width, low + (k + 1) * width) for k in range(parts)]
        parts *= 2
    return found


def pieces(samples: NDArray[np.floating], rate: float, turns: float) -> list[Samples]:
    """The recording cut into equal pieces of about 120 turns, or left whole where it is shorter than two.

    Parameters
    ----------
    samples : array
        Sound, full scale 1 [1], shape (n,).
    rate : float
        Samples a second [Hz].
    turns : float
        Turns of the shaft a second [Hz].

    Returns
    -------
    list of array
        Pieces, all of one length [1], in their order.

    Notes
    -----
    A spectrum over more turns would tell apart what a speed that is never quite steady blurs anyhow;
    averaging several makes the noise floor even.

    Source
    ------
    Welch, IEEE Trans. Audio and Electroacoustics 15 (1967), for averaging over pieces (from memory); 120
    turns is a judgement prior.

    Examples
    --------
    >>> [len(piece) for piece in pieces(np.zeros(80_000), 8000.0, 30.0)]
    [40000, 40000]
    """
    length = max(TURNS_A_SPECTRUM / turns, _SHORTEST) * rate
    count = max(1, int(len(samples) / length))
    each = len(samples) // count
    return [np.asarray(samples[k * each : (k + 1) * each], dtype=np.float64) for k in range(count)]


def spectra(
    cut: list[Samples], rate: float, wanted: list[tuple[float, float]], highest: float, turns: float
) -> Iterator[LineSpectrum]:
    """Spectrum of the squared envelope in each of the wanted bands.

    Parameters
    ----------
    cut : list of array
        Pieces of the sound, all of one length [1].
    rate : float
        Samples a second [Hz].
    wanted : list
        Lower and upper edge of each band [Hz].
    highest : float
        How far the spectrum shall go [Hz].
    turns : float
        Turns of the shaft a second [Hz]: the noise floor is the median over five turns' rates around.

    Returns
    -------
    iterator
        A `LineSpectrum` a band.

    Notes
    -----
    The analytic signal of a band is the inverse transform of the band's own part of the spectrum; its squared
    size over its mean is the envelope, Hann windowed, transformed again.

    Source
    ------
    Randall and Antoni, Rolling element bearing diagnostics - a tutorial, Mechanical Systems and Signal
    Processing 25 (2011), section on envelope analysis (from memory).

    Examples
    --------
    >>> t = np.arange(16000) / 8000.0
    >>> knocking = (1 + 0.5 * np.cos(2 * np.pi * 50 * t)) * np.random.default_rng(1).normal(size=t.size)
    >>> (found,) = spectra([knocking], 8000.0, [(1000.0, 3000.0)], 200.0, 10.0)
    >>> float(np.argmax(found.above) * found.step)
    50.0
    """
    whole = [np.fft.rfft(piece) for piece in cut]
    length = len(cut[0])
    step = rate / length
    for low, high in wanted:
        first, last = int(low / step), int(high / step)
        power = np.mean([_envelope_power(one[first:last], highest / step) for one in whole], axis=0)
        yield _lines(power, step, len(cut), (low, high), turns)


def swelling_lines(
    cut: list[Samples], rate: float, highest: float, turns: float, band: tuple[float, float]
) -> LineSpectrum:
    """Spectrum of a loudness that is at hand already, floor taken out, as `spectra` has it of a sound.

    Parameters
    ----------
    cut : list of array
        Pieces of the loudness [1], all of one length.
    rate : float
        Samples a second [Hz], or a turn [1].
    highest : float
        How far the spectrum shall go, in the same [Hz] or times a turn [1].
    turns : float
        Turns of the shaft a second [Hz], or 1 where the samples are taken by the turn.
    band : tuple
        Lower and upper edge of the band whose loudness it is [Hz].

    Returns
    -------
    LineSpectrum
        Power over the floor [1] and swelling [1] at each frequency.

    Notes
    -----
    Each piece over its mean, Hann windowed; squared amplitudes averaged over the pieces.

    Source
    ------
    Welch, IEEE Trans. Audio and Electroacoustics 15 (1967) (from memory).

    Examples
    --------
    >>> angle = np.arange(6400) / 64.0
    >>> loud = 1 + 0.5 * np.cos(2 * np.pi * 3.5 * angle) + 0.1 * np.random.default_rng(1).normal(size=6400)
    >>> found = swelling_lines([loud], 64.0, 20.0, 1.0, (500.0, 5000.0))
    >>> round(float(np.argmax(found.above) * found.step), 2)
    3.5
    """
    step = rate / len(cut[0])
    power = np.mean([_power_of_swelling(piece, highest / step) for piece in cut], axis=0)
    return _lines(power, step, len(cut), band, turns)


def sound_lines(cut: list[Samples], rate: float, highest: float, turns: float) -> LineSpectrum:
    """Spectrum of the sound itself, floor taken out, as `spectra` has it of the envelope.

    Parameters
    ----------
    cut : list of array
        Pieces of the sound, all of one length [1].
    rate : float
        Samples a second [Hz].
    highest : float
        How far the spectrum shall go [Hz].
    turns : float
        Turns of the shaft a second [Hz], for the width of the noise floor.

    Returns
    -------
    LineSpectrum
        Power over the floor [1] and amplitude of a steady tone [1] at each frequency.

    Notes
    -----
    Hann window, squared amplitudes averaged over the pieces.

    Source
    ------
    Welch, IEEE Trans. Audio and Electroacoustics 15 (1967) (from memory).

    Examples
    --------
    >>> time = np.arange(8000) / 8000.0
    >>> sound = np.sin(2 * np.pi * 40 * time) + 0.01 * np.random.default_rng(1).normal(size=8000)
    >>> found = sound_lines([sound], 8000.0, 200.0, 10.0)
    >>> round(float(found.size.max()), 2), float(np.argmax(found.above) * found.step)
    (1.0, 40.0)
    """
    length = len(cut[0])
    window = np.hanning(length)
    step = rate / length
    count = int(min(highest, _TOP * rate / 2) / step)
    power = np.mean(
        [np.abs(np.fft.rfft(piece * window)[:count] * 2 / window.sum()) ** 2 for piece in cut], axis=0
    )
    return _lines(power, step, len(cut), (0.0, highest), turns)


def _envelope_power(part: NDArray[np.complex128], count: float) -> Samples:
    """Squared amplitudes of the swelling of one band: 1 where loudness goes from nothing to double."""
    return _power_of_swelling(np.abs(np.fft.ifft(part, 2 * len(part))) ** 2, count)


def _power_of_swelling(swelling: Samples, count: float) -> Samples:
    mean = swelling.mean()
    if mean <= 0:
        return np.zeros(int(count))
    window = np.hanning(len(swelling))
    lines = np.fft.rfft((swelling / mean - 1) * window)[: int(count)] * 2 / window.sum()
    return np.asarray(np.abs(lines) ** 2, dtype=np.float64)


def _lines(power: Samples, step: float, looks: int, band: tuple[float, float], turns: float) -> LineSpectrum:
    floor = _floor(power, max(25, round(2 * _AROUND_TURNS * turns / step))) / _middle(looks)
    above = power / np.maximum(floor, 1e-300)
    above[: max(2, round(0.1 * turns / step))] = 0.0
    return LineSpectrum.of(band, step, above, np.sqrt(power), looks)


def _middle(looks: int) -> float:
    """Median of Gamma(looks) / looks."""
    from scipy import special

    return float(special.gammaincinv(looks, 0.5)) / looks


def _log_chance(above: Samples, looks: int) -> Samples:
    """Of Gamma(looks) / looks; its leading term where the function itself runs out of small numbers."""
    from scipy import special

    value = above * looks
    chance = special.gammaincc(looks, value)
    far = -value + (looks - 1) * np.log(np.maximum(value, 1.0)) - special.gammaln(looks)
    return np.asarray(np.where(chance > 1e-290, np.log(np.maximum(chance, 1e-300)), far), dtype=np.float64)


def _floor(power: Samples, wide: int) -> Samples:
    """Local median, from blocks half as wide as asked and straight lines between them."""
    half = max(1, wide // 2)
    count = max(1, len(power) // half)
    middles = [(k + 0.5) * half for k in range(count)]
    levels = [
        float(np.median(power[max(0, (k - 1) * half + half // 2) : (k + 1) * half + half // 2 + 1]))
        for k in range(count)
    ]
    return np.asarray(np.interp(np.arange(len(power)), middles, levels), dtype=np.float64)
