"""The drag stack in its order, in words, with the places where it slips and what is wrong with the order."""

from __future__ import annotations

from dataclasses import dataclass

from spoolwright import quantities
from spoolwright.pages.reel_sheet.rows import coefficients, marked
from spoolwright.pages.words import shown
from spoolwright.papers.section.measures import measure
from spoolwright.papers.section.stack import washer_key
from spoolwright.sheets.drag_stack import Pair, slipping_pairs
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Washer

TURNS = {"neither": "lies loose"}


@dataclass(frozen=True)
class Member:
    """One member of the stack; `slips` is said after it where the face to the next one slips."""

    key: str
    name: str
    words: str
    slips: str


@dataclass(frozen=True)
class StackInWords:
    """The stack from the inner end outwards."""

    members: tuple[Member, ...]
    pairs: int
    warnings: tuple[str, ...]


def stack_in_words(sheet: ReelSheet, system: str) -> StackInWords | None:
    """The stack of this sheet, or None where it has no drag of discs."""
    if sheet.drag is None:
        return None
    stack = sheet.drag.stack
    reading = slipping_pairs(stack)
    left = list(reading.pairs)
    keys = {
        id(washer): washer_key(washer, place) for place, washer in enumerate(measure(sheet).stack, start=1)
    }
    members = []
    for place, washer in enumerate(stack):
        over = stack[place + 1] if place + 1 < len(stack) else None
        pair = next((p for p in left if over and (p.lower, p.upper) == (washer.name, over.name)), None)
        if pair is not None:
            left.remove(pair)
        slips = _slips(pair, system) if pair else ""
        members.append(Member(keys.get(id(washer), ""), washer.name, _words(washer, system), slips))
    return StackInWords(tuple(members), len(reading.pairs), reading.warnings)


def _words(washer: Washer, system: str) -> str:
    turns = TURNS.get(washer.turns_with, f"turns with the {washer.turns_with}")
    sizes = ", ".join(
        f"{shown.unbroken(quantities.show_stated(value, 'length', system))} {what}"
        for value, what in (
            (washer.outer_diameter, "outside"),
            (washer.inner_diameter, "bore"),
            (washer.thickness, "thick"),
        )
    )
    return f"{washer.material}, {turns}, {washer.lubrication}; {sizes}"


def _slips(pair: Pair, system: str) -> str:
    outer, inner = (
        shown.unbroken(quantities.show_stated(2 * radius, "length", system))
        for radius in (pair.outer_radius, pair.inner_radius)
    )
    friction = coefficients(pair.friction.low, pair.friction.high)
    return (
        f"slips here: {pair.face_material}, {pair.lubrication}, on a ring {outer} by {inner}; "
        f"friction {friction}, {marked(pair.friction.how)}"
    )
