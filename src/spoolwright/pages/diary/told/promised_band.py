"""The promise behind a measured line: drawn where a pull can be set beside what was promised."""

from __future__ import annotations

from spoolwright.pages.diary.desk import Desk
from spoolwright.papers.figures import Span
from spoolwright.shop.questions import readings


def of_full_pull(desk: Desk) -> Span | None:
    """The promised pull with the drag hard on, where one was agreed from here to there."""
    for row in readings.to_prove(desk.visit.pk, desk.system):
        promise = row.promise
        ends = (promise.low_si, promise.high_si)
        if (promise.reading_kind or promise.kind) == "pull_full" and None not in ends:
            middle = sum(ends) / 2 if promise.middle_si is None else promise.middle_si
            return Span(middle, *ends, promise.dimension)
    return None
