"""Ranges in which bearings, level wind, wear and mixed lines are tried; test_shapes tries them."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from spoolwright.mechanics import capstan, level_wind, lubricant, rolling, spool, wear, winding

Range = tuple[float, float]
BALLS: dict[str, Range] = {"balls": (6, 12), "ball_diameter": (1e-3, 2e-3), "pitch_diameter": (6e-3, 2e-2)}
WORM: dict[str, Range] = {"worm_lead": (4e-3, 9e-3), "worm_diameter": (4e-3, 7e-3)}
FLANK: dict[str, Range] = WORM | {"friction": (0, 0.3), "flank_angle": (0, 0.4)}
FACE: dict[str, Range] = {"pressure": (1e3, 1e7), "sliding_per_use": (1, 1e4), "worn": (0, 3e-4)}
PACK: dict[str, Range] = {
    "hub_radius": (0.008, 0.012),
    "pack_radius": (0.013, 0.03),
    "line_tension": (0, 90),
    "pitch": (1e-4, 1e-3),
    "layer_height": (1e-4, 1e-3),
}
ROOM: dict[str, Range] = {"arbor_radius": (0.008, 0.015)}

BEARING_FORMULAS: list[tuple[Callable[..., Any], dict[str, Range], dict[str, str]]] = [
    (rolling.static_load, {"radial": (0, 90), "axial": (0, 90)}, {}),
    (rolling.static_safety, {"static_rating": (90, 900), "radial": (1, 90), "axial": (0, 90)}, {}),
    (rolling.static_rating, BALLS, {}),
    (rolling.dynamic_rating, BALLS, {}),
    (rolling.friction_load, {"radial": (0, 90), "axial": (0, 90)}, {}),
    (rolling.load_factor, {"equivalent": (0, 90), "rating": (90, 900), "series": (4e-4, 1e-3)}, {}),
    (
        rolling.contamination_factor,
        {"kappa": (0.1, 4), "pitch_diameter": (4e-3, 0.1)},
        {"cleanliness": "high"},
    ),
    (rolling.reliability_factor, {"survival": (0.9, 0.9995)}, {}),
    (
        rolling.modified_life,
        {
            "dynamic_rating": (90, 900),
            "load": (1, 90),
            "kappa": (0.1, 6),
            "contamination": (0, 1),
            "fatigue_limit": (1, 90),
            "survival": (0.9, 0.999),
        },
        {},
    ),
    (
        rolling.ball_pressure,
        {
            "force": (0, 90),
            "ball_diameter": (1e-3, 4e-3),
            "youngs_ball": (2e11, 4e11),
            "poisson_ball": (0.2, 0.4),
            "youngs_ring": (1e11, 3e11),
            "poisson_ring": (0.2, 0.4),
        },
        {},
    ),
    (
        rolling.hybrid,
        {
            "balls": (6, 12),
            "ball_diameter": (1e-3, 2e-3),
            "density": (3000, 4000),
            "youngs_modulus": (2e11, 4e11),
            "poisson": (0.2, 0.3),
        },
        {},
    ),
    (
        lubricant.kappa,
        {
            "temperature": (275, 420),
            "viscosity_40": (20e-6, 90e-6),
            "viscosity_100": (5e-6, 15e-6),
            "speed_rpm": (1, 2e4),
            "pitch_diameter": (4e-3, 2e-2),
        },
        {},
    ),
    (lubricant.grease_yield_stress, {"penetration": (9e-3, 47e-3)}, {}),
    (
        lubricant.grease_hold,
        {"yield_stress": (0, 2000), "radius": (1e-3, 1e-2), "width": (1e-3, 1e-2), "share": (0, 1)},
        {},
    ),
    (capstan.pull_ratio, {"friction": (0, 0.5), "wrap_angle": (0, 7)}, {}),
    (capstan.friction_of, {"pull_ratio": (1, 60), "wrap_angle": (0.1, 7)}, {}),
    (capstan.guide_load, {"pull": (0, 90), "bend": (0, 3)}, {}),
    (level_wind.line_pitch, {"worm_lead": (4e-3, 9e-3), "ratio": (0.2, 1)}, {}),
    (level_wind.turns_per_layer, {"travel": (0.02, 0.06), "pitch": (1e-3, 6e-3)}, {}),
    (level_wind.crossing_angle, {"pitch": (0, 6e-3), "radius": (0.01, 0.03)}, {}),
    (level_wind.track_offset, {"travel": (0.02, 0.06), "pitch": (1e-3, 6e-3)}, {}),
    (level_wind.pawl_slide, WORM | {"ratio": (0.2, 1), "radius": (0.01, 0.03)}, {}),
    (level_wind.pawl_force, FLANK | {"side_force": (0, 9)}, {}),
    (level_wind.worm_torque, FLANK | {"side_force": (0, 9)}, {}),
    (level_wind.worm_efficiency, FLANK, {}),
    (
        spool.backing_length,
        ROOM
        | {
            "fill_radius": (0.016, 0.03),
            "width": (0.01, 0.05),
            "backing_diameter": (2e-4, 1e-3),
            "top_length": (0, 200),
            "top_diameter": (1e-4, 1e-3),
            "packing": (0.5, 0.9),
        },
        {},
    ),
    (spool.radius_at_line_out, ROOM | {"full_radius": (0.016, 0.03), "share_out": (0, 1)}, {}),
    (spool.line_per_turn, {"radius": (0.01, 0.03), "gear_ratio": (1, 8)}, {}),
    (wear.specific_rate, {"coefficient": (0, 0.1), "hardness": (1e8, 1e10), "shape": (1, 3)}, {}),
    (
        wear.track_depth,
        {
            "wear_rate": (0, 1e-12),
            "load": (0, 9),
            "sliding_distance": (0, 1e6),
            "width": (1e-4, 1e-3),
            "length": (0.1, 1),
        },
        {},
    ),
    (wear.life, FACE | {"reject_depth": (1e-4, 1e-3), "wear_rate": (1e-17, 1e-12)}, {}),
    (
        wear.life_band,
        FACE | {"reject_depth": (1e-4, 1e-3), "rate_low": (1e-17, 1e-15), "rate_high": (1e-14, 1e-12)},
        {},
    ),
    (winding.pressure_band, PACK, {}),
    (winding.pressure_band, PACK | {"anisotropy": (0.5, 20)}, {}),
]
OVER_THE_LAST_AXIS = {"mean_load", "system_life", "train_ratio", "mixed_fill"}
"""Steps, bearings, cogs and lines of one duty, set, train or spool are one system, not elements."""
