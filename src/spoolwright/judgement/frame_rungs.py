"""At which pull do the foot's screws and the frame give?"""

from __future__ import annotations

import re

import numpy as np

from spoolwright.judgement.frame_lean import REAL_PLATES, frame_sizes, shaft_slope, solved
from spoolwright.judgement.loads import SHEAR_YIELD, Loads, material_words
from spoolwright.judgement.rung import Limit
from spoolwright.mechanics import threads
from spoolwright.sheets.materials import structural_material
from spoolwright.sheets.sheet_tables import Screw

COARSE = {2.0: 0.4, 2.5: 0.45, 3.0: 0.5, 3.5: 0.6, 4.0: 0.7, 5.0: 0.8, 6.0: 1.0, 8.0: 1.25}
"""Pitch of coarse metric threads by nominal size [mm], ISO 261 (from memory)."""

GAP = (0.15e-3, 0.6e-3)
"""Gap between a flange and the plate beside it where the sheet does not tell it [m]: judgement prior."""


def frame_rungs(loads: Loads) -> list[Limit]:
    """Limits of the frame and of what holds it to the rod.

    Parameters
    ----------
    loads : Loads
        The reel, where the line leaves **[m]**, and draws.

    Returns
    -------
    list of Limit
        Pulls at the line **[N]**, shape `(n,)`, as far as the sheet states what they need.

    Notes
    -----
    Rim: the frame's axis leans and the shaft bends until the spool's rim has used up the gap between flange
    and plate; both as if they leant the same way, a frame of one piece as if it did not lean. Foot: the pull
    at height h over the foot is held by half of the screws in tension, spacing apart, and by all of them in
    shear: sqrt((F h / (n/2 spacing))^2 + (F / n)^2 / tau^2) / area = yield. Left out: preload, what the
    rod's seat holds, strength of plates and pillars themselves.

    Source
    ------
    judgement.frame_lean (mechanics.frame, mechanics.beams); statics; mechanics.threads for stress areas.

    Examples
    --------
    >>> from spoolwright.judgement.load_ladder import load_ladder
    >>> from spoolwright.sheets import reel_sheet
    >>> rungs = load_ladder(reel_sheet.load("tarvak-52"), samples=500).rungs
    >>> [one.part for one in rungs][-2:]
    ['frame', 'foot screws']
    """
    found = [_foot(loads), _rim(loads)]
    return [limit for limit in found if limit is not None]


def _foot(loads: Loads) -> Limit | None:
    screw = next((one for one in loads.sheet.screws if "foot" in one.place.lower()), None)
    area = _stress_area(screw) if screw else None
    if screw is None or area is None:
        return None
    frame = loads.sheet.frame
    rim = loads.sheet.spool.flange_diameter / 2
    height = loads.stated_or_guessed(
        "foot height", frame.foot_height if frame else None, rim + 3e-3, rim + 9e-3
    )
    apart = loads.stated_or_guessed(
        "foot screws apart", frame.foot_screw_spacing if frame else None, 10e-3, 22e-3
    )
    tension = height / apart / max(screw.count / 2, 1)
    shear = 1 / screw.count / SHEAR_YIELD
    yields = loads.yields_at("foot screws", screw.material)
    metal = structural_material(screw.material)
    return Limit(
        "foot screws",
        "screws of the foot",
        "the foot's screws stretch, and the reel rocks on its foot",
        yields * area / np.sqrt(tension**2 + shear**2),
        "screws in tension and shear under the pull at the spool's height, stress area of ISO 898-1",
        material_words(screw.material, metal.yield_strength),
    )


def _rim(loads: Loads) -> Limit | None:
    sheet = loads.sheet
    sizes = frame_sizes(sheet)
    slope = shaft_slope(sheet)
    tilt = float(solved(sizes).tilt) * loads.between("plates as they are", *REAL_PLATES) if sizes else 0.0
    leans = tilt + slope
    if sheet.frame is None or not np.any(leans > 0):
        return None
    spool = sheet.spool
    gap = (sheet.frame.plate_spacing - spool.width - 2 * spool.flange) / 2
    stated = gap if GAP[0] <= gap <= 3 * GAP[1] else None
    room = loads.stated_or_guessed("gap at the rim", stated, *GAP)
    how = "gap from the sheet's plates and flanges" if stated else "gap at the rim: judgement prior"
    plates = "plates on pillars reckoned as a frame in space" if sizes else "the frame taken as stiff"
    return Limit(
        "frame",
        "frame and shaft, leaning",
        "the spool leans so far that its rim rubs on the frame",
        np.asarray(room / (leans * spool.flange_diameter / 2)),
        f"lean of the spool's axis for each newton: {plates}, the shaft as a beam held stiff by the hub",
        how,
    )


def _stress_area(screw: Screw) -> float | None:
    found = re.match(r"M ?([0-9.]+)(?: ?[x×] ?([0-9.]+))?", screw.thread)
    if found is None:
        return None
    size = float(found[1])
    pitch = float(found[2]) if found[2] else COARSE.get(size)
    return float(threads.stress_area(size * 1e-3, pitch * 1e-3)) if pitch else None
