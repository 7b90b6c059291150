"""What a bearing's noise says while the spool coasts: loudness by the turn instead of by the second."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import envelope
from spoolwright.bench.bearing_combs import combs
from spoolwright.bench.bearing_noise import SLIP, BearingNoise, about_clipping, concluded
from spoolwright.bench.bearing_rates import CANNOT_TELL, INNER, OUTER, Bearing, highest, rates
from spoolwright.bench.bearing_verdict import Heard
from spoolwright.bench.envelope import LineSpectrum
from spoolwright.bench.faintest import faintest
from spoolwright.bench.loudness import HIGH_ABOVE
from spoolwright.bench.recording import Recording
from spoolwright.bench.turning import Turning

Samples = NDArray[np.float64]

FEWEST_TURNS = 40
"""Turns of a coast below which the lines of ball and cage run into each other."""

PLACES_A_TURN = 96
"""Places of the loudness in a turn: room for thirty knocks a turn and their sidebands."""

A_TURN = "times a turn"

_FINER = 4
_PROFILE_PLACES, _PROFILE_TURNS = 32, 20
_LOUDEST, _TICK = 25.0, 4.0
_MEAN_OVER_MIDDLE = 1.4427
"""Mean over median of the squared size of plain noise: 1 / ln 2."""
_HALVES_AND_QUARTERS = 7


def listen(recording: Recording, bearing: Bearing, turned: Turning) -> BearingNoise:
    """What the noise of a bearing says while the spool coasts.

    Parameters
    ----------
    recording : Recording
        Sound of one channel, full scale 1 [1], with its rate [Hz].
    bearing : Bearing
        Number of balls [-], ball and pitch diameter [m], contact angle [rad].
    turned : Turning
        Turns [-] of the spool at moments of the recording [s].

    Returns
    -------
    BearingNoise
        As `bearing_noise.listen` has it, its rates in times a turn [1].

    Notes
    -----
    Squared envelope of each band, divided by the middle loudness at the same place of the turn over twenty
    turns (so the tick of each turn, and the sound's fading, fall out), summed over equal angles (so nothing
    quicker than half of them remains), its spectrum taken over pieces of 120 turns. Frequencies are then
    knocks a turn and stay while the speed falls. The same combs and the same limits as at a steady speed;
    the shaft counts as heard, for its ticks are.

    Source
    ------
    Fyfe and Munck, Analysis of computed order tracking, Mechanical Systems and Signal Processing 11 (1997);
    Randall and Antoni, ibid. 25 (2011), for the envelope by angle (both from memory).

    Examples
    --------
    >>> hiss = np.random.default_rng(1).normal(0.0, 0.1, 24000).astype(np.float32)
    >>> turned = Turning(np.array([0.0, 2.0]), np.array([0.0, 60.0]))
    >>> listen(Recording(hiss, 12000.0), Bearing(9, 7.94e-3, 39.04e-3), turned).verdict
    'cannot tell'
    """
    orders = rates(bearing, 1.0)
    wanted = envelope.bands(recording.rate, orders[INNER] * turned.fastest)
    reason = _too_little(turned, bool(wanted))
    if reason:
        return BearingNoise(CANNOT_TELL, 0.0, (reason,), 1.0, False, orders, {}, unit=A_TURN)
    first, last = (int(moment * recording.rate) for moment in (turned.time[0], turned.time[-1]))
    samples = recording.samples[max(0, first) : last]
    heard = _hear(samples, recording.rate, turned, orders, wanted)
    covered = f"Heard over {turned.whole:.0f} turns in {turned.seconds:.1f} s; the ticks give the angle."
    return concluded(heard, (covered, *recording.notes, *about_clipping(samples)))


def _too_little(turned: Turning, has_bands: bool) -> str:
    if turned.whole < FEWEST_TURNS:
        return f"The coast holds {turned.whole:.0f} turns; it takes {FEWEST_TURNS} to tell the rates apart."
    if not has_bands:
        return "The recording has too few samples a second for knocks as quick as these."
    return ""


def _hear(
    samples: NDArray[np.floating],
    rate: float,
    turned: Turning,
    orders: dict[str, float],
    wanted: list[tuple[float, float]],
) -> Heard:
    spectra: list[LineSpectrum] = []
    middles, spikes = [], []
    for band, loud, middle, spiky in _bands(samples, rate, turned, wanted):
        cut = envelope.pieces(loud, float(PLACES_A_TURN), 1.0)
        spectra.append(envelope.swelling_lines(cut, float(PLACES_A_TURN), highest(orders), 1.0, band))
        middles.append(middle)
        spikes.append(spiky)
    shares = [middle / middles[0] if middles[0] > 0 else 0.0 for middle in middles]
    return Heard(
        1.0,
        True,
        orders,
        tuple(spectra),
        combs(tuple(spectra), orders, 1.0, SLIP),
        _high(wanted, middles),
        max(spikes[:_HALVES_AND_QUARTERS]),
        faintest(spectra, shares, orders[OUTER]),
        A_TURN,
    )


def _bands(
    samples: NDArray[np.floating], rate: float, turned: Turning, wanted: list[tuple[float, float]]
) -> Iterator[tuple[tuple[float, float], Samples, float, float]]:
    """Of each band: its edges, its loudness by the turn, its middle loudness, how spiky it is."""
    whole = np.fft.rfft(np.asarray(samples, dtype=np.float64))
    step = rate / len(samples)
    for low, high in wanted:
        part = whole[int(low / step) : int(high / step)]
        swelling = np.abs(np.fft.ifft(part, 2 * len(part))) ** 2
        seconds = turned.time[0] + (np.arange(len(swelling)) + 0.5) * len(samples) / rate / len(swelling)
        turns = turned.at(seconds) - turned.turns[0]
        even, middle, spiky = _without_profile(swelling, turns)
        yield (low, high), by_the_turn(even, turns, turned.whole), middle, spiky


def _without_profile(swelling: Samples, turns: Samples) -> tuple[Samples, float, float]:
    """Loudness over its middle at the same place of the turn, the middle of those, and how spiky the rest is.

    Where the tick of each turn stands out nothing else is heard, so that place is made even.
    """
    place = (np.floor((turns % 1.0) * _PROFILE_PLACES)).astype(np.int64) % _PROFILE_PLACES
    blocks = max(1, int(turns[-1] / _PROFILE_TURNS))
    block = np.minimum((turns / max(turns[-1], 1e-9) * blocks).astype(np.int64), blocks - 1)
    cell = block * _PROFILE_PLACES + place
    profile = _middles(swelling, cell, blocks * _PROFILE_PLACES).reshape(blocks, _PROFILE_PLACES)
    levels = np.median(profile, axis=1, keepdims=True)
    middle = float(np.median(levels))
    if middle <= 0:
        return np.ones(len(swelling)), 0.0, 0.0
    even = swelling / np.maximum(profile.ravel()[cell], 1e-6 * middle)
    even = np.minimum(even / _MEAN_OVER_MIDDLE, _LOUDEST)
    loud = profile > _TICK * np.maximum(levels, 1e-6 * middle)
    ticks = (loud | np.roll(loud, 1, axis=1) | np.roll(loud, -1, axis=1)).ravel()[cell]
    spiky = [_kurtosis(even[(block == k) & ~ticks]) for k in range(blocks)]
    even[ticks] = 1.0
    return np.asarray(even, dtype=np.float64), middle, float(np.median(spiky))


def _middles(values: Samples, cell: NDArray[np.int64], count: int) -> Samples:
    """Median of the values in each cell."""
    order = np.argsort(cell, kind="stable")
    edges = np.searchsorted(cell[order], np.arange(count + 1))
    laid = values[order]
    pairs = zip(edges[:-1], edges[1:], strict=True)
    return np.array([np.median(laid[a:b]) if b > a else 0.0 for a, b in pairs], dtype=np.float64)


def _kurtosis(part: Samples) -> float:
    if len(part) < 2:
        return 0.0
    return float((part**2).mean() / max(float(part.mean()), 1e-300) ** 2) - 2.0


def by_the_turn(loudness: NDArray[np.float64], turns: NDArray[np.float64], whole: float) -> Samples:
    """A loudness at even times as a loudness at even angles.

    Parameters
    ----------
    loudness : array
        Loudness [1], shape (n,).
    turns : array
        Turns [-] at each of its moments, rising, shape (n,).
    whole : float
        Turns in all [-], above zero.

    Returns
    -------
    array
        Mean loudness [1] in each of 96 places of each turn.

    Notes
    -----
    Summed over time, read at four times as many angles, and thinned by a low-pass filter: what swells quicker
    than the places can follow averages out instead of folding back.

    Source
    ------
    `scipy.signal.resample_poly` for the filter; sums over angle: common practice.

    Examples
    --------
    >>> turns = np.linspace(0.0, 10.0, 20000)
    >>> found = by_the_turn(1 + np.cos(2 * np.pi * 4 * turns), turns, 10.0)
    >>> len(found), round(float(found[480]), 1)
    (960, 2.0)
    """
    from scipy import signal

    count = int(whole) * PLACES_A_TURN * _FINER
    edges = np.arange(count + 1) / (PLACES_A_TURN * _FINER)
    middles = np.concatenate([[0.0], (turns[1:] + turns[:-1]) / 2, [max(float(turns[-1]), whole)]])
    summed = np.interp(edges, middles, np.concatenate([[0.0], np.cumsum(loudness)]))
    spent = np.interp(edges, middles, np.arange(len(loudness) + 1, dtype=np.float64))
    fine = np.diff(summed) / np.maximum(np.diff(spent), 1e-12)
    return np.asarray(signal.resample_poly(fine, 1, _FINER), dtype=np.float64)


def _high(wanted: Sequence[tuple[float, float]], middles: Sequence[float]) -> float:
    """Share of the noise, ticks left out, that lies high, from the narrowest bands."""
    narrow = min(high - low for low, high in wanted)
    parts = [(b, m) for b, m in zip(wanted, middles, strict=True) if b[1] - b[0] < 1.01 * narrow]
    split = max(HIGH_ABOVE, 2 * wanted[0][0])
    whole = sum(middle for _, middle in parts)
    if whole <= 0:
        return 1.0
    return sum(m * _part_above(band, split) for band, m in parts) / whole


def _part_above(band: tuple[float, float], split: float) -> float:
    low, high = band
    return min(1.0, max(0.0, (high - split) / (high - low)))
