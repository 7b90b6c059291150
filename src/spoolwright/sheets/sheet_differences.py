"""What changed between two versions of a reel sheet, in words."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from typing import Any, get_args

from spoolwright.quantities import show_stated
from spoolwright.sheets.fields import BearingSize, Quantity
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Table

LONGEST_QUOTE = 80
_NAMES = {"drag, stack": "drag stack", "drag, springs": "drag springs", "drag, thread": "thread of the drag"}


def differences(before: ReelSheet, after: ReelSheet, system: str = "metric") -> tuple[str, ...]:
    """One sentence for each thing that is not as it was, in the order of the sheet."""
    return tuple(_table("", before, after, system))


def _table(place: str, before: Table, after: Table, system: str) -> Iterator[str]:
    for key in type(after).model_fields:
        old, new = getattr(before, key), getattr(after, key)
        if old != new:
            yield from _field(_joined(place, key), (old, new), _dimension(type(after), key), system)


def _field(place: str, pair: tuple[Any, Any], dimension: str | None, system: str) -> Iterator[str]:
    old, new = pair
    if isinstance(old, Table) and isinstance(new, Table):
        yield from _table(place, old, new, system)
    elif isinstance(old, Table) or isinstance(new, Table):
        told = "described for the first time" if old is None else "no longer described"
        yield f"{_capital(place)}: {told}."
    elif _is_rows(old) or _is_rows(new):
        yield from _rows(place, old, new, system)
    elif old is None:
        yield f"{_capital(place)}: {_shown(new, dimension, system)}, which was not said before."
    elif new is None:
        yield f"{_capital(place)}: no longer said; it was {_shown(old, dimension, system)}."
    else:
        was = _shown(old, dimension, system)
        yield f"{_capital(place)}: {_shown(new, dimension, system)} in place of {was}."


def _rows(place: str, old: Sequence[Table], new: Sequence[Table], system: str) -> Iterator[str]:
    """Members are known again by their name; a name that stands twice goes by its turn."""
    was, now = dict(_named(old)), dict(_named(new))
    for label in was:
        if label not in now:
            yield f"{_capital(place)}: {_quoted(label[0])} taken out."
    labels = list(now)
    for number, label in enumerate(labels):
        if label not in was:
            after = f"after {_quoted(labels[number - 1][0])}" if number else "at the beginning"
            yield f"{_capital(place)}: {_quoted(label[0])} added {after}."
        elif was[label] != now[label]:
            yield from _table(f"{place}, {_quoted(label[0])}", was[label], now[label], system)
    kept_then, kept_now = [n for n in was if n in now], [n for n in now if n in was]
    if kept_then != kept_now:
        yield f"{_capital(place)}: in another order, now {', '.join(name for name, _ in kept_now)}."


def _named(rows: Sequence[Table]) -> Iterator[tuple[tuple[str, int], Table]]:
    seen: Counter[str] = Counter()
    for row in rows:
        name = str(getattr(row, "name", None) or getattr(row, "place", "one"))
        seen[name] += 1
        yield (name, seen[name]), row


def _is_rows(value: Any) -> bool:
    return isinstance(value, tuple) and any(isinstance(member, Table) for member in value)


def _dimension(model: type[Table], key: str) -> str | None:
    field = model.model_fields[key]
    return next((mark.dimension for mark in _marks(*field.metadata, field.annotation)), None)


def _marks(*hints: Any) -> Iterator[Quantity]:
    for hint in hints:
        if isinstance(hint, Quantity):
            yield hint
        elif not isinstance(hint, str):
            yield from _marks(*getattr(hint, "__metadata__", ()), *get_args(hint))


def _shown(value: Any, dimension: str | None, system: str) -> str:
    if dimension is not None:
        return show_stated(value, dimension, system)
    if isinstance(value, BearingSize):
        return " x ".join(f"{size * 1000:g}" for size in (value.bore, value.outer, value.width)) + " mm"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, tuple):
        return ", ".join(" to ".join(map(str, pair)) for pair in value)
    return _quoted(value) if isinstance(value, str) else str(value)


def _joined(place: str, key: str) -> str:
    whole = f"{place}, {key}" if place else key
    return _NAMES.get(whole, whole).replace("_", " ")


def _quoted(text: str) -> str:
    return f"“{text if len(text) <= LONGEST_QUOTE else text[: LONGEST_QUOTE - 1] + '…'}”"


def _capital(place: str) -> str:
    return place[:1].upper() + place[1:]
