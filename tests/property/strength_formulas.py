"""Ranges of the formulas of strength, for the tests that every formula of mechanics has to pass."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from spoolwright.mechanics import frame, plates

Range = tuple[float, float]

NOT_ELEMENT_BY_ELEMENT = {"stepped_shaft", "stepped_critical_speed", "joint_movements", "spool_axis_tilt"}
"""Held in their own unit tests: a shaft or a frame with its loads is one system, not elements."""

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

STRENGTH_FORMULAS: list[tuple[Callable[..., Any], dict[str, Range], dict[str, str]]] = [
    (frame.portal_sway, PORTAL, {}),
    (frame.portal_sway, PORTAL, {"base": "pinned"}),
    (plates.flange_stress, FLANGE, {}),
    (plates.flange_spread, FLANGE | {"youngs_modulus": (50e9, 210e9)}, {"load": "even"}),
    (plates.ring_stress, RING, {}),
    (plates.arbor_hoop_stress, ARBOR | {"pressure": (0, 1e8)}, {}),
    (plates.arbor_buckling_pressure, ARBOR | {"length": (0.01, 0.06), "youngs_modulus": (50e9, 210e9)}, {}),
]
