"""The combs of lines at a bearing's rates: the best of each part, none counted twice."""

from __future__ import annotations

from math import log

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import comb
from spoolwright.bench.bearing_rates import BALL, CAGE, INNER, MULTIPLES, OUTER
from spoolwright.bench.comb import Comb
from spoolwright.bench.envelope import LineSpectrum

FALSE_ALARM = log(1e-4)
"""Natural logarithm of the chance that noise alone is called a damage, over all that is searched."""

_FEWEST_OF_CAGE, _FEWEST = 4, 3


def combs(
    spectra: tuple[LineSpectrum, ...], rates: dict[str, float], turns: float, slip: float
) -> dict[str, Comb]:
    """The best comb of each part; those of weaker parts without the lines that a stronger one explains.

    Parameters
    ----------
    spectra : tuple of LineSpectrum
        Envelope spectrum of each band, frequency in [Hz] or in times a turn [1].
    rates : dict
        Rate of each part, in the same [Hz] or [1].
    turns : float
        Rate of the shaft, in the same [Hz] or [1].
    slip : float
        How far from its rate a part may knock, as a share [-].

    Returns
    -------
    dict
        A `Comb` a part.

    Notes
    -----
    The strongest first; what it explains, multiples with the shaft's and the cage's rates beside them, is
    hidden from the rest.

    Source
    ------
    Randall and Antoni, Mechanical Systems and Signal Processing 25 (2011), for what stands beside a rate
    (from memory).

    Examples
    --------
    >>> above = np.ones(4000)
    >>> above[[360, 720, 1080]] = 50.0
    >>> found = LineSpectrum.of((0.0, 1.0), 0.01, above, np.sqrt(above) / 10, 1)
    >>> combs((found,), {"outer": 3.6, "inner": 5.4}, 1.0, 0.01)["outer"].multiples
    (1, 2, 3)
    """
    found: dict[str, Comb] = {}
    taken: tuple[float, ...] = ()
    left = list(rates)
    cage = rates.get(CAGE, 0.0)
    while left:
        hidden = comb.foreign(spectra[0], turns, taken)
        now = {kind: _best(kind, spectra, rates, (turns, slip), hidden) for kind in left}
        strongest = max(left, key=lambda kind: (now[kind].depth, -now[kind].log_chance))
        found[strongest] = now[strongest]
        left.remove(strongest)
        if now[strongest].log_chance >= FALSE_ALARM or now[strongest].depth <= 0:
            return now | found
        top = len(spectra[0].above) * spectra[0].step
        taken += comb.explained(now[strongest], turns, cage, top)
    return found


def _best(
    kind: str,
    spectra: tuple[LineSpectrum, ...],
    rates: dict[str, float],
    shaft: tuple[float, float],
    hidden: NDArray[np.bool_],
) -> Comb:
    turns, slip = shaft
    beside = {INNER: turns, BALL: rates.get(CAGE, 0.0)}.get(kind, 0.0)
    found = [comb.comb(s, rates[kind], slip, MULTIPLES[kind], beside, hidden) for s in spectra]
    searched = log(len(found) * len(rates))
    sure = [one for one in found if one.log_chance + searched < FALSE_ALARM and is_a_family(kind, one)]
    if sure:
        return max(sure, key=lambda one: one.depth)
    return min(found, key=lambda one: one.log_chance)


def is_a_family(kind: str, found: Comb) -> bool:
    """Whether the first line and two more at least stand: one alone is a tone, a beat, another's harmonic.

    Parameters
    ----------
    kind : str
        Which part the comb is looked for [-].
    found : Comb
        Its lines, frequency in [Hz].

    Returns
    -------
    bool
        True where the lines are a family.

    Notes
    -----
    Lines beside the multiples count for ring and balls that turn; a cage needs four multiples, because its
    rate is so low that some of them fall on anything.

    Source
    ------
    Common practice in vibration diagnosis; three and four are judgement priors.

    Examples
    --------
    >>> is_a_family("outer", Comb(100.0, 100.0, 0.0, 1.0, 0.3, -30.0, ()))
    False
    """
    if 1 not in found.multiples:
        return False
    count = len(found.multiples)
    if kind == CAGE:
        return count >= _FEWEST_OF_CAGE
    if kind == OUTER:
        return count >= _FEWEST
    return count + found.sidebands >= _FEWEST
