"""The closed table: which units each dimension accepts, and what one of each is in SI.

Factors are exact fractions wherever the definition is exact (inch, pound, standard gravity), so that
"24.5 mm" is the float nearest to 0.0245 and not a neighbour. Sources of the factors stand beside their checks
in tests/reference/test_units.py.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from fractions import Fraction
from types import MappingProxyType

from spoolwright.quantities.units import Dimension, Unit

GRAVITY = Fraction("9.80665")
POUND = Fraction("0.45359237")
OUNCE = POUND / 16
INCH = Fraction("0.0254")
FOOT = 12 * INCH
PI = Fraction(math.pi)


def _u(name: str, factor: Fraction | str | int, *spellings: str, any_case: bool = False) -> Unit:
    return Unit(name, Fraction(factor), spellings, any_case=any_case)


_LENGTH = (
    _u("mm", "0.001", "millimetre", "millimetres", "millimeter", "millimeters", any_case=True),
    _u("cm", "0.01", "centimetre", "centimetres", "centimeter", "centimeters", any_case=True),
    _u("m", 1, "metre", "metres", "meter", "meters"),
    _u("μm", "0.000001", "um", "micron", "microns"),
    _u("in", INCH, "in.", "inch", "inches", any_case=True),
    _u("thou", INCH / 1000, any_case=True),
    _u("ft", FOOT, "foot", "feet", any_case=True),
    _u("yd", 3 * FOOT, "yds", "yard", "yards", any_case=True),
)
_MASS = (
    _u("g", "0.001", "gram", "grams", "gramme", "grammes"),
    _u("kg", 1, "kilogram", "kilograms", "kilo", "kilos", any_case=True),
    _u("mg", "0.000001"),
    _u("oz", OUNCE, "ounce", "ounces", any_case=True),
    _u("lb", POUND, "lbs", "pound", "pounds", any_case=True),
)
_FORCE = (
    _u("kg", GRAVITY, "kgf", "kilogram", "kilograms", "kilo", "kilos", any_case=True),
    _u("g", GRAVITY / 1000, "gf", "gram", "grams"),
    _u("N", 1, "newton", "newtons"),
    _u("kN", 1000),
    _u("lb", POUND * GRAVITY, "lbs", "lbf", "pound", "pounds", any_case=True),
    _u("oz", OUNCE * GRAVITY, "ozf", "ounce", "ounces", any_case=True),
)
_TORQUE = (
    _u("N m", 1, "Nm"),
    _u("N cm", "0.01", "Ncm"),
    _u("N mm", "0.001", "Nmm"),
    _u("mN m", "0.001", "mNm"),
    _u("μN m", "0.000001", "uN m", "μNm", "uNm"),
    _u("kg cm", GRAVITY / 100, "kgf cm"),
    _u("lbf in", POUND * GRAVITY * INCH, "lb in", "in lb", "in lbf", any_case=True),
    _u("lbf ft", POUND * GRAVITY * FOOT, "lb ft", "ft lb", "ft lbf", any_case=True),
    _u("ozf in", OUNCE * GRAVITY * INCH, "oz in", "in oz", any_case=True),
)
_PRESSURE = (
    _u("MPa", 1_000_000, "N/mm2"),
    _u("GPa", 1_000_000_000, "kN/mm2"),
    _u("kPa", 1000),
    _u("Pa", 1, "N/m2"),
    _u("bar", 100_000, any_case=True),
    _u("psi", POUND * GRAVITY / INCH**2, "lbf/in2", any_case=True),
)
_TEMPERATURE = (
    Unit("°C", Fraction(1), ("C", "degC", "deg C"), Fraction("273.15")),
    Unit("°F", Fraction(5, 9), ("F", "degF", "deg F"), Fraction("459.67") * Fraction(5, 9)),
    Unit("K", Fraction(1), ("kelvin",)),
)
_INERTIA = (
    _u("kg m^2", 1),
    _u("g cm^2", "0.0000001"),
    _u("g mm^2", "0.000000001"),
    _u("kg mm^2", "0.000001"),
    _u("oz in^2", OUNCE * INCH**2, any_case=True),
    _u("lb in^2", POUND * INCH**2, any_case=True),
)
_PER_TURN = tuple(
    Unit(f"{u.name}/turn", u.factor, (u.name, *u.spellings, f"{u.name} per turn"), any_case=u.any_case)
    for u in _LENGTH
    if u.name in {"mm", "cm", "m", "in", "ft"}
)

_ALL = (
    Dimension("length", "a length", "m", _LENGTH, ("mm",), ("in",), ("24.5 mm", "2 1/2 in")),
    Dimension("line_length", "a length of line", "m", _LENGTH, ("m",), ("yd",), ("200 m", "220 yd")),
    Dimension("mass", "a mass", "kg", _MASS, ("g",), ("oz",), ("338 g", "5 1/4 oz")),
    Dimension("force", "a pull", "N", _FORCE, ("kg", "g"), ("lb", "oz"), ("18 lb", "8.2 kg")),
    Dimension(
        "torque",
        "a torque",
        "N m",
        _TORQUE,
        ("N m", "mN m", "μN m"),
        ("lbf in", "ozf in"),
        ("0.6 N m", "5.3 lbf in"),
    ),
    Dimension(
        "time",
        "a time",
        "s",
        (
            _u("s", 1, "sec", "second", "seconds"),
            _u("ms", "0.001"),
            _u("μs", "0.000001", "us"),
            _u("min", 60, "minute", "minutes"),
            _u("h", 3600, "hour", "hours"),
        ),
        ("s", "ms"),
        ("s", "ms"),
        ("31 s", "5 min"),
    ),
    Dimension(
        "angle",
        "an angle",
        "rad",
        (
            _u("deg", PI / 180, "°", "degree", "degrees", any_case=True),
            _u("rad", 1),
            _u("turn", 2 * PI, "turns"),
        ),
        ("deg",),
        ("deg",),
        ("22.5 deg", "0.5 turn"),
    ),
    Dimension(
        "temperature",
        "a temperature",
        "K",
        _TEMPERATURE,
        ("°C",),
        ("°F",),
        ("20 °C", "68 °F"),
        lowest=0.0,
    ),
    Dimension(
        "temperature_step",
        "a step of temperature",
        "K",
        (
            _u("K", 1, "kelvin", "°C", "C", "degC", "deg C"),
            _u("°F", Fraction(5, 9), "F", "degF", "deg F"),
        ),
        ("K",),
        ("°F",),
        ("0.5 K", "1 °F"),
    ),
    Dimension(
        "speed",
        "a speed",
        "m/s",
        (
            _u("m/s", 1),
            _u("mm/s", "0.001"),
            _u("km/h", Fraction(1000, 3600)),
            _u("ft/s", FOOT),
            _u("mph", 5280 * FOOT / 3600, any_case=True),
            _u("kn", Fraction(1852, 3600), "kt", "knot", "knots", any_case=True),
        ),
        ("m/s",),
        ("ft/s",),
        ("0.4 m/s", "1.3 ft/s"),
    ),
    Dimension(
        "rotation",
        "a speed of turning",
        "rad/s",
        (
            _u("rpm", 2 * PI / 60, "r/min", "rev/min", "turns/min", any_case=True),
            _u("rev/s", 2 * PI, "r/s", "turns/s"),
            _u("rad/s", 1),
            _u("deg/s", PI / 180, "°/s"),
        ),
        ("rpm",),
        ("rpm",),
        ("1750 rpm", "3 turns/s"),
    ),
    Dimension(
        "viscosity",
        "a kinematic viscosity",
        "m^2/s",
        (
            _u("cSt", "0.000001", "mm2/s", "centistokes", any_case=True),
            _u("m^2/s", 1),
            _u("cm^2/s", "0.0001", "St"),
        ),
        ("cSt",),
        ("cSt",),
        ("32 cSt", "15 mm²/s"),
    ),
    Dimension(
        "dynamic_viscosity",
        "a dynamic viscosity",
        "Pa s",
        (_u("mPa s", "0.001", "cP", "mPas"), _u("Pa s", 1, "Pas")),
        ("mPa s",),
        ("mPa s",),
        ("28 mPa s", "0.028 Pa s"),
    ),
    Dimension(
        "pressure",
        "a pressure or stress",
        "Pa",
        _PRESSURE,
        ("MPa", "kPa"),
        ("psi",),
        ("0.25 MPa", "206 GPa", "36 psi"),
    ),
    Dimension(
        "density",
        "a density",
        "kg/m^3",
        (
            _u("g/cm^3", 1000, "g/cc"),
            _u("kg/m^3", 1),
            _u("lb/ft^3", POUND / FOOT**3),
            _u("lb/in^3", POUND / INCH**3),
        ),
        ("g/cm^3",),
        ("lb/ft^3",),
        ("1.14 g/cm3", "7850 kg/m3"),
    ),
    Dimension(
        "inertia",
        "a moment of inertia",
        "kg m^2",
        _INERTIA,
        ("g cm^2",),
        ("oz in^2",),
        ("3e-5 kg m^2", "300 g cm^2"),
    ),
    Dimension(
        "frequency",
        "a frequency",
        "Hz",
        (_u("Hz", 1, any_case=True), _u("kHz", 1000, any_case=True)),
        ("Hz",),
        ("Hz",),
        ("50 Hz", "12 kHz"),
    ),
    Dimension(
        "stiffness",
        "a stiffness",
        "N/m",
        (
            _u("N/mm", 1000),
            _u("N/m", 1),
            _u("kN/m", 1000),
            _u("lbf/in", POUND * GRAVITY / INCH, "lb/in", any_case=True),
        ),
        ("N/mm", "N/m"),
        ("lbf/in",),
        ("4.2 N/mm", "24 lbf/in"),
    ),
    Dimension(
        "twist_stiffness",
        "a stiffness in twist",
        "N m/rad",
        (
            _u("N m/rad", 1, "Nm/rad", any_case=True),
            _u("mN m/rad", "0.001", "mNm/rad"),
            _u("N m/deg", 180 / PI, "Nm/deg", any_case=True),
        ),
        ("N m/rad", "mN m/rad"),
        ("N m/rad", "mN m/rad"),
        ("2.4 mN m/rad", "0.04 N m/deg"),
    ),
    Dimension(
        "acceleration",
        "an acceleration",
        "m/s^2",
        (_u("m/s^2", 1, "m/s2"),),
        ("m/s^2",),
        ("m/s^2",),
        ("9.81 m/s^2", "0.7 m/s2"),
    ),
    Dimension(
        "energy",
        "an energy",
        "J",
        (
            _u("J", 1),
            _u("kJ", 1000),
            _u("mJ", "0.001"),
            _u("ft lbf", POUND * GRAVITY * FOOT, "ft lb", any_case=True),
        ),
        ("J", "mJ"),
        ("ft lbf",),
        ("120 J", "88 ft lbf"),
    ),
    Dimension(
        "power",
        "a power",
        "W",
        (_u("W", 1), _u("kW", 1000), _u("mW", "0.001")),
        ("W", "mW"),
        ("W", "mW"),
        ("35 W", "0.2 kW"),
    ),
    Dimension(
        "ratio",
        "a plain number or a percentage",
        "1",
        (_u("", 1, ":1"), _u("%", "0.01")),
        ("",),
        ("",),
        ("1.06", "6 %"),
        plain=True,
    ),
    Dimension(
        "count",
        "a whole number",
        "1",
        (_u("", 1),),
        ("",),
        ("",),
        ("3", "20"),
        plain=True,
        whole=True,
        fractions=False,
    ),
    Dimension("score", "a score", "1", (_u("", 1),), ("",), ("",), ("3", "2.5"), plain=True, fractions=False),
    Dimension(
        "viscous_drag",
        "a drag that grows with speed",
        "N m s",
        (
            _u("N m s", 1, "Nms"),
            _u("mN m s", "0.001"),
            _u("μN m s", "0.000001", "uN m s"),
            _u("nN m s", "0.000000001"),
        ),
        ("mN m s", "μN m s", "nN m s"),
        ("mN m s", "μN m s", "nN m s"),
        ("0.3 μN m s", "3e-7 N m s"),
    ),
    Dimension(
        "quadratic_drag",
        "a drag that grows with the square of speed",
        "N m s^2",
        (
            _u("N m s^2", 1),
            _u("μN m s^2", "0.000001", "uN m s2"),
            _u("nN m s^2", "0.000000001"),
            _u("pN m s^2", Fraction(1, 10**12)),
        ),
        ("μN m s^2", "nN m s^2", "pN m s^2"),
        ("μN m s^2", "nN m s^2", "pN m s^2"),
        ("0.8 nN m s^2", "8e-10 N m s2"),
    ),
    Dimension(
        "deceleration",
        "a slowing-down of turning",
        "rad/s^2",
        (_u("rad/s^2", 1), _u("rev/s^2", 2 * PI, "turns/s2"), _u("rpm/s", 2 * PI / 60)),
        ("rad/s^2",),
        ("rad/s^2",),
        ("12 rad/s^2", "110 rpm/s"),
    ),
    Dimension(
        "line_per_turn",
        "line won by one turn of the handle",
        "m",
        _PER_TURN,
        ("cm/turn",),
        ("in/turn",),
        ("66 cm", "26 in"),
    ),
    Dimension(
        "conductivity",
        "a thermal conductivity",
        "W/(m K)",
        (_u("W/(m K)", 1, "W/m K", "W/mK"),),
        ("W/(m K)",),
        ("W/(m K)",),
        ("46 W/(m K)",),
    ),
    Dimension(
        "specific_heat",
        "a specific heat",
        "J/(kg K)",
        (_u("J/(kg K)", 1, "J/kg K", "J/kgK"), _u("kJ/(kg K)", 1000, "kJ/kg K")),
        ("J/(kg K)",),
        ("J/(kg K)",),
        ("468 J/(kg K)",),
    ),
    Dimension(
        "wear_rate",
        "a specific wear rate",
        "m^2/N",
        (_u("mm^3/(N m)", "1e-9", "mm3/N m", "mm3/Nm"), _u("m^2/N", 1, "m3/(N m)")),
        ("mm^3/(N m)",),
        ("mm^3/(N m)",),
        ("1e-6 mm3/(N m)", "1e-15 m2/N"),
    ),
    Dimension(
        "tex",
        "a line's mass per length",
        "tex",
        (
            _u("tex", 1, "g/km", any_case=True),
            _u("dtex", "0.1", any_case=True),
            _u("den", Fraction(1, 9), "denier", any_case=True),
        ),
        ("tex",),
        ("den",),
        ("110 tex", "1000 den"),
    ),
)

DIMENSIONS: Mapping[str, Dimension] = MappingProxyType({dimension.key: dimension for dimension in _ALL})
"""Every kind of quantity the house knows, by key. `tex` is kept in tex, because the textile formulas are."""
