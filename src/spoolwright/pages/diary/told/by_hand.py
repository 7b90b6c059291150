"""A part measured by hand as it is read: its size when new, its limits, the verdict, what it rests on."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from spoolwright import quantities
from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.hand_limits import HandPart
from spoolwright.judgement.hand_words import call_said, limits_said
from spoolwright.pages.diary.told.readings import Result
from spoolwright.pages.words import shown
from spoolwright.sheets import instrument_kinds
from spoolwright.shop.questions.by_hand import KeptByHand, by_hand_of


@dataclass(frozen=True)
class BesidePart:
    """What is known of a part before it is measured."""

    title: str
    new: str
    limits: str
    source: str


@dataclass(frozen=True)
class Said:
    """What a size says of its part; `rows` are what its uncertainty is made of."""

    verdict: str
    new: str
    source: str
    instrument: str
    rule: str
    size: str
    rows: tuple[tuple[str, str], ...]


def beside(parts: Sequence[HandPart], dimension: str, system: str) -> list[BesidePart]:
    """Parts of which the same is known stand together."""
    alike: dict[tuple[str, str, str], list[str]] = {}
    for part in parts:
        new = _new(part.new, part.new_source, dimension, system)
        limits = limits_said(part.limits, dimension, system) if part.limits else ""
        alike.setdefault((new, limits, part.source), []).append(part.title)
    return [BesidePart("; ".join(titles), *facts) for facts, titles in alike.items()]


def said(kept: KeptByHand, measured: Measured, system: str) -> Said:
    """The verdict of one part in words."""
    dimension = measured.dimension
    value, spread = shown.measured(measured, system)
    new = _new(kept.new, kept.new_source, dimension, system)
    verdict = (
        call_said(kept.call, measured, kept.limits, system)
        if kept.call and kept.limits
        else "No limit is known for it, so nothing is said of it."
    )
    rows = tuple((row.source, shown.quantity(row.uncertainty, dimension, system)) for row in kept.budget)
    rule = kept.call.rule if kept.call else ""
    size = f"{value} ± {spread}" if spread else value
    return Said(verdict, new, kept.source, kept.instrument, rule, size, rows)


def below(reading: Any, results: Sequence[Result], system: str) -> tuple[str, ...]:
    """The sentences below the line of a reading: what is said of the part, else the instrument alone."""
    kept = by_hand_of(reading)
    if kept and results:
        return _of_part(kept, results[0].measured, system)
    if reading.instrument is None:
        return ()
    kind = instrument_kinds.kind(reading.instrument.kind)
    return (f"With: {kind.title.lower()} {reading.instrument.mark}.",)


def _of_part(kept: KeptByHand, measured: Measured, system: str) -> tuple[str, ...]:
    it = said(kept, measured, system)
    beside = f"{it.new[0].upper()}{it.new[1:]}. " if it.new else ""
    return (it.verdict, f"{beside}Limit: {it.source}. With: {it.instrument}.")


def _new(size: float | None, source: str, dimension: str, system: str) -> str:
    """ "0.8 mm new, by the sheet"."""
    return f"{shown.unbroken(quantities.show_stated(size, dimension, system))} {source}" if size else ""
