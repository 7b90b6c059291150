"""Several lines of one sort in a form: as many as were filled in, and some empty ones after them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any, TypeVar

from django import forms

MOST = 30


class RowForm(forms.Form):
    """One line. A line in which nothing was typed is no line."""

    noun = "Line"
    typed_in: tuple[str, ...] = ()
    number = 1

    @property
    def is_blank(self) -> bool:
        return not any((self[name].data or "").strip() for name in self.typed_in)

    def faults(self) -> list[str]:
        if self.is_blank:
            return []
        return [f"{self.noun} {self.number}: {line}" for lines in self.errors.values() for line in lines]


Row = TypeVar("Row", bound=RowForm)


def rows(
    kind: type[Row],
    prefix: str,
    data: Mapping[str, Any] | None,
    *,
    started: Sequence[Mapping[str, Any]] = (),
    least: int = 2,
) -> list[Row]:
    """The lines of one sort: bound where the form was sent, else as they start, with empty ones below."""
    count = (
        _sent(prefix, data, ("what", "point", *kind.typed_in)) if data is not None else len(started)
    ) + least
    found = []
    for k in range(min(count, MOST)):
        row = kind(data, prefix=f"{prefix}-{k}", initial=started[k] if k < len(started) else {})
        row.number = k + 1
        row.use_required_attribute = False
        found.append(row)
    return found


def _sent(prefix: str, data: Mapping[str, Any], columns: Sequence[str]) -> int:
    """How many lines came with something in them: up to the last of those that have words."""
    last = -1
    for name, value in data.items():
        start, dash, rest = name.rpartition(f"{prefix}-")
        number, _, column = rest.partition("-")
        if dash and not start and number.isdigit() and column in columns and str(value).strip():
            last = max(last, int(number))
    return last + 1
