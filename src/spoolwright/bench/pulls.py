"""Several pulls of one drag: how far they scatter, and what each setting comes to."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import sqrt

import numpy as np

from spoolwright.bench.budget import ROUNDING
from spoolwright.bench.student import widening
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable

PULL_TO_PULL = 0.03
"""Standard deviation of one pull from the next at the same setting, as a share: judgement prior."""

PRIOR_FREEDOM = 4.0
"""How many degrees of freedom that prior is worth beside the shop's own repeats: judgement prior."""

FLOOR = 0.003
"""Share of the greatest pull below which nothing of a drag is known (it creeps): judgement prior."""

MOST = 60
"""Pulls of one series; more belong into several."""

HARDEST = 3000.0
"""Pull [N] above which a reel has long been in pieces: judgement prior."""


@dataclass(frozen=True)
class OnePull:
    """One pull as a scale shows it.

    `at` is what was changed from pull to pull: turns [-], the number of the pull [-], seconds [s],
    kelvin [K] or metres a second [m/s]. `running` and `start_up` in [N], `step` the last digit [N],
    `judder` from the 5th to the 95th hundredth over the mean [-].
    """

    at: float
    running: float
    start_up: float | None = None
    step: float = 0.0
    judder: float | None = None


@dataclass(frozen=True)
class Scatter:
    """How far a pull lies from the next at the same setting: share of the pull, degrees of freedom, learned.

    `own` is how many of the degrees of freedom are this series' own.
    """

    share: float
    freedom: float
    own: int


@dataclass(frozen=True)
class Setting:
    """All pulls at one setting: means with their standard uncertainties [N], without the gauge's scale."""

    at: float
    running: Measured
    start_up: Measured | None
    pulls: int


def scatter_of(pulls: Sequence[OnePull]) -> Scatter:
    """How far pulls at the same setting differ, pooled over settings and shrunk to what is usual.

    Parameters
    ----------
    pulls : sequence of OnePull
        Pulls [N] at their settings.

    Returns
    -------
    Scatter
        Standard deviation as a share of the pull [-] and its degrees of freedom [-].

    Notes
    -----
    s^2 = (4 * 0.03^2 + sum of squared shares) / (4 + own degrees of freedom): the prior counts as four
    readings, so that two pulls that happen to agree do not make a perfect drag.

    Source
    ------
    Pooled variance: JCGM 100:2008, H.3.6 and H.5; scaled inverse chi-square prior, any text on Bayesian
    statistics. The prior itself: judgement prior.

    Examples
    --------
    >>> scatter_of([OnePull(1, 10.0), OnePull(2, 20.0)]).share
    0.03
    """
    squares, own = 0.0, 0
    for at in {pull.at for pull in pulls}:
        same = np.array([pull.running for pull in pulls if pull.at == at])
        if len(same) > 1 and same.mean() > 0:
            squares += float(np.sum((same / same.mean() - 1) ** 2))
            own += len(same) - 1
    freedom = PRIOR_FREEDOM + own
    return Scatter(sqrt((PRIOR_FREEDOM * PULL_TO_PULL**2 + squares) / freedom), freedom, own)


def settings_of(pulls: Sequence[OnePull], scatter: Scatter) -> tuple[Setting, ...]:
    """The pulls gathered by setting, in order.

    Parameters
    ----------
    pulls : sequence of OnePull
        Pulls [N] at their settings.
    scatter : Scatter
        How far one lies from the next [-].

    Returns
    -------
    tuple of Setting
        Means with standard uncertainties [N], by rising setting.

    Notes
    -----
    u^2 = (t s F)^2 / n + step^2 / 12 + floor^2; t widens a scatter that was learned from few readings. All
    pulls share the step, so no mean takes it away.

    Source
    ------
    JCGM 100:2008, 4.2.3, F.2.2.1 and G.3.2.

    Examples
    --------
    >>> [one] = settings_of([OnePull(2, 19.0), OnePull(2, 21.0)], Scatter(0.05, 1e9, 1))
    >>> one.running.value, one.pulls
    (20.0, 2)
    """
    wide = widening(scatter.freedom) * scatter.share
    floor = FLOOR * max((pull.running for pull in pulls), default=0.0)
    found = []
    for at in sorted({pull.at for pull in pulls}):
        same = [pull for pull in pulls if pull.at == at]
        starts = [pull.start_up for pull in same if pull.start_up is not None]
        step = max(pull.step for pull in same) * ROUNDING
        found.append(
            Setting(
                at,
                _mean([pull.running for pull in same], wide, step, floor),
                _mean(starts, wide, step, floor) if starts else None,
                len(same),
            )
        )
    return tuple(found)


