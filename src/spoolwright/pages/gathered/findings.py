"""What was found at check-in, as a paper lists it: faults in words, readings with their conditions."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from spoolwright import quantities
from spoolwright.bench.uncertainty import Measured
from spoolwright.pages.words import conditions, promised
from spoolwright.papers.figures import Figure
from spoolwright.papers.quote import Found
from spoolwright.sheets import reading_kinds
from spoolwright.sheets.drag_setting import STAR, DragSetting
from spoolwright.shop.questions.blocks import Block

TOLD_APART = ("pull_start", "pull_run", "start_up_ratio", "pull_full", "spin_time", "end_float", "click_pull")
"""The readings that a customer is shown; the others stand in the diary."""


def found(blocks: Sequence[Block], system: str, setting: DragSetting = STAR) -> tuple[Found, ...]:
    """Findings first, then the latest reading of each kind that a customer can use."""
    faults = [_fault(block) for block in blocks if block.kind == "finding"]
    latest = {v.kind: v for block in blocks if block.kind == "reading" for v in _results(block)}
    readings = [_reading(latest[kind], system, setting) for kind in TOLD_APART if kind in latest]
    return (*faults, *_said_once(readings))


def measured(value: Any) -> Measured:
    """A value in ink as a measured one."""
    return Measured(value.value_si, value.standard_uncertainty_si or 0.0, value.dimension)


def figure(value: Any, system: str) -> Figure:
    """A value in ink as a paper carries it: as measured, or as text where the bench says it in per cent."""
    taken = measured(value)
    unit = promised.unit_of(value.kind)
    if unit is None:
        return taken
    return quantities.show(taken.value, taken.dimension, system, taken.expanded, unit)


def _said_once(readings: Sequence[Found]) -> list[Found]:
    """Conditions that stand a line above already are not written out again."""
    above = ["", *(row.conditions for row in readings)]
    return [
        replace(row, conditions="as above") if row.conditions and row.conditions == before else row
        for before, row in zip(above, readings, strict=False)
    ]


def _results(block: Block) -> list[Any]:
    return [value for value in block.part.values.all() if value.repeat == 0]


def _fault(block: Block) -> Found:
    return Found(_capital(block.part.part), block.part.evidence)


def _reading(value: Any, system: str, setting: DragSetting) -> Found:
    title = reading_kinds.kind(value.kind).title
    said = conditions.in_words(value.reading.conditions, system, setting)
    return Found(title, figure(value, system), said)


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]
