"""A promise in words: at least, at most, or between, in the reader's units."""

from __future__ import annotations

from typing import Any

from spoolwright import quantities
from spoolwright.pages.diary.told.limits import IN_PERCENT
from spoolwright.pages.words import shown
from spoolwright.sheets import reading_kinds


def title(promise: Any) -> str:
    """What is promised, as the registry of readings calls it, else in the promise's own words."""
    found = reading_kinds.kinds().get(promise.reading_kind or promise.kind)
    return found.title if found else promise.words or promise.kind.replace("_", " ")


def in_words(promise: Any, system: str) -> str:
    """ "at most 1.15", "at least 26 s", "6.0 to 8.0 kg"."""
    unit = "%" if (promise.reading_kind or promise.kind) in IN_PERCENT else None
    low, high = promise.low_si, promise.high_si
    if low is not None and high is not None:
        return shown.unbroken(quantities.show_interval(low, high, promise.dimension, system, unit))
    value, word = (low, "at least") if high is None else (high, "at most")
    return f"{word} {shown.unbroken(quantities.show(value, promise.dimension, system, unit=unit))}"
