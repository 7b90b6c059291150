"""The table of units against published factors, and every unit of it against an independent units library."""

from __future__ import annotations

import pint
import pytest

from spoolwright.quantities import DIMENSIONS, read
from tests.reference.published import Published, each

AGREEMENT = "international yard and pound agreement of 1959: yard 0.9144 m, pound 0.45359237 kg, exact"
OPENED = "opened: encyclopaedia article on the agreement"
GRAVITY = "3rd General Conference on Weights and Measures, 1901: standard gravity 9.80665 m/s2"
NIST = "NIST Special Publication 811, appendix B.8, factors listed alphabetically"
MEMORY = "from memory"


def printed(
    text: str, dimension: str, value: float, digits: int, source: str = NIST, how: str = MEMORY
) -> Published:
    """A factor as printed, within half of its last digit; `digits` of them are significant."""
    within = (
        0.5 * 10.0 ** (len(str(int(value))) - digits) if value >= 1 else 0.5 * value * 10.0 ** (1 - digits)
    )
    return Published(f"{text} as {dimension}", lambda: read(text, dimension), value, within, source, how)


CHECKS = [
    Published("yard", lambda: read("1 yd", "length"), 0.9144, 1e-16, AGREEMENT, OPENED),
    Published("inch is a yard by 36", lambda: 36 * read("1 in", "length"), 0.9144, 1e-15, AGREEMENT, OPENED),
    Published("foot is a third of a yard", lambda: read("3 ft", "length"), 0.9144, 1e-15, AGREEMENT, OPENED),
    Published("pound", lambda: read("1 lb", "mass"), 0.45359237, 1e-16, AGREEMENT, OPENED),
    Published("ounce, 16 to a pound", lambda: read("16 oz", "mass"), 0.45359237, 1e-16, AGREEMENT, OPENED),
    Published("a kilogram's pull", lambda: read("1 kg", "force"), 9.80665, 1e-15, GRAVITY, MEMORY),
    printed("1 lb", "force", 4.448222, 7),
    printed("1 oz", "force", 2.780139e-1, 7),
    printed("1 oz", "mass", 2.834952e-2, 7),
    printed("1 thou", "length", 2.54e-5, 7),
    printed("1 psi", "pressure", 6.894757e3, 7),
    printed("1 bar", "pressure", 1e5, 7),
    printed("1 lbf in", "torque", 1.129848e-1, 7),
    printed("1 lbf ft", "torque", 1.355818, 7),
    printed("1 ozf in", "torque", 7.061552e-3, 7),
    printed("1 kg cm", "torque", 9.80665e-2, 7),
    printed("1 ft/s", "speed", 3.048e-1, 7),
    printed("1 mph", "speed", 4.4704e-1, 7),
    printed("1 km/h", "speed", 2.777778e-1, 7),
    printed("1 kn", "speed", 5.144444e-1, 7),
    printed("1 rpm", "rotation", 1.047198e-1, 7),
    printed("1 deg", "angle", 1.745329e-2, 7),
    printed("1 cSt", "viscosity", 1e-6, 7),
    printed("1 cP", "dynamic_viscosity", 1e-3, 7),
    printed("1 lb/ft^3", "density", 1.601846e1, 7),
    printed("1 lb/in^3", "density", 2.767990e4, 7),
    printed("1 lbf/in", "stiffness", 1.751268e2, 7),
    printed("1 lb in^2", "inertia", 2.926397e-4, 7),
    printed("1 ft lbf", "energy", 1.355818, 7),
    printed("1 den", "tex", 1.111111e-1, 7),
    Published("freezing", lambda: read("32 °F", "temperature"), 273.15, 1e-9, "SI Brochure, 2.3.4", MEMORY),
    Published("where both scales meet", lambda: read("-40 °F", "temperature"), 233.15, 1e-9, NIST, MEMORY),
    Published(
        "10 lbf",
        lambda: read("10 lb", "force"),
        44.482216,
        5e-7,
        "units library pint 0.25, trial of the parser",
        "worked out by another library",
    ),
    Published(
        "30 in times 12 lbf",
        lambda: read("360 lbf in", "torque"),
        40.674538,
        5e-7,
        "units library pint 0.25, trial of the parser",
        "worked out by another library",
    ),
]


@each(CHECKS)
def test_factor_is_the_published_one(check: Published) -> None:
    check.agrees()


