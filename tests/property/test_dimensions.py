"""Every formula whatever the units: lengths, masses, times counted in other units give the same answer.

The units are read from the docstrings, so a wrong one in a docstring fails here as a wrong formula does.
"""

from __future__ import annotations

import inspect
import re
from collections.abc import Callable
from typing import Any

import numpy as np
import pytest

from tests.property.test_shapes import FORMULAS, NAMES, Range, answers

UNITS_AS_POWERS = {
    "m": (1, 0, 0, 0, 0),
    "kg": (0, 1, 0, 0, 0),
    "s": (0, 0, 1, 0, 0),
    "K": (0, 0, 0, 1, 0),
    "N": (1, 1, -2, 0, 0),
    "Pa": (-1, 1, -2, 0, 0),
    "J": (2, 1, -2, 0, 0),
    "W": (2, 1, -3, 0, 0),
    "T": (0, 1, -2, 0, -1),
    "ohm": (2, 1, -3, 0, -2),
    "rpm": (0, 0, -1, 0, 0),
    "Hz": (0, 0, -1, 0, 0),
    "tex": (-1, 1, 0, 0, 0),
    "-": (0, 0, 0, 0, 0),
    "rad": (0, 0, 0, 0, 0),
}
"""Powers of length, mass, time, temperature and current."""

FITTED = {
    "contamination_factor": "ISO 281, annex A: fitted in millimetres",
    "dynamic_rating": "ISO 281: fitted in millimetres and newtons",
    "static_rating": "ISO 76: fitted in millimetres and newtons",
    "reference_viscosity": "ISO 281: fitted in rpm, millimetres and mm2/s",
    "kappa": "rests on reference_viscosity",
    "friction_torque": "Palmgren: fitted in rpm, millimetres and mm2/s",
    "grease_yield_stress": "a fit of measured greases",
    "viscosity_at": "ASTM D341: fitted in kelvin and mm2/s",
    "viscosity_index": "ASTM D2270: a table in mm2/s",
    "hybrid": "steel's own density and stiffness stand in it",
    "face_load_factor": "steel's own stiffness stands in it",
}
"""Fits of measurements hold in their own units only; by name, with the reason."""

OTHER_UNITS = np.array([0.7, 1.9, 0.45, 1.3, 2.2])
"""How many of the other unit one SI unit of length, mass, time, temperature and current is."""

PLAIN = [
    pytest.param(formula, ranges, fixed, id=name)
    for (formula, ranges, fixed), name in zip(FORMULAS, NAMES, strict=True)
    if formula.__name__ not in FITTED or formula.__module__.endswith(".clutch")
]


def powers(unit: str) -> np.ndarray:
    """Powers of the base units in a unit as docstrings write it: "J/(kg K)", "m per spool turn"."""
    unit = unit.split(" = ")[0].split(" per ")[0]
    if unit.startswith("10^6"):
        return np.zeros(5)
    above, _, below = unit.partition("/")
    total = np.zeros(5)
    for sign, part in ((1, above), (-1, below.strip("()"))):
        for factor in part.split():
            name, _, power = factor.partition("^")
            total += sign * float(power or 1) * np.array(UNITS_AS_POWERS[name])
    return total


def units_of(formula: Callable[..., Any]) -> tuple[dict[str, str], list[str]]:
    """Unit of each argument and units of the answer, as the docstring says."""
    words = inspect.getdoc(formula) or ""
    arguments, answer = words.split("Parameters\n")[1].split("Raises\n")[0].split("Returns\n")
    found = re.findall(r"^(\w+) : [^\[]*\[([^\]]+)\]", arguments, re.MULTILINE)
    return dict(found), re.findall(r"\[([^\]]+)\]", answer)


@pytest.mark.parametrize(("formula", "ranges", "fixed"), PLAIN)
def test_the_answer_does_not_hang_on_the_units(
    formula: Callable[..., Any], ranges: dict[str, Range], fixed: dict[str, str]
) -> None:
    """Bridgman, Dimensional Analysis (from memory): a complete equation holds in any system of units."""
    arguments, answer = units_of(formula)
    given = {name: default_of(formula, name) for name in arguments}
    given = {name: value for name, value in given.items() if isinstance(value, int | float)}
    for share in (0.213, 0.551, 0.907):
        values = given | {name: low + share * (high - low) for name, (low, high) in ranges.items()}
        for name in {"balls", "faces", "teeth", "teeth_a", "teeth_b", "rollers"} & values.keys():
            values[name] = float(round(values[name]))
        other = {name: value * factor(arguments[name]) for name, value in values.items()}
        here, there = answers(formula, values, fixed), answers(formula, other, fixed)
        for part, value in here.items():
            (unit,) = answer
            assert there[part] == pytest.approx(value * factor(unit), rel=1e-8, abs=1e-300), part


@pytest.mark.parametrize("name", sorted(set(FITTED) - {"kappa", "face_load_factor"}))
def test_what_is_named_a_fit_does_hang_on_them(name: str) -> None:
    """Nothing stands in that list which would have passed above; sources as said there."""
    formula, ranges, fixed = next(row for row in FORMULAS[::-1] if row[0].__name__ == name)
    arguments, (unit, *_) = units_of(formula)
    values = {key: low + 0.551 * (high - low) for key, (low, high) in ranges.items()}
    values = {key: float(round(value)) if key == "balls" else value for key, value in values.items()}
    other = {key: value * 1.02 ** powers(arguments[key])[0] for key, value in values.items()}
    here, there = answers(formula, values, fixed), answers(formula, other, fixed)
    assert any(
        there[part] != pytest.approx(value * 1.02 ** powers(unit)[0], rel=1e-8)
        for part, value in here.items()
    )


def default_of(formula: Callable[..., Any], name: str) -> Any:
    return inspect.signature(formula).parameters[name].default


def factor(unit: str) -> float:
    return float(np.prod(OTHER_UNITS ** powers(unit)))
