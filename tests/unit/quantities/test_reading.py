"""What the reader takes, what it refuses, and how it says so."""

from __future__ import annotations

import math

import pytest

from spoolwright.quantities import NotAQuantity, read, read_typed

TAKEN = [
    ("18 lb", "force", 18 * 4.4482216152605),
    ("8.2 kg", "force", 8.2 * 9.80665),
    ("0.40 mm", "length", 0.0004),
    ("220 yd", "line_length", 201.168),
    ("1/2 oz", "mass", 0.0141747615625),
    ("5 1/4 oz", "mass", 5.25 * 0.028349523125),
    ("2 1/2 in", "length", 0.0635),
    ("2½ in", "length", 0.0635),
    ("½ oz", "mass", 0.0141747615625),
    ("32 cSt", "viscosity", 32e-6),
    ("0,40 mm", "length", 0.0004),
    (",5 mm", "length", 0.0005),
    ("3.9kg", "force", 3.9 * 9.80665),
    ("1750 rpm", "rotation", 1750 * 2 * math.pi / 60),
    ("1.750 m", "length", 1.75),
    ("1,75 m", "length", 1.75),
    ("0,400 m", "length", 0.4),
    ("1,7500 m", "length", 1.75),
    ("\u221210 °C", "temperature", 263.15),
    ("-10 \u00b0C", "temperature", 263.15),
    ("20 \u2103", "temperature", 293.15),
    ("8.2\u00a0kg", "force", 8.2 * 9.80665),
    ("8.2\u202fkg", "force", 8.2 * 9.80665),
    ("  8.2  kg ", "force", 8.2 * 9.80665),
    ("15 mm²/s", "viscosity", 15e-6),
    ("15 m2/s", "viscosity", 15.0),
    ("5 \u00b5m", "length", 5e-6),
    ("5 \u03bcm", "length", 5e-6),
    ("3e-5 kg m^2", "inertia", 3e-5),
    ("3E-5 kg·m²", "inertia", 3e-5),
    ("6 %", "ratio", 0.06),
    ("1.06", "ratio", 1.06),
    ("5.3:1", "ratio", 5.3),
    ("3", "count", 3.0),
    ("2.5", "score", 2.5),
    ("66 cm", "line_per_turn", 0.66),
    ("26 in/turn", "line_per_turn", 0.6604),
    ("18 LB", "force", 18 * 4.4482216152605),
    ("-0.2 mm", "length", -0.0002),
    ("+3 mm", "length", 0.003),
    ("1e3 mm", "length", 1.0),
]


@pytest.mark.parametrize(("text", "dimension", "value"), TAKEN, ids=[row[0] for row in TAKEN])
def test_it_reads(text: str, dimension: str, value: float) -> None:
    assert read(text, dimension) == pytest.approx(value, rel=1e-15)


