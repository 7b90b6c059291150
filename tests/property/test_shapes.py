"""Every formula of mechanics: floats and arrays alike, any shapes together, nothing handed in is changed."""

from __future__ import annotations

import inspect
from collections.abc import Callable
from importlib import import_module
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import spoolwright.mechanics as mechanics
from spoolwright.mechanics import (
    beams,
    clutch,
    coastdown,
    gears,
    line,
    lubricant,
    rolling,
    spool,
    springs,
    threads,
    wear,
    winding,
)
from tests.property.bearing_formulas import BEARING_FORMULAS, OVER_THE_LAST_AXIS
from tests.property.run_formulas import RUN_FORMULAS, WHOLE_MOTIONS
from tests.property.strength_formulas import NOT_ELEMENT_BY_ELEMENT, STRENGTH_FORMULAS

Range = tuple[float, float]
RINGS: dict[str, Range] = {"outer_radius": (0.010, 0.020), "inner_radius": (0.002, 0.009)}
DISC: dict[str, Range] = {
    "outer_diameter": (10e-3, 14e-3),
    "inner_diameter": (4e-3, 8e-3),
    "thickness": (0.3e-3, 0.8e-3),
    "cone_height": (0.2e-3, 0.9e-3),
    "youngs_modulus": (100e9, 210e9),
    "poisson": (0.2, 0.4),
}
SCREW: dict[str, Range] = {
    "pitch": (0.3e-3, 1e-3),
    "pitch_diameter": (3e-3, 8e-3),
    "thread_friction": (0.0, 0.3),
    "flank_angle": (0.0, 0.6),
    "bearing_radius": (0.0, 0.01),
    "bearing_friction": (0.0, 0.3),
}
FILL: dict[str, Range] = {
    "arbor_radius": (0.008, 0.015),
    "width": (0.01, 0.05),
    "packing": (0.5, 0.9),
}
BARE: dict[str, Range] = {
    "arbor_radius": (0.008, 0.012),
    "flange_radius": (0.02, 0.03),
    "width": (0.01, 0.05),
    "wall": (0.5e-3, 2e-3),
    "density": (1000.0, 8000.0),
    "bore_radius": (0.0, 0.005),
}
DRAG: dict[str, Range] = {
    "initial_speed": (50.0, 300.0),
    "inertia": (5e-6, 3e-5),
    "constant": (1e-6, 1e-4),
    "viscous": (0.0, 1e-6),
    "quadratic": (0.0, 1e-8),
}
OIL: dict[str, Range] = {"viscosity_40": (20e-6, 90e-6), "viscosity_100": (5e-6, 15e-6)}
SHAFT: dict[str, Range] = {
    "span": (0.05, 0.1),
    "youngs_modulus": (100e9, 210e9),
    "second_moment": (1e-12, 1e-10),
}
PAIR: dict[str, Range] = {
    "force": (0, 900),
    "length": (1e-3, 1e-2),
    "radius_a": (1e-3, 1e-2),
    "radius_b": (1e-3, 1e-2),
    "youngs_a": (100e9, 210e9),
    "poisson_a": (0.2, 0.4),
    "youngs_b": (100e9, 210e9),
    "poisson_b": (0.2, 0.4),
}
FLANKS = {name: PAIR[name] for name in ("youngs_a", "poisson_a", "youngs_b", "poisson_b")} | {
    "tangential_force": (0, 900),
    "module": (4e-4, 1e-3),
    "teeth_a": (8, 20),
    "teeth_b": (40, 80),
    "face_width": (2e-3, 1e-2),
    "pressure_angle": (0.2, 0.5),
}
PACK: dict[str, Range] = {"hub_radius": (0.008, 0.012), "pack_radius": (0.013, 0.03)}
WHOLE = {"faces", "balls", "rollers", "teeth", "teeth_a", "teeth_b"}
ONE_SYSTEM = {"critical_speed", *NOT_ELEMENT_BY_ELEMENT, *OVER_THE_LAST_AXIS, *WHOLE_MOTIONS}
"""Held in their own unit tests: masses and places along a shaft, say, are one system, not elements."""

