"""Lines of a spectrum that stand at one rate and its multiples: how many, how strong, how sure."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil, exp, factorial, floor, log, sqrt

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.envelope import LineSpectrum

Samples = NDArray[np.float64]

SURE = log(1e-4)
"""Natural logarithm of the chance with which noise alone may make a line that is counted."""

_MOST_FROM_ONE_LINE = 12.0
_SMEAR = 0.0015
_BESIDE_BINS = 1.6
_PARTS_OF_A_TURN = 4
_HUMS = (50.0, 60.0)
_STEPS_A_BIN = 1.0


@dataclass(frozen=True)
class Line:
    """One place where a line is looked for: which multiple of the rate, and which sideband of it."""

    multiple: int
    sideband: int
    frequency: float
    size: float
    log_chance: float

    @property
    def stands(self) -> bool:
        return self.log_chance < SURE


@dataclass(frozen=True)
class Comb:
    """What was found at a rate and its multiples, in one band.

    `depth` is the share by which loudness swells at the multiples that stand clear of noise [1]; `log_chance`
    the natural logarithm of the chance that noise alone does it at any of the rates tried.
    """

    rate: float
    expected: float
    low: float
    high: float
    depth: float
    log_chance: float
    lines: tuple[Line, ...]

    @property
    def standing(self) -> tuple[Line, ...]:
        return tuple(line for line in self.lines if line.stands)

    @property
    def multiples(self) -> tuple[int, ...]:
        return tuple(line.multiple for line in self.standing if line.sideband == 0)

    @property
    def sidebands(self) -> int:
        return sum(1 for line in self.standing if line.sideband)

    @property
    def chance(self) -> float:
        return exp(max(self.log_chance, -700.0))


def foreign(
    spectrum: LineSpectrum, turns: float, lines: Sequence[float] = (), width: float = 2 * _SMEAR
) -> NDArray[np.bool_]:
    """Places of a spectrum that something else explains: quarters of the shaft's rate, hum, another comb.

    Parameters
    ----------
    spectrum : LineSpectrum
        The spectrum, power over its floor [1]; all of one step and length share the answer.
    turns : float
        Rate of the shaft [Hz].
    lines : sequence of float
        Frequencies that another comb explains [Hz].
    width : float
        How far from such a frequency its line may reach, as a share of it [-].

    Returns
    -------
    array
        True where a line says nothing of a bearing [-], of the spectrum's shape (n,).

    Notes
    -----
    A loose seat knocks at halves and quarters of the shaft's rate, so these are no bearing's. Hum: multiples
    of 50 and of 60 Hz.

    Source
    ------
    Fractions of the running speed with looseness: common practice in vibration diagnosis (from memory).

    Examples
    --------
    >>> above = np.ones(100)
    >>> hidden = foreign(LineSpectrum.of((0.0, 1.0), 1.0, above, above, 1), 40.0)
    >>> np.flatnonzero(hidden[:25]).tolist()
    [9, 10, 11, 19, 20, 21]
    """
    places: Samples = (np.arange(len(spectrum.above)) * spectrum.step).astype(np.float64)
    near = _BESIDE_BINS * spectrum.step
    quarter = turns / _PARTS_OF_A_TURN
    covered = _off(places, quarter) < min(near, 0.2 * quarter)
    for hum in _HUMS:
        covered |= _off(places, hum) < near
    for line in lines:
        wide = max(near, width * line) / spectrum.step
        middle = line / spectrum.step
        covered[max(0, ceil(middle - wide)) : max(0, floor(middle + wide) + 1)] = True
    return np.asarray(covered, dtype=np.bool_)


def comb(
    spectrum: LineSpectrum,
    expected: float,
    tolerance: float,
    multiples: int,
    sideband: float,
    hidden: NDArray[np.bool_] | None,
) -> Comb:
    """The best comb of lines near an expected rate.

    Parameters
    ----------
    spectrum : LineSpectrum
        Spectrum with its noise floor taken out, power over the floor [1].
    expected : float
        Rate to look near [Hz].
    tolerance : float
        How far from it to look, as a share [-].
    multiples : int
        How many multiples of the rate count [-].
    sideband : float
        Rate by which lines beside the first two multiples stand off [Hz]; 0 for none.
    hidden : array of bool or None
        Places that do not count because something else explains them [-], shape (n,), as `foreign` has
        them.

    Returns
    -------
    Comb
        The rate at which noise alone is least likely to do what is seen, with its lines.

    Notes
    -----
    Noise alone gives each place Gamma(looks) / looks; the chances of the multiples are put together by
    Fisher's sum, -2 sum ln p being chi-squared with two degrees of freedom each. No line counts for more than
    exp(-12), so one strong line is no comb. The chance is multiplied by the number of rates tried.

    Source
    ------
    Fisher, Statistical Methods for Research Workers, section 21.1 (from memory). Multiples and sidebands:
    Randall and Antoni, Mechanical Systems and Signal Processing 25 (2011) (from memory).

    Examples
    --------
    >>> above = np.ones(400)
    >>> above[[100, 200, 300]] = 50.0
    >>> spectrum = LineSpectrum.of((0.0, 1.0), 1.0, above, np.sqrt(above) / 100, 1)
    >>> found = comb(spectrum, 99.5, 0.01, 3, 0.0, None)
    >>> found.rate, found.multiples
    (100.0, (1, 2, 3))
    """
    reach = tolerance * expected
    finest = spectrum.step / (_STEPS_A_BIN * multiples)
    rates = np.asarray(
        expected + finest * np.arange(-int(reach / finest), int(reach / finest) + 1), dtype=np.float64
    )
    wanted = (np.arange(1.0, multiples + 1)[:, None] * rates).ravel()
    chances = _chance_at(spectrum, wanted, hidden)[0].reshape(multiples, -1)
    score = np.minimum(-chances, _MOST_FROM_ONE_LINE).sum(axis=0)
    best = int(np.argmax(score))
    rate = _weighed(spectrum, float(rates[best]), chances[:, best])
    tried = max(1.0, 2 * reach * multiples / spectrum.step)
    log_chance = _fisher(float(score[best]), multiples) + log(tried)
    places = [(m, 0) for m in range(1, multiples + 1)]
    if sideband > 0:
        places += [(m, side) for m in (1, 2) for side in (-1, 1)]
    lines = _looked_at(spectrum, rate, places, sideband, hidden)
    swelling = [line.size for line in lines if line.sideband == 0 and line.stands]
    depth = sqrt(sum(size**2 for size in swelling))
    return Comb(rate, expected, spectrum.low, spectrum.high, depth, min(0.0, log_chance), lines)


def _fisher(score: float, count: int) -> float:
    """Logarithm of the chance that chi-squared, 2 `count` degrees of freedom, exceeds twice the score."""
    return -score + log(sum(score**k / factorial(k) for k in range(count)))


def _weighed(spectrum: LineSpectrum, rate: float, chances: Samples) -> float:
    """The rate by least squares from the multiples that stand, those clear of noise counting for more."""
    standing = np.array([m for m, chance in enumerate(chances, 1) if chance < SURE], dtype=np.float64)
    if not len(standing):
        return rate
    weight = np.minimum(-chances[standing.astype(int) - 1], _MOST_FROM_ONE_LINE)
    at, _ = _highest(spectrum, standing * rate)
    exact = np.array([_between(spectrum.above, int(place)) for place in at]) * spectrum.step
    return float((weight * standing * exact).sum() / (weight * standing**2).sum())


def _between(above: Samples, place: int) -> float:
    """Where a line's top lies between the places of the spectrum: a parabola through the three logarithms."""
    if not 1 <= place < len(above) - 1:
        return float(place)
    left, top, right = np.log(np.maximum(above[place - 1 : place + 2], 1e-12))
    bend = left - 2 * top + right
    return place + float(np.clip(0.5 * (left - right) / bend, -0.5, 0.5)) if bend < 0 else float(place)


