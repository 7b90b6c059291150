"""What is good, what wants a look and what is to be acted on, in words and always with its mark."""

from __future__ import annotations

import math

from spoolwright import quantities
from spoolwright.bench.uncertainty import Measured
from spoolwright.pages.words import shown
from spoolwright.pages.words.promised import IN_PERCENT
from spoolwright.sheets.reading_kinds import ReadingKind

VERDICTS = {
    "good": "inside what is good",
    "look": "wants a look",
    "act": "to be acted on",
}


def in_words(kind: ReadingKind, tags: tuple[str, ...], system: str) -> str:
    """ "Good up to 1.10, wants a look up to 1.30, beyond that to be acted on (judgement prior)." """
    limits = kind.limits_for(*tags)
    if limits is None:
        return ""
    good, look = _range(limits.good, kind, system), _range(limits.look, kind, system)
    second = f", wants a look {look}" if limits.look != limits.good else ""
    return f"Good {good}{second}, beyond that to be acted on ({limits.mark})."


def verdict(kind: ReadingKind, value: float, tags: tuple[str, ...], system: str) -> str:
    """What the limits say of one value, where they say that it is not good; empty where all is well."""
    band = kind.band(value, *tags)
    limits = kind.limits_for(*tags)
    if band in ("", "good") or limits is None:
        return ""
    return f"{VERDICTS[band].capitalize()}: good is {_range(limits.good, kind, system)} ({limits.mark})."


def _range(ends: tuple[float, float], kind: ReadingKind, system: str) -> str:
    low, high = ends
    if kind.scale:
        return _on_scale(low, high, kind)
    if math.isinf(low) and math.isinf(high):
        return "whatever it is"
    if math.isinf(low):
        return f"up to {_shown(high, kind, system)}"
    if math.isinf(high):
        return f"from {_shown(low, kind, system)}"
    return f"from {_shown(low, kind, system)} to {_shown(high, kind, system)}"


def _on_scale(low: float, high: float, kind: ReadingKind) -> str:
    top = len(kind.scale) - 1 if math.isinf(high) else int(high)
    words = f"up to {top}, “{kind.scale[top]}”"
    return words if math.isinf(low) else f"from {int(low)} {words}"


def _shown(value: float, kind: ReadingKind, system: str) -> str:
    if kind.dimension == "ratio" and kind.id not in IN_PERCENT:
        return f"{value:.2f}"
    unit = "%" if kind.id in IN_PERCENT else None
    number, _, named = quantities.show(value, kind.dimension, system, unit=unit).partition(" ")
    # A limit is a round number: the zeros that a measured value would carry say nothing here.
    plain = number.rstrip("0").rstrip(".") if "." in number else number
    return shown.unbroken(f"{plain} {named}".strip())


def percent(share: Measured) -> str:
    """ "6.2 % ± 0.8 %": a share as a reader of the bench book says it."""
    return shown.unbroken(quantities.show(share.value, "ratio", "metric", share.expanded, unit="%"))