SAME_IN_PINT = {
    "": "dimensionless",
    "%": "percent",
    "μm": "micrometer",
    "N m": "newton*meter",
    "N cm": "newton*centimeter",
    "N mm": "newton*millimeter",
    "mN m": "millinewton*meter",
    "μN m": "micronewton*meter",
    "kg cm": "kilogram_force*centimeter",
    "lbf in": "pound_force*inch",
    "lbf ft": "pound_force*foot",
    "ozf in": "ounce_force*inch",
    "°C": "degC",
    "°F": "degF",
    "K": "kelvin",
    "ft/s": "foot/second",
    "mph": "mile/hour",
    "kn": "knot",
    "rpm": "revolution/minute",
    "rev/s": "revolution/second",
    "deg/s": "degree/second",
    "rpm/s": "revolution/minute/second",
    "mPa s": "millipascal*second",
    "Pa s": "pascal*second",
    "g/cm^3": "gram/centimeter**3",
    "kg/m^3": "kilogram/meter**3",
    "lb/ft^3": "pound/foot**3",
    "lb/in^3": "pound/inch**3",
    "kg m^2": "kilogram*meter**2",
    "g cm^2": "gram*centimeter**2",
    "g mm^2": "gram*millimeter**2",
    "kg mm^2": "kilogram*millimeter**2",
    "oz in^2": "ounce*inch**2",
    "lb in^2": "pound*inch**2",
    "lbf/in": "pound_force/inch",
    "ft lbf": "foot*pound_force",
    "N m s": "newton*meter*second",
    "mN m s": "millinewton*meter*second",
    "μN m s": "micronewton*meter*second",
    "nN m s": "nanonewton*meter*second",
    "N m s^2": "newton*meter*second**2",
    "μN m s^2": "micronewton*meter*second**2",
    "nN m s^2": "nanonewton*meter*second**2",
    "pN m s^2": "piconewton*meter*second**2",
    "rev/s^2": "revolution/second**2",
    "m/s^2": "meter/second**2",
    "N m/rad": "newton*meter/radian",
    "mN m/rad": "millinewton*meter/radian",
    "N m/deg": "newton*meter/degree",
    "W/(m K)": "watt/meter/kelvin",
    "J/(kg K)": "joule/kilogram/kelvin",
    "kJ/(kg K)": "kilojoule/kilogram/kelvin",
    "mm^3/(N m)": "millimeter**3/(newton*meter)",
    "m^2/N": "meter**2/newton",
    "m^2/s": "meter**2/second",
    "cm^2/s": "centimeter**2/second",
    "rad/s^2": "radian/second**2",
    "den": "denier",
    "μs": "microsecond",
}
AS_A_PULL = {"kg": "kilogram_force", "g": "gram_force", "lb": "pound_force", "oz": "ounce_force"}
SI_IN_PINT = {
    "1": "dimensionless",
    "N m": "newton*meter",
    "Pa s": "pascal*second",
    "m^2/s": "meter**2/second",
    "kg/m^3": "kilogram/meter**3",
    "kg m^2": "kilogram*meter**2",
    "N m s": "newton*meter*second",
    "N m s^2": "newton*meter*second**2",
    "rad/s^2": "radian/second**2",
    "m/s^2": "meter/second**2",
    "N m/rad": "newton*meter/radian",
    "W/(m K)": "watt/meter/kelvin",
    "J/(kg K)": "joule/kilogram/kelvin",
    "m^2/N": "meter**2/newton",
    "K": "kelvin",
}
EVERY_UNIT = [(d.key, u.name) for d in DIMENSIONS.values() for u in d.units]


def in_pint(dimension: str, unit: str) -> str:
    if dimension == "force" and unit in AS_A_PULL:
        return AS_A_PULL[unit]
    if dimension == "line_per_turn":
        return unit.removesuffix("/turn")
    if dimension == "temperature_step":
        return {"K": "kelvin", "°F": "delta_degF"}[unit]
    return SAME_IN_PINT.get(unit, unit)


@pytest.fixture(scope="module")
def library() -> pint.UnitRegistry:
    return pint.UnitRegistry(autoconvert_offset_to_baseunit=True)


@pytest.mark.parametrize(("dimension", "unit"), EVERY_UNIT, ids=[f"{d}: {u or '1'}" for d, u in EVERY_UNIT])
@pytest.mark.parametrize("number", [1.0, 37.5])
def test_every_unit_of_the_table_agrees_with_the_units_library(
    library: pint.UnitRegistry, dimension: str, unit: str, number: float
) -> None:
    """Source: the units library pint 0.25, whose own table is independent of ours."""
    si = DIMENSIONS[dimension].si
    typed = "38" if DIMENSIONS[dimension].whole else f"{number}"
    theirs = library.Quantity(float(typed), in_pint(dimension, unit)).to(SI_IN_PINT.get(si, si)).magnitude
    assert read(f"{typed} {unit}".strip(), dimension) == pytest.approx(theirs, rel=1e-12)
