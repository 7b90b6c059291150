"""What do the proofs say of the coefficients of one family? Normal on the log scale, shrunk between kinds.

Each proof gives the logarithm of what was found over what the sheet says: a share-weighted sum of its
coefficients plus scatter. Given the scatter and how alike kinds are, everything is normal and conjugate, so
the posterior is exact. The scatter is kept apart from the coefficients on purpose, not tied to them as the
normal-inverse-gamma would have it: there a family whose proofs agree well would also narrow coefficients that
nobody has proved yet. So the scatter factor runs over a short row of values under a scaled inverse
chi-squared prior, and the share in which kinds are alike over another; the answer is weighted over both by
how well each explains the proofs (empirical Bayes, with the rest of the doubt kept). Before any proof each
coefficient has exactly the spread of its sheet, whatever that share is.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from math import erfc, sqrt

import numpy as np
from numpy.typing import NDArray

from spoolwright.judgement.book_kinds import Kind

Floats = NDArray[np.float64]

APART = np.array([0.1, 0.3, 0.5, 0.7, 0.9])
"""Share of a coefficient's prior variance that is its own; the rest it shares with its family."""
SCATTERS = np.exp(np.linspace(np.log(0.4), np.log(4.0), 11))
"""Scatter of proofs over what sheet and reading expect."""
SCATTER_WORTH = 6.0
"""How many proofs the expected scatter is worth: judgement prior."""
NINETY = 1.6448536269514722
"""Of a normal, 5 % lie above this many deviations."""


@dataclass(frozen=True)
class Seen:
    """One proof as the book takes it.

    `shares` are the coefficients that it speaks of with their parts in it; `log` the logarithm of found
    over expected; `variance` how far it may lie from its coefficient; `gain` how much of `log` an error of
    the reading's own logarithm makes; `entry` is where it stands in the diaries, `told` what is said of it.
    """

    shares: tuple[tuple[str, float], ...]
    log: float
    variance: float
    gain: float = 1.0
    instrument: str = ""
    entry: int = 0
    told: str = ""
    found: str = ""


@dataclass(frozen=True)
class Stats:
    """What a row of proofs comes to: enough for the posterior, and proofs add to it one by one."""

    precision: Floats
    pull: Floats
    square: float = 0.0
    proofs: int = 0
    logs: float = 0.0

    def plus(self, shares: Floats, log: float, variance: float) -> Stats:
        """The same with one proof more."""
        return Stats(
            self.precision + np.outer(shares, shares) / variance,
            self.pull + shares * (log / variance),
            self.square + log * log / variance,
            self.proofs + 1,
            self.logs + float(np.log(variance)),
        )


@dataclass(frozen=True)
class Posterior:
    """What is believed of a family's coefficients: one normal for each node of scatter and likeness.

    `means` has shape `(nodes, kinds)`, `covariances` `(nodes, kinds, kinds)`, `weights` and `scatters`
    `(nodes,)`.
    """

    kinds: tuple[Kind, ...]
    means: Floats
    covariances: Floats
    weights: Floats
    scatters: Floats
    alike: float
    places: dict[str, int] = field(default_factory=dict, compare=False)

    @property
    def scatter(self) -> float:
        """How far proofs scatter, as a factor on what was expected."""
        return float(np.sqrt(self.weights @ self.scatters**2))

    def believed(self, key: str) -> tuple[float, float]:
        """Mean and standard deviation of the logarithm of a coefficient over its middle."""
        return self.of(self.row({key: 1.0}), 0.0)

    def row(self, shares: dict[str, float]) -> Floats:
        """Shares by key as a row over all kinds."""
        found = np.zeros(len(self.kinds))
        for key, share in shares.items():
            found[self.places[key]] = share
        return found

    def of(self, shares: Floats, variance: float) -> tuple[float, float]:
        """Mean and deviation of the logarithm of the next proof with these shares, scatter included."""
        middles, spreads = self.nodes(shares, variance)
        mean = float(self.weights @ middles)
        return mean, sqrt(float(self.weights @ (spreads + (middles - mean) ** 2)))

    def nodes(self, shares: Floats, variance: float) -> tuple[Floats, Floats]:
        """The same at each node: means and variances."""
        own = np.einsum("k,jkl,l->j", shares, self.covariances, shares)
        return self.means @ shares, own + self.scatters**2 * variance


def nothing_seen(count: int) -> Stats:
    """No proof of a family yet.

    Parameters
    ----------
    count : int
        How many coefficients it has **[-]**.

    Returns
    -------
    Stats
        Zeros **[-]**.

    Source
    ------
    Our own bookkeeping.

    Examples
    --------
    >>> nothing_seen(2).proofs
    0
    """
    return Stats(np.zeros((count, count)), np.zeros(count))


def add_up(kinds: Sequence[Kind], seen: Sequence[Seen]) -> Stats:
    """All proofs of a family together.

    Parameters
    ----------
    kinds : sequence of Kind
        The family's coefficients **[-]**.
    seen : sequence of Seen
        Its proofs **[-]**.

    Returns
    -------
    Stats
        Sums over the proofs **[-]**.

    Source
    ------
    Sufficient statistics of the normal linear model (Gelman and others, Bayesian Data Analysis, 3rd edition,
    14.2, from memory).

    Examples
    --------
    >>> add_up((), ()).proofs
    0
    """
    total = nothing_seen(len(kinds))
    if not seen:
        return total
    shares = design(kinds, seen)
    logs = np.array([one.log for one in seen])
    variances = np.array([one.variance for one in seen])
    weighed = shares / variances[:, np.newaxis]
    return replace(
        total,
        precision=shares.T @ weighed,
        pull=weighed.T @ logs,
        square=float(np.sum(logs**2 / variances)),
        proofs=len(seen),
        logs=float(np.sum(np.log(variances))),
    )


