"""How fast do the spool's end disc, the drive shaft's bush and the line roller's bush wear?"""

from __future__ import annotations

from collections.abc import Mapping
from math import pi

import numpy as np

from spoolwright.judgement.line_lay import turns_on
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.worn_face import Face, Use, metal_rate, plastic_rate, spread, why_rate
from spoolwright.mechanics import capstan, wear
from spoolwright.sheets import materials, wear_rates
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Part

SOFT = 30e9
"""Young's modulus below which a part counts as plastic [Pa]."""
ALSO_CALLED = {"plated brass": "brass", "hard brass": "brass", "spring bronze": "bronze"}
DRIVE_SHAFT = 6e-3
"""Diameter of a drive shaft in its bush where the sheet does not tell it: judgement prior."""


def bush_faces(sheet: ReelSheet, use: Use, draws: Mapping[str, Sample]) -> tuple[Face, ...]:
    """End disc and plain bushes that the parts list of this reel names.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    use : Use
        A week of it **[SI]**.
    draws : mapping of str to array
        What `worn_face.common_draws` gave **[SI]**, shape `(n,)`.

    Returns
    -------
    tuple of Face
        Depth a week in m.

    Notes
    -----
    End disc: the shaft's rounded end under 0.1 to 1 N. Drive-shaft bush: half to all of the tooth's force and
    the hand's. Line roller: a line bent through a right angle. Peak pressure 4 / pi of the mean. Inside the
    plates only 2 to 20 % of the grit arrives.

    Source
    ------
    Bush lives as in machine design texts; loads and lengths judgement priors.
    """
    named = {part.name: part for part in sheet.parts}
    inside = _inside(use, draws)
    faces = []
    for name, part in named.items():
        if "end disc" in name:
            faces.append(_end_disc(sheet, part, use, inside))
        elif "bush" in name and "drive-shaft" in name and sheet.gears is not None:
            faces.append(_drive_bush(sheet, part, use, inside))
        elif "line-roller bush" in name and sheet.rotor is not None:
            faces.append(_roller_bush(sheet, part, use, draws))
    return tuple(faces)


def _inside(use: Use, draws: Mapping[str, Sample]) -> Mapping[str, Sample]:
    """The same draws with the grit that arrives behind a plate."""
    return {**draws, "grit_reach": draws["inside"]}


def _rate(key: str, material: str, use: Use, draws: Mapping[str, Sample]) -> tuple[Sample, tuple[str, ...]]:
    """Wear rate and what it rests on; what is neither a listed metal nor one by another name is plastic."""
    named = ALSO_CALLED.get(material, material)
    known = named in materials.structural_names()
    if known and materials.structural_material(named).youngs_modulus.low > SOFT:
        return metal_rate(key, named, use, draws), why_rate(wear_rates.METAL, use)
    return plastic_rate(key, use, draws), why_rate(wear_rates.PLASTIC, use)


def _end_disc(sheet: ReelSheet, part: Part, use: Use, draws: Mapping[str, Sample]) -> Face:
    pressure = np.asarray(draws["end_load"] / draws["end_area"])
    rubbed = np.sqrt(draws["end_area"] / pi) * 2 / 3
    turns = turns_on(sheet.spool.full_radius) * (2 * use.cast_line + use.fish)
    way = np.asarray(2 * pi * rubbed * turns)
    rate, why = _rate("end-disc", part.material, use, draws)
    told = (*why, "force and face of the shaft's end: judgement priors")
    return _face("end-disc", part, draws, (pressure, way, rate), told)


def _drive_bush(sheet: ReelSheet, part: Part, use: Use, draws: Mapping[str, Sample]) -> Face:
    assert sheet.gears is not None
    shaft = sheet.drag.thread.pitch_diameter if sheet.drag is not None else DRIVE_SHAFT
    radius, ratio = sheet.spool.full_radius, sheet.gear_ratio
    torque = use.pull * draws["winding"] * radius * ratio
    tooth = torque / (sheet.gears.module * sheet.gears.main_teeth / 2)
    arm = sheet.handle.arm_length if sheet.handle is not None else 0.05
    load = draws["hand"] * (tooth + torque / arm) / 2
    pressure = np.asarray(4 / pi * load / (shaft * draws["bush_length"]))
    way = np.full_like(pressure, pi * shaft * turns_on(radius) / ratio * (use.cast_line + use.fish))
    rate, why = _rate("drive-shaft-bush", part.material, use, draws)
    told = (*why, "share of the load and length of the bush: judgement priors")
    return _face("drive-shaft-bush", part, draws, (pressure, way, rate), told)


def _roller_bush(sheet: ReelSheet, part: Part, use: Use, draws: Mapping[str, Sample]) -> Face:
    assert sheet.rotor is not None
    bore = draws["journal"] * sheet.rotor.roller_diameter * 0.6
    load = np.asarray(capstan.guide_load(use.pull * draws["winding"], pi / 2))
    pressure = np.asarray(4 / pi * load / (bore * sheet.rotor.roller_width * draws["bearing_share"]))
    way = np.asarray((use.cast_line + use.fish) * bore / sheet.rotor.roller_diameter)
    rate, why = _rate("line-roller-bush", part.material, use, draws)
    told = (*why, "size of the bush inside the roller: judgement prior")
    return _face("line-roller-bush", part, draws, (pressure, way, rate), told)


def _face(
    key: str,
    part: Part,
    draws: Mapping[str, Sample],
    worn: tuple[Sample, Sample, Sample],
    why: tuple[str, ...],
) -> Face:
    pressure, way, rate = worn
    limit = wear_rates.reject_depth("end disc" if key == "end-disc" else "bush")
    deep = spread(limit, draws[f"{key}.limit"])
    depth = np.asarray(wear.archard_depth(rate, pressure, way))
    return Face(key, part.name, part.material, deep, limit.source, pressure, way, depth, why)