FORMULAS: list[tuple[Callable[..., Any], dict[str, Range], dict[str, str]]] = [
    (clutch.effective_radius, RINGS, {}),
    (clutch.effective_radius, RINGS, {"model": "uniform-pressure"}),
    (clutch.friction_torque, RINGS | {"clamp_force": (0, 900), "friction": (0, 0.4), "faces": (1, 9)}, {}),
    (clutch.clamp_force, RINGS | {"torque": (0, 9), "friction": (0.05, 0.4), "faces": (1, 9)}, {}),
    (clutch.peak_pressure, RINGS | {"clamp_force": (0, 900)}, {}),
    (clutch.peak_pressure, RINGS | {"clamp_force": (0, 900)}, {"model": "uniform-pressure"}),
    (springs.disc_spring_force, DISC | {"deflection": (0, 0.2e-3)}, {}),
    (springs.stack_force, DISC | {"deflection": (0, 0.4e-3)}, {"arrangement": "(())"}),
    (
        springs.stack_force,
        DISC | {"deflection": (0, 0.4e-3), "cone_height": (0.2e-3, 0.4e-3)},
        {"arrangement": "(()"},
    ),
    (springs.stack_deflection, DISC | {"force": (0, 900)}, {"arrangement": "(()"}),
    (threads.tightening_torque, SCREW | {"axial_force": (0, 900)}, {}),
    (threads.axial_force, SCREW | {"torque": (0, 1)}, {}),
    (spool.line_length, FILL | {"fill_radius": (0.016, 0.03), "line_diameter": (1e-4, 1e-3)}, {}),
    (spool.fill_radius, FILL | {"line_length": (0, 300), "line_diameter": (1e-4, 1e-3)}, {}),
    (spool.line_pull, {"drag_torque": (0, 9), "gear_ratio": (1, 7), "radius": (0.01, 0.03)}, {}),
    (spool.spool_mass, BARE, {}),
    (spool.spool_inertia, BARE, {}),
    (spool.line_inertia, FILL | {"fill_radius": (0.016, 0.03), "density": (900, 1800)}, {}),
    (line.diameter_from_tex, {"tex": (1, 500), "density": (900, 1800)}, {}),
    (line.stiffness, {"modulus": (1e9, 9e10), "diameter": (1e-4, 1e-3), "length": (1, 100)}, {}),
    (lubricant.viscosity_at, OIL | {"temperature": (275, 420)}, {}),
    (lubricant.viscosity_index, OIL, {}),
    (
        rolling.friction_torque,
        {
            "speed_rpm": (0, 9000),
            "viscosity": (0, 1e-4),
            "pitch_diameter": (4e-3, 2e-2),
            "load": (0, 90),
            "f0": (0, 4),
            "f1": (0, 1e-3),
        },
        {},
    ),
    (
        rolling.defect_frequencies,
        {
            "rpm": (0, 9000),
            "balls": (6, 12),
            "ball_diameter": (1e-3, 2e-3),
            "pitch_diameter": (4e-3, 2e-2),
            "contact_angle": (0, 0.8),
        },
        {},
    ),
    (
        rolling.equivalent_load,
        {"radial": (0, 90), "axial": (0, 90), "static_rating": (90, 900), "f0": (10, 15)},
        {},
    ),
    (rolling.rating_life, {"dynamic_rating": (90, 900), "load": (1, 90), "exponent": (3, 3.4)}, {}),
    (rolling.reference_viscosity, {"speed_rpm": (1, 9000), "pitch_diameter": (4e-3, 2e-2)}, {}),
    (
        rolling.life_factor_iso,
        {"kappa": (0.1, 6), "contamination": (0, 1), "fatigue_limit": (1, 90), "load": (1, 90)},
        {},
    ),
    (
        gears.lewis_stress,
        {
            "tangential_force": (0, 900),
            "module": (4e-4, 1e-3),
            "face_width": (2e-3, 1e-2),
            "form_factor": (0.2, 0.5),
            "velocity_factor": (1, 2),
        },
        {},
    ),
    (
        gears.contact_ratio,
        {
            "teeth_a": (8, 20),
            "teeth_b": (40, 80),
            "module": (4e-4, 1e-3),
            "pressure_angle": (0.2, 0.5),
            "addendum": (0.8, 1.2),
        },
        {},
    ),
    (gears.hertz_line_stress, PAIR, {}),
    (gears.form_factor, {"teeth": (8, 300)}, {}),
    (gears.pitch_point_stress, FLANKS, {}),
    (
        gears.sliding_speed,
        {"speed_a": (0, 90), "teeth_a": (8, 20), "teeth_b": (40, 80), "module": (4e-4, 1e-3)},
        {},
    ),
    (beams.simply_supported_point, SHAFT | {"force": (-9, 9), "position": (0, 0.05), "at": (0, 0.05)}, {}),
    (beams.simply_supported_uniform, SHAFT | {"load_per_length": (-9, 9), "at": (0, 0.05)}, {}),
    (
        winding.hub_pressure,
        PACK
        | {
            "line_tension": (0, 90),
            "pitch": (1e-4, 1e-3),
            "layer_height": (1e-4, 1e-3),
            "anisotropy": (0.5, 20),
        },
        {},
    ),
    (winding.flange_force, PACK | {"hub_pressure": (0, 1e8), "lateral_ratio": (0, 1)}, {}),
    (wear.archard_depth, {"wear_rate": (0, 1e-12), "pressure": (0, 1e7), "sliding_distance": (0, 1e6)}, {}),
    (coastdown.speed, DRAG | {"time": (0, 60)}, {}),
    (coastdown.stop_time, DRAG, {}),
    (coastdown.time_at_speed, DRAG | {"slower": (0, 50)}, {}),
    (coastdown.angle, DRAG | {"time": (0, 60)}, {}),
    (coastdown.time_at_angle, DRAG | {"angle": (0, 900)}, {}),
    *BEARING_FORMULAS,
    *RUN_FORMULAS,
    *STRENGTH_FORMULAS,
]
NAMES = [
    f"{formula.__module__.rsplit('.', 1)[-1]}.{formula.__name__} {fixed or ''}"
    for formula, _, fixed in FORMULAS
]


