"""A reading as judgement sees it: what was measured, and under which conditions."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from spoolwright.bench.uncertainty import Measured

Condition = float | int | bool | str
Readings = Mapping[str, "Measured | Taken | Iterable[Taken]"]


@dataclass(frozen=True)
class Taken:
    """One reading of a kind, with its conditions by their keys (`radius` [m], `star_turns`, `line`, ...)."""

    kind: str
    measured: Measured
    conditions: Mapping[str, Condition] = field(default_factory=dict)

    def number(self, key: str) -> float | None:
        """A condition as a number, None where it was not written down."""
        value = self.conditions.get(key)
        return float(value) if isinstance(value, int | float) and not isinstance(value, bool) else None

    def word(self, key: str) -> str:
        """A condition as a word, empty where it was not written down."""
        value = self.conditions.get(key)
        return value if isinstance(value, str) else ""


def listed(readings: Readings) -> tuple[Taken, ...]:
    """Readings in one row, whichever way they were handed over.

    Parameters
    ----------
    readings : mapping of str to Measured, Taken or several Taken
        By kind of reading **[SI]**.

    Returns
    -------
    tuple of Taken
        One each; a bare value has no conditions.

    Source
    ------
    Our own bookkeeping.

    Examples
    --------
    >>> [taken.kind for taken in listed({"mass": Measured(0.286, 0.001, "mass")})]
    ['mass']
    """
    found: list[Taken] = []
    for kind, value in readings.items():
        if isinstance(value, Measured):
            found.append(Taken(kind, value))
        elif isinstance(value, Taken):
            found.append(value)
        else:
            found.extend(value)
    return tuple(found)
