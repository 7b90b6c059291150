"""How a value is written for a person."""

from __future__ import annotations

import pytest

from spoolwright.quantities import display_unit, read, show, show_end, show_interval, show_stated

KILO = 9.80665

SHOWN = [
    ((2.65432 * KILO, "force"), {"uncertainty": 0.1123 * KILO}, "2.65 kg ± 0.11 kg"),
    ((2.65432 * KILO, "force"), {"uncertainty": 0.0996 * KILO}, "2.65 kg ± 0.10 kg"),
    ((2.6 * KILO, "force"), {"uncertainty": 0.00996 * KILO}, "2.600 kg ± 0.010 kg"),
    ((10.0, "ratio"), {"uncertainty": 2.449}, "10.0 ± 2.4"),
    ((1234.0, "line_length"), {"uncertainty": 123.0}, "1230 m ± 120 m"),
    ((293.15, "temperature"), {"uncertainty": 0.5}, "20.00 °C ± 0.50 °C"),
    ((293.15, "temperature"), {"uncertainty": 0.5, "system": "imperial"}, "68.00 °F ± 0.90 °F"),
    ((18 * 4.4482216152605, "force"), {"system": "imperial"}, "18.0 lb"),
    ((0.0245, "length"), {}, "24.5 mm"),
    ((0.0004, "length"), {}, "0.400 mm"),
    ((0.0245, "length"), {"system": "imperial"}, "0.965 in"),
    ((201.168, "line_length"), {"system": "imperial"}, "220 yd"),
    ((1234.5, "line_length"), {}, "1234 m"),
    ((0.07 * KILO, "force"), {}, "70.0 g"),
    ((0.0, "force"), {}, "0 kg"),
    ((2e-4, "torque"), {}, "0.200 mN m"),
    ((0.599, "torque"), {}, "0.599 N m"),
    ((3e-7, "viscous_drag"), {}, "0.300 μN m s"),
    ((3e-5, "inertia"), {}, "300 g cm^2"),
    ((206e9, "pressure"), {"unit": "GPa"}, "206 GPa"),
    ((4.0, "count"), {}, "4"),
    ((1.5, "ratio"), {}, "1.50"),
    ((0.08, "ratio"), {"unit": "%"}, "8.00 %"),
    ((-0.00001, "length"), {}, "-0.0100 mm"),
    ((1e-21, "wear_rate"), {}, "1.00e-12 mm^3/(N m)"),
]


@pytest.mark.parametrize(("what", "how", "text"), SHOWN, ids=[row[2] for row in SHOWN])
def test_it_is_written_so(what: tuple[float, str], how: dict[str, object], text: str) -> None:
    assert show(*what, **how) == text


def test_two_figures_of_the_uncertainty_as_in_the_guide() -> None:
    """JCGM 100:2008, 7.2.6: 10.057 62 ohm with 27 milliohm is written 10.058 with 0.027; from memory."""
    assert show(10.05762, "ratio", uncertainty=0.027) == "10.058 ± 0.027"


def test_no_uncertainty_stated_and_none_at_all_look_alike() -> None:
    assert show(0.0245, "length", uncertainty=0.0) == show(0.0245, "length")


def test_a_count_with_a_spread_shows_it() -> None:
    assert show(22.0, "count", uncertainty=0.6) == "22.00 ± 0.60"


def test_an_interval_has_one_unit_and_ends_rounded_alike() -> None:
    assert show_interval(6.41 * KILO, 7.38 * KILO, "force") == "6.41 to 7.38 kg"
    assert show_interval(0.0, 0.0, "force") == "0 to 0 kg"


def test_units_shown_are_those_of_the_persons_system() -> None:
    assert (display_unit("force"), display_unit("force", "imperial")) == ("kg", "lb")
    assert (display_unit("length"), display_unit("line_length", "imperial")) == ("mm", "yd")


@pytest.mark.parametrize("value", [float("nan"), float("inf")])
def test_what_is_no_number_is_never_shown(value: float) -> None:
    with pytest.raises(ValueError, match="finite"):
        show(value, "force")


def test_an_uncertainty_below_zero_is_a_mistake() -> None:
    with pytest.raises(ValueError, match="not negative"):
        show(1.0, "force", uncertainty=-0.1)


def test_a_system_that_does_not_exist_is_a_mistake() -> None:
    with pytest.raises(ValueError, match="metric, imperial"):
        show(1.0, "force", "cubits")


ENDS = [
    (5.5695 * KILO, "force", 2.34 * KILO, False, "5.5 kg"),
    (7.9086 * KILO, "force", 2.34 * KILO, True, "8.0 kg"),
    (1.13061, "ratio", 0.083, True, "1.14"),
    (0.0891, "ratio", 0.0479, True, "0.09"),
    (19.91, "time", 17.0, False, "19 s"),
    (0.000109, "length", 0.00004, True, "0.11 mm"),
    (-2.31, "ratio", 0.5, False, "-2.4"),
    (3.0, "ratio", 0.0, True, "3.00"),
]


@pytest.mark.parametrize(("value", "dimension", "width", "up", "text"), ENDS, ids=[row[4] for row in ENDS])
def test_an_end_of_a_promise_is_rounded_away_from_the_middle(
    value: float, dimension: str, width: float, up: bool, text: str
) -> None:
    assert show_end(value, dimension, width=width, up=up) == text
    back = read(text, dimension)
    assert back >= value * (1 - 1e-12) if up else back <= value + 1e-12


@pytest.mark.parametrize(
    ("text", "dimension", "system", "shown"),
    [
        ("0.8 mm", "length", "metric", "0.8 mm"),
        ("27 mm", "length", "metric", "27 mm"),
        ("10 mm", "length", "metric", "10 mm"),
        ("36.9 mm", "length", "metric", "36.9 mm"),
        ("328 g", "mass", "metric", "328 g"),
        ("100 N m", "torque", "metric", "100 N m"),
        ("1/2 in", "length", "imperial", "0.5 in"),
        ("0.12", "ratio", "metric", "0.12"),
        ("4", "ratio", "metric", "4"),
        ("0 °C", "temperature", "metric", "0 °C"),
        ("-5 °C", "temperature", "metric", "-5 °C"),
        ("32 °F", "temperature", "imperial", "32 °F"),
    ],
)
def test_a_stated_value_is_shown_with_no_more_digits_than_it_takes(
    text: str, dimension: str, system: str, shown: str
) -> None:
    assert show_stated(read(text, dimension), dimension, system) == shown
