"""A study in words: how far tries differ and by what, how sure that is, and what it comes to at the bench."""

from __future__ import annotations

from dataclasses import dataclass

from spoolwright.bench.gauge_study import StudyRead
from spoolwright.pages.words import shown
from spoolwright.papers import charts
from spoolwright.papers.charts import Chart
from spoolwright.sheets.instrument_kinds import step_dimension
from spoolwright.shop.questions.instruments import Study

SHOWN = ("repeatability", "persons", "interaction", "gauge", "parts", "whole")


@dataclass(frozen=True)
class SpreadRow:
    """One component: its name, its standard deviation, from where to where it may be, its share."""

    name: str
    size: str
    interval: str
    share: str


@dataclass(frozen=True)
class TableRow:
    """One line of the analysis of variance."""

    source: str
    freedom: int
    squares: str
    ratio: str
    chance: str


@dataclass(frozen=True)
class StudyTold:
    chart: Chart
    spreads: tuple[SpreadRow, ...]
    table: tuple[TableRow, ...]
    sentences: tuple[str, ...]
    notes: tuple[str, ...]


def told(study: Study, system: str) -> StudyTold:
    read, dimension = study.read, study.row.dimension
    drawn = charts.Studied(study.tries.parts, study.tries.persons, study.tries.values, read.gauge, dimension)
    sentences = tuple(_sentences(read, dimension, system))
    return StudyTold(
        chart=charts.study(drawn, sentences[0], system=system),
        spreads=tuple(_row(read, name, dimension, system) for name in SHOWN),
        table=tuple(_table(read, dimension)),
        sentences=sentences,
        notes=(read.rule, *read.notes),
    )


def _sentences(read: StudyRead, dimension: str, system: str) -> list[str]:
    one = _size(2 * read.repeatability, dimension, system)
    two = _size(2 * read.gauge, dimension, system)
    said = [f"The same hand finds its own size again to ± {one}, two hands to ± {two}, 95 times of 100."]
    if read.classes is None:
        said.append("No try differed from another: the display is too coarse for this study to say more.")
    elif read.classes < 2:
        said.append("With it these parts cannot be told apart: what differs is the measuring, not the parts.")
    else:
        said.append(
            f"It tells these parts apart in {read.classes} classes; five or more are asked for as a rule."
        )
    if read.of_tolerance is not None:
        said.append(
            f"Six of its spreads take {100 * read.of_tolerance:.0f}\u00a0% of the tolerance: below 10 % is "
            "good, up to 30 % may do (AIAG, from memory)."
        )
    return said


def _row(read: StudyRead, name: str, dimension: str, system: str) -> SpreadRow:
    spread = read.spreads[name]
    size = _size(spread.deviation, dimension, system) if spread.deviation else "none to be seen"
    wide = spread.high > spread.low
    interval = shown.interval(spread.low, spread.high, step_dimension(dimension), system) if wide else "–"
    return SpreadRow(spread.name, size, interval, f"{100 * spread.share:.1f}\u00a0%")


def _table(read: StudyRead, dimension: str) -> list[TableRow]:
    return [
        TableRow(
            source=row.source,
            freedom=row.freedom,
            squares=f"{row.mean_square:.3g}",
            ratio="–" if row.f is None else f"{row.f:.3g}",
            chance="–" if row.p is None else ("less than 0.001" if row.p < 0.001 else f"{row.p:.3f}"),
        )
        for row in read.anova.rows
    ]


def _size(value: float, dimension: str, system: str) -> str:
    return shown.two_figures(value, step_dimension(dimension), system)
