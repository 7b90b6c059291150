"""Whether a measured value agrees with another of the same thing, and in which words that is said."""

from __future__ import annotations

from collections.abc import Sequence
from math import hypot

from spoolwright import quantities
from spoolwright.bench import consistency
from spoolwright.bench.uncertainty import COVERAGE_FACTOR, Measured

Named = tuple[str, Measured]


def agrees(one: Measured, other: Measured) -> bool:
    """Whether two results lie no farther apart than their joint expanded uncertainty.

    Parameters
    ----------
    one, other : Measured
        Two results of one thing [same SI unit].

    Returns
    -------
    bool
        Normalised error of 1 or less.

    Source
    ------
    ISO/IEC 17043:2010, B.3.1.3 (from memory).

    Examples
    --------
    >>> agrees(Measured(10.0, 0.3, "mass"), Measured(10.9, 0.4, "mass"))
    True
    """
    return consistency.normalised_error(one, other) <= 1


def beside(one: Measured, other: Named, system: str = "metric") -> str:
    """A sentence that sets a result beside another one of the same thing.

    Parameters
    ----------
    one : Measured
        The result that is spoken of [SI unit].
    other : tuple of str and Measured
        Where the other one is from, and its value [same SI unit].
    system : str
        "metric" or "imperial" [-].

    Returns
    -------
    str
        "The reel's sheet says 90 g cm^2 ± 9 g cm^2. It agrees: ..." or "It does not agree by ...".

    Source
    ------
    As `agrees`.

    Examples
    --------
    >>> said = beside(Measured(10.0, 0.3, "mass"), ("The sheet", Measured(12.0, 0.4, "mass")))
    >>> said.partition(": ")[0]
    'The sheet says 12000 g ± 800 g. It does not agree'
    """
    name, measured = other
    stated = quantities.show(measured.value, measured.dimension, system, measured.expanded)
    joint = COVERAGE_FACTOR * hypot(one.uncertainty, measured.uncertainty)
    gap = abs(one.value - measured.value)
    apart = quantities.show(gap, one.dimension, system)
    within = quantities.show(joint, one.dimension, system)
    if agrees(one, measured):
        verdict = f"It agrees: the two lie {apart} apart, and up to {within} is explained"
    else:
        verdict = f"It does not agree: the two lie {apart} apart, where only {within} is explained"
    return f"{name} says {stated}. {verdict} by both uncertainties."


def together(results: Sequence[Named], system: str = "metric") -> tuple[Measured, str]:
    """The weighted mean of several ways to one value, and a sentence on whether they agree.

    Parameters
    ----------
    results : sequence of tuples of str and Measured
        Two or more, each with an uncertainty above zero [same SI unit].
    system : str
        "metric" or "imperial" [-].

    Returns
    -------
    tuple of Measured and str
        The mean with its standard uncertainty [SI unit], widened where they do not agree, and the sentence.

    Source
    ------
    `bench.consistency`.

    Examples
    --------
    >>> ways = [("the fall", Measured(10.0, 0.3, "mass")), ("the ring", Measured(10.4, 0.4, "mass"))]
    >>> together(ways)[1].partition(":")[0]
    'The 2 ways agree'
    """
    found = consistency.combine([measured for _, measured in results])
    mean = quantities.show(found.mean.value, found.mean.dimension, system, found.mean.expanded)
    chance = 100 * found.chance
    scatter = f"so much scatter or more comes by chance in {max(chance, 0.1):.1f} % of cases"
    if found.agree:
        return found.mean, f"The {len(results)} ways agree: {scatter}. Their weighted mean is {mean}."
    name, by = results[found.apart][0], found.apart_by
    return found.mean, (
        f"The {len(results)} ways do not agree: {scatter}. Farthest out is {name}, {by:.1f} times what its "
        f"uncertainty and that of the others explain. Until that is cleared up, their weighted mean, {mean}, "
        "is widened by as much as they scatter."
    )