def design(kinds: Sequence[Kind], seen: Sequence[Seen]) -> Floats:
    """Which share each coefficient has in each proof.

    Parameters
    ----------
    kinds : sequence of Kind
        The family's coefficients **[-]**.
    seen : sequence of Seen
        Its proofs **[-]**.

    Returns
    -------
    array
        Shares **[-]**, shape `(proofs, kinds)`.

    Source
    ------
    Our own bookkeeping.

    Examples
    --------
    >>> design((), ()).shape
    (0, 0)
    """
    places = {kind.key: at for at, kind in enumerate(kinds)}
    found = np.zeros((len(seen), len(kinds)))
    for at, one in enumerate(seen):
        for key, share in one.shares:
            found[at, places[key]] += share
    return found


def posterior(kinds: Sequence[Kind], stats: Stats) -> Posterior:
    """What is believed of a family's coefficients after so many proofs.

    Parameters
    ----------
    kinds : sequence of Kind
        The coefficients with their prior spreads **[-]**, each more than 0.
    stats : Stats
        The proofs **[-]**.

    Returns
    -------
    Posterior
        Normals on the log scale **[-]**, weighted.

    Notes
    -----
    theta ~ N(0, S), S_kl = s_k s_l ((1 - a) + a [k = l]); log_i ~ N(share_i . theta, c^2 v_i). Given a and c:
    precision S^-1 + sum share share' / (c^2 v), the conjugate update. c^2 ~ scaled inverse chi-squared(6, 1);
    a uniform over its row. A kind's own proofs weigh against its relatives as n / (n + c^2 v / (a s^2)): few
    proofs lean on the family, many stand alone.

    Source
    ------
    Gelman and others, Bayesian Data Analysis, 3rd edition, 2.5 (normal, known variance), 5.4 (hierarchical
    normal), 14.8; from memory.

    Examples
    --------
    >>> kind = Kind("k", "friction", "k", 1.0, 0.1, 0.8, 1.2)
    >>> mean, deviation = posterior((kind,), nothing_seen(1)).believed("k")
    >>> round(mean, 9), round(deviation, 9)
    (0.0, 0.1)
    """
    spreads = np.array([kind.spread for kind in kinds])
    count = len(kinds)
    alike = (1 - APART)[:, np.newaxis, np.newaxis] + APART[:, np.newaxis, np.newaxis] * np.eye(count)
    inverse = np.linalg.inv(alike) / np.outer(spreads, spreads)
    sized = np.linalg.slogdet(alike)[1] + 2 * np.sum(np.log(spreads))
    squares = SCATTERS**2
    shape = (len(APART), len(SCATTERS))
    precision = inverse[:, np.newaxis] + stats.precision / squares[:, np.newaxis, np.newaxis]
    covariances = np.linalg.inv(precision)
    pulls = stats.pull / squares[:, np.newaxis]
    means = np.einsum("tckl,cl->tck", covariances, pulls)
    fits = stats.square / squares - np.einsum("tck,ck->tc", means, pulls)
    sizes = np.linalg.slogdet(precision)[1] + sized[:, np.newaxis] + stats.proofs * np.log(squares)
    before = -0.5 * SCATTER_WORTH * (np.log(squares) + 1 / squares)
    weights = np.exp(_from_the_top(before - 0.5 * (sizes + fits)))
    weights /= weights.sum()
    nodes = shape[0] * shape[1]
    return Posterior(
        tuple(kinds),
        means.reshape(nodes, count),
        covariances.reshape(nodes, count, count),
        weights.reshape(nodes),
        np.broadcast_to(SCATTERS, shape).reshape(nodes),
        float(1 - weights.sum(axis=1) @ APART),
        {kind.key: at for at, kind in enumerate(kinds)},
    )


def _from_the_top(logs: Floats) -> Floats:
    return np.asarray(logs - np.max(logs))


def left_out(held: Posterior, kinds: Sequence[Kind], seen: Sequence[Seen]) -> list[float]:
    """How improbable each proof is, judged by all others: the chance of one at least so far out.

    Parameters
    ----------
    held : Posterior
        What is believed with all of them **[-]**.
    kinds : sequence of Kind
        The coefficients **[-]**.
    seen : sequence of Seen
        The proofs **[-]**.

    Returns
    -------
    list of float
        Chances **[-]**, 0 to 1, one a proof.

    Notes
    -----
    Leave one out in closed form: residual e / (1 - h), variance c^2 v / (1 - h), and each node's weight
    divided by the density it gave the proof. Over the nodes of scatter this is a Student's t in all but name.

    Source
    ------
    Gelman and others, Bayesian Data Analysis, 3rd edition, 7.1 (leave-one-out predictive), from memory.

    Examples
    --------
    >>> left_out(posterior((), nothing_seen(0)), (), ())
    []
    """
    if not seen:
        return []
    shares, logs = design(kinds, seen), np.array([one.log for one in seen])
    noise = held.scatters[:, np.newaxis] ** 2 * np.array([one.variance for one in seen])
    own = np.sum((shares @ held.covariances) * shares, axis=2)
    free = np.maximum(1 - own / noise, 1e-9)
    misses, variances = (logs - held.means @ shares.T) / free, noise / free
    densities = -0.5 * (np.log(variances) + misses**2 / variances)
    weights = np.log(np.maximum(held.weights, 1e-300))[:, np.newaxis] - densities
    weights = np.exp(weights - weights.max(axis=0))
    far = np.abs(misses) / np.sqrt(2 * variances)
    tails = np.array([[erfc(one) for one in row] for row in far])
    return [float(chance) for chance in (weights * tails).sum(axis=0) / weights.sum(axis=0)]
