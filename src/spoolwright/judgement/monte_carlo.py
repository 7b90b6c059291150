"""Propagate what is not known exactly: distributions in, a sample of the answer out (JCGM 101)."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any, Protocol

import numpy as np
from numpy.typing import NDArray

Sample = NDArray[np.float64]


class Distribution(Protocol):
    """Anything that can be drawn from."""

    def draw(self, generator: np.random.Generator, samples: int) -> Sample:
        """Independent values, shape `(samples,)`."""
        ...


@dataclass(frozen=True)
class Normal:
    """Best estimate and standard uncertainty (JCGM 101, 6.4.7)."""

    mean: float
    deviation: float

    def draw(self, generator: np.random.Generator, samples: int) -> Sample:
        return generator.normal(self.mean, self.deviation, samples)


@dataclass(frozen=True)
class Rectangular:
    """Nothing is known but the two ends (JCGM 101, 6.4.2)."""

    low: float
    high: float

    def draw(self, generator: np.random.Generator, samples: int) -> Sample:
        return generator.uniform(self.low, self.high, samples)


@dataclass(frozen=True)
class Triangular:
    """Two ends, and values near the middle are likelier than values near an end (JCGM 101, 6.4.5)."""

    low: float
    high: float

    def draw(self, generator: np.random.Generator, samples: int) -> Sample:
        middle = (self.low + self.high) / 2
        half = (self.high - self.low) / 2
        return middle + half * (generator.random(samples) + generator.random(samples) - 1.0)


@dataclass(frozen=True)
class Propagated:
    """A sample of the answer with its mean, its standard deviation and its coverage intervals."""

    sample: Sample

    @property
    def mean(self) -> float:
        return float(np.mean(self.sample))

    @property
    def deviation(self) -> float:
        return float(np.std(self.sample, ddof=1))

    def symmetric(self, coverage: float = 0.90) -> tuple[float, float]:
        """Interval with the same chance left out on either side (JCGM 101, 7.7.2)."""
        low, high = np.quantile(self.sample, [(1 - coverage) / 2, (1 + coverage) / 2])
        return float(low), float(high)

    def shortest(self, coverage: float = 0.90) -> tuple[float, float]:
        """Narrowest interval that holds that share of the sample (JCGM 101, 7.7.4)."""
        ordered = np.sort(self.sample)
        held = min(len(ordered) - 1, round(coverage * len(ordered)))
        start = int(np.argmin(ordered[held:] - ordered[: len(ordered) - held]))
        return float(ordered[start]), float(ordered[start + held])


def propagate(
    model: Callable[..., Any],
    inputs: Mapping[str, Distribution],
    *,
    samples: int = 100_000,
    seed: int = 1,
) -> Propagated:
    """Draw every input, put the draws through the model, keep the answers.

    Parameters
    ----------
    model : callable
        Takes the inputs by name, as arrays, and gives the answer **[any]**, shape `(samples,)`.
    inputs : mapping of str to Distribution
        One distribution for each argument of the model **[unit of the argument]**.
    samples : int
        How many draws **[-]**, 100 or more.
    seed : int
        Start of the generator **[-]**: the same seed gives the same answer.

    Returns
    -------
    Propagated
        Sample of shape `(samples,)` in the unit of the model's answer.

    Raises
    ------
    ValueError
        Fewer than 100 draws were asked for.

    Notes
    -----
    Inputs are independent; where two depend on one another, draw the thing they share and let the model
    use it.

    Source
    ------
    JCGM 101:2008, clauses 5 to 7.

    Examples
    --------
    >>> sum_of_two = propagate(lambda a, b: a + b, {"a": Normal(1.0, 0.3), "b": Normal(2.0, 0.4)})
    >>> round(sum_of_two.mean, 1), round(sum_of_two.deviation, 1)
    (3.0, 0.5)
    """
    drawn = draw(inputs, samples=samples, seed=seed)
    return Propagated(np.broadcast_to(np.asarray(model(**drawn), dtype=np.float64), (samples,)))


def draw(inputs: Mapping[str, Distribution], *, samples: int, seed: int) -> dict[str, Sample]:
    """Draw every input once, in the order given, from one seeded generator.

    Parameters
    ----------
    inputs : mapping of str to Distribution
        Distributions by name **[unit of each]**.
    samples : int
        How many draws **[-]**, 100 or more.
    seed : int
        Start of the generator **[-]**.

    Returns
    -------
    dict of str to array
        Draws by name, each of shape `(samples,)`, in the unit of its input.

    Raises
    ------
    ValueError
        Fewer than 100 draws were asked for.

    Source
    ------
    JCGM 101:2008, 7.3 (sampling from the distributions).

    Examples
    --------
    >>> draw({"radius": Rectangular(0.020, 0.021)}, samples=100, seed=1)["radius"].shape
    (100,)
    """
    if samples < 100:
        raise ValueError(f"samples: 100 or more are accepted; got {samples}")
    generator = np.random.default_rng(seed)
    return {name: distribution.draw(generator, samples) for name, distribution in inputs.items()}


def weights_for(predicted: Sample, measured: float, deviation: float) -> Sample:
    """How well each draw agrees with a reading: log-likelihood of a normal reading about the draw.

    Parameters
    ----------
    predicted : array
        What each draw says the reading should have been **[unit of the reading]**, shape `(n,)`.
    measured : float
        The reading **[same unit]**.
    deviation : float
        Its standard uncertainty, the model's own scatter included **[same unit]**, more than 0.

    Returns
    -------
    array
        Log-weights **[-]**, shape `(n,)`, not normalised.

    Raises
    ------
    ValueError
        The deviation is not more than 0.

    Notes
    -----
    Add the log-weights of independent readings, then resample.

    Source
    ------
    Bayes' rule with a normal likelihood (Bolstad, Introduction to Bayesian Statistics).

    Examples
    --------
    >>> weights_for(np.array([1.0, 2.0]), 1.0, 0.5).tolist()
    [-0.0, -2.0]
    """
    if not deviation > 0:
        raise ValueError(f"deviation: more than 0 is accepted; got {deviation}")
    return np.asarray(-0.5 * ((predicted - measured) / deviation) ** 2, dtype=np.float64)


def effective(log_weights: Sample) -> float:
    """How many draws really carry the weight after readings were taken into account.

    Parameters
    ----------
    log_weights : array
        Log-weights **[-]**, shape `(n,)`.

    Returns
    -------
    float
        Effective number of draws **[-]**, from 1 to n.

    Notes
    -----
    (sum w)^2 / sum w^2: few means that the readings sit where the reel sheet hardly expected them.

    Source
    ------
    Kish, Survey Sampling (effective sample size), from memory.

    Examples
    --------
    >>> effective(np.zeros(50))
    50.0
    """
    weights = np.exp(log_weights - np.max(log_weights))
    return float(np.sum(weights) ** 2 / np.sum(weights**2))


def resample(log_weights: Sample, samples: int, seed: int) -> NDArray[np.intp]:
    """Choose draws in proportion to their weight, with the least added noise.

    Parameters
    ----------
    log_weights : array
        Log-weights **[-]**, shape `(n,)`.
    samples : int
        How many to choose **[-]**, 1 or more.
    seed : int
        Start of the generator **[-]**.

    Returns
    -------
    array of int
        Positions of the chosen draws **[-]**, shape `(samples,)`.

    Raises
    ------
    ValueError
        Fewer than one is asked for.

    Notes
    -----
    Systematic resampling: one random start, then even steps through the summed weights.

    Source
    ------
    Kitagawa 1996, systematic resampling, from memory.

    Examples
    --------
    >>> resample(np.log(np.array([0.5, 0.5])), 4, 1).tolist()
    [0, 0, 1, 1]
    """
    if samples < 1:
        raise ValueError(f"samples: 1 or more is accepted; got {samples}")
    weights = np.exp(log_weights - np.max(log_weights))
    start = np.random.default_rng(seed).random()
    steps = (start + np.arange(samples)) / samples
    found = np.searchsorted(np.cumsum(weights) / np.sum(weights), steps)
    return np.minimum(found, len(weights) - 1)
