"""One row of what is known: never a bare number, and how well it is known."""

from __future__ import annotations

import pytest

from spoolwright.pages.reel_sheet.rows import Row, coefficients, marked, material, published, size, worked_out
from spoolwright.sheets.sourced import Sourced


def test_a_size_the_sheet_does_not_state_has_no_row() -> None:
    assert size("wall", None, "metric") == []
    assert size("wall", 0.0012, "metric") == [Row("wall", "1.2\u00a0mm")]
    assert size("wall", 0.0254, "imperial") == [Row("wall", "1\u00a0in")]


def test_a_value_that_follows_says_so() -> None:
    assert worked_out("radius", 0.0235, "length", "metric").mark == "worked out from the sheet"


@pytest.mark.parametrize(
    ("low", "high", "said"),
    [(0.12, 0.19, "0.12 to 0.19"), (0.15, 0.15, "0.15"), (1.051, 1.131, "1.05 to 1.13")],
)
def test_nobody_knows_the_third_decimal_of_a_coefficient(low: float, high: float, said: str) -> None:
    assert coefficients(low, high) == said


def test_a_published_range_keeps_its_mark() -> None:
    row = published("friction", Sourced(0.12, 0.19, "a handbook", "judgement prior"), "ratio", "metric")
    assert row == Row("friction", "0.12 to 0.19", "a guess (judgement prior)")
    one = published("density", Sourced(8470.0, 8470.0, "a handbook", "from memory"), "density", "metric")
    assert "memory" in one.mark
    assert one.text.startswith("8.47")
    assert marked("common practice, no source") == "common practice, no source"


def test_a_material_is_told_with_what_carries_load_and_a_friction_material_by_name() -> None:
    labels = [row.label for row in material("brass", "metric")]
    assert labels == ["material", "yields at", "density"]
    assert material("woven carbon", "metric") == [Row("material", "woven carbon")]
    assert material(None, "metric") == []
