"""What is said of each result of a reading against its limits, never without the chance that it is wrong."""

from __future__ import annotations

from typing import Any

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement import guard_band
from spoolwright.judgement.guard_band import Call, Limits
from spoolwright.judgement.hand_words import limits_said
from spoolwright.judgement.proof import chance_said
from spoolwright.pages.words import shown
from spoolwright.pages.words.promised import IN_PERCENT
from spoolwright.papers.figures import Figure
from spoolwright.papers.reading_sheet import Stated
from spoolwright.sheets import reading_kinds
from spoolwright.sheets.reading_kinds import ReadingKind
from spoolwright.shop.questions.by_hand import by_hand_of

SAID = {"accept": "inside", "reject": "outside", "too close to call": "too close to call"}
RULE = f"{guard_band.RULE} “Inside” is what is good by the limits named; “outside” is what is not."


def stated(value: Any, tags: tuple[str, ...], system: str) -> Stated:
    """One result of a reading in ink as the sheet states it."""
    kind = reading_kinds.kind(value.kind)
    measured = Measured(value.value_si, value.standard_uncertainty_si or 0.0, value.dimension)
    call, limits, source = _call(value, kind, measured, tags)
    wrong = chance_said(call.chance_wrong) if call and call.chance_wrong is not None else ""
    return Stated(
        what=kind.title,
        figure=_figure(measured, kind, system),
        remark=_remark(value, kind, system),
        call=SAID[call.verdict] if call else "",
        limits=f"{_limits(limits, kind, system)} ({source})" if limits else "",
        chance_wrong=wrong,
    )


def _call(
    value: Any, kind: ReadingKind, measured: Measured, tags: tuple[str, ...]
) -> tuple[Call | None, Limits | None, str]:
    """By what was written down of a part measured by hand, else by the limits of the kind."""
    kept = by_hand_of(value.reading)
    if kept is not None:
        return kept.call, kept.limits, kept.source
    found = kind.limits_for(*tags)
    if found is None or kind.scale or kind.dimension == "count":
        return None, None, ""
    limits = Limits(*found.good)
    return guard_band.call(measured, limits), limits, found.mark


def _limits(limits: Limits, kind: ReadingKind, system: str) -> str:
    if kind.id in IN_PERCENT:
        return _in_percent(limits)
    return shown.raised(limits_said(limits, kind.dimension, system)).removesuffix(" is asked for")


def _in_percent(limits: Limits) -> str:
    low, high = (f"{100 * end:g} %" for end in (limits.low, limits.high))
    if limits.low == float("-inf"):
        return f"up to {high}"
    return f"from {low}" if limits.high == float("inf") else f"{low} to {high}"


def _figure(measured: Measured, kind: ReadingKind, system: str) -> Figure:
    unit = "%" if kind.id in IN_PERCENT else None
    said = shown.quantity(measured.value, measured.dimension, system, measured.expanded or None, unit)
    if kind.scale:
        return f"{said}: {kind.scale[min(round(measured.value), len(kind.scale) - 1)]}"
    return said


def _remark(value: Any, kind: ReadingKind, system: str) -> str:
    """The single tries behind a mean."""
    tries = [v for v in value.reading.values.all() if v.kind == value.kind and v.repeat]
    if len(tries) < 2:
        return ""
    each = ", ".join(shown.quantity(one.value_si, kind.dimension, system) for one in tries)
    return f"mean of {each}"
