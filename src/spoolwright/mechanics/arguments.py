"""What an argument must be: one sentence each, said in the same words by every formula of the room.

Every guard lets a float through in well under a microsecond, looks at all elements of an array, and
catches NaN because it asks what a value *is*, never what it is not.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any, NoReturn

import numpy as np
from numpy.typing import NDArray

Number = float | NDArray[np.float64]
"""A float or an array of floats. Formulas take either and give back the same kind."""

FLAT_TOLERANCE = 1e-9
"""Slack at the upper end of a range, so that a limit reached by arithmetic still counts as reached."""


def finite(**values: Number) -> None:
    """Refuse every named value that is not a finite number."""
    _hold(values, lambda v: (v > -math.inf) & (v < math.inf), "a finite number")


def positive(**values: Number) -> None:
    """Refuse every named value that is not above zero and finite."""
    _hold(values, lambda v: (v > 0) & (v < math.inf), "above zero and finite")


def positive_or_infinite(**values: Number) -> None:
    """Refuse every named value that is not above zero; infinity stands for a flat or a rigid body."""
    _hold(values, lambda v: v > 0, "above zero (infinity is accepted)")


def not_negative(**values: Number) -> None:
    """Refuse every named value that is not zero or more and finite."""
    _hold(values, lambda v: (v >= 0) & (v < math.inf), "zero or more and finite")


def whole(least: int, **values: Number) -> None:
    """Refuse every named value that is not a whole number of at least `least`."""
    _hold(
        values,
        lambda v: (v >= least) & (v < math.inf) & (v % 1 == 0),
        f"a whole number of {least} or more",
    )


def between(low: float, high: float, **values: Number) -> None:
    """Refuse every named value outside `low` to `high`, both ends included."""
    _hold(values, lambda v: (v >= low) & (v <= high), f"between {low:g} and {high:g}")


def above_up_to(low: float, high: float, **values: Number) -> None:
    """Refuse every named value that is not above `low` and at most `high`."""
    _hold(values, lambda v: (v > low) & (v <= high), f"above {low:g} and at most {high:g}")


def from_up_to_below(low: float, high: float, **values: Number) -> None:
    """Refuse every named value that is not `low` or more and below `high`."""
    _hold(values, lambda v: (v >= low) & (v < high), f"{low:g} or more and below {high:g}")


def from_up(low: float, **values: Number) -> None:
    """Refuse every named value that is not `low` or more and finite."""
    _hold(values, lambda v: (v >= low) & (v < math.inf), f"{low:g} or more and finite")


def less(name: str, value: Number, limit_name: str, limit: Number) -> None:
    """Refuse `value` unless it is below `limit`, element by element."""
    held = value < limit
    if held is not True and not np.all(held):
        _refuse(name, f"less than {limit_name}", value, held, (limit_name, limit))


def at_most(name: str, value: Number, limit_name: str, limit: Number) -> None:
    """Refuse `value` unless it is `limit` or less, with a billionth of slack for rounding."""
    held = value <= limit * (1.0 + FLAT_TOLERANCE)
    if held is not True and not np.all(held):
        _refuse(name, f"at most {limit_name}", value, held, (limit_name, limit))


def at_least(name: str, value: Number, limit_name: str, limit: Number) -> None:
    """Refuse `value` unless it is `limit` or more."""
    held = value >= limit
    if held is not True and not np.all(held):
        _refuse(name, f"{limit_name} or more", value, held, (limit_name, limit))


def one_of(accepted: tuple[str, ...], **values: str) -> None:
    """Refuse every named word that is not in the list."""
    for name, word in values.items():
        if word not in accepted:
            choices = " or ".join(f'"{choice}"' for choice in accepted)
            raise ValueError(f"{name} must be {choices}; came {word!r}")


def plain(values: Any) -> Number:
    """A Python float where the arithmetic came down to one number, else the array as it is."""
    return float(values) if np.ndim(values) == 0 else values


def _hold(values: dict[str, Number], rule: Callable[[Any], Any], accepted: str) -> None:
    for name, value in values.items():
        try:
            held = rule(value)
        except TypeError:
            raise ValueError(f"{name} must be a number or an array of numbers; came {value!r}") from None
        if held is not True and not np.all(held):
            _refuse(name, accepted, value, held)


def _refuse(
    name: str, accepted: str, value: Number, held: Any, limit: tuple[str, Number] | None = None
) -> NoReturn:
    """Name the first element that breaks the rule, and the limit that stood beside it."""
    shape = np.shape(held)
    where = tuple(int(i) for i in np.argwhere(~np.atleast_1d(held))[0]) if shape else ()
    words = f"{name} must be {accepted}; came {_element(value, shape, where)}"
    if limit is not None:
        words += f" with {limit[0]} {_element(limit[1], shape, where)}"
    if where:
        words += f" at element {', '.join(str(i) for i in where)}"
    raise ValueError(words)


def _element(value: Number, shape: tuple[int, ...], where: tuple[int, ...]) -> str:
    return f"{float(np.broadcast_to(value, shape)[where]):g}"
