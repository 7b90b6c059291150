"""The longer lists of units with their factors: exact fractions wherever the definition is exact.

Sources of the factors stand beside their checks in tests/reference/test_units.py.
"""

from __future__ import annotations

import math
from fractions import Fraction

from spoolwright.quantities.units import Unit

GRAVITY = Fraction("9.80665")
POUND = Fraction("0.45359237")
OUNCE = POUND / 16
INCH = Fraction("0.0254")
FOOT = 12 * INCH
PI = Fraction(math.pi)


def unit(name: str, factor: Fraction | str | int, *spellings: str, any_case: bool = False) -> Unit:
    """A unit of this many SI units, exactly."""
    return Unit(name, Fraction(factor), spellings, any_case=any_case)


LENGTH = (
    unit("mm", "0.001", "millimetre", "millimetres", "millimeter", "millimeters", any_case=True),
    unit("cm", "0.01", "centimetre", "centimetres", "centimeter", "centimeters", any_case=True),
    unit("m", 1, "metre", "metres", "meter", "meters"),
    unit("μm", "0.000001", "um", "micron", "microns"),
    unit("in", INCH, "in.", "inch", "inches", any_case=True),
    unit("thou", INCH / 1000, any_case=True),
    unit("ft", FOOT, "foot", "feet", any_case=True),
    unit("yd", 3 * FOOT, "yds", "yard", "yards", any_case=True),
)
MASS = (
    unit("g", "0.001", "gram", "grams", "gramme", "grammes"),
    unit("kg", 1, "kilogram", "kilograms", "kilo", "kilos", any_case=True),
    unit("mg", "0.000001"),
    unit("oz", OUNCE, "ounce", "ounces", any_case=True),
    unit("lb", POUND, "lbs", "pound", "pounds", any_case=True),
)
FORCE = (
    unit("kg", GRAVITY, "kgf", "kilogram", "kilograms", "kilo", "kilos", any_case=True),
    unit("g", GRAVITY / 1000, "gf", "gram", "grams"),
    unit("N", 1, "newton", "newtons"),
    unit("kN", 1000),
    unit("lb", POUND * GRAVITY, "lbs", "lbf", "pound", "pounds", any_case=True),
    unit("oz", OUNCE * GRAVITY, "ozf", "ounce", "ounces", any_case=True),
)
TORQUE = (
    unit("N m", 1, "Nm"),
    unit("N cm", "0.01", "Ncm"),
    unit("N mm", "0.001", "Nmm"),
    unit("mN m", "0.001", "mNm"),
    unit("μN m", "0.000001", "uN m", "μNm", "uNm"),
    unit("kg cm", GRAVITY / 100, "kgf cm"),
    unit("lbf in", POUND * GRAVITY * INCH, "lb in", "in lb", "in lbf", any_case=True),
    unit("lbf ft", POUND * GRAVITY * FOOT, "lb ft", "ft lb", "ft lbf", any_case=True),
    unit("ozf in", OUNCE * GRAVITY * INCH, "oz in", "in oz", any_case=True),
)
PRESSURE = (
    unit("MPa", 1_000_000, "N/mm2"),
    unit("GPa", 1_000_000_000, "kN/mm2"),
    unit("kPa", 1000),
    unit("Pa", 1, "N/m2"),
    unit("bar", 100_000, any_case=True),
    unit("psi", POUND * GRAVITY / INCH**2, "lbf/in2", any_case=True),
)
TEMPERATURE = (
    Unit("°C", Fraction(1), ("C", "degC", "deg C"), Fraction("273.15")),
    Unit("°F", Fraction(5, 9), ("F", "degF", "deg F"), Fraction("459.67") * Fraction(5, 9)),
    Unit("K", Fraction(1), ("kelvin",)),
)
INERTIA = (
    unit("kg m^2", 1),
    unit("g cm^2", "0.0000001"),
    unit("g mm^2", "0.000000001"),
    unit("kg mm^2", "0.000001"),
    unit("oz in^2", OUNCE * INCH**2, any_case=True),
    unit("lb in^2", POUND * INCH**2, any_case=True),
)
PER_TURN = tuple(
    Unit(f"{u.name}/turn", u.factor, (u.name, *u.spellings, f"{u.name} per turn"), any_case=u.any_case)
    for u in LENGTH
    if u.name in {"mm", "cm", "m", "in", "ft"}
)
