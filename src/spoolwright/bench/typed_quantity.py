"""A quantity that was typed as an input: its mean, the scatter of its tries, the step of its last digit."""

from __future__ import annotations

from collections.abc import Iterable
from math import sqrt
from statistics import fmean

from spoolwright.bench import student
from spoolwright.bench.budget import ROUNDING
from spoolwright.bench.instrument import Instrument
from spoolwright.bench.propagation import Known
from spoolwright.bench.typed import MOST_VALUES
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable
from spoolwright.quantities import read_typed

Parts = Iterable[tuple[str, str, float]]
"""Source, way and standard uncertainty of each part, as `Known` holds them."""


def read(
    words: str,
    text: str,
    dimension: str,
    *,
    also: tuple[str, float] | None = None,
    instrument: Instrument | None = None,
) -> Known:
    """What was typed for one input; several tries are parted by semicolons.

    Parameters
    ----------
    words : str
        What the input is called [-].
    text : str
        One or more quantities with their units, such as "1.66 s; 1.70 s" [-].
    dimension : str
        Key of `quantities.DIMENSIONS` [-].
    also : tuple of str and float or None
        What else its uncertainty comes from, and how much [SI unit of the input], zero or more.
    instrument : Instrument or None
        The one of the shop's own that it was taken with [SI]; None: all that is known is the last digit.

    Returns
    -------
    Known
        Mean of the tries with its standard uncertainty and the parts of it [SI unit of the dimension].

    Raises
    ------
    NotAQuantity
        No number, or a unit that is missing or wrong, with what is accepted.
    Unreadable
        Nothing typed, too many tries, a value that is not above zero.

    Notes
    -----
    u^2 = (w s)^2 / n + step^2 / 12 + also^2, where w = t(n - 1) / 2 widens the scatter of few tries until
    k = 2 covers 95 %: 6.98 for two, 2.26 for three. The step is what one of the last typed digit is worth: so
    a scale that shows 0.1 g is typed as "12.0 g", not as "12 g". With an instrument of the shop's own its
    study or its stated limits come in for the scatter and the step.

    Source
    ------
    JCGM 100:2008, 4.2.3 and G.3.2 (scatter; `student.of_mean`), F.2.2.1 (step of a display).

    Examples
    --------
    >>> fall = read("time", "1.66 s; 1.70 s; 1.68 s", "time")
    >>> round(fall.measured.value, 3), [way for _, way, _ in fall.parts]
    (1.68, ['A', 'B'])
    """
    typed = [read_typed(part, dimension) for part in text.split(";") if part.strip()]
    if not typed:
        raise Unreadable("nothing was typed", words, "one value, or several parted by semicolons")
    if len(typed) > MOST_VALUES:
        raise Unreadable(f"{len(typed)} values were typed", words, f"at most {MOST_VALUES}")
    if min(one.value for one in typed) <= 0:
        raise Unreadable("a value is not above zero", words, "values above zero")
    values, step = [one.value for one in typed], max(one.resolution for one in typed)
    parts = tuple(_by(instrument, words, values, step) if instrument else _of_digits(values, step))
    if also is not None:
        parts = (*parts, (also[0], "B", also[1]))
    spread = sqrt(sum(part**2 for _, _, part in parts))
    return Known(words, Measured(fmean(values), spread, dimension), parts)


def _by(instrument: Instrument, words: str, values: list[float], step: float) -> Parts:
    taken = instrument.measured(words, values, step)
    return [(row.source, row.way, row.uncertainty) for row in taken.budget]


def _of_digits(values: list[float], step: float) -> Parts:
    if len(values) > 1:
        yield f"scatter of {len(values)} tries, widened for their number", "A", student.of_mean(values)
    yield "last digit that was typed", "B", step * ROUNDING
