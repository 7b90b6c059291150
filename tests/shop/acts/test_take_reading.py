"""A reading without its conditions is refused; with them it is kept, value, uncertainty, tries and all."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from spoolwright.sheets import reading_kinds
from spoolwright.shop.acts.attach_file import attach_file
from spoolwright.shop.acts.take_reading import (
    ConditionDidNotFit,
    ConditionsWereMissing,
    ConditionWasUnknown,
    KindWasUnknown,
    NothingWasRead,
    Signal,
    Value,
    ValueDidNotFit,
    take_reading,
)
from tests.shop import walk

pytestmark = pytest.mark.django_db

GIVEN = {
    "line": "on",
    "radius": 0.0235,
    "brakes": "off",
    "temperature": 291.15,
    "pull_number": 1,
    "pulls_of": 3,
    "star_turns": 1.5,
    "lubricant_state": "old grease",
    "anti_reverse_cold": False,
    "place_measured": "at the rim",
}


@pytest.fixture
def visit(hand: Any) -> Any:
    return walk.arrived(hand)


def take(hand: Any, visit: Any, kind: str, conditions: dict[str, Any], value: float = 1.0) -> Any:
    wanted = reading_kinds.kind(kind)
    values = [Value(kind, value, wanted.dimension, 0.1)]
    return take_reading(hand=hand, visit=visit, values=values, conditions=conditions)


@pytest.mark.parametrize("kind", list(reading_kinds.kinds()))
def test_each_condition_of_each_kind_is_asked_for(hand: Any, visit: Any, kind: str) -> None:
    take(hand, visit, kind, GIVEN)
    for condition in reading_kinds.kind(kind).conditions:
        for left_out in ({k: v for k, v in GIVEN.items() if k != condition}, {**GIVEN, condition: ""}):
            with pytest.raises(ConditionsWereMissing) as refusal:
                take(hand, visit, kind, left_out)
            assert refusal.value.missing == (condition,)
            assert reading_kinds.CONDITIONS[condition] in refusal.value.words
    assert visit.entries.filter(kind="reading").count() == 1


def test_cold_no_is_an_answer(hand: Any, visit: Any) -> None:
    """False is a condition that was written down; only nothing at all is missing."""
    reading = take(hand, visit, "anti_reverse_slips", {"anti_reverse_cold": False}).entry.reading
    assert reading.conditions == {"anti_reverse_cold": False}


def test_three_tries_are_all_kept_behind_the_result(hand: Any, visit: Any) -> None:
    tries = ("3.9 kg", "3.8 kg", "3.9 kg")
    pulls = [float(t.split()[0]) * walk.G for t in tries]
    mean = sum(pulls) / 3
    result = Value("pull_start", mean, "force", 0.03 * walk.G, typed="; ".join(tries))
    single = [
        Value("pull_start", p, "force", typed=t, repeat=i + 1)
        for i, (p, t) in enumerate(zip(pulls, tries, strict=True))
    ]
    written = take_reading(hand=hand, visit=visit, values=[result, *single], conditions=GIVEN)
    rows = written.entry.reading.values.order_by("repeat")
    assert [row.typed_text for row in rows] == ["3.9 kg; 3.8 kg; 3.9 kg", *tries]
    assert rows[0].standard_uncertainty_si == 0.03 * walk.G
    assert [row.value_si for row in rows[1:]] == pulls


def test_a_trace_keeps_its_file_and_its_analysis(hand: Any, visit: Any) -> None:
    trace = attach_file(hand=hand, data=b"time s,force N\n0,0\n1,38\n", original_name="pull.csv")
    written = take_reading(
        hand=hand,
        visit=visit,
        values=[Value("pull_start", 38.2, "force", 0.4), Value("pull_run", 25.5, "force", 0.3)],
        conditions=GIVEN,
        way="pull trace",
        signal=Signal(trace, {"slip_start": 0.31, "samples": 900}),
    )
    reading = type(written.entry.reading).objects.get(pk=written.entry.pk)
    assert (reading.attachment, reading.way) == (trace, "pull trace")
    assert reading.analysis == {"slip_start": 0.31, "samples": 900}
    assert {v.kind for v in reading.values.all()} == {"pull_start", "pull_run"}


@pytest.mark.parametrize(
    ("value", "refusal"),
    [
        (Value("drag", 50.0, "force", 0.1), KindWasUnknown),
        (Value("pull_full", 50.0, "mass", 0.1), ValueDidNotFit),
        (Value("pull_full", float("nan"), "force", 0.1), ValueDidNotFit),
        (Value("pull_full", float("inf"), "force", 0.1), ValueDidNotFit),
        (Value("pull_full", 50.0, "force"), ValueDidNotFit),
        (Value("pull_full", 50.0, "force", -0.1), ValueDidNotFit),
        (Value("pull_full", 50.0, "force", float("nan")), ValueDidNotFit),
        (Value("pull_full", 50.0, "force", 0.1, repeat=1), NothingWasRead),
    ],
)
def test_what_is_no_reading_is_refused(hand: Any, visit: Any, value: Value, refusal: Any) -> None:
    with pytest.raises(refusal):
        take_reading(hand=hand, visit=visit, values=[value], conditions=GIVEN)
    assert visit.entries.count() == 1


@pytest.mark.parametrize(
    ("key", "value", "refusal"),
    [
        ("weather", "fine", ConditionWasUnknown),
        ("radius", -0.02, ConditionDidNotFit),
        ("radius", float("nan"), ConditionDidNotFit),
        ("temperature", 0.0, ConditionDidNotFit),
        ("pull_number", 4, ConditionDidNotFit),
        ("pulls_of", 0, ConditionDidNotFit),
    ],
)
def test_a_condition_that_cannot_be_is_refused(
    hand: Any, visit: Any, key: str, value: Any, refusal: Any
) -> None:
    with pytest.raises(refusal) as told:
        take(hand, visit, "pull_full", {**GIVEN, key: value})
    assert told.value.field == key


def test_the_line_is_on_or_off_and_nothing_else(hand: Any, visit: Any) -> None:
    from spoolwright.shop.acts.refused import FieldWasRefused

    with pytest.raises(FieldWasRefused) as told:
        take(hand, visit, "mass", {"line": "yes"})
    assert told.value.field == "line"


@given(value=st.floats(1e-6, 1e4), u=st.floats(0, 10), radius=st.floats(1e-3, 0.2))
@settings(max_examples=25, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_what_is_read_back_is_what_was_written(
    hand: Any, visit: Any, value: float, u: float, radius: float
) -> None:
    written = take_reading(
        hand=hand,
        visit=visit,
        values=[Value("pull_full", value, "force", u)],
        conditions={**GIVEN, "radius": radius},
    )
    row = written.entry.reading.values.model.objects.select_related("reading").get(reading=written.entry.pk)
    assert (row.value_si, row.standard_uncertainty_si, row.reading.radius_m) == (value, u, radius)


def test_analysis_is_plain_data(hand: Any, visit: Any) -> None:
    values = [Value("pull_full", 50.0, "force", 0.1)]
    with pytest.raises(ValueError, match="Out of range float"):
        take_reading(
            hand=hand,
            visit=visit,
            values=values,
            conditions=GIVEN,
            signal=Signal(analysis={"judder": float("nan")}),
        )
    assert visit.entries.count() == 1
