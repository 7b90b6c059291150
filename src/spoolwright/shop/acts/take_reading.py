"""Take a reading: values with their uncertainty, the way, and the conditions that make them comparable."""

from __future__ import annotations

import json
import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from django.db import transaction

from spoolwright.sheets import reading_kinds
from spoolwright.shop.acts.open_diary import NOTHING_BESIDE, Beside, Written, open_diary
from spoolwright.shop.acts.put import put, put_all
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.records.attachment import Attachment
from spoolwright.shop.records.instrument import Instrument
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.reading import CONDITION_COLUMNS, Reading, ReadingValue
from spoolwright.shop.records.visit import Visit


class NothingWasRead(Refused):
    def __init__(self) -> None:
        super().__init__("A reading needs at least one value.", "values")


class KindWasUnknown(Refused):
    def __init__(self, kind: str) -> None:
        super().__init__(f"{kind!r} is no kind of reading that this shop takes.", "values")


class ConditionsWereMissing(Refused):
    """A reading without its conditions cannot be compared with any other; `missing` names them."""

    def __init__(self, missing: Sequence[str]) -> None:
        named = "; ".join(reading_kinds.CONDITIONS[key] for key in missing)
        super().__init__(
            f"This reading is not comparable without its conditions. Missing: {named}.", missing[0]
        )
        self.missing = tuple(missing)


class ConditionWasUnknown(Refused):
    def __init__(self, key: str) -> None:
        super().__init__(
            f"{key!r} is no condition of a reading. Accepted: {', '.join(CONDITION_COLUMNS)}.", key
        )


class ConditionDidNotFit(Refused):
    def __init__(self, key: str, accepted: str) -> None:
        super().__init__(f"{reading_kinds.CONDITIONS[key]}: {accepted} is needed.", key)


class ValueDidNotFit(Refused):
    def __init__(self, kind: str, complaint: str) -> None:
        super().__init__(f"{kind}: {complaint}", "values")


@dataclass(frozen=True)
class Value:
    """One value, SI, with its standard uncertainty. Repeat 0 is the result; 1, 2, 3 are single tries."""

    kind: str
    value: float
    dimension: str
    uncertainty: float | None = None
    typed: str = ""
    repeat: int = 0


@dataclass(frozen=True)
class Signal:
    """What values were read from: a trace or a recording, plain data about the reading, the instrument."""

    attachment: Attachment | None = None
    analysis: Mapping[str, Any] = field(default_factory=dict)
    instrument: Instrument | None = None


@transaction.atomic
def take_reading(
    *,
    hand: Person,
    visit: Visit,
    values: Sequence[Value],
    conditions: Mapping[str, Any],
    way: str = "typed",
    signal: Signal | None = None,
    beside: Beside = NOTHING_BESIDE,
) -> Written:
    """`signal` is what the values were read from, where they were not typed."""
    _refuse_values(values)
    _refuse_conditions({value.kind for value in values}, conditions)
    diary = open_diary(hand, visit)
    titles = [reading_kinds.kind(kind).title for kind in dict.fromkeys(v.kind for v in values)]
    written = diary.write("reading", beside, titles)
    reading = put(
        Reading(
            entry=written.entry,
            way=way,
            analysis=_plain(signal.analysis if signal else {}),
            attachment=signal.attachment if signal else None,
            instrument=signal.instrument if signal else None,
            **{CONDITION_COLUMNS[key]: value for key, value in conditions.items() if value not in (None, "")},
        )
    )
    put_all(_row(reading, value) for value in values)
    return written


def _row(reading: Reading, value: Value) -> ReadingValue:
    return ReadingValue(
        reading=reading,
        kind=value.kind,
        repeat=value.repeat,
        value_si=value.value,
        standard_uncertainty_si=value.uncertainty,
        dimension=value.dimension,
        typed_text=value.typed,
    )


def _refuse_values(values: Sequence[Value]) -> None:
    if not any(value.repeat == 0 for value in values):
        raise NothingWasRead
    for value in values:
        wanted = _kind(value.kind).dimension
        if value.dimension != wanted:
            raise ValueDidNotFit(value.kind, f"a {wanted} is needed, this is a {value.dimension}.")
        if not math.isfinite(value.value):
            raise ValueDidNotFit(value.kind, "a number is needed.")
        if value.repeat == 0 and not _is_uncertainty(value.uncertainty):
            raise ValueDidNotFit(value.kind, "a result needs its standard uncertainty, nothing below zero.")


def _is_uncertainty(uncertainty: float | None) -> bool:
    return uncertainty is not None and math.isfinite(uncertainty) and uncertainty >= 0


def _refuse_conditions(kinds: Iterable[str], conditions: Mapping[str, Any]) -> None:
    for key in conditions:
        if key not in CONDITION_COLUMNS:
            raise ConditionWasUnknown(key)
    given = {key for key, value in conditions.items() if value not in (None, "")}
    needed = dict.fromkeys(key for kind in sorted(kinds) for key in _kind(kind).conditions)
    if missing := [key for key in needed if key not in given]:
        raise ConditionsWereMissing(missing)
    _refuse_impossible(conditions)


def _refuse_impossible(conditions: Mapping[str, Any]) -> None:
    for key in ("radius", "temperature", "pull_number", "pulls_of"):
        value = conditions.get(key)
        if value not in (None, "") and not (isinstance(value, int | float) and 0 < value < math.inf):
            raise ConditionDidNotFit(key, "a number above nothing")
    number, of = conditions.get("pull_number"), conditions.get("pulls_of")
    if number and of and number > of:
        raise ConditionDidNotFit("pull_number", f"a number up to {of}, of which it is one,")


def _kind(kind: str) -> reading_kinds.ReadingKind:
    try:
        return reading_kinds.kind(kind)
    except KeyError:
        raise KindWasUnknown(kind) from None


def _plain(analysis: Mapping[str, Any]) -> dict[str, Any]:
    # A NaN is no JSON: one database would refuse it, the other would keep it. Both refuse it here.
    return json.loads(json.dumps(dict(analysis), allow_nan=False))
