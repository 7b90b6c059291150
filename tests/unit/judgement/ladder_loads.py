"""A shipped reel under a pull, as the files of the ladder's rungs take it."""

from __future__ import annotations

from typing import Any

from spoolwright.judgement import drag_train
from spoolwright.judgement.line_said import read_line
from spoolwright.judgement.loads import Loads
from spoolwright.judgement.narrowing import know
from spoolwright.judgement.rung import Limit
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import ReelSheet

SAMPLES = 300


def changed(slug: str, **tables: dict[str, Any]) -> ReelSheet:
    """A shipped sheet with some fields of its tables changed."""
    sheet = reel_sheet.load(slug)
    new = {name: getattr(sheet, name).model_copy(update=fields) for name, fields in tables.items()}
    return sheet.model_copy(update=new)


def loads_of(sheet: ReelSheet | str, line: str = "", fill: float = 1.0) -> Loads:
    held = reel_sheet.load(sheet) if isinstance(sheet, str) else sheet
    known = know(held, {}, samples=SAMPLES, seed=1)
    radius = drag_train.radius_at_fill(held, fill)
    said = read_line(line) if line else None
    return Loads(held, known.state, radius, known.draws, SAMPLES, 1, said)


def middles(limits: list[Limit]) -> dict[str, float]:
    return {limit.part: float(sorted(limit.pull)[SAMPLES // 2]) for limit in limits}
