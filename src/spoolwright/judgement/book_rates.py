"""How often is a fault found? Beta-binomial: so many of so many reels, with a prior worth a few reels."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from spoolwright.judgement.book_kinds import slug
from spoolwright.sheets.faults import Fault

WORTH = 10.0
"""How many reels the prior is worth: judgement prior."""
PER_REEL = 1.5
"""Faults of the table that a reel brings along on average, shared evenly over the rows of its kind: judgement
prior."""
RELATED = 0.25
"""Weight of a reel of another kind as evidence for this kind: a power prior, judgement prior."""


@dataclass(frozen=True)
class Rate:
    """The rate of one fault on one kind of reel: a beta distribution, before and after the shop's count."""

    key: str
    title: str
    fault: str
    reel: str
    prior: tuple[float, float]
    after: tuple[float, float]
    found: int
    reels: int

    @property
    def mean(self) -> float:
        return self.after[0] / sum(self.after)

    @property
    def before(self) -> float:
        return self.prior[0] / sum(self.prior)


def beta_after(prior: tuple[float, float], found: float, tried: float) -> tuple[float, float]:
    """A beta prior after so many found of so many tried.

    Parameters
    ----------
    prior : tuple of float
        Its two shapes **[-]**, each more than 0.
    found, tried : float
        Counts **[-]**, 0 <= found <= tried; a part of a count where evidence is weighed down.

    Returns
    -------
    tuple of float
        The shapes after it **[-]**.

    Raises
    ------
    ValueError
        A shape is not more than 0, or more were found than tried.

    Notes
    -----
    a + found, b + tried - found.

    Source
    ------
    Gelman and others, Bayesian Data Analysis, 3rd edition, 2.4, from memory.

    Examples
    --------
    >>> beta_after((1.0, 1.0), 437, 980)
    (438.0, 544.0)
    """
    if not min(prior) > 0:
        raise ValueError(f"prior: two shapes more than 0 are accepted; got {prior}")
    if not 0 <= found <= tried:
        raise ValueError(f"found: 0 to {tried} are accepted; got {found}")
    return prior[0] + found, prior[1] + tried - found


def beta_interval(shapes: tuple[float, float], coverage: float = 0.90) -> tuple[float, float]:
    """The interval of a beta distribution with the same chance left out on either side.

    Parameters
    ----------
    shapes : tuple of float
        Its two shapes **[-]**.
    coverage : float
        Chance inside **[-]**.

    Returns
    -------
    tuple of float
        Low and high end **[-]**.

    Source
    ------
    scipy.special.betaincinv.

    Examples
    --------
    >>> [round(end, 3) for end in beta_interval((1.0, 1.0))]
    [0.05, 0.95]
    """
    from scipy.special import betaincinv

    tail = (1 - coverage) / 2
    return float(betaincinv(*shapes, tail)), float(betaincinv(*shapes, 1 - tail))


def rates(
    faults: Mapping[str, Fault], reels: Mapping[str, int], found: Mapping[tuple[str, str], int]
) -> tuple[Rate, ...]:
    """The rate of each fault on each kind of reel that the shop has looked into.

    Parameters
    ----------
    faults : mapping of str to Fault
        The fault table **[-]**.
    reels : mapping of str to int
        How many reels of each kind were looked into **[-]**.
    found : mapping of (str, str) to int
        On how many of them each fault was found, by kind of reel and fault **[-]**.

    Returns
    -------
    tuple of Rate
        One for each fault and kind with a reel **[-]**, the table's order.

    Notes
    -----
    Prior mean: 1.5 faults a reel over the rows of its kind, worth 10 reels. Another kind's count of the same
    row counts a quarter (power prior), so a kind that is seldom seen leans on the others.

    Source
    ------
    Ibrahim and Chen 2000 (power prior), from memory; worth and mean: judgement priors.

    Examples
    --------
    >>> from spoolwright.sheets.faults import faults
    >>> told = rates(faults(), {"round multiplier": 30}, {("round multiplier", "F15"): 12})
    >>> next(round(rate.mean, 2) for rate in told if rate.fault == "F15")
    0.31
    """
    told = []
    for row in faults.values():
        for reel in (kind for kind in row.kinds if reels.get(kind)):
            rows = sum(reel in other.kinds for other in faults.values())
            mean = min(0.5, PER_REEL / rows)
            prior = (WORTH * mean, WORTH * (1 - mean))
            after = prior
            for kind in row.kinds:
                weight = 1.0 if kind == reel else RELATED
                counted = min(found.get((kind, row.id), 0), reels.get(kind, 0))
                after = beta_after(after, weight * counted, weight * reels.get(kind, 0))
            title = f"“{row.symptom}” ({row.id}) on a {reel}"
            key = slug("fault", row.id, reel)
            count = min(found.get((reel, row.id), 0), reels[reel])
            told.append(Rate(key, title, row.id, reel, prior, after, count, reels[reel]))
    return tuple(told)
