"""What is odd about a sheet that is otherwise in order: a person should look, nothing is refused."""

from __future__ import annotations

from collections.abc import Iterator

from spoolwright.sheets.bearing_sizes import bearing_size
from spoolwright.sheets.drag_stack import slipping_pairs
from spoolwright.sheets.reel_sheet import ReelSheet


def remarks(sheet: ReelSheet) -> tuple[str, ...]:
    """Sentences about the drag stack's order, bearings of no standard size and parts that are not listed."""
    return (*_stack(sheet), *_bearings(sheet), *_parts(sheet))


def _stack(sheet: ReelSheet) -> Iterator[str]:
    if sheet.drag is not None:
        yield from slipping_pairs(sheet.drag.stack).warnings


def _bearings(sheet: ReelSheet) -> Iterator[str]:
    for bearing in sheet.bearings:
        try:
            bearing_size(bearing.size.bore, bearing.size.outer, bearing.size.width)
        except KeyError as fault:
            yield f"Bearing “{bearing.place}”: {fault.args[0]}."


def _parts(sheet: ReelSheet) -> Iterator[str]:
    if not sheet.parts:
        yield "The sheet has no parts list, so nothing can be ticked off when the reel is put together."
        return
    listed = {part.name for part in sheet.parts}
    for washer in sheet.drag.stack if sheet.drag else ():
        if washer.name not in listed and washer.turns_with != "spool":
            yield f"“{washer.name}” is in the drag stack but not in the parts list."
