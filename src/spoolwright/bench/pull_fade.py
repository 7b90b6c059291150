"""Pull after pull of the same drag: does it fade, tighten or hold, and by how much?"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import sqrt

import numpy as np

from spoolwright.bench import pulls
from spoolwright.bench.budget import ROUNDING
from spoolwright.bench.pulls import PRIOR_FREEDOM, PULL_TO_PULL, OnePull
from spoolwright.bench.student import widening
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable

FEWEST = 4
ACCEPTED = "four pulls or more, one after the other, the drag untouched"
HOLDS_WITHIN = 0.10
"""Change of pull that still counts as holding, as for drift in one pull: judgement prior."""

FADES, TIGHTENS, HOLDS, CANNOT_TELL = "fades", "tightens", "holds", "cannot tell"


@dataclass(frozen=True)
class PullFade:
    """How the pull changes from the first pull to the last.

    first: pull at the beginning, by the line through all [N]. change: what it gains or loses by the last, as
    a share of the first [-], below zero where it fades. verdict: "fades", "tightens", "holds" or
    "cannot tell".
    """

    pulls: tuple[OnePull, ...]
    first: Measured
    change: Measured
    verdict: str
    fitted: tuple[tuple[float, float], ...]
    notes: tuple[str, ...] = ()


def fit(taken: Sequence[OnePull]) -> PullFade:
    """The fade of a drag over repeated pulls, with its interval.

    Parameters
    ----------
    taken : sequence of OnePull
        Pulls [N] in order; `at` is the number of the pull [-], the time [s] or the temperature [K].

    Returns
    -------
    PullFade
        First pull [N] and change [1], each with its standard uncertainty, and the verdict.

    Raises
    ------
    Unreadable
        Fewer than four pulls, or all at the same moment.

    Notes
    -----
    Straight line through the pulls; change = slope (last - first) / pull at the first. The scatter about the
    line is shrunk to 3 % of the pull, worth four readings, and widened for few readings. The scale of the
    gauge cancels. "Fades" and "tightens" are said where the interval (k = 2) leaves out no change at all and
    reaches beyond 5 %; "holds" where it does not, or where no change lies in it and all of it within 10 %.

    Source
    ------
    Least squares with its covariance, JCGM 100:2008, H.3; ratio to first order, 5.2.2.

    Examples
    --------
    >>> found = fit([OnePull(n, 50.0 - 2.0 * n) for n in range(1, 9)])
    >>> found.verdict, round(found.change.value, 3)
    ('fades', -0.292)
    """
    pulls.check(taken, FEWEST, ACCEPTED)
    at, pull = np.array([p.at for p in taken]), np.array([p.running for p in taken])
    span = float(at.max() - at.min())
    if not span > 0:
        raise Unreadable("all pulls were taken at the same moment", "", ACCEPTED)
    x = (at - at.min()) / span
    design = np.stack([np.ones_like(x), x], axis=1)
    cofactor = np.linalg.inv(design.T @ design)
    begin, slope = cofactor @ design.T @ pull
    if not begin > 0:
        raise Unreadable("the line through the pulls begins at nothing", "", ACCEPTED)
    variance = _variance(pull - design @ np.array([begin, slope]), float(pull.mean()), taken)
    change = float(slope / begin)
    gradient = np.array([-change, 1.0]) / begin
    spread = sqrt(float(gradient @ cofactor @ gradient) * variance)
    found = Measured(change, spread, "ratio")
    ends = ((float(at.min()), float(begin)), (float(at.max()), float(begin + slope)))
    return PullFade(
        tuple(taken),
        Measured(float(begin), sqrt(float(cofactor[0, 0]) * variance), "force"),
        found,
        verdict(found),
        ends,
        _notes(taken),
    )


def _variance(residual: np.typing.NDArray[np.float64], mean: float, taken: Sequence[OnePull]) -> float:
    own = len(residual) - 2
    freedom = PRIOR_FREEDOM + own
    square = (PRIOR_FREEDOM * (PULL_TO_PULL * mean) ** 2 + float(np.sum(residual**2))) / freedom
    step = max(pull.step for pull in taken) * ROUNDING
    return square * widening(freedom) ** 2 + step**2


def verdict(change: Measured) -> str:
    """What a change of pull amounts to.

    Parameters
    ----------
    change : Measured
        Change as a share of the first pull with its standard uncertainty [1].

    Returns
    -------
    str
        "fades", "tightens", "holds" or "cannot tell" [-].

    Source
    ------
    Decision by the interval at k = 2, JCGM 106:2012, 8.2 in spirit; the 10 % is a judgement prior.

    Examples
    --------
    >>> verdict(Measured(-0.02, 0.02, "ratio")), verdict(Measured(-0.10, 0.10, "ratio"))
    ('holds', 'cannot tell')
    """
    low, high = change.value - change.expanded, change.value + change.expanded
    if high < 0:
        return HOLDS if low > -HOLDS_WITHIN / 2 else FADES
    if low > 0:
        return HOLDS if high < HOLDS_WITHIN / 2 else TIGHTENS
    return HOLDS if max(-low, high) <= HOLDS_WITHIN else CANNOT_TELL


def _notes(taken: Sequence[OnePull]) -> tuple[str, ...]:
    if len(taken) < 6:
        return ("Few pulls: six or more, without a rest between them, show a fade better.",)
    return ()
