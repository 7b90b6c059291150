"""Readings that are typed: calipers, scale, stopwatch, mass, teeth counted, play felt."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np

from spoolwright.bench import budget, student
from spoolwright.bench.budget import ROUNDING, Contribution
from spoolwright.bench.instrument import Instrument
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable
from spoolwright.quantities import NotAQuantity, Typed, display_unit, read_typed
from spoolwright.sheets import reading_kinds
from spoolwright.sheets.reading_kinds import ReadingKind

MOST_VALUES = 20
"""Tries of one reading; more belong into a file."""

_MAY_BE_NEGATIVE = ("temperature", "drift")


@dataclass(frozen=True)
class TypedReading:
    """What was typed for one kind of reading: each try, their mean with its uncertainty, and its rows."""

    kind: str
    tries: tuple[float, ...]
    measured: Measured
    budget: tuple[Contribution, ...]


def read(kind: str, text: str, system: str = "metric", instrument: Instrument | None = None) -> TypedReading:
    """Read what somebody typed for a kind of reading; several tries are parted by semicolons.

    Parameters
    ----------
    kind : str
        Id of a kind of reading [-], as `sheets.reading_kinds` lists them.
    text : str
        One or more quantities with their units, such as "3.9 kg; 3.8 kg; 3.9 kg" [-].
    system : str
        "metric" or "imperial" [-]; only for the words of a refusal.
    instrument : Instrument or None
        The one of the shop's own that it was taken with [SI]; None: the usual tool for this reading.

    Returns
    -------
    TypedReading
        Each try and their mean with its standard uncertainty [SI unit of the kind].

    Raises
    ------
    NotAQuantity
        A missing or wrong unit, no number, with what is accepted.
    Unreadable
        Counts that differ, a value below zero, a score off its scale, too many tries.
    KeyError
        A kind that is not listed.

    Notes
    -----
    u^2 = (w s)^2 / n + max(tool, step / sqrt 12)^2: the scatter of the tries, and what the tool or the last
    digit leaves open, which all tries share and no mean takes away. Few tries know their scatter badly, so
    w = t(n - 1) / 2 widens it until k = 2 covers 95 %: 6.98 for two, 2.26 for three. With an instrument of
    the shop's own its study or its stated limits take the place of the usual tool.

    Source
    ------
    JCGM 100:2008, 4.2.3 and G.3.2 (type A; `student.of_mean`), 4.3.7 and F.2.2.1 (type B).

    Examples
    --------
    >>> pull = read("pull_start", "3.9 kg; 3.8 kg; 3.9 kg")
    >>> round(pull.measured.value, 2)
    37.92
    """
    asked = reading_kinds.kind(kind)
    typed = [_one(part, asked, system) for part in _parts(text, asked)]
    values = np.array([one.value for one in typed])
    if asked.dimension == "count" and np.ptp(values) > 0:
        seen = "; ".join(f"{value:g}" for value in sorted(set(values.tolist())))
        raise Unreadable(f"the counts differ ({seen})", asked.title, "one count, or the same count each time")
    step = max(one.resolution for one in typed)
    if instrument is not None and instrument.dimension == asked.dimension:
        return _by(instrument, asked, values, step)
    mean = float(values.mean())
    rows = tuple(_rows(asked, values, mean, step))
    measured = budget.measured(mean, asked.dimension, rows)
    return TypedReading(kind, tuple(values.tolist()), measured, rows)


def _by(
    instrument: Instrument, asked: ReadingKind, values: np.typing.NDArray[np.float64], step: float
) -> TypedReading:
    taken = instrument.measured(asked.id, values.tolist(), step)
    rows, mean = taken.budget, taken.measured.value
    if instrument.study is None and asked.relative:
        # A study has seen how the reading is taken; what its maker states has not.
        rows = (*rows, Contribution(asked.id, "the way it is taken", "B", asked.relative * abs(mean)))
    tries = tuple(values.tolist())
    return TypedReading(asked.id, tries, budget.measured(mean, asked.dimension, rows), rows)


def _parts(text: str, asked: ReadingKind) -> list[str]:
    parts = [part.strip() for part in text.split(";") if part.strip()]
    if not parts:
        raise Unreadable("nothing was typed", asked.title, "one value, or several parted by semicolons")
    if len(parts) > MOST_VALUES:
        raise Unreadable(f"{len(parts)} values were typed", asked.title, f"at most {MOST_VALUES}")
    return parts


def _one(part: str, asked: ReadingKind, system: str) -> Typed:
    try:
        typed = read_typed(part, asked.dimension)
    except NotAQuantity as refused:
        usual = display_unit(asked.dimension, system)
        hint = f"{refused.accepted}, for example in {usual}" if usual else refused.accepted
        raise NotAQuantity(refused.typed, refused.reason, hint) from None
    if typed.value < 0 and asked.dimension not in _MAY_BE_NEGATIVE and asked.id not in _MAY_BE_NEGATIVE:
        raise Unreadable(f"“{part}” is below zero", asked.title, "zero or more")
    if asked.scale and not 0 <= typed.value <= len(asked.scale) - 1:
        steps = ", ".join(f"{i} {words}" for i, words in enumerate(asked.scale))
        raise Unreadable(f"“{part}” is not on the scale", asked.title, steps)
    return typed


def _rows(
    asked: ReadingKind, values: np.typing.NDArray[np.float64], mean: float, step: float
) -> Iterable[Contribution]:
    if len(values) > 1:
        words = f"scatter of {len(values)} tries, widened for their number"
        yield Contribution(asked.id, words, "A", student.of_mean(values.tolist()))
    tool = asked.standard_uncertainty(abs(mean))
    last_digit = 0.0 if asked.dimension == "count" else step * ROUNDING
    if tool >= last_digit:
        yield Contribution(asked.id, asked.tool, "B", tool)
    else:
        yield Contribution(asked.id, "last digit that was typed", "B", last_digit)