def _mean(values: Sequence[float], share: float, step: float, floor: float) -> Measured:
    mean = float(np.mean(values))
    return Measured(mean, sqrt((share * mean) ** 2 / len(values) + step**2 + floor**2), "force")


def check(pulls: Sequence[OnePull], fewest: int, accepted: str) -> None:
    """Refuse pulls from which nothing can be read.

    Parameters
    ----------
    pulls : sequence of OnePull
        Pulls [N].
    fewest : int
        How many are needed [-].
    accepted : str
        What would be accepted [-], for the words.

    Returns
    -------
    None
        Nothing where all is well.

    Raises
    ------
    Unreadable
        Too few or too many pulls, a pull that is no pull, a start-up below half of what it runs at.

    Source
    ------
    Our own rules.

    Examples
    --------
    >>> check([OnePull(0, 1.0)], 1, "one pull")
    """
    if not fewest <= len(pulls) <= MOST:
        raise Unreadable(f"{len(pulls)} pulls were given", "", f"{accepted}; at most {MOST}")
    for number, pull in enumerate(pulls, 1):
        for value in (pull.running, pull.start_up):
            if value is not None and not 0 <= value <= HARDEST:
                raise Unreadable(f"{value:g} N is no pull of a reel", f"pull {number}", "0 to 300 kg")
        if pull.start_up is not None and pull.start_up < 0.5 * pull.running:
            reason = "the start-up pull is less than half of the running pull"
            raise Unreadable(
                reason, f"pull {number}", "the highest pull as it lets go, then the running pull"
            )
    if not any(pull.running > 0 for pull in pulls):
        raise Unreadable("no pull is above nothing", "", accepted)


def start_up_ratio(pulls: Sequence[OnePull]) -> Measured | None:
    """The start-up ratio of a series: one for all its settings.

    Parameters
    ----------
    pulls : sequence of OnePull
        Pulls [N], some with their start-up pull.

    Returns
    -------
    Measured or None
        Ratio with its standard uncertainty [1]; None where no start-up pull was given.

    Notes
    -----
    Mean of the single ratios: start-up and running pull of the same pull go up and down together, so the
    scatter of the ratio is far less than that of either. The gauge's scale cancels; the step stays.

    Source
    ------
    JCGM 100:2008, 4.2.3, 4.1.4 (mean of the function rather than function of the means), F.2.2.1, G.3.2.

    Examples
    --------
    >>> found = start_up_ratio([OnePull(1, 10.0, 11.0), OnePull(2, 20.0, 22.0)])
    >>> round(found.value, 6)
    1.1
    """
    both = [p for p in pulls if p.start_up is not None and p.running > 0]
    if not both:
        return None
    ratios = np.array([p.start_up / p.running for p in both if p.start_up is not None])
    own = float(np.sum((ratios - ratios.mean()) ** 2))
    freedom = PRIOR_FREEDOM + len(ratios) - 1
    spread = sqrt((PRIOR_FREEDOM * PULL_TO_PULL**2 + own) / freedom) * widening(freedom)
    steps = [p.step * ROUNDING * sqrt(1 + r**2) / p.running for p, r in zip(both, ratios, strict=True)]
    step = float(np.mean(steps))
    return Measured(float(ratios.mean()), sqrt(spread**2 / len(ratios) + step**2), "ratio")
