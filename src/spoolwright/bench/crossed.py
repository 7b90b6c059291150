"""Analysis of variance of a crossed study: every person measures every part, equally often."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.unreadable import Unreadable

Values = NDArray[np.float64]

POOL_ABOVE = 0.25
"""An interaction as likely as this by chance is taken for repeatability (Bancroft 1964, from memory)."""


@dataclass(frozen=True)
class Row:
    """One line of the table; `f` and `p` are None where there is nothing to test."""

    source: str
    squares: float
    freedom: int
    f: float | None = None
    p: float | None = None

    @property
    def mean_square(self) -> float:
        return self.squares / self.freedom if self.freedom else 0.0


@dataclass(frozen=True)
class Crossed:
    """The table, and the mean squares that the components are worked out of.

    `against` is the row that parts and persons are held against: the interaction, or the repeatability into
    which it was pooled.
    """

    parts: Row
    persons: Row
    interaction: Row
    repeatability: Row
    pooled: bool
    shape: tuple[int, int, int]

    @property
    def against(self) -> Row:
        return self.repeatability if self.pooled else self.interaction

    @property
    def rows(self) -> tuple[Row, ...]:
        """The lines that have something in them; the last holds the interaction where it was pooled."""
        return tuple(r for r in (self.parts, self.persons, self.interaction, self.repeatability) if r.freedom)


def table(values: Values) -> Crossed:
    """The table of a balanced crossed study with its interaction, pooled where it does not stand out.

    Parameters
    ----------
    values : array
        One value a try **[any one unit]**, shape (parts, persons, tries): at least 2, 1 and 2.

    Returns
    -------
    Crossed
        Sums of squares **[that unit squared]**, degrees of freedom, ratios and their chances **[-]**.

    Raises
    ------
    Unreadable
        Too few parts or tries, or a value that is no number.

    Notes
    -----
    SS_parts = o r sum (y_i.. - y)^2, SS_persons = p r sum (y_.j. - y)^2, SS_cells = r sum (y_ij. - y)^2,
    SS_interaction = SS_cells - SS_parts - SS_persons, SS_repeatability = sum (y_ijk - y_ij.)^2. The
    interaction is tested against the repeatability and pooled with it where p > 0.25; parts and persons are
    tested against the interaction, or against what it was pooled into.

    Source
    ------
    Montgomery, Design and Analysis of Experiments, random two-factor model (from memory); pooling at 0.25:
    Bancroft, Biometrics 20 (1964) 427 (from memory).

    Examples
    --------
    >>> found = table(np.array([[[10.0, 12.0], [14.0, 16.0]], [[20.0, 22.0], [24.0, 26.0]]]))
    >>> found.parts.squares, found.persons.squares, found.pooled, found.against.mean_square
    (200.0, 32.0, True, 1.6)
    """
    values = _checked(values)
    p, o, r = values.shape
    whole, cells = values.mean(), values.mean(axis=2)
    of_parts = o * r * float(np.sum((values.mean(axis=(1, 2)) - whole) ** 2))
    of_persons = p * r * float(np.sum((values.mean(axis=(0, 2)) - whole) ** 2))
    of_cells = r * float(np.sum((cells - whole) ** 2))
    within = float(np.sum((values - cells[:, :, None]) ** 2))
    together = max(of_cells - of_parts - of_persons, 0.0)
    rest = Row("repeatability", within, p * o * (r - 1))
    both = _tested("part and person together", together, (p - 1) * (o - 1), rest)
    pooled = both.freedom == 0 or (both.p is not None and both.p > POOL_ABOVE)
    kept = Row(rest.source, within + together, rest.freedom + both.freedom) if pooled else rest
    against = kept if pooled else both
    return Crossed(
        parts=_tested("parts", of_parts, p - 1, against),
        persons=_tested("persons", of_persons, o - 1, against),
        interaction=both,
        repeatability=kept,
        pooled=pooled,
        shape=(p, o, r),
    )


def _checked(values: Values) -> Values:
    values = np.asarray(values, dtype=np.float64)
    p, o, r = values.shape
    if p < 2 or o < 1 or r < 2:
        raise Unreadable(
            f"{p} parts, {o} persons and {r} tries are too few",
            "",
            "at least two parts, one person and two tries; ten, three and three are usual",
        )
    if not np.isfinite(values).all():
        raise Unreadable("a value is no number", "", "a number for each try")
    return values


def _tested(source: str, squares: float, freedom: int, against: Row) -> Row:
    """The line with its ratio to another one, and the chance of one as large where there is nothing."""
    if not freedom or not against.freedom:
        return Row(source, squares, freedom)
    if against.mean_square == 0:
        return Row(source, squares, freedom, None, 0.0 if squares else 1.0)
    from scipy import stats

    ratio = squares / freedom / against.mean_square
    return Row(source, squares, freedom, ratio, float(stats.f.sf(ratio, freedom, against.freedom)))
