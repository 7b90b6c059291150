"""Which column of a gauge's file is time and which the pull; what the file leaves out becomes a question."""

from __future__ import annotations

import re
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.column_names import FORCE_UNITS, TIME_UNITS, Column, columns, factor, known_unit
from spoolwright.bench.delimited import Table
from spoolwright.bench.trace import TraceForm
from spoolwright.bench.unreadable import NeedsAnswer, Question, Unreadable

FASTEST, SLOWEST = 200_000.0, 0.5
"""Samples a second that a gauge of this trade may have, highest and lowest."""

_RATE = re.compile(
    r"(?:rate|freq\w*|sampling|abtast\w*|samples)[^\d\n]{0,24}(\d+(?:[.,]\d+)?)\s*(k?Hz|/\s*s|sps|per s)",
    re.IGNORECASE,
)
_INTERVAL = re.compile(
    r"interval\D{0,4}?\(?(ms|s)?\)?[\s,;:=\"\t]{1,4}(\d+(?:[.,]\d+)?)\s*(ms|s)?\b", re.IGNORECASE
)
_UNIT_ABOVE = re.compile(
    r"^\W*(?:force |pull )?(?:units?|einheit|unité|unidad|unità|enhet|eenheid|yksikkö|单位|単位)\b(.*)$",
    re.IGNORECASE | re.MULTILINE,
)
_SHORTEST, _LONGEST = 1.0, 600.0


@dataclass(frozen=True)
class Picked:
    """The choice: a column of time (or a rate), a column of pull, and the unit of each.

    `only_fits`: the file names no unit of time, and this is the only one in which it lasts as long as a pull.
    """

    time: Column | None
    force: Column
    time_unit: str
    force_unit: str
    rate: float | None
    only_fits: bool = False


def pick(table: Table, form: TraceForm) -> Picked:
    """The columns of time and pull, from the form, the header and the numbers themselves.

    Parameters
    ----------
    table : Table
        As `delimited.read` gives it [-].
    form : TraceForm
        Answers already given [-].

    Returns
    -------
    Picked
        Columns and units [-].

    Raises
    ------
    NeedsAnswer
        Everything the file does not say, all at once.
    Unreadable
        A column that is asked for and is not there, a file of tick times.

    Source
    ------
    Our own rule: a unit is found in the file or asked for. A unit of time is found too where only one of s,
    ms and us makes the file last 1 to 600 s.

    Examples
    --------
    >>> from spoolwright.bench import delimited
    >>> pick(delimited.read("s;kg\\n0,0;1,5\\n0,1;1,6\\n"), TraceForm()).force_unit
    'kg'
    """
    found = columns(table)
    _refuse_ticks(table, found)
    time = _time_column(table, found, form)
    rate = form.rate if form.rate is not None else (None if time else _stated_rate(table))
    force = _force_column(table, found, time, form)
    questions = [] if force else [_which_column(found, time)]
    named = time.time_unit if time else "s"
    fits = _only_fitting(table, time) if time and not (named or form.time_unit) else ""
    time_unit = _unit(form.time_unit, named or fits, "time", questions)
    in_file = force.force_unit if force else next((c.force_unit for c in found if c.force_unit), "")
    in_file = in_file or _unit_above(table)
    force_unit = _unit(form.force_unit, in_file, "force", questions, force)
    if time is None and rate is None:
        questions.append(Question("rate", "How many samples a second were taken?", "a number such as 100 Hz"))
    if questions or force is None:
        raise NeedsAnswer(tuple(questions), table.name)
    _check_rate(rate, table)
    return Picked(time, force, time_unit, force_unit, rate, bool(fits))


def _refuse_ticks(table: Table, found: tuple[Column, ...]) -> None:
    if len(found) == 1 and len(table.rows) > 2 and not found[0].force_unit:
        values = table.column(found[0].index)
        rises = bool(np.all(np.diff(values) > 0)) and float(values[0]) >= 0
        if rises and (found[0].says_time or not found[0].title):
            reason = "the file holds times only, as a spin-down's ticks do, and no pull"
            raise Unreadable(reason, table.name, "a column of force beside the time; ticks are read by spin")


def _time_column(table: Table, found: tuple[Column, ...], form: TraceForm) -> Column | None:
    if form.rate is not None and not form.time_column:
        return None
    if form.time_column:
        return _named(form.time_column, found, table)
    said = [column for column in found if column.says_time]
    if said:
        return said[0]
    first = found[0]
    if len(found) < 2 or first.says_force:
        return None
    steps = np.diff(table.column(first.index))
    climbs = len(steps) > 1 and bool(np.all(steps > 0))
    counts = bool(np.all(steps == 1.0))
    return first if climbs and not counts else None


