"""The traces behind a proof as charts."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from spoolwright.pages.gathered import pictures
from spoolwright.papers import charts
from spoolwright.papers.charts import PAPER_WIDTH, Chart, Pull, Spin
from spoolwright.papers.figures import Span
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.signals import KeptSpin, spin_of


def pull_chart(
    after: Sequence[Block], rows: Sequence[Any], system: str, width: int | None = PAPER_WIDTH
) -> Chart | None:
    """The trace that the proof rests on, else the latest pull after the work; the promise lies behind it."""
    kept = pictures.pulls(after)
    if not kept:
        return None
    proving = {row.measured.reading_id: row for row in rows}
    reading, pull = next((pair for pair in kept if pair[0].pk in proving), kept[-1])
    row = proving.get(reading.pk)
    shown = Pull(
        pull.times, pull.forces, pull.slip_start, pull.slip_end, pull.start_up, pull.running, _behind(row)
    )
    return charts.pull_trace(shown, system=system, width=width)


def spin_chart(after: Sequence[Block], system: str, width: int | None = PAPER_WIDTH) -> Chart | None:
    """The latest coast-down after the work."""
    readings = [block.part for block in after if block.kind == "reading"]
    kept: list[KeptSpin] = [spin for spin in map(spin_of, readings) if spin is not None]
    if not kept:
        return None
    spin = kept[-1]
    shown = Spin(
        spin.times, spin.speeds, spin.fitted, spin.counted_in, spin.stop_time, spin.before, spin.after
    )
    return charts.spin_down(shown, system=system, width=width)


def _behind(row: Any) -> Span | None:
    """A promised pull with two ends as a band; anything else has no place in this picture."""
    if row is None or row.promise.dimension != "force" or None in (row.promise.low_si, row.promise.high_si):
        return None
    low, high = row.promise.low_si, row.promise.high_si
    return Span(row.promise.middle_si or (low + high) / 2, low, high, "force")
