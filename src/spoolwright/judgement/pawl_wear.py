"""How fast do pawl, worm and the worm's bushes of a level wind wear?"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from math import pi

import numpy as np

from spoolwright.judgement.line_lay import Traverse, traverse, turns_on
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.worn_face import Face, Use, metal_rate, plastic_rate, spread, why_rate
from spoolwright.mechanics import capstan, level_wind, wear
from spoolwright.sheets import wear_rates
from spoolwright.sheets.reel_sheet import ReelSheet

GROOVE = 0.8e-3
"""Depth of a worm's groove where the sheet does not tell it: judgement prior."""
COG = 6e-3
"""Radius of the cog on the worm where it takes the tooth's force: judgement prior."""


def level_wind_faces(sheet: ReelSheet, use: Use, draws: Mapping[str, Sample]) -> tuple[Face, ...]:
    """Pawl, worm and worm bushes of this reel, as far as it has them.

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
        Depth a week in m; none where the reel has no worm.

    Notes
    -----
    The guide needs its own drag, the line's sideways pull from the first ring, and friction on its bar under
    the bent line; in the cast only its own drag, and nothing where it stands still then. The pawl bears on
    a part of its tip; the worm is worn along its whole groove, and several times as deep at the crossings.

    Source
    ------
    mechanics.level_wind, capstan and wear; forces no sheet tells are judgement priors.
    """
    moved = traverse(sheet)
    if moved is None:
        return ()
    radius = sheet.spool.full_radius
    slide = float(level_wind.pawl_slide(moved.ratio, moved.lead, moved.diameter, radius))
    wound = slide * (use.cast_line + use.fish)
    flown = slide * use.cast_line if moved.in_the_cast else 0.0
    side = _side_force(sheet, moved, use, draws)
    load = _mean(side, draws["carriage"], wound, flown)
    pressed = np.asarray(level_wind.pawl_force(load, moved.lead, moved.diameter, draws["flank_friction"]))
    way = np.full_like(pressed, wound + flown)
    name = "pawl of the level wind" if sheet.level_wind is not None else "pawl that moves the spool"
    pawl = replace(_pawl(moved, use, draws, pressed, way), part=name)
    faces = [pawl, _worm(moved, use, draws, pressed, way)]
    if any("worm bush" in part.name for part in sheet.parts):
        faces.append(_bush(moved, use, draws, pressed, _turns(moved, use, radius)))
    return tuple(faces)


def _side_force(sheet: ReelSheet, moved: Traverse, use: Use, draws: Mapping[str, Sample]) -> Sample:
    """Force along the worm while winding, on average over the guide's way."""
    pull = use.pull * draws["winding"]
    reach = sheet.rotor.diameter / 2 if sheet.rotor is not None else draws["first_ring"]
    sideways = pull * (moved.travel / 4) / reach
    pressed = np.asarray(capstan.guide_load(pull, draws["bend"]))
    return np.asarray(draws["carriage"] + sideways + draws["bar_friction"] * pressed)


def _mean(winding: Sample, flying: Sample, wound: float, flown: float) -> Sample:
    if wound + flown == 0:
        return winding
    return np.asarray((winding * wound + flying * flown) / (wound + flown))


def _turns(moved: Traverse, use: Use, radius: float) -> float:
    """Turns of the worm in a week."""
    line = use.cast_line * (2 if moved.in_the_cast else 1) + use.fish
    return moved.ratio * turns_on(radius) * line


def _tip_area(moved: Traverse, draws: Mapping[str, Sample]) -> Sample:
    if moved.pawl_width is None or moved.groove_depth is None:
        return draws["tip_area"]
    return np.asarray(draws["bearing_share"] * moved.pawl_width * moved.groove_depth)


def _why_force(sheet_told: bool) -> str:
    told = (
        "size of the pawl from the sheet" if sheet_told else "face of the pawl 0.6 to 2 mm² (judgement prior)"
    )
    return f"force on the guide and friction in it: judgement priors; {told}"


def _pawl(moved: Traverse, use: Use, draws: Mapping[str, Sample], load: Sample, way: Sample) -> Face:
    limit = wear_rates.reject_depth("pawl")
    pressure = np.asarray(load / _tip_area(moved, draws))
    rate = metal_rate("pawl", moved.pawl_material, use, draws)
    depth = np.asarray(wear.archard_depth(rate, pressure, way))
    why = (*why_rate(wear_rates.METAL, use), _why_force(moved.pawl_width is not None))
    return Face(
        "pawl", "pawl of the level wind", moved.pawl_material, spread(limit, draws["pawl.limit"]),
        limit.source, pressure, way, depth, why,
    )  # fmt: skip


def _worm(moved: Traverse, use: Use, draws: Mapping[str, Sample], load: Sample, way: Sample) -> Face:
    limit = wear_rates.reject_depth("worm")
    width = moved.groove_depth or GROOVE
    groove = 2 * moved.travel / moved.lead * float(np.hypot(pi * moved.diameter, moved.lead))
    rate = metal_rate("worm", moved.worm_material, use, draws)
    even = wear.track_depth(rate, load, way, width, groove)
    depth = np.asarray(even * draws["crossing"])
    pressure = np.asarray(load / _tip_area(moved, draws))
    crossing = "two to six times as deep at the crossings as elsewhere: judgement prior"
    why = (*why_rate(wear_rates.METAL, use), _why_force(moved.pawl_width is not None), crossing)
    return Face(
        "worm", "worm, at its crossings", moved.worm_material, spread(limit, draws["worm.limit"]),
        limit.source, pressure, way, depth, why,
    )  # fmt: skip


def _bush(moved: Traverse, use: Use, draws: Mapping[str, Sample], load: Sample, turns: float) -> Face:
    limit = wear_rates.reject_depth("bush")
    journal = draws["journal"] * moved.diameter
    torque = load * moved.diameter / 2
    reaction = np.asarray(0.5 * load + torque / COG)
    pressure = np.asarray(4 / pi * reaction / (journal * draws["bush_length"]))
    way = np.asarray(pi * journal * turns)
    rate = plastic_rate("worm-bush", use, draws)
    depth = np.asarray(wear.archard_depth(rate, pressure, way))
    why = (*why_rate(wear_rates.PLASTIC, use), "size of the bush and its share of the load: judgement priors")
    return Face(
        "worm-bush", "bushes of the worm", "plastic", spread(limit, draws["worm-bush.limit"]),
        limit.source, pressure, way, depth, why,
    )  # fmt: skip