def _places(spectrum: LineSpectrum, frequency: Samples) -> tuple[NDArray[np.int64], NDArray[np.int64]]:
    """First and last place of the spectrum that a line of this frequency can take."""
    middle, wide = frequency / spectrum.step, 1 + _SMEAR * frequency / spectrum.step
    first = np.clip(np.rint(middle - wide), 0, len(spectrum.above) - 1).astype(np.int64)
    return first, np.clip(np.rint(middle + wide), 0, len(spectrum.above) - 1).astype(np.int64)


def _highest(spectrum: LineSpectrum, frequency: Samples) -> tuple[NDArray[np.int64], Samples]:
    """Where the spectrum is highest about each frequency, and in how many places it was looked for."""
    first, last = _places(spectrum, frequency)
    widest = int((last - first).max()) + 1
    around = np.minimum(first[:, None] + np.arange(widest), last[:, None])
    at = np.take_along_axis(around, np.argmax(spectrum.above[around], axis=1)[:, None], axis=1)[:, 0]
    return at, (last - first + 1).astype(np.float64)


def _chance_at(
    spectrum: LineSpectrum, frequency: Samples, hidden: NDArray[np.bool_] | None
) -> tuple[Samples, NDArray[np.int64]]:
    """Logarithm of the chance of what stands at each frequency, 0 where it says nothing; and its place."""
    at, places = _highest(spectrum, frequency)
    nothing = frequency > (len(spectrum.above) - 2) * spectrum.step
    if hidden is not None:
        nothing |= hidden[at]
    return np.where(nothing, 0.0, np.minimum(spectrum.log_chance[at] + np.log(places), 0.0)), at


