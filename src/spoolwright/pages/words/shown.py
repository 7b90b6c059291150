"""Quantities in the units that the reader has chosen."""

from __future__ import annotations

import re
from typing import Any

from spoolwright import quantities
from spoolwright.bench.uncertainty import Measured

PLUS_MINUS = " ± "
_UNITS = {unit.name for kind in quantities.DIMENSIONS.values() for unit in kind.units if unit.name} | {
    "turns"
}
_NUMBER_AND_UNIT = re.compile(
    rf"(\d) ({'|'.join(map(re.escape, sorted(_UNITS, key=len, reverse=True)))})(?!\w)"
)


def system_of(person: Any) -> str:
    """The units of this person; metric for somebody who has not chosen, such as a customer with a link."""
    chosen = getattr(person, "units", None)
    return chosen if chosen in quantities.SYSTEMS else "metric"


def quantity(
    value: float | None,
    dimension: str,
    system: str,
    uncertainty: float | None = None,
    unit: str | None = None,
) -> str:
    """Text such as "2.65 kg ± 0.11 kg"; `uncertainty` is the expanded one; a value not taken is a dash."""
    if value is None:
        return "–"
    return unbroken(quantities.show(value, dimension, system, uncertainty, unit))


def measured(reading: Measured, system: str, unit: str | None = None) -> tuple[str, str]:
    """The value and its expanded uncertainty as two texts, so that a page can set them in two sizes."""
    text = quantities.show(reading.value, reading.dimension, system, reading.expanded, unit)
    value, found, spread = text.partition(PLUS_MINUS)
    return unbroken(value), unbroken(spread) if found else ""


def interval(low: float, high: float, dimension: str, system: str) -> str:
    """Text such as "6.4 to 7.4 kg", both ends in one unit."""
    return unbroken(quantities.show_interval(low, high, dimension, system))


def two_figures(value: float, dimension: str, system: str) -> str:
    """A spread alone, to two figures of itself: "0.017 mm"."""
    return unbroken(quantities.show(value, dimension, system, value or None).partition(PLUS_MINUS)[0])


def together(sentence: str) -> str:
    """A sentence in which no number parts from its unit at the end of a line."""
    return _NUMBER_AND_UNIT.sub("\\1\u00a0\\2", sentence)


def unbroken(text: str) -> str:
    """A number and its unit never part at the end of a line; a power stands where a reader looks for it."""
    whole = raised(text).replace(" ", "\u00a0")
    return whole.replace("\u00a0±\u00a0", " ±\u00a0").replace("\u00a0to\u00a0", " to ")


def raised(text: str) -> str:
    """A power where a reader looks for it: "g cm²"."""
    return text.replace("^2", "\u00b2").replace("^3", "\u00b3")
