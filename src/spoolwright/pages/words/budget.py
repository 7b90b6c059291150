"""What a stated uncertainty is made of, row by row, in the reader's units."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from spoolwright import quantities
from spoolwright.bench.budget import Contribution
from spoolwright.pages.words import shown
from spoolwright.pages.words.promised import IN_PERCENT
from spoolwright.sheets import reading_kinds

RESULTS = {
    "start_up": ("start-up pull", "force"),
    "running": ("running pull", "force"),
    "start_up_ratio": ("start-up ratio", "ratio"),
    "judder": ("judder", "ratio"),
    "drift": ("drift", "ratio"),
    "initial_speed": ("speed at the first tick", "rotation"),
    "constant": ("constant drag", "torque"),
    "viscous": ("drag that grows with speed", "viscous_drag"),
    "quadratic": ("drag that grows with the square of speed", "quadratic_drag"),
    "stop_time": ("time to rest", "time"),
    "per_turn": ("pull that one turn adds", "force"),
    "onset": ("setting at which the drag bites", "ratio"),
    "spool_inertia": ("moment of inertia", "inertia"),
    "spool_friction": ("friction torque", "torque"),
}
PER_INERTIA = {"constant": "deceleration", "viscous": "frequency", "quadratic": "ratio"}


@dataclass(frozen=True)
class BudgetRow:
    """One row behind a stated uncertainty, in the reader's units."""

    result: str
    source: str
    way: str
    amount: str


def budget_rows(rows: Sequence[Contribution], system: str, *, per_inertia: bool = False) -> list[BudgetRow]:
    """What each stated uncertainty is made of; standard uncertainties, nothing that weighs nothing."""
    return [_budget_row(row, system, per_inertia) for row in rows if row.uncertainty > 0]


def _budget_row(row: Contribution, system: str, per_inertia: bool) -> BudgetRow:
    title, dimension = RESULTS.get(row.result) or _of_kind(row.result)
    if per_inertia:
        dimension = PER_INERTIA.get(row.result, dimension)
    unit = "%" if row.result in IN_PERCENT else None
    amount = shown.unbroken(quantities.show(row.uncertainty, dimension, system, unit=unit))
    way = "from scatter" if row.way == "A" else "from what is known"
    return BudgetRow(title, row.source, way, amount)


def _of_kind(result: str) -> tuple[str, str]:
    """A result that is called like its kind of reading."""
    kind = reading_kinds.kind(result)
    return f"{kind.title[0].lower()}{kind.title[1:]}", kind.dimension
