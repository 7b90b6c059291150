"""How does this reel lay its line? Turns apart, turns a layer, and whether layers cross or lock."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import degrees, pi

import numpy as np

from spoolwright import quantities
from spoolwright.judgement.changed_sheet import changed
from spoolwright.judgement.taken import Readings, listed
from spoolwright.judgement.works import chosen
from spoolwright.mechanics import level_wind
from spoolwright.sheets.reel_sheet import ReelSheet

CLOSE = 1.5
"""Turns up to so many line diameters apart lie side by side rather than crosswise."""
DWELL = 0.5
"""Most turns of the worm for which a guide stands still at each end: judgement prior."""


@dataclass(frozen=True)
class Traverse:
    """What moves line or spool to and fro, by one name for all kinds of reel; lengths in metres."""

    ratio: float
    lead: float
    diameter: float
    travel: float
    pawl_material: str
    worm_material: str
    in_the_cast: bool
    pawl_width: float | None = None
    groove_depth: float | None = None

    @property
    def pitch(self) -> float:
        """Way of the guide for one turn of spool or rotor [m]."""
        return float(level_wind.line_pitch(self.lead, self.ratio))


@dataclass(frozen=True)
class LineLay:
    """How one line is laid on one reel. Angles in rad, lengths in m; `offset` is least and most."""

    pitch: float
    turns_per_layer: float
    crossing_full: float
    crossing_arbor: float
    offset: tuple[float, float]
    slide_per_metre: float
    line_diameter: float
    locks: float
    words: str
    notes: tuple[str, ...] = ()
    why_not: str = ""


def traverse(sheet: ReelSheet) -> Traverse | None:
    """The level wind of a multiplier or the worm of a fixed-spool reel, None where there is neither.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.

    Returns
    -------
    Traverse or None
        Lengths in SI.

    Source
    ------
    The reel sheet.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> round(traverse(reel_sheet.load("tarvak-58r")).pitch * 1e3, 2)
    3.71
    """
    wind, moved = sheet.level_wind, sheet.oscillation
    if wind is not None:
        return Traverse(
            _ratio(wind.cogs), wind.worm_lead, wind.worm_diameter, wind.travel, wind.pawl_material,
            wind.worm_material, wind.kind != "disengages in the cast", wind.pawl_width, wind.groove_depth,
        )  # fmt: skip
    if moved is None or moved.worm_lead is None or moved.worm_diameter is None:
        return None
    pawl, worm = moved.pawl_material or "stainless steel", moved.worm_material or "brass"
    ratio = _ratio(moved.cogs)
    return Traverse(ratio, moved.worm_lead, moved.worm_diameter, moved.stroke, pawl, worm, False)


def line_lay(
    sheet: ReelSheet,
    readings: Readings,
    works: Sequence[str] = (),
    *,
    diameter: float = 0.40e-3,
    system: str = "metric",
) -> LineLay:
    """Work out how a reel lays a line of this diameter.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    readings : mapping of str to Measured or Taken
        This reel's own readings by kind; `level_wind_turns` **[turns a cycle]** counts.
    works : sequence of str
        Ids of works **[-]**; one of them takes the level wind out.
    diameter : float
        Diameter of the line **[m]**, above zero.
    system : str
        "metric" or "imperial" **[-]**, for the words.

    Returns
    -------
    LineLay
        In SI; `locks` is the chance **[-]** that a cycle falls on its own earlier track; `why_not` in words
        where the reel lays no line by a worm.

    Raises
    ------
    ValueError
        A diameter that is not above zero, or a work that is not known or not done on this kind of reel.

    Notes
    -----
    Turns a cycle = 2 travel / pitch plus what the guide stands still at the ends, up to half a turn of
    the worm each, unless they were counted. A cycle within a line's diameter of its earlier track locks.

    Source
    ------
    mechanics.level_wind; ribbons of the textile trade; dwell a judgement prior.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> found = line_lay(reel_sheet.load("tarvak-58r"), {})
    >>> round(found.turns_per_layer, 1), found.why_not
    (11.6, '')
    """
    if not diameter > 0:
        raise ValueError(f"diameter: more than 0 is accepted; got {diameter!r}")
    sheet = changed(sheet, chosen(tuple(works), sheet.reel.kind))
    moved = traverse(sheet)
    if moved is None:
        return LineLay(0.0, 0.0, 0.0, 0.0, (0.0, 0.0), 0.0, diameter, 0.0, "", (), _why_not(sheet))
    counted = next((one.measured for one in listed(readings) if one.kind == "level_wind_turns"), None)
    turns = _cycles(moved, counted.value if counted else None)
    beside = np.abs(turns - np.round(turns)) * moved.pitch
    radii = (sheet.spool.full_radius, sheet.spool.arbor_radius)
    full, arbor = (float(level_wind.crossing_angle(moved.pitch, r)) for r in radii)
    slide = float(level_wind.pawl_slide(moved.ratio, moved.lead, moved.diameter, radii[0]))
    layer = float(level_wind.turns_per_layer(moved.travel, moved.pitch))
    locks = float(np.mean(beside < diameter))
    words = _words(moved, layer, full, locks, diameter, system)
    notes = () if counted else (_COUNT_IT,)
    ends = (float(beside.min()), float(beside.max()))
    return LineLay(moved.pitch, layer, full, arbor, ends, slide, diameter, locks, words, notes)


_COUNT_IT = (
    "How long the guide stands still at its ends is not on the sheet: count the spool's turns for one whole "
    "cycle, and whether cycles fall on one another is known."
)


def _cycles(moved: Traverse, counted: float | None) -> np.ndarray:
    """Turns of the spool in one cycle: as counted, else over the range of what may be lost at the ends."""
    if counted is not None:
        return np.array([counted])
    least = 2 * moved.travel / moved.pitch
    return least + np.linspace(0.0, 2 * DWELL / moved.ratio, 201)


def _words(moved: Traverse, layer: float, full: float, locks: float, diameter: float, system: str) -> str:
    apart = quantities.show(moved.pitch, "length", system)
    thick = quantities.show(diameter, "length", system)
    first = f"Turns lie {apart} apart, {layer:.1f} to a layer; layers cross at {degrees(full):.1f}°. "
    if moved.pitch <= CLOSE * diameter:
        return first + (
            f"For a line of {thick} that is side by side: layers run nearly parallel, each beds into the one "
            "below, and a hard pull can draw thin line in between."
        )
    if locks > 0.5:
        return first + (
            "A cycle falls on its own earlier track: layers lock and stand as ridges. Lay the first turns "
            "by hand, or use a line of another thickness."
        )
    return first + (
        f"For a line of {thick} the layers cross and hold one another up: it does not dig in, and it takes "
        "more room. A cycle falls on its own track in about "
        f"{locks:.0%} of the ways in which the ends may be cut."
    )


def _ratio(cogs: Sequence[tuple[int, int]]) -> float:
    teeth = np.array(cogs, dtype=np.float64)
    return float(level_wind.train_ratio(teeth[:, 0], teeth[:, 1]))


def _why_not(sheet: ReelSheet) -> str:
    kind = sheet.reel.kind
    if kind == "fixed spool":
        return (
            "This reel moves its spool by a crank or an eccentric, not by a worm: no pitch follows from cogs."
        )
    reel = {"lever drag": "lever-drag reel", "fly": "fly reel"}.get(kind, kind)
    return f"This {reel} has no level wind: the hand lays the line, and no pawl wears."


def turns_on(radius: float) -> float:
    """Turns of the spool for a metre of line.

    Parameters
    ----------
    radius : float
        Radius where the line lies **[m]**, above zero.

    Returns
    -------
    float
        Turns per length **[1/m]**.

    Source
    ------
    Geometry.
    """
    return 1 / (2 * pi * radius)
