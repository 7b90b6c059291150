"""Pull and torque by turns of the star or way of the lever: measured after the work, else expected."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from spoolwright import quantities
from spoolwright.bench.torque import pull_torque
from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.prediction import StarTurn
from spoolwright.pages.gathered import findings, pictures
from spoolwright.papers.figures import Span
from spoolwright.papers.proof_sheet import DragTable
from spoolwright.sheets.drag_setting import DragSetting, setting_of
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.diary import Diary
from spoolwright.shop.questions.predictions import prediction_of

RADIUS_UNSURE = 0.3e-3
"""Standard uncertainty of the radius at which the line leaves [m]: judgement prior."""

SAME_RADIUS = 0.03
MOST_ROWS = 14

Row = tuple[str, Any, Any]


def gathered(diary: Diary, after: Sequence[Block], system: str) -> DragTable | None:
    """One radius: that of the latest measured pull; pulls at another radius stay out of the table."""
    sheet = pictures.sheet_of(diary.visit)
    setting = setting_of(sheet)
    measured = _measured(after, sheet)
    expected = _expected(diary)
    if not measured and not expected:
        return None
    radius = measured[-1][1] if measured else float(expected[0].pull.conditions["radius"])
    rows = {t: _measured_row(t, pull, radius, setting) for t, r, pull in measured if _same(r, radius)}
    apart = 0.2 if not setting.is_lever else 0.04 * setting.whole
    for row in expected:
        if all(abs(row.turns - turns) > apart for turns in rows):
            rows[row.turns] = _expected_row(row, radius, setting)
    kept = [rows[turns] for turns in sorted(rows) if turns > 0][:MOST_ROWS]
    by = setting.by.removeprefix("the ")
    return DragTable(quantities.show(radius, "length", system), tuple(kept), by) if kept else None


def _place(turns: float, setting: DragSetting) -> str:
    return setting.at(turns).removesuffix(" of its way") if setting.is_lever else f"{turns:g}"


def _measured(after: Sequence[Block], sheet: ReelSheet | None) -> list[tuple[float, float, Measured]]:
    """Turns, radius and pull of every running pull after the work whose star is known."""
    found = []
    for reading in (block.part for block in after if block.kind == "reading"):
        for value in (v for v in reading.values.all() if v.repeat == 0):
            turns = _turns(value.kind, reading, sheet)
            if turns and reading.radius_m:
                found.append((turns, reading.radius_m, findings.measured(value)))
    return found


def _turns(kind: str, reading: Any, sheet: ReelSheet | None) -> float | None:
    """With the drag hard on the star stands at the end of its way, whatever was counted."""
    if kind == "pull_run":
        return reading.star_turns
    if kind == "pull_full":
        return sheet.drag.turns_to_full if sheet and sheet.drag else reading.star_turns
    return None


def _expected(diary: Diary) -> tuple[StarTurn, ...]:
    """The table that stood on the option which the customer chose."""
    answers = diary.agreed.answers
    kept = prediction_of(answers[0].option) if answers else None
    return kept.star_turns if kept else ()


def _same(one: float, other: float) -> bool:
    return abs(one - other) <= SAME_RADIUS * other


def _measured_row(turns: float, pull: Measured, radius: float, setting: DragSetting) -> Row:
    return _place(turns, setting), pull, pull_torque(pull, Measured(radius, RADIUS_UNSURE, "length"))


def _expected_row(row: StarTurn, radius: float, setting: DragSetting) -> Row:
    """The torque stays what it is; at another radius the pull is another."""
    its = float(row.pull.conditions["radius"])
    middle, low, high = (value * its for value in (row.pull.middle, row.pull.low, row.pull.high))
    pull = Span(middle / radius, low / radius, high / radius, "force")
    return f"{_place(row.turns, setting)}, expected", pull, Span(middle, low, high, "torque")