def draw(data: st.DataObject, ranges: dict[str, Range], shape: tuple[int, ...]) -> dict[str, np.ndarray]:
    """An array of the given shape for each argument, each element in the argument's range."""
    size = int(np.prod(shape))
    values = {}
    for name, (low, high) in ranges.items():
        one = st.integers(int(low), int(high)) if name in WHOLE else st.floats(low, high)
        values[name] = np.array(data.draw(st.lists(one, min_size=size, max_size=size)), dtype=float).reshape(
            shape
        )
    return values


def answers(formula: Callable[..., Any], values: dict[str, Any], fixed: dict[str, str]) -> dict[str, Any]:
    """What comes back, as a mapping, whether the formula gives one quantity or several."""
    answer = formula(**values, **fixed)
    return dict(answer) if isinstance(answer, dict) else {"": answer}


every_formula = pytest.mark.parametrize(("formula", "ranges", "fixed"), FORMULAS, ids=NAMES)
few = settings(max_examples=6)


@every_formula
@few
@given(data=st.data())
def test_an_array_gives_what_its_elements_give(
    formula: Callable[..., Any], ranges: dict[str, Range], fixed: dict[str, str], data: st.DataObject
) -> None:
    values = draw(data, ranges, (3,))
    together = answers(formula, values, fixed)
    for i in range(3):
        alone = answers(formula, {name: float(array[i]) for name, array in values.items()}, fixed)
        for part, whole in together.items():
            assert np.shape(whole) == (3,)
            assert whole[i] == pytest.approx(alone[part], rel=1e-11, abs=1e-300)


@every_formula
@few
@given(data=st.data())
def test_floats_give_floats(
    formula: Callable[..., Any], ranges: dict[str, Range], fixed: dict[str, str], data: st.DataObject
) -> None:
    values = {name: float(array) for name, array in draw(data, ranges, ()).items()}
    assert all(type(part) is float for part in answers(formula, values, fixed).values())


@every_formula
@few
@given(data=st.data())
def test_shapes_broadcast_and_nothing_handed_in_is_changed(
    formula: Callable[..., Any], ranges: dict[str, Range], fixed: dict[str, str], data: st.DataObject
) -> None:
    columns, rows = draw(data, ranges, (2, 1)), draw(data, ranges, (3,))
    for chosen in ranges:
        mixed: dict[str, Any] = {name: columns[name] if name == chosen else rows[name] for name in ranges}
        if len(ranges) == 1:
            mixed = {chosen: columns[chosen]}
        kept = {name: array.copy() for name, array in mixed.items()}
        shapes = {np.shape(part) for part in answers(formula, mixed, fixed).values()}
        expected = (2, 3) if len(ranges) > 1 else (2, 1)
        assert max(shapes, key=lambda shape: int(np.prod(shape))) == expected
        for name, array in kept.items():
            np.testing.assert_array_equal(mixed[name], array)


def test_every_public_formula_is_held_here() -> None:
    """A formula added to the room and not to the table above fails this."""
    held = {(formula.__module__, formula.__name__) for formula, _, _ in FORMULAS}
    there = set()
    for chapter in mechanics.__all__:
        module = import_module(f"spoolwright.mechanics.{chapter}")
        for name, formula in inspect.getmembers(module, inspect.isfunction):
            if formula.__module__ == module.__name__ and not name.startswith("_") and chapter != "arguments":
                there.add((module.__name__, name))
    assert {name for _, name in there - held} == ONE_SYSTEM
    assert not held - there
