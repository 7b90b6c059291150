"""How far do the tries of one instrument differ: by the instrument, by the people, by the parts?"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import sqrt
from typing import Any

import numpy as np

from spoolwright.bench.crossed import POOL_ABOVE, Crossed, Row, Values, table

CLASSES = 1.41
"""Parts that can be told apart: 1.41 times the spread of the parts over that of the gauge (AIAG MSA)."""
SIX = 6.0
"""Spreads of the gauge that are held against a tolerance: six, 99.73 % of a normal law (AIAG MSA)."""
COVERAGE = 0.95
_DRAWS = 4000
_SEED = 20

NAMES = {
    "repeatability": "the same hand again",
    "persons": "between hands",
    "interaction": "part and hand together",
    "reproducibility": "between hands in all",
    "gauge": "instrument and hands together",
    "parts": "between parts",
    "whole": "all together",
}


@dataclass(frozen=True)
class Spread:
    """One component: its standard deviation with its 95 % interval, its share of the whole variance.

    `cut`: the variance came out below zero, so it is taken as none.
    """

    key: str
    deviation: float
    low: float
    high: float
    share: float
    cut: bool = False

    @property
    def name(self) -> str:
        return NAMES[self.key]


@dataclass(frozen=True)
class StudyRead:
    """A whole study as read: its table, its components by name, what they come to, and what is to be said."""

    anova: Crossed
    spreads: Mapping[str, Spread]
    classes: int | None
    of_tolerance: float | None
    rule: str
    notes: tuple[str, ...]

    @property
    def repeatability(self) -> float:
        """Standard deviation of one try by one hand [unit of the values]."""
        return self.spreads["repeatability"].deviation

    @property
    def between_hands(self) -> float:
        """Standard deviation between hands, of their habits with each part too [unit of the values]."""
        return self.spreads["reproducibility"].deviation

    @property
    def gauge(self) -> float:
        """Standard deviation of one try by whoever it is [unit of the values]."""
        return self.spreads["gauge"].deviation

    @property
    def gauge_of_whole(self) -> float:
        """The gauge's standard deviation over that of the whole study [-]."""
        return sqrt(self.spreads["gauge"].share)


def read(values: Values, tolerance: float | None = None) -> StudyRead:
    """Variance components of a crossed study: repeatability, reproducibility, interaction, parts.

    Parameters
    ----------
    values : array
        One value a try **[any one unit]**, shape (parts, persons, tries).
    tolerance : float or None
        Width between the limits of what was measured **[same unit]**, above zero.

    Returns
    -------
    StudyRead
        Standard deviations with 95 % intervals **[same unit]**, shares of the whole variance **[-]**.

    Raises
    ------
    Unreadable
        Too few parts or tries, or a value that is no number.

    Notes
    -----
    With the interaction kept: s_e^2 = MS_e, s_po^2 = (MS_po - MS_e)/r, s_o^2 = (MS_o - MS_po)/(p r),
    s_p^2 = (MS_p - MS_po)/(o r). Pooled: s_po = 0 and MS_po = MS_e. A variance below zero is taken as zero
    and said to be. The intervals are generalised ones: each mean square is drawn as MS nu / chi2_nu and the
    components are worked out of every draw.

    Source
    ------
    AIAG, Measurement Systems Analysis, 4th edition, appendix A (from memory; its data opened in public test
    files); intervals: Hamada and Weerahandi, Journal of Quality Technology 32 (2000) 241 (from memory).

    Examples
    --------
    >>> found = read(np.array([[[10.0, 12.0], [14.0, 16.0]], [[20.0, 22.0], [24.0, 26.0]]]))
    >>> round(found.repeatability**2, 6), round(found.between_hands**2, 6), found.classes
    (1.6, 7.6, 3)
    """
    anova = table(values)
    raw = _components(anova, {row.source: np.float64(row.mean_square) for row in _rows(anova)})
    best, drawn = _with_sums(raw), _drawn(anova)
    cut = {name for name, variance in raw.items() if variance < 0}
    spreads = {name: _spread(name, best, drawn[name], name in cut) for name in NAMES}
    gauge, parts = spreads["gauge"].deviation, spreads["parts"].deviation
    return StudyRead(
        anova=anova,
        spreads=spreads,
        classes=int(CLASSES * parts / gauge) if gauge > 0 else None,
        of_tolerance=SIX * gauge / tolerance if tolerance else None,
        rule=_rule(anova),
        notes=tuple(_notes(anova, spreads)),
    )


def _rows(anova: Crossed) -> tuple[Row, ...]:
    return (anova.parts, anova.persons, anova.interaction, anova.repeatability)


Variances = Mapping[str, Any]
"""By component: numbers, or arrays of draws."""


def _components(anova: Crossed, squares: Variances) -> dict[str, Any]:
    """Variances from mean squares by source; they may come out below zero."""
    p, o, r = anova.shape
    within, against = squares[anova.repeatability.source], squares[anova.against.source]
    nothing = within * 0.0
    return {
        "repeatability": within,
        "interaction": nothing if anova.pooled else (against - within) / r,
        "persons": (squares[anova.persons.source] - against) / (p * r) if o > 1 else nothing,
        "parts": (squares[anova.parts.source] - against) / (o * r),
    }


def _with_sums(raw: Variances) -> dict[str, Any]:
    """Nothing below zero, and what the components come to together."""
    parts = {name: np.maximum(variance, 0.0) for name, variance in raw.items()}
    between = parts["persons"] + parts["interaction"]
    gauge = between + parts["repeatability"]
    return {**parts, "reproducibility": between, "gauge": gauge, "whole": gauge + parts["parts"]}


def _drawn(anova: Crossed) -> dict[str, Any]:
    """Every component, worked out of mean squares as they may be."""
    rng = np.random.default_rng(_SEED)
    squares = {
        row.source: row.squares / rng.chisquare(row.freedom, _DRAWS) if row.freedom else np.zeros(_DRAWS)
        for row in _rows(anova)
    }
    return _with_sums(_components(anova, squares))


def _spread(key: str, best: Variances, drawn: Values, cut: bool) -> Spread:
    tail = (1 - COVERAGE) / 2
    low, high = np.sqrt(np.quantile(drawn, (tail, 1 - tail)))
    share = float(best[key] / best["whole"]) if best["whole"] > 0 else 0.0
    return Spread(key, sqrt(best[key]), float(low), float(high), share, cut)


def _rule(anova: Crossed) -> str:
    if anova.shape[1] == 1:
        return "One hand only, so there is no interaction."
    chance = anova.interaction.p
    said = "none" if chance is None else f"p = {chance:.2f}"
    if anova.pooled:
        return f"The interaction does not stand out ({said}, above {POOL_ABOVE:g}): taken into repeatability."
    return f"The interaction may be real ({said}, not above {POOL_ABOVE:g}): it is kept apart."


def _notes(anova: Crossed, spreads: Mapping[str, Spread]) -> list[str]:
    p, o, _ = anova.shape
    notes = [
        f"The variance {spread.name} came out below zero: it is too small to see here and is taken as none."
        for spread in spreads.values()
        if spread.cut
    ]
    if o == 1:
        notes.append("What differs between hands is not known: one person took every try.")
    elif o < 4:
        notes.append(f"{o} hands say little about hands in general; see how wide its interval is.")
    if anova.repeatability.squares == 0:
        notes.append("All tries of a part are the same: the display is coarser than the hand.")
    if p < 5:
        notes.append(f"{p} parts are few: take more, spread over the sizes that you measure.")
    return notes
