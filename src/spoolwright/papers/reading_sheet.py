"""The reading sheet: one reading with its method, uncertainty, instrument and traces.

It follows the list of ISO/IEC 17025:2017, 7.8.2 (opened) and 7.8.4 (from memory), and says that no
accreditation stands behind it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from spoolwright.papers import charts, typesetting
from spoolwright.papers.charts import Chart
from spoolwright.papers.figures import Figure, shown
from spoolwright.papers.parties import Addressee, House, ReelMark
from spoolwright.papers.proof_sheet import Instrument, Signature
from spoolwright.papers.typesetting import Picture

CALLS = ("inside", "outside", "too close to call")
NOT_NAMED, NEVER_CHECKED = "instrument not named", "no check on record"


@dataclass(frozen=True)
class Stated:
    """One result: what, value, the conditions at its first row, and what is said of its limits.

    `call` is "" where there are no limits, else one of CALLS; `limits` and `chance_wrong` are ready text.
    """

    what: str
    figure: Figure
    remark: str = ""
    call: str = ""
    limits: str = ""
    chance_wrong: str = ""

    def __post_init__(self) -> None:
        if self.call and self.call not in CALLS:
            raise ValueError(f"a statement is {self.call!r}; accepted: {', '.join(CALLS)}")


@dataclass(frozen=True)
class BudgetLine:
    """One line of the uncertainty budget: of which result, from what, known how, how much."""

    result: str
    source: str
    known: str
    amount: str


@dataclass(frozen=True)
class ReadingSheet:
    """One reading of one reel.

    `number` is the sheet's own, `facts` pairs of label and text (received, read, by whom, where), `method`
    sentences, `pictures` charts of the trace and its fit, `inputs` what went into a result that was worked
    out, `deviations` what was noted, whatever was other than the method asks among it, `rule` the
    decision rule of statements of conformity, empty where none is made.
    """

    shop: House
    customer: Addressee
    reel: ReelMark
    number: str
    date: str
    title: str
    facts: tuple[tuple[str, str], ...]
    method: tuple[str, ...]
    conditions: str
    results: tuple[Stated, ...]
    pictures: tuple[Chart, ...] = ()
    said: tuple[str, ...] = ()
    inputs: tuple[tuple[str, str], ...] = ()
    instruments: tuple[Instrument, ...] = ()
    budget: tuple[BudgetLine, ...] = ()
    deviations: tuple[str, ...] = ()
    rule: str = ""
    signed: tuple[Signature, ...] = ()
    trace: Picture | None = None
    system: str = "metric"
    language: str = "en"

    def __post_init__(self) -> None:
        if not self.results:
            raise ValueError("a reading sheet needs at least one result, none was given")


def coverage(sheet: ReadingSheet) -> str:
    """What the value after ± is, or that a result carries none."""
    words = (
        "The value after ± is the expanded uncertainty U: the standard uncertainty times k = 2. The interval "
        "holds the true value in about 95 of 100 such readings."
    )
    if any("±" not in _figure(row, sheet.system) for row in sheet.results):
        words += " A result without ± was counted, and is exact."
    return words


def _figure(row: Stated, system: str) -> str:
    return shown(row.figure, system).replace("^2", "²").replace("^3", "³")


def _results(sheet: ReadingSheet) -> list[dict[str, str]]:
    return [
        {
            "what": row.what,
            "figure": _figure(row, sheet.system),
            "remark": row.remark,
            "call": row.call,
            "limits": row.limits,
            "chance_wrong": row.chance_wrong,
        }
        for row in sheet.results
    ]


def _pictures(sheet: ReadingSheet) -> Mapping[str, Picture]:
    drawn = {f"chart-{k}": charts.picture(chart) for k, chart in enumerate(sheet.pictures)}
    return drawn | ({"trace": sheet.trace} if sheet.trace else {})


def render(sheet: ReadingSheet) -> bytes:
    """The reading sheet as a PDF, A4."""
    data: dict[str, Any] = {
        "shop": vars(sheet.shop),
        "customer": vars(sheet.customer),
        "reel": vars(sheet.reel),
        "number": sheet.number,
        "date": sheet.date,
        "language": sheet.language,
        "title": sheet.title,
        "facts": sheet.facts,
        "method": sheet.method,
        "conditions": sheet.conditions,
        "results": _results(sheet),
        "coverage": coverage(sheet),
        "charts": [chart.says for chart in sheet.pictures],
        "said": sheet.said,
        "inputs": sheet.inputs,
        "instruments": [[it.name, it.accuracy, it.checked or NEVER_CHECKED] for it in sheet.instruments],
        "not_named": NOT_NAMED,
        "budget": [[row.result, row.source, row.known, row.amount] for row in sheet.budget],
        "deviations": sheet.deviations,
        "rule": sheet.rule,
        "signed": [vars(it) for it in sheet.signed],
    }
    return typesetting.render("reading_sheet", data, _pictures(sheet))
