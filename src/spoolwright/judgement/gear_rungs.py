"""At which pull do the teeth of the gears give, in bending and where they press on one another?"""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, pi, sin

import numpy as np

from spoolwright.judgement import frame_lean
from spoolwright.judgement.loads import RECTANGLE_PLASTIC, Loads, material_words
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.rung import Limit
from spoolwright.mechanics import gears as teeth
from spoolwright.sheets.materials import structural_material
from spoolwright.sheets.sheet_tables import Gears

SOUND_TEETH = 17
"""Pinions of fewer teeth are undercut unless they are cut with their profile moved outwards, as most are."""


@dataclass(frozen=True)
class _Wheel:
    part: str
    name: str
    teeth: int
    material: str


def gear_rungs(loads: Loads) -> list[Limit]:
    """Limits of the main gear and the pinion: root of a tooth in bending, flanks in contact.

    Parameters
    ----------
    loads : Loads
        The reel, where the line leaves **[m]**, and draws.

    Returns
    -------
    list of Limit
        Pulls at the line **[N]**, shape `(n,)`; none for a reel without gears or with a worm gear.

    Notes
    -----
    Force at the pitch circle = pull r / (m z / (2 cos helix)), z the pinion's teeth. Bending: the root's
    section yields through at 1.5 yield b m Y S / K; Y of the virtual teeth z / cos^3(helix), for fewer than
    17 teeth drawn between the plain and that of 17; S from 1 (one pair alone, at the tip) to the contact
    ratio (shared evenly); K what the frame's lean adds. Contact: mean pressure at the pitch point, on
    the elastic formula, equals the hardness: then the flank is dented for good. Wear comes long before that
    and is told elsewhere. The gears of the high speed are reckoned. Face and bevel gears as if they were
    side by side. `lasts`: bending with what a tooth bears for 10^5 to 10^7 loads. Left out: fillet
    stress raiser (a ductile root yields it away), shock, worn teeth, a thin rim over the pinion's bore.

    Source
    ------
    Lewis, Shigley's Mechanical Engineering Design, ch. 14; plastic section 3/2, any strength of materials;
    Tabor, The Hardness of Metals (1951), mean pressure of full plasticity (both from memory).

    Examples
    --------
    >>> from spoolwright.judgement.load_ladder import load_ladder
    >>> from spoolwright.sheets import reel_sheet
    >>> rungs = load_ladder(reel_sheet.load("tarvak-52"), samples=500).rungs
    >>> [one.part for one in rungs if "gear" in one.part or "pinion" in one.part]
    ['main gear', 'pinion', 'gear flanks']
    """
    held = loads.sheet.gears
    if held is None or held.form == "worm":
        return []
    tangential = loads.radius / (held.module * held.pinion_teeth / (2 * cos(held.helix_angle)))
    wheels = (
        _Wheel("main gear", "teeth of the main gear", held.main_teeth, held.main_material),
        _Wheel("pinion", "teeth of the pinion", held.pinion_teeth, held.pinion_material),
    )
    shared = _shared(loads, held) / frame_lean.edge_load(loads, tangential)
    bending = [_bending(loads, held, wheel, tangential, shared) for wheel in wheels]
    return [*bending, _contact(loads, held, tangential, shared)]


def _shared(loads: Loads, held: Gears) -> Sample:
    """Pairs of teeth that share the force: one alone at worst, the contact ratio and overlap at best."""
    across = teeth.contact_ratio(held.main_teeth, held.pinion_teeth, held.module, held.pressure_angle)
    overlap = held.face_width * sin(held.helix_angle) / (pi * held.module)
    return loads.between("gears: shared", 1.0, max(1.0, float(across) + overlap))


def _bending(loads: Loads, held: Gears, wheel: _Wheel, tangential: float, shared: Sample) -> Limit:
    metal = structural_material(wheel.material)
    virtual = wheel.teeth / cos(held.helix_angle) ** 3
    plain, moved = (_factor(z) for z in (virtual, max(virtual, SOUND_TEETH)))
    form = loads.between(f"{wheel.part}: form", plain, moved)
    at_unit = teeth.lewis_stress(np.full(loads.samples, tangential), held.module, held.face_width, form)
    allowed = RECTANGLE_PLASTIC * loads.yields_at(wheel.part, wheel.material)
    bears = shared * loads.size(wheel.part, 2) / at_unit
    return Limit(
        wheel.part,
        wheel.name,
        f"the {wheel.part}'s teeth bend over and stay bent, and the next ones jump",
        allowed * bears,
        "Lewis bending of a tooth, the root yielded through",
        material_words(wheel.material, metal.yield_strength),
        lasts=loads.of(f"{wheel.part} for its life", metal.allowable_bending) * bears,
    )


def _factor(virtual: float) -> float:
    """Form factor of a virtual number of teeth, which need not be whole."""
    low = int(virtual)
    ends = teeth.form_factor(float(low)), teeth.form_factor(float(low + 1))
    return float(ends[0] + (virtual - low) * (ends[1] - ends[0]))


def _contact(loads: Loads, held: Gears, tangential: float, shared: Sample) -> Limit:
    main, pinion = (structural_material(name) for name in (held.main_material, held.pinion_material))
    peak = teeth.pitch_point_stress(
        tangential,
        held.module,
        held.main_teeth,
        held.pinion_teeth,
        held.face_width,
        main.youngs_modulus.middle,
        main.poisson.middle,
        pinion.youngs_modulus.middle,
        pinion.poisson.middle,
        held.pressure_angle,
    )
    softer = min((main, pinion), key=lambda metal: metal.hardness.middle)
    hardness = loads.of("gear flanks", softer.hardness)
    bears = shared * loads.size("gear flanks", 2) / float(peak) ** 2
    span = f"{softer.hardness.low / 1e6:.0f} to {softer.hardness.high / 1e6:.0f} MPa"
    return Limit(
        "gear flanks",
        "flanks of the gears",
        f"the flanks of the {softer.name} wheel are dented for good",
        (hardness * 4 / pi) ** 2 * bears,
        "contact of two cylinders at the pitch point, mean pressure up to the hardness",
        f"hardness of {softer.name} {span}: {softer.hardness.source} ({softer.hardness.how})",
    )