def _force_column(
    table: Table, found: tuple[Column, ...], time: Column | None, form: TraceForm
) -> Column | None:
    if form.force_column:
        return _named(form.force_column, found, table)
    rest = [column for column in found if column is not time and not column.time_unit]
    if time is None and form.rate is not None:
        rest = [column for column in rest if not column.says_time] or rest
    signals = [column for column in rest if not column.is_summary]
    for few in (
        [column for column in signals if column.force_unit],
        [column for column in signals if column.says_force],
        [column for column in rest if not _is_counter(table, column)],
    ):
        if few:
            return few[0] if len(few) == 1 or _same_pull(table, few) else None
    return None


def _same_pull(table: Table, few: list[Column]) -> bool:
    """Whether a gauge shows one pull in several units."""
    if not all(column.force_unit for column in few):
        return False
    first, *others = (table.column(c.index) * factor(c.force_unit, "force") for c in few)
    near = 0.02 * float(np.abs(first).max())
    different = len({column.force_unit for column in few}) == len(few)
    return different and all(bool(np.all(np.abs(other - first) <= near)) for other in others)


def _is_counter(table: Table, column: Column) -> bool:
    return len(table.rows) > 2 and bool(np.all(np.diff(table.column(column.index)) == 1.0))


def _named(asked: str, found: tuple[Column, ...], table: Table) -> Column:
    wanted = asked.strip().lower()
    for column in found:
        if wanted in (column.title.lower(), str(column.index + 1)):
            return column
    near = [column for column in found if wanted and wanted in column.title.lower()]
    if len(near) == 1:
        return near[0]
    shown = ", ".join(column.shown for column in found)
    raise Unreadable(f"there is no single column of numbers called “{asked}”", table.name, f"column {shown}")


def _which_column(found: tuple[Column, ...], time: Column | None) -> Question:
    rest = [column.shown for column in found if column is not time]
    return Question("force_column", "Which column is the pull?", ", ".join(rest) or "a column of numbers")


def _unit(
    asked: str, in_file: str, dimension: str, questions: list[Question], column: Column | None = None
) -> str:
    """The unit asked for or found; where there is neither, one more question."""
    key, units = ("time_unit", TIME_UNITS) if dimension == "time" else ("force_unit", FORCE_UNITS)
    if asked:
        if unit := known_unit(asked, dimension):
            return unit
        questions.append(Question(key, f"“{asked}” is no unit of {dimension}.", units))
    elif not in_file:
        titled = f" in column {column.shown}" if column and column.title else ""
        what = "the time" if dimension == "time" else "the pull"
        questions.append(Question(key, f"In which unit is {what}{titled}?", units))
    return in_file


def _only_fitting(table: Table, time: Column) -> str:
    """The one unit of time in which the file lasts as long as a pull does."""
    lasts = float(np.ptp(table.column(time.index)))
    fitting = [unit for unit in ("s", "ms", "us") if _SHORTEST <= lasts * factor(unit, "time") <= _LONGEST]
    return fitting[0] if len(fitting) == 1 else ""


def _unit_above(table: Table) -> str:
    """A unit of force in a line of its own above the numbers, such as "Unit: kg"."""
    for line in _UNIT_ABOVE.findall("\n".join(table.above)):
        units = [unit for word in re.split(r'[\s,;:=|"()\[\]]+', line) if (unit := known_unit(word, "force"))]
        if units:
            return units[0]
    return ""


def _stated_rate(table: Table) -> float | None:
    """A rate or an interval that stands in the lines above the numbers."""
    above = "\n".join(table.above)
    if found := _RATE.search(above):
        return float(found[1].replace(",", ".")) * (1000.0 if found[2].lower() == "khz" else 1.0)
    if found := _INTERVAL.search(above):
        unit = (found[1] or found[3] or "").lower()
        interval = float(found[2].replace(",", ".")) * (factor(unit, "time") if unit else 0.0)
        return 1.0 / interval if interval > 0 else None
    return None


def _check_rate(rate: float | None, table: Table) -> None:
    if rate is not None and not SLOWEST <= rate <= FASTEST:
        accepted = f"{SLOWEST:g} to {FASTEST:g} samples a second"
        raise Unreadable(f"{rate:g} samples a second is no gauge's rate", table.name, accepted)


def values(table: Table, picked: Picked) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Time and force in SI, as they stand in the file.

    Parameters
    ----------
    table : Table
        As `delimited.read` gives it [-].
    picked : Picked
        The columns and their units [-].

    Returns
    -------
    tuple of arrays
        Time [s] and force [N], shape (n,).

    Raises
    ------
    Unreadable
        A cell that is no number, with its line.

    Source
    ------
    The table of `quantities` for the factors.

    Examples
    --------
    >>> from spoolwright.bench import delimited
    >>> table = delimited.read("ms;N\\n0;1.5\\n100;1.6\\n")
    >>> values(table, pick(table, TraceForm()))[0].tolist()
    [0.0, 0.1]
    """
    force = table.column(picked.force.index) * factor(picked.force_unit, "force")
    if picked.time is None or picked.rate is not None:
        return np.arange(len(force)) / float(picked.rate or 1.0), force
    return table.column(picked.time.index) * factor(picked.time_unit, "time"), force
