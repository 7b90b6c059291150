"""A reading as a bench book has it: quantity, value with its uncertainty, conditions, what the limits say."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from spoolwright.bench.torque import pull_torque
from spoolwright.bench.uncertainty import Measured
from spoolwright.pages.diary.told import held_by, limits
from spoolwright.pages.words import conditions, shown
from spoolwright.pages.words.promised import IN_PERCENT
from spoolwright.sheets import reading_kinds
from spoolwright.sheets.drag_setting import STAR, DragSetting
from spoolwright.sheets.reading_kinds import ReadingKind

RADIUS_UNSURE = 0.3e-3
"""Standard uncertainty of the radius at which the line leaves [m]: judgement prior."""

SAME = {"pull trace": "same pull", "spin-down": "same spin", "pull series": "same series"}


@dataclass(frozen=True)
class Result:
    """One result before it is words: its kind, what was measured, and the single tries behind it."""

    kind: str
    measured: Measured
    tries: tuple[float, ...] = ()


@dataclass(frozen=True)
class Line:
    """One line of the bench book, ready to be set."""

    quantity: str
    value: str
    spread: str
    conditions: str
    verdict: str


@dataclass(frozen=True)
class Told:
    """The lines of one reading and what is said below them in a sentence."""

    lines: tuple[Line, ...]
    together: tuple[str, ...]


def results_of(reading: Any) -> list[Result]:
    """The results of a reading in ink, each with its tries, in the order they were written."""
    values = list(reading.values.all())
    return [_result(value, values) for value in values if value.repeat == 0]


def _result(value: Any, values: list[Any]) -> Result:
    tries = tuple(v.value_si for v in values if v.kind == value.kind and v.repeat)
    measured = Measured(value.value_si, value.standard_uncertainty_si or 0.0, value.dimension)
    return Result(value.kind, measured, tries)


def told(
    results: Sequence[Result],
    given: Mapping[str, Any],
    tags: tuple[str, ...],
    system: str,
    way: str = "typed",
    setting: DragSetting = STAR,
) -> Told:
    """The lines of one reading; the conditions stand at the first and are the same for the others."""
    apart = {*IN_PERCENT, *held_by.KINDS} if len(results) > 1 else set()
    own = [result for result in results if result.kind not in apart]
    words = conditions.in_words(given, system, setting)
    same = SAME.get(way, "same conditions")
    lines = [
        _line(result, words if not k else same if words else "", given, tags, system)
        for k, result in enumerate(own)
    ]
    shares = [_share(r, tags, system) for r in results if r.kind in apart and r.kind in IN_PERCENT]
    held = held_by.in_words({result.kind: result.measured for result in results}, system)
    return Told(tuple(lines), (*shares, *held))


def _line(result: Result, words: str, given: Mapping[str, Any], tags: tuple[str, ...], system: str) -> Line:
    kind = reading_kinds.kind(result.kind)
    unit = "%" if result.kind in IN_PERCENT else None
    value, spread = shown.measured(result.measured, system, unit)
    said = (words, *_beside(result, given, system), _tries(result, kind, system))
    return Line(
        quantity=kind.title,
        value=value,
        spread=spread if result.measured.uncertainty else "",
        conditions="; ".join(filter(None, said)),
        verdict=limits.verdict(kind, result.measured.value, tags, system),
    )


def _beside(result: Result, given: Mapping[str, Any], system: str) -> Iterable[str]:
    kind = reading_kinds.kind(result.kind)
    if kind.scale:
        yield f"“{kind.scale[min(round(result.measured.value), len(kind.scale) - 1)]}”"
    if result.measured.dimension == "force" and given.get("radius"):
        yield f"{torque_words(result.measured, given['radius'], system)} at the spool"


def torque_words(pull: Measured, radius: float, system: str) -> str:
    """The torque beside a pull: the same whatever the line level is."""
    torque = pull_torque(pull, Measured(radius, RADIUS_UNSURE, "length"))
    return shown.quantity(torque.value, "torque", system, torque.expanded)


def _tries(result: Result, kind: ReadingKind, system: str) -> str:
    if len(result.tries) < 2:
        return ""
    each = ", ".join(shown.quantity(value, kind.dimension, system) for value in result.tries)
    return f"mean of {each}"


def _share(result: Result, tags: tuple[str, ...], system: str) -> str:
    """ "Judder 8.03 % ± 0.62 %, wants a look: good is up to 8 % (judgement prior)." """
    kind = reading_kinds.kind(result.kind)
    over = " in ten seconds" if result.kind == "drift" else ""
    verdict = limits.verdict(kind, result.measured.value, tags, system)
    rest = f", {verdict[0].lower()}{verdict[1:]}" if verdict else "."
    return f"{kind.title} {limits.percent(result.measured)}{over}{rest}"
