"""Writes an SI value for a person: their units, and as many digits as the uncertainty allows."""

from __future__ import annotations

import math
import re
from decimal import ROUND_CEILING, ROUND_FLOOR, ROUND_HALF_EVEN, Context, Decimal
from fractions import Fraction

from spoolwright.quantities.table import DIMENSIONS
from spoolwright.quantities.units import Dimension, Unit

SYSTEMS = ("metric", "imperial")
_DECIMALS = re.compile(r"[0-9]+\.[0-9]+")

DIGITS = 3
"""Significant digits of a value that carries no uncertainty of its own."""

_LONGEST_FIXED = 9
"""Places that a person still reads; a bare value that needs more of them is kinder as a power of ten."""

_COARSE = Decimal("2.5")
"""A width whose first figure is below this needs a second one, or rounding would eat too much of it."""

_EXACT = Context(prec=700, rounding=ROUND_HALF_EVEN)
"""Wide enough for any pair of floats, so that no hostile number trips the rounding."""


def show(
    value: float,
    dimension: str,
    system: str = "metric",
    uncertainty: float | None = None,
    unit: str | None = None,
) -> str:
    """Text for a person: "2.65 kg ± 0.11 kg", "24.5 mm", "18.0 lb".

    `uncertainty` is the expanded one, in SI. It is rounded to two significant figures and the value to the
    same place (JCGM 100:2008, 7.2.6). `unit` overrides the unit of the system.
    """
    kind, chosen = DIMENSIONS[dimension], _choose(value, dimension, system, unit)
    number = _in_unit(value, chosen)
    if uncertainty is None or (uncertainty == 0 and not kind.whole):
        return _with_unit(_plain(number, kind), chosen)
    spread = _spread_in_unit(uncertainty, chosen)
    place = _last_place(spread, 2)
    return f"{_with_unit(_fixed(number, place), chosen)} ± {_with_unit(_fixed(spread, place), chosen)}"


def show_stated(value: float, dimension: str, system: str = "metric") -> str:
    """A stated value with no more digits than it takes: "0.8 mm", where `show` says "0.800 mm"."""
    return _DECIMALS.sub(lambda found: found[0].rstrip("0").rstrip("."), show(value, dimension, system))


def show_interval(
    low: float, high: float, dimension: str, system: str = "metric", unit: str | None = None
) -> str:
    """An interval in one unit, both ends to two figures of its width: "6.4 to 7.4 kg"."""
    chosen = _choose(max(abs(low), abs(high)), dimension, system, unit)
    ends = (_in_unit(low, chosen), _in_unit(high, chosen))
    width = abs(ends[1] - ends[0])
    place = _last_place(width, 2) if width else _last_place(ends[1], DIGITS)
    return _with_unit(f"{_fixed(ends[0], place)} to {_fixed(ends[1], place)}", chosen)


def show_end(
    value: float, dimension: str, system: str = "metric", *, width: float, up: bool, unit: str | None = None
) -> str:
    """One end of an interval, rounded away from its middle: what is shown holds all that was meant.

    `width` is the width of the interval in SI; it sets the places, coarser than `show_interval` does, because
    an end that is promised has to be said aloud: "5.5 kg" and "8.0 kg" of an interval 5.57 to 7.91 kg.
    """
    chosen = _choose(value, dimension, system, unit)
    number, spread = _in_unit(value, chosen), _spread_in_unit(width, chosen)
    place = _last_place(spread, 1) if spread else _last_place(number, DIGITS)
    if spread and spread.scaleb(-spread.adjusted()) < _COARSE:
        place -= 1
    rounding = ROUND_CEILING if up else ROUND_FLOOR
    outward = number.quantize(Decimal(1).scaleb(place), rounding=rounding, context=_EXACT)
    return _with_unit(_fixed(outward, place), chosen)


def display_unit(dimension: str, system: str = "metric") -> str:
    """The unit this dimension is usually shown in: "kg" for a pull in metric."""
    return _ladder(DIMENSIONS[dimension], system)[0]


def _ladder(kind: Dimension, system: str) -> tuple[str, ...]:
    if system not in SYSTEMS:
        raise ValueError(f"system is {system!r}; accepted: {', '.join(SYSTEMS)}")
    return kind.metric if system == "metric" else kind.imperial


def _choose(value: float, dimension: str, system: str, unit: str | None) -> Unit:
    """The first unit of the ladder in which the value is at least a tenth; the first for zero."""
    if not math.isfinite(value):
        raise ValueError(f"value is {value}; only a finite number can be shown")
    kind = DIMENSIONS[dimension]
    if unit is not None:
        return kind.unit(unit)
    rungs = [kind.unit(name) for name in _ladder(kind, system)]
    if value == 0:
        return rungs[0]
    return next((rung for rung in rungs if abs(value) >= 0.0999 * float(rung.factor)), rungs[-1])


def _in_unit(value: float, unit: Unit) -> Decimal:
    # Beside an offset the float's own rounding would show: 273.15 K is 0 °C, not -2.27e-14 °C.
    exact = Fraction(repr(float(value))) if unit.offset else Fraction(value)
    return _decimal((exact - unit.offset) / unit.factor)


def _spread_in_unit(uncertainty: float, unit: Unit) -> Decimal:
    if not (math.isfinite(uncertainty) and uncertainty >= 0):
        raise ValueError(f"uncertainty is {uncertainty}; accepted: a finite number, not negative")
    return _decimal(Fraction(uncertainty) / unit.factor)


def _decimal(number: Fraction) -> Decimal:
    return Decimal(number.numerator) / Decimal(number.denominator)


def _last_place(number: Decimal, figures: int) -> int:
    """Power of ten of the last of `figures` significant figures, after rounding (0.0996 to two is 0.10)."""
    if number == 0:
        return 0
    place = number.adjusted() - figures + 1
    return _rounded(number, place).adjusted() - figures + 1


def _plain(number: Decimal, kind: Dimension) -> str:
    """Three significant digits, never rounding left of the point; a power of ten where the zeros run on."""
    place = 0 if kind.whole else min(0, _last_place(number, DIGITS))
    if place < -_LONGEST_FIXED and number.adjusted() < -6:
        return f"{_rounded(number, place):e}"
    return _fixed(number, place)


def _rounded(number: Decimal, place: int) -> Decimal:
    return number.quantize(Decimal(1).scaleb(place), context=_EXACT)


def _fixed(number: Decimal, place: int) -> str:
    rounded = _rounded(number, place)
    text = f"{rounded:f}" if place <= 0 else f"{int(rounded)}"
    return text.lstrip("-") if rounded == 0 else text


def _with_unit(text: str, unit: Unit) -> str:
    return f"{text} {unit.name}" if unit.name else text
