"""A number on a paper carries its unit and how sure it is."""

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.papers.figures import Span, shown

KILO = 9.80665


def test_ready_text_comes_through() -> None:
    assert shown("catches at the right end") == "catches at the right end"


def test_a_measured_value_shows_its_expanded_uncertainty() -> None:
    assert shown(Measured(2.65 * KILO, 0.055 * KILO, "force")) == "2.65 kg ± 0.11 kg"


def test_a_span_shows_its_middle_and_its_ends_to_one_place() -> None:
    assert shown(Span(6.9 * KILO, 6.2 * KILO, 7.6 * KILO, "force")) == "6.9 kg, 6.2 to 7.6 kg"


@pytest.mark.parametrize("figure", [Measured(10.0, 0.1, "force"), Span(10.0, 9.0, 11.0, "force")])
def test_the_reader_chooses_the_system(figure: Measured | Span) -> None:
    assert "lb" in shown(figure, "imperial")
    assert "kg" in shown(figure, "metric")
