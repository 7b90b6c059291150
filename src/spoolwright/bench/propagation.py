"""From what is known of each input to what is known of the result: the law of propagation, row by row."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from math import isfinite, sqrt

from spoolwright.bench.budget import Contribution, combined
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable

Formula = Callable[[Mapping[str, float]], float]


@dataclass(frozen=True)
class Known:
    """One input: what it is called, its value, and what its uncertainty is made of.

    `parts` holds a source, a way ("A" or "B") and a standard uncertainty [SI unit of the input] each; their
    squares add up to the square of the input's. Without parts the whole is one row of way "B".
    """

    words: str
    measured: Measured
    parts: tuple[tuple[str, str, float], ...] = field(default=())

    @property
    def rows(self) -> tuple[tuple[str, str, float], ...]:
        """What the budget shows of this input, each source with the input's name before it."""
        if not self.parts:
            return ((self.words, "B", self.measured.uncertainty),)
        return tuple((f"{self.words}: {source}", way, spread) for source, way, spread in self.parts)


def propagate(
    result: str,
    dimension: str,
    formula: Formula,
    inputs: Mapping[str, Known],
    together: Mapping[tuple[str, str], float] | None = None,
) -> tuple[Measured, tuple[Contribution, ...]]:
    """A result and its budget from inputs that are known only so well.

    Parameters
    ----------
    result : str
        What the rows of the budget are of [-].
    dimension : str
        Key of `quantities.DIMENSIONS` of the result [-].
    formula : callable
        From the value of each input [SI] to the result [SI].
    inputs : mapping of str to Known
        By the names that the formula uses [SI].
    together : mapping of pairs of names to float or None
        Correlation of two inputs [-], -1 to 1; what is not named is independent.

    Returns
    -------
    tuple
        The result with its standard uncertainty [SI unit of the dimension], and its rows.

    Raises
    ------
    Unreadable
        A formula that gives no number at these values or within their uncertainty.
    ValueError
        A correlation of what is no input, or outside -1 to 1.

    Notes
    -----
    u^2 = sum c_i^2 u_i^2 + 2 sum c_i c_j u_i u_j r_ij, with c_i u_i = (f(x_i + u_i) - f(x_i - u_i)) / 2.
    Inputs that are correlated share one row, because their parts cannot be told apart: its square is their
    part of the double sum, which is never below zero. What enters twice (one radius in two falls) is one
    input here, so nothing has to be said of its correlation.

    Source
    ------
    JCGM 100:2008, 5.1.2 equation (10), 5.2.2 equation (13), 5.1.3 note 2 (sensitivity by steps), F.1.2.3.

    Examples
    --------
    >>> sides = {"a": Known("a", Measured(3.0, 0.3, "length")), "b": Known("b", Measured(4.0, 0.4, "length"))}
    >>> sum_, rows = propagate("whole", "length", lambda x: x["a"] + x["b"], sides)
    >>> round(sum_.uncertainty, 6), len(rows)
    (0.5, 2)
    >>> both, rows = propagate("whole", "length", lambda x: x["a"] + x["b"], sides, {("a", "b"): 1.0})
    >>> round(both.uncertainty, 6), len(rows)
    (0.7, 1)
    """
    pairs = _checked(together or {}, inputs)
    middle = {name: known.measured.value for name, known in inputs.items()}
    value = _number(formula, middle)
    moved = {
        name: _moved(formula, middle, name, known.measured.uncertainty) for name, known in inputs.items()
    }
    rows = tuple(_rows(result, inputs, moved, pairs))
    return Measured(value, combined(rows), dimension), rows


def _checked(
    together: Mapping[tuple[str, str], float], inputs: Mapping[str, Known]
) -> dict[frozenset[str], float]:
    for (first, second), how in together.items():
        if first not in inputs or second not in inputs or first == second:
            raise ValueError(f"a correlation is of two inputs; came {first!r} and {second!r}")
        if not -1 <= how <= 1:
            raise ValueError(f"a correlation lies between -1 and 1; came {how}")
    return {frozenset(pair): how for pair, how in together.items() if how}


def _number(formula: Formula, at: Mapping[str, float]) -> float:
    try:
        value = float(formula(at))
    except (ArithmeticError, ValueError):
        value = float("nan")
    if not isfinite(value):
        raise Unreadable(
            "these values give no number", "", "values that differ by more than their uncertainty"
        )
    return value


def _moved(formula: Formula, middle: Mapping[str, float], name: str, step: float) -> float:
    """What one standard uncertainty of an input does to the result, with its sign."""
    if step == 0:
        return 0.0
    up = _number(formula, {**middle, name: middle[name] + step})
    down = _number(formula, {**middle, name: middle[name] - step})
    return (up - down) / 2


def _rows(
    result: str,
    inputs: Mapping[str, Known],
    moved: Mapping[str, float],
    pairs: Mapping[frozenset[str], float],
) -> Iterable[Contribution]:
    for group in _groups(inputs, pairs):
        if len(group) > 1:
            names = " with ".join(inputs[name].words for name in group)
            yield Contribution(result, f"{names}, not independent", "B", _together(group, moved, pairs))
            continue
        known = inputs[group[0]]
        spread = known.measured.uncertainty
        for source, way, part in known.rows:
            yield Contribution(result, source, way, abs(moved[group[0]]) * (part / spread if spread else 0.0))


def _together(
    group: tuple[str, ...], moved: Mapping[str, float], pairs: Mapping[frozenset[str], float]
) -> float:
    square = sum(
        moved[a] * moved[b] * (1.0 if a == b else pairs.get(frozenset((a, b)), 0.0))
        for a in group
        for b in group
    )
    return sqrt(max(square, 0.0))


def _groups(inputs: Mapping[str, Known], pairs: Mapping[frozenset[str], float]) -> list[tuple[str, ...]]:
    """Inputs that hang together, in the order in which they were given."""
    left, found = list(inputs), []
    while left:
        group = [left.pop(0)]
        for name in group:
            joined = [other for other in left if frozenset((name, other)) in pairs]
            group += joined
            left = [other for other in left if other not in joined]
        found.append(tuple(group))
    return found
