"""Casts drawn at random, from a light lure to a surf sinker: what `spoolwright speed` flies."""

from __future__ import annotations

from math import inf, pi
from typing import Any

import numpy as np

LEAD = 11340.0


def some_casts(count: int, seed: int) -> dict[str, Any]:
    """Arguments of `cast.simulate` for so many multiplier casts, all within what reels and rods are like."""
    draw = np.random.default_rng(seed)
    part = draw.uniform
    mass = np.exp(part(np.log(0.007), np.log(0.2), count))
    full = 0.011 * (mass / 0.007) ** 0.2 * part(0.9, 1.15, count)
    spool_inertia = 0.5 * part(0.4, 1.0, count) * 1400 * full**5
    diameter = 0.15e-3 * (mass / 0.007) ** 0.2 * part(0.9, 1.3, count)
    arbor, width = full * part(0.45, 0.65, count), full * part(1.2, 2.0, count)
    packing = part(0.6, 0.8, count)
    density, room = part(970, 1400, count), 4 * packing * width * (full**2 - arbor**2) / diameter**2
    turning = spool_inertia + pi / 2 * density * packing * width * (full**4 - arbor**4)
    frontal = pi / 4 * (6 * mass / (pi * LEAD)) ** (2 / 3)
    thumbed = draw.integers(0, 3, count)
    return {
        "payload_mass": mass,
        "payload_drag_area": part(0.25, 1.2, count) * frontal,
        "release_speed": 22 * (mass / 0.007) ** 0.25 * part(0.8, 1.2, count),
        "release_angle": np.radians(part(20, 55, count)),
        "release_height": part(0.5, 3.0, count),
        "wind": part(-6, 6, count),
        "spool_inertia": spool_inertia,
        "full_radius": full,
        "arbor_radius": arbor,
        "spool_width": width,
        "packing": packing,
        "line_diameter": diameter,
        "line_density": density,
        "line_length": np.maximum(part(0.8, 1.0, count) * room, 400.0),
        "line_drag": part(0.003, 0.007, count),
        "bearing_constant": turning * part(0, 30, count),
        "bearing_viscous": turning * part(0, 0.02, count),
        "windage": 0.616 * pi * 1.225 * np.sqrt(1.5e-5) * full**4,
        "brake_magnetic": turning * part(0, 0.2, count),
        "brake_centrifugal": turning * part(0, 1.5e-4, count) * draw.integers(0, 2, count),
        "brake_engages": part(0, 2000, count),
        "level_wind_torque": turning * part(0, 10, count) * draw.integers(0, 2, count),
        "thumb_force": part(0.2, 2.0, count) * (mass / 0.1) ** 0.7,
        "slack_limit": np.where(thumbed == 0, inf, np.where(thumbed == 1, part(0.1, 2.0, count), 0.0)),
    }


def one(casts: dict[str, Any], number: int) -> dict[str, float]:
    """One of them, every argument a number, the ones left out at their defaults."""
    rest = {"air_density": 1.225, "bearing_quadratic": 0.0, "lip_friction": 0.0}
    return rest | {name: float(values[number]) for name, values in casts.items()}
