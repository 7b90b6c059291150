"""At which pull do the spool's shaft bend and its bearings take dents?"""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, pi

import numpy as np

from spoolwright.judgement.loads import ROUND_PLASTIC, Loads, material_words
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.rung import Limit
from spoolwright.mechanics import beams, rolling
from spoolwright.sheets.bearing_sizes import StandardBearing, bearing_size
from spoolwright.sheets.materials import structural_material
from spoolwright.sheets.sheet_tables import Bearing, Shaft

ON_THE_SHAFT = (0.3, 0.7)
"""Share of the pinion's push that reaches the spool's shaft where the pinion rides on it: judgement prior."""

BESIDE_IT = (0.0, 0.2)
"""The same where the pinion has a bearing of its own: judgement prior."""

LEAST_SAFETY = (0.5, 1.0)
"""Static safety of a bearing at its limit: 1 where it must stay quiet, 0.5 where that hardly counts."""

NOT_ON_THE_SPOOL = ("fixed spool", "fly")
"""Kinds in which no pinion pushes on the spool's shaft."""

STIFF = 2e11
"""Young's modulus with which the shaft is bent [Pa]; stress does not ask for it."""

FITS = 1e-3
"""Steps of a shaft whose sum comes as near to its span as this are those between its bearings [m]."""


@dataclass(frozen=True)
class _Ends:
    """What a newton at the line puts on the shaft: moment at its worst place [m], force on a bearing [-]."""

    moment: Sample
    bearing: Sample


def spool_rungs(loads: Loads) -> list[Limit]:
    """Limits of the spool's shaft and of the bearings that carry it.

    Parameters
    ----------
    loads : Loads
        The reel, where the line leaves **[m]**, and draws.

    Returns
    -------
    list of Limit
        Pulls at the line **[N]**, shape `(n,)`: spool shaft, spool bearings, line roller's bearing, as far as
        the sheet has them.

    Notes
    -----
    Borne at both ends, gap = (span - spool width) / 2: the hub stiffens the shaft between the flanges, so
    it bends hardest where the hub ends, with the line at that flange: M = F gap (span - gap) / span. To it
    comes what the pinion pushes, Ft / cos(pressure angle), midway in the gap, as if both pushed the same
    way. Steps that the sheet states count by their own sections, without the notch of their corners. Borne
    at one end: M = F overhang. Limit where the round section yields through, 1.70 pi d^3 / 32 times the
    yield. Bearings: load = C0 / s0 with s0 from 0.5 to 1, all of it across the shaft. Left out: the fit of
    the hub, helical thrust, shock, fatigue (that is wear, told elsewhere).

    Source
    ------
    Statics of a beam on two supports; plastic section 16 / (3 pi) of a circle (any strength of materials);
    ISO 76 for static safety, its least values as catalogues print them (from memory); ratings with their
    sources in sheets/bearing_sizes.toml.

    Examples
    --------
    >>> from spoolwright.judgement.load_ladder import load_ladder
    >>> from spoolwright.sheets import reel_sheet
    >>> rungs = load_ladder(reel_sheet.load("lumvik-4000"), samples=500).rungs
    >>> [one.name for one in rungs if "shaft" in one.name or "roller of" in one.name]
    ['main shaft']
    """
    found: list[Limit] = []
    shaft = loads.sheet.shaft
    if shaft is not None:
        on = _on_the_shaft(loads, shaft)
        found.append(_shaft(loads, shaft, on.moment))
        found.extend(
            _bearings(loads, "spool", on.bearing, "spool bearings", "the spool runs rough from then on")
        )
    about = np.full(loads.samples, 2 * cos(pi / 4))  # the line turns by about a right angle
    found.extend(
        _bearings(loads, "line roller", about, "bearing of the line roller", "the line roller runs rough")
    )
    return found


def _on_the_shaft(loads: Loads, shaft: Shaft) -> _Ends:
    if shaft.borne == "one end":
        stated = shaft.overhang
        arm = loads.stated_or_guessed("spool overhang", stated, 0.4 * shaft.span, 0.6 * shaft.span)
        return _Ends(arm, 1 + arm / shaft.span)
    gap = (shaft.span - min(loads.sheet.spool.width, 0.96 * shaft.span)) / 2
    near, middle = ((shaft.span - place) / shaft.span for place in (gap, gap / 2))
    push = _pinion_push(loads)
    moment = _moment(shaft, gap, push) * loads.size("spool gap")
    return _Ends(moment, near + push * middle)


