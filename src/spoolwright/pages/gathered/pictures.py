"""The pictures of a visit for pages and papers: its trace as a mark, its section with the findings ringed."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from spoolwright.papers import charts, finding_rings, section_drawing
from spoolwright.papers.section_drawing import Ringed
from spoolwright.papers.typesetting import Picture
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.shop.questions import reel_sheets
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.signals import KeptPull, pull_of


def sheet_of(visit: Any) -> ReelSheet | None:
    """The sheet that describes the visit's reel, where one does."""
    version = visit.reel.sheet_version
    return reel_sheets.read(version) if version else None


def pulls(blocks: Sequence[Block]) -> list[tuple[Any, KeptPull]]:
    """The readings that kept a pull trace, oldest first, each with its trace."""
    readings = [block.part for block in blocks if block.kind == "reading" and not block.is_struck]
    kept = [(reading, pull_of(reading)) for reading in readings]
    return [(reading, pull) for reading, pull in kept if pull is not None]


def mark_before(blocks: Sequence[Block]) -> Picture | None:
    """The latest pull trace as a small line: the mark of the reel."""
    kept = pulls(blocks)
    if not kept:
        return None
    pull = kept[-1][1]
    return Picture(charts.trace_mark(pull.times, pull.forces), "Pull trace of this reel")


def ringed(sheet: ReelSheet, blocks: Sequence[Block]) -> tuple[Ringed, ...]:
    """The findings among these entries as rings on the drawing."""
    found = [block.part for block in blocks if block.kind == "finding" and not block.is_struck]
    return finding_rings.rings(sheet, [(it.touched, it.part, it.evidence) for it in found])


def drawing(visit: Any, blocks: Sequence[Block], system: str) -> Picture | None:
    """The section for a paper, where a sheet describes the reel."""
    sheet = sheet_of(visit)
    if sheet is None:
        return None
    return section_drawing.picture(sheet, findings=ringed(sheet, blocks), system=system)
