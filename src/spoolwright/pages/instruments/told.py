"""An instrument in words: what it leaves open today, what that rests on, what its checks found."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from spoolwright import quantities
from spoolwright.bench.budget import RECTANGLE
from spoolwright.bench.instrument import Instrument
from spoolwright.bench.uncertainty import COVERAGE_FACTOR, Measured
from spoolwright.judgement.guard_band import Limits, call
from spoolwright.judgement.hand_words import TITLES
from spoolwright.judgement.proof import chance_said
from spoolwright.pages.words import shown
from spoolwright.sheets.instrument_kinds import step_dimension
from spoolwright.shop.questions.instruments import Shelved

NEVER = "It was never checked."


@dataclass(frozen=True)
class OnTheList:
    """One line of the list."""

    shelved: Shelved
    now: str
    rests_on: str
    last_check: str


@dataclass(frozen=True)
class Leaf:
    """Everything about one instrument, in words."""

    line: OnTheList
    known: tuple[tuple[str, str], ...]
    rows: tuple[tuple[str, str], ...]
    why: str
    checks: tuple[tuple[Any, tuple[str, str], str], ...]


def on_the_list(shelved: Shelved, system: str) -> OnTheList:
    now = shelved.now
    open_ = _open(shelved, now, system)
    last = shelved.checks[0] if shelved.checks else None
    found = _found(shelved, last, system) if last else NEVER
    return OnTheList(shelved, open_, _rests_on(now), found)


def _open(shelved: Shelved, now: Instrument, system: str) -> str:
    """What a single try leaves open: near nothing, and at its full scale where it grows with the value."""

    def at(value: float) -> str:
        return f"± {_size(now.measured('now', [value]).measured.expanded, now.dimension, system)}"

    full = shelved.known.range_high_si
    if not now.share or now.is_off:
        return at(0.0)
    fixed = now.limit or now.resolution or now.study
    if full:
        near = f"{at(0.0)} near nothing, " if fixed else ""
        return f"{near}{at(full)} at {_value(full, now.dimension, system)}"
    grows = f"{_share(COVERAGE_FACTOR * RECTANGLE * now.share)} of what it shows"
    return f"{at(0.0)} and {grows}" if fixed else f"± {grows}"


def leaf(shelved: Shelved, system: str) -> Leaf:
    now = shelved.now
    rows = now.measured("now", [0.0]).budget
    return Leaf(
        line=on_the_list(shelved, system),
        known=tuple(_known(shelved, system)),
        rows=tuple((row.source, _size(row.uncertainty, now.dimension, system)) for row in rows),
        why=_why(now),
        checks=tuple(
            (check, _sizes(shelved, check, system), _found(shelved, check, system))
            for check in shelved.checks
        ),
    )


def _rests_on(now: Instrument) -> str:
    if now.study:
        return f"by the {now.study.words}"
    return "by what is stated of it" if now.stated_limit(0.0) is not None else "by its smallest step alone"


def _why(now: Instrument) -> str:
    if now.is_off:
        return (
            "Its last check found it farther off than is stated, so what was found counts. Adjust it or put "
            "it away, then check it again."
        )
    if now.study:
        return "Its latest study says how far tries differ; how true it is, a study cannot see."
    return "No study was made with it yet: its smallest step and its stated limits count until then."


def _known(shelved: Shelved, system: str) -> Iterable[tuple[str, str]]:
    known, dimension = shelved.known, shelved.row.dimension
    step = step_dimension(dimension)
    yield "Smallest step", _value(known.resolution_si, step, system) if known.resolution_si else "none"
    if known.limit_si is not None:
        yield "Right to within", _value(known.limit_si, step, system)
    if known.limit_share is not None:
        yield "and of what it shows", _share(known.limit_share)
    if known.range_low_si is not None:
        yield "It measures from", _value(known.range_low_si, dimension, system)
    if known.range_high_si is not None:
        yield "It measures up to", _value(known.range_high_si, dimension, system)
    if known.serial:
        yield "Serial number", known.serial


def _sizes(shelved: Shelved, check: Any, system: str) -> tuple[str, str]:
    """What it showed and what was due, to the last figure that its display has."""
    last = max(shelved.known.resolution_si, check.standard_uncertainty_si) / 2
    values = (Measured(v, last, shelved.row.dimension) for v in (check.found_si, check.nominal_si))
    found, due = (shown.measured(value, system)[0] for value in values)
    return found, due


def _found(shelved: Shelved, check: Any, system: str) -> str:
    """What a check found, and whether that lies within what is stated of it."""
    now, dimension = shelved.now, shelved.row.dimension
    off = check.found_si - check.nominal_si
    found = Measured(off, check.standard_uncertainty_si, step_dimension(dimension))
    size = shown.quantity(off, step_dimension(dimension), system, found.expanded or None)
    stated = now.stated_limit(check.nominal_si)
    if not stated:
        return f"Off by {size}. No limit is stated to hold that against."
    said = call(found, Limits(-stated, stated))
    wrong = (
        f"; the chance that this is wrong is {chance_said(said.chance_wrong)}"
        if said.chance_wrong is not None
        else ""
    )
    within = {"accept": "within what is stated", "reject": "not within what is stated"}
    return f"Off by {size}: {within.get(said.verdict, TITLES[said.verdict].lower())}{wrong}."


def _size(value: float, dimension: str, system: str) -> str:
    """To two figures of itself: more would say more than is known of an uncertainty."""
    return shown.two_figures(value, step_dimension(dimension), system)


def _value(value: float, dimension: str, system: str) -> str:
    return shown.unbroken(quantities.show_stated(value, dimension, system))


def _share(share: float) -> str:
    return shown.unbroken(f"{100 * share:.2g} %")