def _looked_at(
    spectrum: LineSpectrum,
    rate: float,
    places: list[tuple[int, int]],
    sideband: float,
    hidden: NDArray[np.bool_] | None,
) -> tuple[Line, ...]:
    frequency = np.array([multiple * rate + side * sideband for multiple, side in places])
    chances, found = _chance_at(spectrum, frequency, hidden)
    return tuple(
        Line(*place, float(at * spectrum.step), float(spectrum.size[at]), float(chance))
        for place, at, chance in zip(places, found, chances, strict=True)
    )


def explained(found: Comb, turns: float, cage: float, highest: float) -> tuple[float, ...]:
    """All frequencies that a comb explains: multiples, with what shaft and cage put beside them.

    Parameters
    ----------
    found : Comb
        The comb, its rate in [Hz].
    turns : float
        Rate of the shaft [Hz].
    cage : float
        Rate of the cage [Hz].
    highest : float
        How far to go [Hz].

    Returns
    -------
    tuple of float
        Frequencies [Hz], seven a multiple.

    Notes
    -----
    Beside each multiple one and two turns' rates and one cage's rate to either side.

    Source
    ------
    Randall and Antoni, Mechanical Systems and Signal Processing 25 (2011): knocks are as loud as the load on
    the spot, which comes round with the shaft or the cage (from memory).

    Examples
    --------
    >>> explained(Comb(100.0, 100.0, 0.0, 1.0, 0.3, -30.0, ()), 30.0, 12.0, 150.0)
    (100.0, 130.0, 70.0, 160.0, 40.0, 112.0, 88.0)
    """
    count = int(highest / found.rate)
    beside: Sequence[float] = (0.0, turns, -turns, 2 * turns, -2 * turns, cage, -cage)
    return tuple(m * found.rate + off for m in range(1, count + 1) for off in beside)


def _off(frequency: Samples, rate: float) -> Samples:
    """Distance of each frequency from the nearest multiple of a rate, above zero."""
    multiple = np.maximum(1.0, np.rint(frequency / rate))
    return np.asarray(np.abs(frequency - multiple * rate), dtype=np.float64)
