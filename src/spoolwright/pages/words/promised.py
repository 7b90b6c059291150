"""A promise in words: what is promised, and at least, at most or between what, in the reader's units."""

from __future__ import annotations

import re
from typing import Any

from spoolwright import quantities
from spoolwright.pages.words import shown
from spoolwright.sheets import reading_kinds

IDLE_NOUGHTS = re.compile(r"(?:(\.[0-9]*?[1-9])0+|\.0+)(?![0-9])")
IN_PERCENT = ("judder", "drift", "pull_fade", "pull_by_speed", "bearing_swelling", "gear_swelling")
"""Shares that the bench says as percentages."""


def title(promise: Any) -> str:
    """What is promised, as the registry of readings calls it, else in the promise's own words."""
    found = reading_kinds.kinds().get(promise.reading_kind or promise.kind)
    return found.title if found else promise.words or promise.kind.replace("_", " ")


def in_words(promise: Any, system: str) -> str:
    """ "at most 1.15", "at least 26.0 s", "6.0 to 8.0 kg"."""
    low, high = promise.low_si, promise.high_si
    kind = promise.reading_kind or promise.kind
    if low is not None and high is not None:
        unit = unit_of(kind)
        return shown.unbroken(quantities.show_interval(low, high, promise.dimension, system, unit))
    value, word = (low, "at least") if high is None else (high, "at most")
    return f"{word} {value_of(kind, value, promise.dimension, system)}"


def value_of(kind: str, value: float, dimension: str, system: str) -> str:
    """One end of a promise: "9 %" for judder, "1.14" for a start-up ratio. It was chosen, not measured, so
    no noughts behind it pretend to more."""
    text = quantities.show(value, dimension, system, unit=unit_of(kind))
    return shown.unbroken(IDLE_NOUGHTS.sub(r"\1", text))


def unit_of(kind: str) -> str | None:
    """The unit that goes before the reader's own, where the bench always says it in one."""
    return "%" if kind in IN_PERCENT else None
