"""Every formula: which way the answer goes when one thing grows and all else stays, as physics has it.

A sign behind an argument: + the answer grows or stays, - it falls or stays. What is not named has no one
direction (a spring past flat, a place along a beam) or has its own test elsewhere.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import numpy as np
import pytest

from tests.property.test_shapes import FORMULAS, WHOLE, Range, answers

STEPS = 9
DIRECTIONS = {
    "clutch.effective_radius": "outer_radius+ inner_radius+",
    "clutch.friction_torque": "clamp_force+ friction+ faces+ outer_radius+ inner_radius+",
    "clutch.clamp_force": "torque+ friction- faces- outer_radius- inner_radius-",
    "clutch.peak_pressure": "clamp_force+ outer_radius-",
    "springs.disc_spring_force": "youngs_modulus+ poisson+ outer_diameter- thickness+",
    "springs.stack_force": "youngs_modulus+ poisson+",
    "springs.stack_deflection": "force+ youngs_modulus-",
    "threads.tightening_torque": (
        "axial_force+ pitch+ thread_friction+ flank_angle+ bearing_radius+ bearing_friction+"
    ),
    "threads.axial_force": "torque+ pitch- thread_friction- flank_angle- bearing_radius- bearing_friction-",
    "threads.stress_area": "diameter+ pitch-",
    "threads.proof_load": "diameter+ pitch- proof_stress+",
    "threads.strip_force": "diameter+ engagement+ shear_strength+",
    "threads.nut_torque": "axial_force+ diameter+ factor+",
    "spool.line_length": "arbor_radius- fill_radius+ width+ line_diameter- packing+",
    "spool.fill_radius": "arbor_radius+ line_length+ width- line_diameter+ packing-",
    "spool.line_pull": "drag_torque+ gear_ratio- radius-",
    "spool.spool_mass": "arbor_radius+ flange_radius+ width+ wall+ density+ bore_radius-",
    "spool.spool_inertia": "arbor_radius+ flange_radius+ width+ wall+ density+ bore_radius-",
    "spool.line_inertia": "arbor_radius- fill_radius+ width+ density+ packing+",
    "mixed_line.backing_length": "arbor_radius- fill_radius+ width+ top_length- top_diameter- packing+",
    "mixed_line.radius_at_line_out": "arbor_radius+ full_radius+ share_out-",
    "mixed_line.line_per_turn": "radius+ gear_ratio+",
    "line.diameter_from_tex": "tex+ density-",
    "line.stiffness": "modulus+ diameter+ length-",
    "line.break_load": "strength+ diameter+",
    "line.strength_from_tenacity": "tenacity+ density+",
    "lubricant.viscosity_at": "temperature-",
    "lubricant.viscosity_index": "viscosity_40- viscosity_100+",
    "lubricant.kappa": "temperature- speed_rpm+ pitch_diameter+",
    "lubricant.grease_yield_stress": "penetration-",
    "lubricant.grease_hold": "yield_stress+ radius+ width+ share+",
    "rolling.friction_torque": "speed_rpm+ viscosity+ pitch_diameter+ load+ f0+ f1+",
    "rolling.friction_load": "axial+",
    "rolling.load_factor": "equivalent+ rating- series+",
    "rolling.equivalent_load": "radial+ axial+",
    "rolling.reference_viscosity": "speed_rpm- pitch_diameter-",
    "bearing_life.rating_life": "dynamic_rating+ load-",
    "bearing_life.life_factor_iso": "contamination+ fatigue_limit+ load-",
    "bearing_life.contamination_factor": "kappa+ pitch_diameter+",
    "bearing_life.reliability_factor": "survival-",
    "bearing_life.modified_life": "dynamic_rating+ load- contamination+ fatigue_limit+ survival-",
    "bearing_ratings.static_load": "radial+ axial+",
    "bearing_ratings.static_safety": "static_rating+ radial- axial-",
    "bearing_ratings.static_rating": "balls+ ball_diameter+",
    "bearing_ratings.dynamic_rating": "balls+ ball_diameter+",
    "defect_rates.defect_frequencies": "rpm+",
    "hybrid_balls.ball_pressure": "force+ ball_diameter- youngs_ball+ youngs_ring+ poisson_ball+",
    "hybrid_balls.hybrid": "",
    "gears.form_factor": "teeth+",
    "gears.lewis_stress": "tangential_force+ module- face_width- form_factor- velocity_factor+",
    "gears.contact_ratio": "teeth_a+ teeth_b+ pressure_angle- addendum+",
    "gears.hertz_line_stress": "force+ length- radius_a- radius_b- youngs_a+ youngs_b+ poisson_a+ poisson_b+",
    "gears.pitch_point_stress": (
        "tangential_force+ module- teeth_a- teeth_b- face_width- youngs_a+ youngs_b+ pressure_angle-"
    ),
    "gears.sliding_speed": "speed_a+ module+",
    "mesh.separating_force": "tangential_force+ pressure_angle+",
    "mesh.sharing_factor": "",
    "mesh.face_load_factor": "misalignment+ tangential_force- face_width+ youngs_a+ youngs_b+",
    "beams.simply_supported_point": "force+",
    "beams.simply_supported_uniform": "load_per_length+",
    "frame.portal_sway": "force+",
    "plates.flange_stress": "force+ outer_radius+ thickness-",
    "plates.flange_spread": "force+ outer_radius+ thickness- youngs_modulus- poisson-",
    "plates.ring_stress": "inner_pressure+ outer_pressure-",
    "plates.arbor_hoop_stress": "pressure+ outer_radius+ wall-",
    "plates.arbor_buckling_pressure": "wall+ length- youngs_modulus+",
    "anti_reverse.ratchet_stress": "torque+ contact_height+ root- width- dogs- contact_radius-",
    "anti_reverse.dog_pressure": "torque+ contact_radius- contact_depth- width-",
    "anti_reverse.roller_clutch_torque": (
        "rollers+ roller_diameter+ roller_length+ sleeve_radius+ allowable_pressure+"
    ),
    "handle.arm_stress": "force+ length+ width- thickness-",
    "handle.stud_stress": "force+ overhang+ diameter-",
    "handle.shaft_stress": "diameter-",
    "heat.semi_infinite_rise": "heat_flux+",
    "heat.thick_until": "half_thickness+ conductivity- density+ specific_heat+",
    "heat.slip_energy": "inertia+ other_inertia+",
    "judder.effective_mass": "inertia+ radius-",
    "judder.sliding_friction": "static_force+ kinetic_force+ drop_speed+ viscous+",
    "brakes.centrifugal": "blocks+ block_mass+ centre_radius+ ring_radius+ friction+",
    "brakes.eddy": "field+ area+ thickness+ radius+ resistivity- return_path+",
    "brakes.eddy_share": "speed_over_critical-",
    "brakes.disc_windage": "radius+ air_density+ air_viscosity+",
    "brakes.holding_torque": "inertia+ deceleration+ speed- line_diameter- spool_width+ packing+",
    "capstan.pull_ratio": "friction+ wrap_angle+",
    "capstan.friction_of": "pull_ratio+ wrap_angle-",
    "capstan.guide_load": "pull+ bend+",
    "level_wind.line_pitch": "worm_lead+ ratio+",
    "level_wind.turns_per_layer": "travel+ pitch-",
    "level_wind.crossing_angle": "pitch+ radius-",
    "level_wind.track_offset": "",
    "level_wind.pawl_slide": "ratio+ worm_lead+ worm_diameter+ radius-",
    "worm_drive.pawl_force": "side_force+ friction+ flank_angle+",
    "worm_drive.worm_torque": "side_force+ friction+ flank_angle+",
    "worm_drive.worm_efficiency": "friction- flank_angle-",
    "wear.archard_depth": "wear_rate+ pressure+ sliding_distance+",
    "wear.specific_rate": "coefficient+ hardness- shape-",
    "wear.track_depth": "wear_rate+ load+ sliding_distance+ width- length-",
    "wear.life": "reject_depth+ wear_rate- pressure- sliding_per_use- worn-",
    "wear.life_band": "reject_depth+ rate_high- pressure- sliding_per_use- worn-",
    "winding.hub_pressure": "line_tension+ pitch- layer_height- hub_radius- pack_radius+ anisotropy-",
    "winding.pressure_band": "line_tension+ pitch-",
    "winding.flange_force": "hub_pressure+ pack_radius+ lateral_ratio+",
    "coastdown.speed": "time- initial_speed+ inertia+ constant- viscous- quadratic-",
    "coastdown.stop_time": "initial_speed+ inertia+ constant- viscous- quadratic-",
    "coastdown.time_at_speed": "slower- initial_speed+ inertia+ constant- viscous- quadratic-",
    "coastdown.angle": "time+ initial_speed+ inertia+ constant- viscous- quadratic-",
    "coastdown.time_at_angle": "angle+",
}


def name_of(formula: Callable[..., Any]) -> str:
    return f"{formula.__module__.rsplit('.', 1)[-1]}.{formula.__name__}"


CLAIMS = [
    pytest.param(formula, ranges, fixed, name_of(formula), id=f"{name_of(formula)} {fixed or ''} {i}")
    for i, (formula, ranges, fixed) in enumerate(FORMULAS)
]


@pytest.mark.parametrize(("formula", "ranges", "fixed", "name"), CLAIMS)
def test_the_answer_goes_one_way(
    formula: Callable[..., Any], ranges: dict[str, Range], fixed: dict[str, str], name: str
) -> None:
    rng = np.random.default_rng(len(name))
    for claim in DIRECTIONS[name].split():
        moved, sign = claim[:-1], 1 if claim[-1] == "+" else -1
        if moved not in ranges:
            continue
        at = {key: drawn(rng, key, bounds) for key, bounds in ranges.items()}
        low, high = ranges[moved]
        at[moved] = np.linspace(low, high, STEPS)
        if moved in WHOLE:
            at[moved] = np.round(at[moved])
        for part, row in answers(formula, at, fixed).items():
            values = np.atleast_1d(row)
            rounding = 1e-9 * np.max(np.abs(values[np.isfinite(values)]), initial=0.0)
            with np.errstate(invalid="ignore"):
                assert not np.any(np.diff(values) * sign < -rounding), f"{part} against {moved}: {values}"


def test_every_formula_has_its_directions() -> None:
    assert {name_of(formula) for formula, _, _ in FORMULAS} == set(DIRECTIONS)


def drawn(rng: np.random.Generator, name: str, bounds: Range) -> float:
    value = rng.uniform(*bounds)
    return float(round(value)) if name in WHOLE else float(value)
