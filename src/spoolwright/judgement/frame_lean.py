"""How far does the frame lean under the pull, and how much harder does that make it for the gears?"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from functools import lru_cache
from pathlib import Path

import numpy as np

from spoolwright.judgement.loads import Loads
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.mechanics import beams, mesh
from spoolwright.mechanics.frame import Lean, spool_axis_tilt
from spoolwright.sheets.materials import structural_material
from spoolwright.sheets.reel_sheet import ReelSheet

REAL_PLATES = (0.7, 1.6)
"""What ports, thin places and ribs of a real plate do to the lean reckoned, as mechanics.frame says."""

LEFT_OF_IT = (0.2, 0.8)
"""Share of the lean that lies the way the teeth press and is not worn in: judgement prior."""

Sizes = tuple[float, ...]
SIZES = (
    "line_position", "line_radius", "plate_spacing", "plate_radius", "plate_thickness",
    "pillars", "pillar_diameter", "pillar_circle", "youngs_modulus",
)  # fmt: skip


def frame_sizes(sheet: ReelSheet) -> Sizes | None:
    """What the frame's lean is reckoned from, the line at the gear-side flange of a full spool.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.

    Returns
    -------
    tuple of float or None
        Values in the order of SIZES **[SI]**; None for a frame that is not described as plates on pillars.

    Source
    ------
    The reel sheet.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> frame_sizes(reel_sheet.load("tarvak-54c")) is None
    True
    """
    held, spool = sheet.frame, sheet.spool
    if held is None or not (
        held.pillars and held.pillar_diameter and held.pillar_circle and held.plate_diameter
    ):
        return None
    sizes = (
        max(0.0, (held.plate_spacing - spool.width) / 2), spool.full_radius, held.plate_spacing,
        held.plate_diameter / 2, held.plate_thickness, held.pillars, held.pillar_diameter,
        held.pillar_circle / 2, structural_material(held.material).youngs_modulus.middle,
    )  # fmt: skip
    return tuple(float(size) for size in sizes)


@lru_cache(maxsize=64)
def solved(sizes: Sizes) -> Lean:
    """The lean of a frame for each newton at the line.

    Parameters
    ----------
    sizes : tuple of float
        As frame_sizes gives them **[SI]**.

    Returns
    -------
    Lean
        Tilt and mesh **[rad/N]**, give **[m/N]**.

    Raises
    ------
    ValueError
        A size outside its range.

    Notes
    -----
    The frames of the shipped sheets stand solved in frame_leans.toml, since the frame library takes seconds
    to load; a test solves them again.

    Source
    ------
    mechanics.frame.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> solved(frame_sizes(reel_sheet.load("tarvak-52"))).tilt > 0
    True
    """
    kept = _kept().get(_key(sizes))
    if kept is not None:
        return kept
    told = dict(zip(SIZES, sizes, strict=True))
    return spool_axis_tilt(
        told["line_position"],
        told["line_radius"],
        plate_spacing=told["plate_spacing"],
        plate_radius=told["plate_radius"],
        plate_thickness=told["plate_thickness"],
        pillars=int(told["pillars"]),
        pillar_diameter=told["pillar_diameter"],
        pillar_circle=told["pillar_circle"],
        youngs_modulus=told["youngs_modulus"],
    )


def _key(sizes: Sizes) -> tuple[float, ...]:
    return tuple(float(f"{size:.6g}") for size in sizes)


@lru_cache(maxsize=1)
def _kept() -> Mapping[tuple[float, ...], Lean]:
    rows = tomllib.loads((Path(__file__).parent / "frame_leans.toml").read_text(encoding="utf-8"))["leans"]
    return {_key(tuple(row["sizes"])): Lean(row["tilt"], row["mesh"], row["give"]) for row in rows}


def shaft_slope(sheet: ReelSheet) -> float:
    """Slope of the spool shaft's end for a newton at the flange, the hub holding its middle stiff.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.

    Returns
    -------
    float
        Slope **[rad/N]**; 0 for a shaft that is not borne at both ends.

    Source
    ------
    mechanics.beams.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> older, newer = (shaft_slope(reel_sheet.load(slug)) for slug in ("tarvak-52", "tarvak-54c"))
    >>> newer > older > 0
    True
    """
    shaft = sheet.shaft
    if shaft is None or shaft.borne == "one end":
        return 0.0
    gap = max(0.02 * shaft.span, (shaft.span - sheet.spool.width) / 2)
    bent = beams.stepped_shaft(
        1.0,
        gap,
        [gap, shaft.span - 2 * gap, gap],
        [shaft.diameter, max(sheet.spool.arbor_diameter, shaft.diameter), shaft.diameter],
        structural_material(shaft.material).youngs_modulus.middle,
        [0.0, shaft.span],
        0.0,
    )
    return float(bent.slope)


def edge_load(loads: Loads, tangential: float) -> Sample:
    """How much more the loaded end of a tooth carries because the wheels no longer lie parallel.

    Parameters
    ----------
    loads : Loads
        The reel and draws **[SI]**.
    tangential : float
        Force at the pitch circle for each newton at the line **[-]**, more than 0.

    Returns
    -------
    array
        Load at the loaded end over the mean load **[-]**, shape `(n,)`, 1 or more.

    Notes
    -----
    Lean and force both go with the pull, so the factor does not. The frame's lean and, where the pinion
    rides on it, the shaft's slope count as if both leant the same way; of it a fifth to four fifths lies the
    way the teeth press and is not worn in. A frame of one piece counts as stiff.

    Source
    ------
    mechanics.mesh, mechanics.frame, mechanics.beams.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> from spoolwright.judgement.narrowing import know
    >>> sheet = reel_sheet.load("tarvak-52")
    >>> known = know(sheet, {}, samples=100, seed=1)
    >>> loads = Loads(sheet, known.state, 0.022, known.draws, 100, 1)
    >>> bool((edge_load(loads, 3.0) > edge_load(loads, 6.0)).all())
    True
    """
    gears, sizes = loads.sheet.gears, frame_sizes(loads.sheet)
    if gears is None:
        return np.ones(loads.samples)
    metals = (gears.main_material, gears.pinion_material)
    main, pinion = (structural_material(metal).youngs_modulus.middle for metal in metals)
    frame = float(solved(sizes).mesh) if sizes else 0.0
    own = any("pinion" in bearing.place.lower() for bearing in loads.sheet.bearings)
    apart = frame * loads.between("plates as they are", *REAL_PLATES) + (
        0.0 if own else shaft_slope(loads.sheet)
    )
    apart = apart * loads.between("lean that the teeth feel", *LEFT_OF_IT)
    return np.asarray(mesh.face_load_factor(apart, tangential, gears.face_width, main, pinion))
