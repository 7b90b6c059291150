"""The moment of inertia as it was measured on this reel, as a choice in the form of a spin-down."""

from __future__ import annotations

from spoolwright.pages.diary.desk import Desk
from spoolwright.pages.gathered import inertia
from spoolwright.pages.words import shown, when
from spoolwright.shop.questions import measured_inertia
from spoolwright.shop.questions.measured_inertia import MeasuredInertia

MEASURED = "measured"


def choices(desk: Desk) -> list[tuple[str, str]]:
    """One choice where anything was measured; its words say of which spool."""
    found = [one for one in (_latest(desk, on) for on in (False, True)) if one is not None]
    said = "; ".join(_in_words(one, desk.system) for one in found)
    return [(MEASURED, f"as measured: {said}")] if found else []


def chosen(desk: Desk, *, line_on: bool) -> MeasuredInertia | None:
    """The newest result of the spool as it turned, with its own uncertainty."""
    return _latest(desk, line_on)


def not_measured(*, line_on: bool) -> str:
    """What stands beside the choice where that very spool was not measured."""
    if line_on:
        return "With the line on it was not measured in this visit. Measure it so, or type it."
    return "With the line off it was not measured. Measure the bare spool, or choose another way."


def _latest(desk: Desk, line_on: bool) -> MeasuredInertia | None:
    return measured_inertia.latest(desk.visit, line_on=line_on)


def _in_words(one: MeasuredInertia, system: str) -> str:
    found = one.measured
    amount = shown.quantity(found.value, found.dimension, system, found.expanded)
    spool = "with the line on" if one.line_on else "the bare spool"
    by = f"by {inertia.way(one.method)}" if one.method else "typed"
    day = "" if one.this_visit else f" on {when.dated(one.entry.written_at)}"
    return f"{spool} {amount}, {by}{day}"
