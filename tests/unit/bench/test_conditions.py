"""A reading without its conditions is refused; conditions are read strictly."""

import pytest

from spoolwright.bench import conditions
from spoolwright.bench.conditions import MissingCondition
from spoolwright.bench.unreadable import Unreadable
from spoolwright.quantities import NotAQuantity
from spoolwright.sheets import reading_kinds

PULL = {
    "line": "on",
    "radius": "23.5 mm",
    "pull_number": "1",
    "pulls_of": "3",
    "star_turns": "1 3/4",
    "temperature": "20 °C",
}


def test_conditions_come_back_in_si() -> None:
    found = conditions.read("pull_start", PULL)
    assert found["radius"] == pytest.approx(0.0235)
    assert found["temperature"] == pytest.approx(293.15)
    assert (found["pull_number"], found["pulls_of"], found["star_turns"]) == (1, 3, 1.75)
    assert found["line"] == "on"


@pytest.mark.parametrize("key", sorted(PULL))
def test_each_missing_condition_is_named(key: str) -> None:
    with pytest.raises(MissingCondition) as refused:
        conditions.read("pull_start", {**PULL, key: "  "})
    assert refused.value.missing == (key,)
    assert reading_kinds.CONDITIONS[key] in str(refused.value)


def test_all_that_is_missing_is_named_at_once() -> None:
    with pytest.raises(MissingCondition) as refused:
        conditions.read("spin_time", {})
    assert refused.value.missing == ("line", "brakes", "temperature")


def test_further_conditions_are_kept() -> None:
    found = conditions.read("end_float", {"lubricant_state": "old grease", "anti_reverse_cold": "cold"})
    assert (found["lubricant_state"], found["anti_reverse_cold"]) == ("old grease", True)


@pytest.mark.parametrize(
    ("key", "text"),
    [
        ("line", "half"),
        ("radius", "0 mm"),
        ("pull_number", "0"),
        ("pull_number", "4"),
        ("star_turns", "50 %"),
        ("star_turns", "-1"),
        ("lubricant_state", "x" * 300),
        ("colour", "red"),
    ],
)
def test_what_cannot_be_is_refused(key: str, text: str) -> None:
    with pytest.raises(Unreadable):
        conditions.read("pull_start", {**PULL, key: text})


@pytest.mark.parametrize(
    ("key", "text"), [("radius", "23.5"), ("temperature", "20 mm"), ("pulls_of", "three")]
)
def test_a_quantity_without_its_unit_is_refused(key: str, text: str) -> None:
    with pytest.raises(NotAQuantity):
        conditions.read("pull_start", {**PULL, key: text})


def test_every_condition_of_the_registry_can_be_read() -> None:
    assert set(conditions._READERS) == set(reading_kinds.CONDITIONS)
