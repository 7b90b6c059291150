"""A proof as it stands in the diary: promised beside measured, and what the stated rule made of it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from spoolwright.bench.uncertainty import Measured
from spoolwright.pages.diary import ways
from spoolwright.pages.words import promised, shown
from spoolwright.shop.questions.blocks import Block


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


def of_proof(block: Block, system: str) -> dict[str, Any]:
    """The rows, the rules that decided them, and where the proof lies as a page and as a paper."""
    proof, entry = block.part, block.entry
    return {
        "rows": [_row(row, system) for row in proof.rows.all()],
        "rules": list(dict.fromkeys(row.rule for row in proof.rows.all() if row.rule)),
        "proof": ways.to_proof(entry.visit.tag),
        "paper": ways.to_paper("proof", entry.pk),
    }


def _row(row: Any, system: str) -> Row:
    unit = promised.unit_of(row.promise.reading_kind or row.promise.kind)
    value, spread = shown.measured(_measured(row.measured), system, unit)
    before = _measured(row.before) if row.before else None
    was = shown.quantity(before.value, before.dimension, system, before.expanded, unit) if before else ""
    return Row(
        what=promised.title(row.promise),
        promised=promised.in_words(row.promise, system),
        measured=value,
        spread=spread,
        before=was,
        decision=row.decision,
        words=row.words,
    )


def _measured(value: Any) -> Measured:
    return Measured(value.value_si, value.standard_uncertainty_si or 0.0, value.dimension)
