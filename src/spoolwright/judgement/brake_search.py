"""How hard must the brake be set for so much slack and no more?"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from spoolwright.judgement.cast_inputs import CastInputs
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.mechanics import cast

GRID = 11
ROUNDS = 3
MOST = 32.0
"""Times its own brake beyond which a reel is not looked at."""


def share_for_slack(middle: CastInputs, wanted: float) -> float | None:
    """The share of a reel's brake at which the middle cast runs no more slack than wanted.

    Parameters
    ----------
    middle : CastInputs
        The middle cast **[SI]**, arrays of one.
    wanted : float
        Most slack **[m]**, above 0.

    Returns
    -------
    float or None
        Share of all that the reel has **[-]**: 0 where none is needed, above 1 where the reel has not enough;
        None where it has no brake, or 32 times of it would not do.

    Raises
    ------
    ValueError
        The slack that is wanted is not above 0.

    Notes
    -----
    As shares_for_slack, of one.

    Source
    ------
    mechanics.cast.

    Examples
    --------
    >>> from spoolwright.judgement.cast_inputs import CAST_DRAWS, cast_inputs
    >>> from spoolwright.judgement.monte_carlo import draw
    >>> from spoolwright.judgement.narrowing import know
    >>> from spoolwright.judgement.throw import Throw
    >>> from spoolwright.sheets import reel_sheet
    >>> known = know(reel_sheet.load("tarvak-58r"), {}, samples=200, seed=1)
    >>> draws = {**known.draws, **draw(CAST_DRAWS, samples=200, seed=2)}
    >>> middle = cast_inputs(known.sheet, known.state, draws, Throw(0.150, 55.0), 0.3e-3).middle
    >>> little, much = (share_for_slack(middle, slack) for slack in (0.5, 2.0))
    >>> 0 < much < little
    True
    """
    return shares_for_slack([middle], wanted)[0]


def shares_for_slack(several: Sequence[CastInputs], wanted: float) -> list[float | None]:
    """The share of the brake that keeps the slack wanted, for several middle casts at once.

    Parameters
    ----------
    several : sequence of CastInputs
        Middle casts of one variant **[SI]**, arrays of one.
    wanted : float
        Most slack **[m]**, above 0.

    Returns
    -------
    list of float or None
        For each as share_for_slack says **[-]**.

    Raises
    ------
    ValueError
        The slack that is wanted is not above 0.

    Notes
    -----
    Slack falls as the brake rises, so the first setting of a grid that is enough and the one before it hold
    the answer between them; the grid is laid again there, three times: within a thousandth of the brake.

    Source
    ------
    mechanics.cast.
    """
    if not wanted > 0:
        raise ValueError(f"wanted: above 0 is accepted; got {wanted}")
    braked = [number for number, one in enumerate(several) if one.brakes.has_any]
    found: list[float | None] = [None] * len(several)
    if not braked:
        return found
    middles = [several[number] for number in braked]
    first = np.concatenate([np.linspace(0.0, 1.0, GRID), np.geomspace(1.0, MOST, GRID)[1:]])
    shares = np.tile(first, (len(middles), 1))
    for _ in range(ROUNDS + 1):
        enough = np.less_equal(slack_at(middles, shares), wanted)
        place, reached = np.argmax(enough, axis=1), np.any(enough, axis=1)
        rows = np.arange(len(middles))
        high, low = shares[rows, place], shares[rows, np.maximum(place - 1, 0)]
        shares = np.linspace(low, high, GRID, axis=1)
    for row, number in enumerate(braked):
        found[number] = float(high[row]) if bool(reached[row]) else None
    return found


def slack_at(several: Sequence[CastInputs], shares: Sample) -> Sample:
    """Greatest slack of some middle casts at several settings of their brakes.

    Parameters
    ----------
    several : sequence of CastInputs
        Middle casts of one variant **[SI]**, arrays of one.
    shares : array
        Shares of all that each reel has **[-]**, shape `(casts, settings)`.

    Returns
    -------
    array
        Slack **[m]**, shape `(casts, settings)`.

    Source
    ------
    mechanics.cast.
    """
    arguments = stacked(several, [1.0] * len(several))
    for name in ("brake_magnetic", "brake_centrifugal"):
        arguments[name] = arguments[name] * shares
    return np.asarray(cast.simulate(**arguments, variant=several[0].variant).peak_slack)


def stacked(
    several: Sequence[CastInputs], shares: Sequence[float], constant: float | None = None
) -> dict[str, Sample]:
    """Arguments of several middle casts, one under the other.

    Parameters
    ----------
    several : sequence of CastInputs
        Middle casts of one variant **[SI]**, arrays of one.
    shares : sequence of float
        How each one's brake is set **[-]**.
    constant : float or None
        A measured brake in place of them all **[N m s]**.

    Returns
    -------
    dict of str to array
        Arguments of mechanics.cast **[SI]**, each of shape `(casts, 1)`.

    Source
    ------
    Arithmetic.
    """
    rows = [one.arguments(share, constant) for one, share in zip(several, shares, strict=True)]
    return {name: np.array([np.ravel(row[name])[:1] for row in rows]) for name in rows[0]}
