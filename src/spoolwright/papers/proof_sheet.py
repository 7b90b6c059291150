"""The proof: the readings after the work beside what was promised, and what they show."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from spoolwright.papers import charts, typesetting
from spoolwright.papers.charts import Chart
from spoolwright.papers.figures import Figure, shown
from spoolwright.papers.parties import Addressee, House, ReelMark
from spoolwright.papers.typesetting import Picture

DECISIONS = ("shown", "not shown", "failed")


@dataclass(frozen=True)
class Proved:
    """One promised reading and what came of it.

    `decision` is "shown", "not shown" or "failed"; `wrong_pass` the chance, as text, that the true
    value lies outside a promise that is called shown ("2.3 %").
    """

    what: str
    promised: Figure
    measured: Figure
    decision: str
    before: Figure = "no reading"
    conditions: str = ""
    words: str = ""
    wrong_pass: str = ""

    def __post_init__(self) -> None:
        if self.decision not in DECISIONS:
            raise ValueError(f"a decision is {self.decision!r}; accepted: {', '.join(DECISIONS)}")


@dataclass(frozen=True)
class DragTable:
    """Pull and torque at turns of the star from free, or at places on a lever's way, as `by` says.

    `radius` is where the line leaves, with its unit.
    """

    radius: str
    rows: tuple[tuple[str, Figure, Figure], ...]
    by: str = "turns of the star"


@dataclass(frozen=True)
class Instrument:
    """What a reading was taken with, how sure it is, and when it was last checked."""

    name: str
    accuracy: str
    checked: str = ""


@dataclass(frozen=True)
class Signature:
    """Who signs, as what ("measured", "wound it blind"), and when."""

    name: str
    role: str
    date: str


@dataclass(frozen=True)
class ProofSheet:
    """A proof of one visit.

    `rule` is the decision rule in words, `pull` and `spin` are charts of this visit's traces, `drawing` the
    section of the reel, `done` the works in one line each, `system` the reader's units.
    """

    shop: House
    customer: Addressee
    reel: ReelMark
    number: str
    date: str
    proved: tuple[Proved, ...]
    rule: str
    done: tuple[str, ...] = ()
    pull: Chart | None = None
    spin: Chart | None = None
    drag_table: DragTable | None = None
    instruments: tuple[Instrument, ...] = ()
    signed: tuple[Signature, ...] = ()
    cautions: tuple[str, ...] = ()
    trace: Picture | None = None
    drawing: Picture | None = None
    system: str = "metric"
    language: str = "en"
    notes: tuple[str, ...] = field(default=())

    def __post_init__(self) -> None:
        if not self.proved:
            raise ValueError("a proof needs at least one reading beside its promise, none was given")


def verdict(sheet: ProofSheet) -> str:
    """One sentence for the whole sheet: how many promises were shown, not shown, failed."""
    counts = {name: sum(row.decision == name for row in sheet.proved) for name in DECISIONS}
    if counts["shown"] == len(sheet.proved):
        return "Every promise is shown."
    said = [f"{count} {name}" for name, count in counts.items() if count]
    return f"Of {len(sheet.proved)} promises: {', '.join(said)}."


def _rows(sheet: ProofSheet) -> list[dict[str, Any]]:
    return [
        {
            "what": row.what,
            "conditions": row.conditions,
            "before": shown(row.before, sheet.system),
            "promised": shown(row.promised, sheet.system),
            "measured": shown(row.measured, sheet.system),
            "decision": row.decision,
            "words": row.words,
            "wrong_pass": row.wrong_pass,
        }
        for row in sheet.proved
    ]


def _pictures(sheet: ProofSheet) -> Mapping[str, Picture]:
    drawn = {
        name: charts.picture(chart) for name, chart in (("pull", sheet.pull), ("spin", sheet.spin)) if chart
    }
    ready = {"trace": sheet.trace, "drawing": sheet.drawing}
    return drawn | {name: picture for name, picture in ready.items() if picture is not None}


def _drag_table(sheet: ProofSheet) -> dict[str, Any] | None:
    if sheet.drag_table is None:
        return None
    rows = [
        [turns, shown(pull, sheet.system), shown(torque, sheet.system)]
        for turns, pull, torque in sheet.drag_table.rows
    ]
    return {"radius": sheet.drag_table.radius, "by": sheet.drag_table.by, "rows": rows}


def render(sheet: ProofSheet) -> bytes:
    """The proof sheet as a PDF, A4."""
    data = {
        "shop": vars(sheet.shop),
        "customer": vars(sheet.customer),
        "reel": vars(sheet.reel),
        "number": sheet.number,
        "date": sheet.date,
        "language": sheet.language,
        "verdict": verdict(sheet),
        "proved": _rows(sheet),
        "rule": sheet.rule,
        "done": sheet.done,
        "says": {name: chart.says for name, chart in (("pull", sheet.pull), ("spin", sheet.spin)) if chart},
        "drag_table": _drag_table(sheet),
        "instruments": [[it.name, it.accuracy, it.checked] for it in sheet.instruments],
        "signed": [vars(it) for it in sheet.signed],
        "cautions": sheet.cautions,
        "notes": sheet.notes,
    }
    return typesetting.render("proof_sheet", data, _pictures(sheet))
