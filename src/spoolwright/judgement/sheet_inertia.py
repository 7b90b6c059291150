"""What a reel's sheet says of its spool's moment of inertia, and how far that can be trusted."""

from __future__ import annotations

from collections.abc import Mapping

from spoolwright.bench.budget import Contribution
from spoolwright.bench.inertia_reading import RESULT
from spoolwright.bench.inertia_shape import LIKENESS
from spoolwright.bench.propagation import Known, propagate
from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.free_spin import NYLON_DENSITY, bare_inertia
from spoolwright.mechanics import spool
from spoolwright.sheets import materials
from spoolwright.sheets.reel_sheet import ReelSheet

STATED = 0.05
"""Standard uncertainty of an inertia that a sheet states without one, as a share: judgement prior."""

SIZE_UNSURE, WALL_UNSURE, MASS_UNSURE = 1e-4, 1e-4, 5e-4
"""Standard uncertainty of a size [m] and of the mass [kg] on a sheet: judgement priors."""

USUAL_WALL, WALL_GUESSED = 1.5e-3, 3e-4
"""What stands for a wall that the sheet leaves out [m], as in `free_spin`, and how sure: judgement prior."""

PACKING, PACKING_UNSURE = 0.71, 0.052
"""Share of the room that wound nylon fills: 0.62 to 0.80 as a rectangle, judgement prior."""


def of_sheet(sheet: ReelSheet, *, line_on: bool = False) -> tuple[Measured, tuple[Contribution, ...]]:
    """The inertia by the sheet, with the line on a full spool if it is on, and its budget.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    line_on : bool
        Whether a spool full of nylon turns with it **[-]**.

    Returns
    -------
    tuple
        Inertia **[kg m^2]** with its standard uncertainty, and its rows.

    Notes
    -----
    A stated inertia is taken as it stands. Else: a tube between two discs of the sheet's sizes, scaled to its
    mass, times how far that drawing is like the spool. The line: a tube of nylon from arbor to full radius.

    Source
    ------
    `mechanics.spool`; JCGM 100:2008, 5.1.2; the sheet's own uncertainties are judgement priors.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> found, rows = of_sheet(reel_sheet.load("tarvak-52"))
    >>> 0.03 < found.uncertainty / found.value < 0.15, len(rows) > 0
    (True, True)
    """
    known = _stated(sheet) if sheet.spool.inertia is not None else _drawn(sheet)
    if line_on:
        known |= _line(sheet)

    def whole(at: Mapping[str, float]) -> float:
        bare = at["stated"] if "stated" in at else _bare(at)
        return bare + (_wound(at, sheet) if line_on else 0.0)

    return propagate(RESULT, "inertia", whole, known)


def _stated(sheet: ReelSheet) -> dict[str, Known]:
    value = bare_inertia(sheet)
    return {"stated": Known("inertia that the sheet states", Measured(value, STATED * value, "inertia"))}


def _drawn(sheet: ReelSheet) -> dict[str, Known]:
    room = sheet.spool
    wall = ("wall, which the sheet leaves out", USUAL_WALL, WALL_GUESSED)
    if room.wall:
        wall = ("wall on the sheet", room.wall, WALL_UNSURE)
    sizes = {
        "arbor": ("radius of the arbor on the sheet", room.arbor_radius, SIZE_UNSURE),
        "flange": ("radius of the flanges on the sheet", room.flange_diameter / 2, SIZE_UNSURE),
        "width": ("width on the sheet", room.width, SIZE_UNSURE),
        "wall": wall,
    }
    known = {
        key: Known(words, Measured(value, spread, "length")) for key, (words, value, spread) in sizes.items()
    }
    return {"likeness": LIKENESS, **known, **_heaviness(sheet)}


def _heaviness(sheet: ReelSheet) -> dict[str, Known]:
    """The mass on the sheet, else the density of what it is made of."""
    if sheet.spool.mass is not None:
        return {"mass": Known("mass on the sheet", Measured(sheet.spool.mass, MASS_UNSURE, "mass"))}
    held = materials.structural_material(sheet.spool.material or "aluminium alloy").density
    spread = max((held.high - held.low) / 12**0.5, 0.02 * held.middle)
    return {"density": Known("density of the material", Measured(held.middle, spread, "density"))}


def _bare(at: Mapping[str, float]) -> float:
    density = at.get("density", 1.0)
    sizes = (at["arbor"], at["flange"], at["width"], at["wall"], density)
    inertia = float(spool.spool_inertia(*sizes))
    if "mass" in at:
        inertia *= at["mass"] / float(spool.spool_mass(*sizes))
    return at["likeness"] * inertia


def _line(sheet: ReelSheet) -> dict[str, Known]:
    full = Measured(sheet.spool.full_radius, 3e-4, "length")
    return {
        "packing": Known("how tight the line is wound", Measured(PACKING, PACKING_UNSURE, "ratio")),
        "full": Known("radius of the full spool", full),
    }


def _wound(at: Mapping[str, float], sheet: ReelSheet) -> float:
    room = sheet.spool
    sizes = (room.arbor_radius, at["full"], room.width, NYLON_DENSITY, at["packing"])
    return float(spool.line_inertia(*sizes))