def _moment(shaft: Shaft, gap: float, push: Sample) -> Sample:
    """Greatest moment outside the hub for a newton at the line, as on a shaft of the stated diameter [m].

    Where the sheet tells the shaft's steps, each is weighed by its own section.
    """
    steps = [(one.length, one.diameter) for one in shaft.steps]
    if abs(sum(length for length, _ in steps) - shaft.span) > FITS:
        steps = [(shaft.span, shaft.diameter)]
    lengths, diameters = zip(*steps, strict=True)
    shoulders = np.cumsum(lengths)[:-1]
    free = shoulders[(shoulders <= gap) | (shoulders >= shaft.span - gap)]
    at = np.unique([*free, gap / 2, gap, shaft.span - gap])

    def stress(place: float) -> Sample:
        bent = beams.stepped_shaft(1.0, place, lengths, diameters, STIFF, [0.0, shaft.span], at)
        return np.asarray(bent.bending_stress)

    line = np.maximum(stress(gap), stress(shaft.span - gap))
    both = line[:, np.newaxis] + stress(gap / 2)[:, np.newaxis] * push
    return np.asarray(np.max(both, axis=0) * pi * shaft.diameter**3 / 32)


def _pinion_push(loads: Loads) -> Sample:
    gears = loads.sheet.gears
    if gears is None or loads.sheet.reel.kind in NOT_ON_THE_SPOOL:
        return np.zeros(loads.samples)
    tangential = loads.radius / (gears.module * gears.pinion_teeth / (2 * cos(gears.helix_angle)))
    own = any("pinion" in bearing.place.lower() for bearing in loads.sheet.bearings)
    share = loads.between("pinion on the shaft", *(BESIDE_IT if own else ON_THE_SHAFT))
    return tangential / cos(gears.pressure_angle) * share


def _shaft(loads: Loads, shaft: Shaft, moment: Sample) -> Limit:
    section = ROUND_PLASTIC * pi * shaft.diameter**3 / 32 * loads.size("spool shaft", 3)
    round_bar = section / moment
    name = "main shaft" if loads.sheet.reel.kind == "fixed spool" else "spool shaft"
    metal = structural_material(shaft.material)
    return Limit(
        "spool shaft",
        name,
        f"the {name} bends and stays bent, and the spool wobbles and rubs",
        round_bar * loads.yields_at("spool shaft", shaft.material),
        "beam on its bearings, the line at one flange, the section yielded through",
        material_words(shaft.material, metal.yield_strength),
        lasts=round_bar / ROUND_PLASTIC * loads.of("spool shaft for its life", metal.endurance),
    )


def _bearings(loads: Loads, word: str, load: Sample, name: str, then: str) -> list[Limit]:
    """The weakest of the bearings whose place holds that word; none where no size is a standard one."""
    held = [one for one in loads.sheet.bearings if word in one.place.lower()]
    known = [(one, size) for one in held if (size := _standard(one)) is not None]
    if not known:
        return []
    one, size = min(known, key=lambda pair: pair[1].static_rating.middle)
    rating = loads.of(name, size.static_rating) * _of_balls(one, size)
    pull = rating / loads.between("static safety", *LEAST_SAFETY) / load
    low, high = size.static_rating.low, size.static_rating.high
    span = f"{low:.0f} N" if low == high else f"{low:.0f} to {high:.0f} N"
    return [
        Limit(
            name,
            name,
            f"the balls dent their rings ({one.place}, {size.name}), and {then}",
            pull,
            "ISO 76 static safety, 0.5 to 1 at the limit as catalogues print it (from memory)",
            f"static rating {span}: {size.static_rating.source} ({size.static_rating.how})",
        )
    ]


def _of_balls(bearing: Bearing, size: StandardBearing) -> float:
    """Static rating with these balls over that with steel ones: stiffer balls dent the rings sooner."""
    if bearing.kind != "hybrid":
        return 1.0
    return float(rolling.hybrid(size.balls or 7, size.ball_diameter or 1.5e-3)["static_rating"])


def _standard(bearing: Bearing) -> StandardBearing | None:
    try:
        return bearing_size(bearing.size.bore, bearing.size.outer, bearing.size.width)
    except KeyError:
        return None
