"""Bangs that have nothing to do with the bearing, a word, a door, a dropped tool, turned down to the rest."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Samples = NDArray[np.float64]

TURNS_A_FRAME = 2.5
"""About one turn of a cage: a damage that comes round with it is in every frame."""

OUT_OF_LINE = 6.0
"""Power of a frame over the middle one from which it is a bang: judgement prior."""

_FEWEST_FRAMES = 8


def turned_down(samples: NDArray[np.floating], rate: float, turns: float) -> tuple[Samples, float]:
    """The recording with each frame that is far louder than the rest brought down to their level.

    Parameters
    ----------
    samples : array
        Sound, full scale 1 [1], shape (n,).
    rate : float
        Samples a second [Hz], above zero.
    turns : float
        Turns of the shaft a second [Hz], above zero.

    Returns
    -------
    tuple
        The sound [1], shape (n,), and the share of the time that was turned down [1].

    Notes
    -----
    Frames of two and a half turns: knocks of a ring, a ball or a cage are in all of them, so a damaged
    bearing keeps its own swelling. A frame of more than six times the middle power is scaled to it. Fewer
    than eight frames are left as they are.

    Source
    ------
    Common practice; six and two and a half are judgement priors.

    Examples
    --------
    >>> hiss = np.random.default_rng(1).normal(0.0, 0.1, 24000)
    >>> hiss[5000:5100] += 5.0
    >>> evened, share = turned_down(hiss, 12000.0, 30.0)
    >>> round(share, 3), bool(np.abs(evened).max() < 1.0)
    (0.042, True)
    """
    sound = np.array(samples, dtype=np.float64)
    each = max(1, round(TURNS_A_FRAME * rate / turns))
    count = len(sound) // each
    if count < _FEWEST_FRAMES:
        return sound, 0.0
    edges = np.arange(0, count * each, each)
    lengths = np.diff(np.append(edges, len(sound)))
    power = np.add.reduceat(sound**2, edges) / lengths
    middle = float(np.median(power))
    loud = power > OUT_OF_LINE * middle
    if middle <= 0 or not loud.any():
        return sound, 0.0
    gain = np.where(loud, np.sqrt(middle / np.maximum(power, 1e-300)), 1.0)
    return sound * np.repeat(gain, lengths), float(lengths[loud].sum() / len(sound))
