"""Ranges of the formulas of strength, for the tests that every formula of mechanics has to pass."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from spoolwright.mechanics import anti_reverse, frame, handle, line, mesh, plates, threads

Range = tuple[float, float]

NOT_ELEMENT_BY_ELEMENT = {
    "stepped_shaft",
    "stepped_critical_speed",
    "joint_movements",
    "spool_axis_tilt",
    "with_knots",
}
"""Held in their own unit tests: a shaft or a frame with its loads, a line with its knots is one system."""

PORTAL: dict[str, Range] = {
    "force": (-90, 90),
    "span": (0.02, 0.06),
    "height": (0.02, 0.06),
    "youngs_modulus": (50e9, 210e9),
    "beam_moment": (1e-12, 1e-10),
    "column_moment": (1e-12, 1e-10),
}

FLANGE: dict[str, Range] = {
    "force": (0, 900),
    "inner_radius": (0.008, 0.012),
    "outer_radius": (0.013, 0.03),
    "thickness": (1e-3, 3e-3),
    "poisson": (0.2, 0.4),
}
RING: dict[str, Range] = {
    "radius": (0.01, 0.02),
    "inner_radius": (0.005, 0.01),
    "outer_radius": (0.02, 0.03),
    "inner_pressure": (0, 1e7),
    "outer_pressure": (0, 1e7),
}
ARBOR: dict[str, Range] = {"outer_radius": (0.008, 0.02), "wall": (5e-4, 4e-3)}

TOOTH: dict[str, Range] = {
    "torque": (0, 9),
    "contact_radius": (5e-3, 1e-2),
    "contact_height": (0, 1e-3),
    "root": (1e-3, 4e-3),
    "width": (1e-3, 3e-3),
    "dogs": (1, 2),
}
ROLLERS: dict[str, Range] = {
    "rollers": (4, 12),
    "roller_diameter": (1e-3, 3e-3),
    "roller_length": (4e-3, 9e-3),
    "sleeve_radius": (3e-3, 8e-3),
    "allowable_pressure": (0, 4e9),
    "wedge_angle": (0.1, 0.2),
    "friction": (0.03, 0.12),
}
LEAN: dict[str, Range] = {
    "misalignment": (0, 5e-3),
    "tangential_force": (5, 400),
    "face_width": (2e-3, 8e-3),
    "youngs_a": (50e9, 210e9),
    "youngs_b": (50e9, 210e9),
}
STUD: dict[str, Range] = {"force": (0, 90), "overhang": (0, 0.02), "diameter": (3e-3, 8e-3)}
SCREW: dict[str, Range] = {"diameter": (2e-3, 8e-3), "pitch": (2e-4, 1.5e-3)}

STRENGTH_FORMULAS: list[tuple[Callable[..., Any], dict[str, Range], dict[str, str]]] = [
    (frame.portal_sway, PORTAL, {}),
    (frame.portal_sway, PORTAL, {"base": "pinned"}),
    (plates.flange_stress, FLANGE, {}),
    (plates.flange_spread, FLANGE | {"youngs_modulus": (50e9, 210e9)}, {"load": "even"}),
    (plates.ring_stress, RING, {}),
    (plates.arbor_hoop_stress, ARBOR | {"pressure": (0, 1e8)}, {}),
    (plates.arbor_buckling_pressure, ARBOR | {"length": (0.01, 0.06), "youngs_modulus": (50e9, 210e9)}, {}),
    (mesh.separating_force, {"tangential_force": (0, 900), "pressure_angle": (0.2, 0.5)}, {}),
    (mesh.sharing_factor, {"contact_ratio": (1, 2.5)}, {}),
    (mesh.face_load_factor, LEAN, {}),
    (anti_reverse.ratchet_stress, TOOTH, {}),
    (
        anti_reverse.dog_pressure,
        {
            "torque": (0, 9),
            "contact_radius": (5e-3, 1e-2),
            "contact_depth": (2e-4, 1e-3),
            "width": (1e-3, 3e-3),
        },
        {},
    ),
    (anti_reverse.roller_clutch_torque, ROLLERS, {}),
    (
        handle.arm_stress,
        {"force": (0, 90), "length": (0, 0.06), "width": (6e-3, 2e-2), "thickness": (2e-3, 5e-3)},
        {},
    ),
    (handle.stud_stress, STUD, {}),
    (
        handle.shaft_stress,
        {"bending_moment": (-3, 3), "torque": (-3, 3), "diameter": (3e-3, 8e-3)},
        {},
    ),
    (threads.stress_area, SCREW, {}),
    (threads.proof_load, SCREW | {"proof_stress": (0, 6e8)}, {}),
    (
        threads.strip_force,
        {"diameter": (2e-3, 8e-3), "engagement": (0, 1e-2), "shear_strength": (0, 3e8)},
        {},
    ),
    (threads.nut_torque, {"axial_force": (0, 900), "diameter": (2e-3, 8e-3), "factor": (0.1, 0.3)}, {}),
    (line.break_load, {"strength": (0, 2e9), "diameter": (1e-4, 1e-3)}, {}),
    (line.strength_from_tenacity, {"tenacity": (0, 4), "density": (900, 1800)}, {}),
]
