"""Quantities in the reader's units."""

from types import SimpleNamespace

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.pages.words import shown

KG = 9.80665  # one kilogram-force in newtons, exact: CGPM 1901, resolution 3
NBSP = "\u00a0"


@pytest.mark.parametrize(
    ("person", "system"),
    [
        (None, "metric"),
        (SimpleNamespace(), "metric"),
        (SimpleNamespace(units="imperial"), "imperial"),
        (SimpleNamespace(units="cubits"), "metric"),
    ],
)
def test_somebody_who_has_not_chosen_reads_metric(person: object, system: str) -> None:
    assert shown.system_of(person) == system


def test_a_quantity_carries_its_unit_and_does_not_part_from_it() -> None:
    assert shown.quantity(0.0235, "length", "metric") == f"23.5{NBSP}mm"
    assert shown.quantity(2.6 * KG, "force", "metric", 0.09 * KG) == f"2.600{NBSP}kg ±{NBSP}0.090{NBSP}kg"


def test_a_value_that_was_not_taken_is_a_dash() -> None:
    assert shown.quantity(None, "force", "metric") == "–"


def test_a_reading_parts_into_value_and_expanded_uncertainty() -> None:
    value, spread = shown.measured(Measured(0.338, 0.0005, "mass"), "metric")
    assert (value, spread) == (f"338.0{NBSP}g", f"1.0{NBSP}g")


def test_an_interval_has_one_unit() -> None:
    text = shown.interval(6.4 * KG, 7.4 * KG, "force", "metric")
    assert text.count("kg") == 1
    assert " to " in text


def test_in_a_sentence_no_number_parts_from_its_unit() -> None:
    said = shown.together("It slips at 5.8 to 8.1 kg, 3 % above 2 gears and 2 mm, star 2.5 turns from free.")
    assert said.split(" ")[-1] == "free."
    assert [part for part in said.split(" ") if "\u00a0" in part] == [
        "8.1\u00a0kg,",
        "3\u00a0%",
        "2\u00a0mm,",
        "2.5\u00a0turns",
    ]


def test_a_spread_alone_has_two_figures() -> None:
    assert shown.two_figures(1.7321e-5, "length", "metric") == "0.017\u00a0mm"
    assert shown.two_figures(0.0, "length", "metric").startswith("0")
