"""Ranges in which heat, judder and the brakes of a cast are tried; test_shapes tries them."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from spoolwright.mechanics import brakes, heat, judder

Range = tuple[float, float]
STUFF: dict[str, Range] = {
    "conductivity": (0.2, 200),
    "density": (1000, 8000),
    "specific_heat": (300, 2000),
}

RUN_FORMULAS: list[tuple[Callable[..., Any], dict[str, Range], dict[str, str]]] = [
    (heat.semi_infinite_rise, STUFF | {"heat_flux": (-1e6, 1e6), "time": (0, 60)}, {}),
    (
        heat.semi_infinite_rise,
        STUFF | {"heat_flux": (-1e6, 1e6), "time": (1, 60), "depth": (0, 1e-3)},
        {},
    ),
    (heat.thick_until, STUFF | {"half_thickness": (1e-4, 1e-2)}, {}),
    (
        heat.slip_energy,
        {"inertia": (1e-6, 1e-4), "other_inertia": (1e-6, 1e-4), "speed": (-900, 900)},
        {},
    ),
    (judder.effective_mass, {"inertia": (1e-6, 1e-3), "radius": (0.01, 0.03)}, {}),
    (
        judder.sliding_friction,
        {
            "speed": (0, 5),
            "static_force": (60, 90),
            "kinetic_force": (0, 50),
            "drop_speed": (1e-3, 1),
            "viscous": (0, 3),
        },
        {},
    ),
    (
        brakes.centrifugal,
        {
            "blocks": (0, 6),
            "block_mass": (0, 1e-3),
            "centre_radius": (5e-3, 1e-2),
            "ring_radius": (8e-3, 1.5e-2),
            "friction": (0, 0.4),
        },
        {},
    ),
    (
        brakes.eddy,
        {
            "field": (0, 0.3),
            "area": (1e-5, 1e-3),
            "thickness": (5e-4, 2e-3),
            "radius": (5e-3, 2e-2),
            "resistivity": (2e-8, 8e-8),
            "return_path": (0, 1),
        },
        {},
    ),
    (brakes.eddy_share, {"speed_over_critical": (0, 5)}, {}),
    (
        brakes.disc_windage,
        {"radius": (0.01, 0.03), "air_density": (1, 1.3), "air_viscosity": (1e-5, 2e-5)},
        {},
    ),
    (
        brakes.holding_torque,
        {
            "inertia": (0, 3e-5),
            "speed": (0, 60),
            "deceleration": (-5, 40),
            "radius": (0.01, 0.03),
            "line_diameter": (0, 1e-3),
            "spool_width": (0.01, 0.05),
            "packing": (0.5, 0.9),
        },
        {},
    ),
]
WHOLE_MOTIONS = {"stack_temperatures", "stick_slip", "simulate", "trace", "warm"}
"""Runs, starts and casts give many quantities at once: their own tests hold their shapes."""