REFUSED = [
    ("18", "force", "has no unit"),
    ("2 1/2", "length", "has no unit"),
    ("5 mm", "force", "is a length, not a pull"),
    ("5 kg", "length", "is a mass, not a length"),
    ("5 %", "length", "is a plain number or a percentage, not a length"),
    ("3 furlong", "length", "has the unit “furlong”, which is not known here"),
    ("nan kg", "force", "does not begin with a number"),
    ("inf", "ratio", "does not begin with a number"),
    ("-inf mm", "length", "does not begin with a number"),
    ("lb 18", "force", "does not begin with a number"),
    ("", "length", "is empty"),
    (" \u00a0 ", "length", "is empty"),
    ("9**9**9 m", "length", "is more than one number with one unit"),
    ("3 mm 4 mm", "length", "is more than one number with one unit"),
    ("3 4 mm", "length", "is more than one number with one unit"),
    ("3 x 4 mm", "length", "is more than one number with one unit"),
    ("3-4 mm", "length", "is more than one number with one unit"),
    ("2-1/2 in", "length", "is more than one number with one unit"),
    ("1 e5 m", "length", "is more than one number with one unit"),
    ("1e5e5 m", "length", "is more than one number with one unit"),
    ("5' 3\"", "length", "uses ' or \" for feet and inches; write ft or in"),
    ("8.2 ± 0.1 kg", "force", "states an uncertainty; write the value alone"),
    ("1,750 m", "length", "could be 1750 or 1.750; write one of these two"),
    ("12,345,678 m", "length", "has commas inside the number; write 12345678 if that is meant"),
    ("12,000 rpm", "rotation", "could be 12000 or 12.000; write one of these two"),
    ("1,750.5 m", "length", "has a decimal mark in the wrong place"),
    ("1 750 rpm", "rotation", "has a gap inside the number; write 1750 if that is meant"),
    ("1\u202f750 rpm", "rotation", "has a gap inside the number; write 1750 if that is meant"),
    ("2 100 yd", "line_length", "has a gap inside the number; write 2100 if that is meant"),
    ("1.2.3 m", "length", "has a decimal mark in the wrong place"),
    ("1..2 m", "length", "has a decimal mark in the wrong place"),
    ("3. mm", "length", "has a decimal mark in the wrong place"),
    ("1e999 m", "length", "has an exponent beyond 30"),
    ("1e-99 m", "length", "has an exponent beyond 30"),
    ("1/0 m", "length", "divides by nothing"),
    ("2 5/3 in", "length", "is not a whole number with a proper fraction"),
    ("2.5", "count", "is not a whole number"),
    ("3/5", "score", "is a fraction"),
    ("-300 °C", "temperature", "is below the lowest temperature there is"),
    ("-1 K", "temperature", "is below the lowest temperature there is"),
    ("1 NM", "torque", "has the unit “NM”, which is not known here"),
    ("٣ mm", "length", "does not begin with a number"),
]


@pytest.mark.parametrize(("text", "dimension", "reason"), REFUSED, ids=[repr(row[0]) for row in REFUSED])
def test_it_refuses_and_says_why(text: str, dimension: str, reason: str) -> None:
    with pytest.raises(NotAQuantity) as caught:
        read(text, dimension)
    assert caught.value.reason == reason
    assert caught.value.typed == text
    assert caught.value.accepted in str(caught.value)


def test_the_message_lists_what_is_accepted() -> None:
    with pytest.raises(NotAQuantity) as caught:
        read("5 mm", "force")
    assert str(caught.value) == (
        "“5 mm” is a length, not a pull. Accepted: a pull such as "
        '"18 lb" or "8.2 kg" (units: kg, g, N, kN, lb, oz).'
    )


@pytest.mark.parametrize("typed", [5, 5.0, True, None, ["5 mm"]])
def test_what_is_not_text_is_refused_too(typed: object) -> None:
    with pytest.raises(NotAQuantity):
        read(typed, "length")  # type: ignore[arg-type]


def test_hostile_length_is_refused_before_it_is_looked_at() -> None:
    with pytest.raises(NotAQuantity, match="longer than 64 characters"):
        read("9" * 1_000_000 + " m", "length")


def test_a_dimension_that_does_not_exist_is_the_callers_mistake() -> None:
    with pytest.raises(KeyError):
        read("5 mm", "luck")


@pytest.mark.parametrize(
    ("text", "unit", "resolution"),
    [
        ("3.9 kg", "kg", 0.980665),
        ("3.90 kg", "kg", 0.0980665),
        ("4 kg", "kg", 9.80665),
        ("1/2 lb", "lb", 2.22411080763025),
        ("3e2 N", "N", 100.0),
    ],
)
def test_what_was_typed_keeps_its_unit_and_the_step_of_its_last_digit(
    text: str, unit: str, resolution: float
) -> None:
    typed = read_typed(text, "force")
    assert typed.unit == unit
    assert typed.resolution == pytest.approx(resolution, rel=1e-12)
