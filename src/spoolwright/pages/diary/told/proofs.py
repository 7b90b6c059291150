"""A proof as it stands in the diary: promised beside measured, and what the stated rule made of it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from spoolwright.bench.uncertainty import Measured
from spoolwright.pages.diary import ways
from spoolwright.pages.diary.told import promises
from spoolwright.pages.words import shown


@dataclass(frozen=True)
class Row:
    """One promise and what came of it."""

    what: str
    promised: str
    measured: str
    spread: str
    before: str
    decision: str
    words: str


def of_proof(tag: int, proof: Any, system: str) -> dict[str, Any]:
    rows = [_row(row, system) for row in proof.rows.all()]
    rules = list(dict.fromkeys(row.rule for row in proof.rows.all() if row.rule))
    return {"rows": rows, "rules": rules, "proof": ways.to_proof(tag)}


def _row(row: Any, system: str) -> Row:
    value, spread = shown.measured(_measured(row.measured), system)
    before = _measured(row.before) if row.before else None
    was = shown.quantity(before.value, before.dimension, system, before.expanded) if before else ""
    return Row(
        what=promises.title(row.promise),
        promised=promises.in_words(row.promise, system),
        measured=value,
        spread=spread,
        before=was,
        decision=row.decision,
        words=row.words,
    )


def _measured(value: Any) -> Measured:
    return Measured(value.value_si, value.standard_uncertainty_si or 0.0, value.dimension)
