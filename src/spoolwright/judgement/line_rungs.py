"""At which pull do the line at its knot, the arbor and the flanges under the wound line give?"""

from __future__ import annotations

from spoolwright.judgement.line_check import HIGHEST_SHARE, LOWEST_SHARE
from spoolwright.judgement.loads import RECTANGLE_PLASTIC, Loads, material_words
from spoolwright.judgement.monte_carlo import draw
from spoolwright.judgement.rung import Limit
from spoolwright.judgement.wound_line import USUAL_SHARE, WOUND_DRAWS, stresses
from spoolwright.sheets.materials import structural_material

WOUND_OVER_USUAL = (0.8, 1.6)
"""What the line was wound on at, averaged over the fill, over what is usual for its kind: judgement prior.

Most of a fill was wound at home and stays below; what a fish took out comes back while the rod goes down.
"""

SOFT, MILD = ("braided polyethylene", "dacron"), 0.3
"""Braids press by the mild third of the bands: sound spools stand braid wound on at 1 to 1.5 kg (common
practice, no source); how far into the bands they reach is a judgement prior."""

WOUND = ("arbor", "flanges")
"""Parts that feel how the line was wound on, not the pull of the moment."""


def line_rungs(loads: Loads) -> list[Limit]:
    """Limits of what hangs on the line: its knot, and the spool that it presses on.

    Parameters
    ----------
    loads : Loads
        The reel with a line on it, where the line leaves **[m]**, and draws; without a line there is none.

    Returns
    -------
    list of Limit
        Pulls at the line **[N]**, shape `(n,)`.

    Notes
    -----
    Line: strength times what a knot leaves. Arbor and flanges: the whole fill wound on at the share of the
    pull that goes with it, the usual winding tension over the usual drag (0.14 for nylon, 0.34 for braid),
    0.8 to 1.6 times; the pack's pressure anywhere between the two published ends, even on a logarithmic
    scale, since nobody has measured the line, braids in the mild third. Left out: age, nicks, wet nylon
    that shrinks, the give of the arbor that takes pressure off.

    Source
    ------
    Strengths and knots with their sources in sheets/lines.toml; pressure of the pack and what it
    does to the spool: judgement.wound_line.

    Examples
    --------
    >>> from spoolwright.judgement.load_ladder import load_ladder
    >>> from spoolwright.sheets import reel_sheet
    >>> rungs = load_ladder(reel_sheet.load("tarvak-52"), line="nylon 0.35 mm", samples=500).rungs
    >>> sorted(one.part for one in rungs if one.borne == "line")
    ['arbor', 'flanges', 'line']
    """
    if loads.line is None:
        return []
    return [_knot(loads), *_wound(loads)]


def _knot(loads: Loads) -> Limit:
    line = loads.line
    assert line is not None
    strength = loads.of("line", line.strength)
    kept = loads.of("knot", line.material.knot)
    span = f"{line.material.knot.low:.0%} to {line.material.knot.high:.0%}"
    return Limit(
        "line",
        "line at its knot",
        "the line breaks at its knot",
        strength * kept,
        f"strength of {line.material.title}, {span} of it left at a knot",
        f"{line.strength.source} ({line.strength.how}); knot: {line.material.knot.source}",
        "line",
    )


def _wound(loads: Loads) -> list[Limit]:
    room, line = loads.sheet.spool, loads.line
    assert line is not None
    if room.material is None or room.wall is None or loads.radius <= room.arbor_radius + line.diameter:
        return []
    metal = structural_material(room.material)
    draws = draw(WOUND_DRAWS, samples=loads.samples, seed=loads.seed)
    if line.material.name in SOFT:
        draws["pressure"] = MILD * draws["pressure"]
        draws["sideways"] = 1 / 3 + MILD * (draws["sideways"] - 1 / 3)
    hoop, bent = stresses(room, line, loads.radius, draws)
    usual = USUAL_SHARE.get(line.material.name, 0.05) / ((LOWEST_SHARE + HIGHEST_SHARE) / 2)
    share = usual * loads.between("wound at", *WOUND_OVER_USUAL)
    allowed = loads.yields_at("spool", room.material) / share
    why = f"{material_words(room.material, metal.yield_strength)}; nobody has measured how soft the pack is"
    return [
        Limit(
            "arbor",
            "arbor of the spool",
            "the line, if it was wound on for such pulls, crushes the arbor",
            allowed * loads.size("spool wall") / hoop,
            "pressure of a wound pack between the winch-drum rule and no slackening, squeeze of the arbor",
            why,
            "line",
        ),
        Limit(
            "flanges",
            "flanges of the spool",
            "the line, if it was wound on for such pulls, spreads the flanges for good",
            RECTANGLE_PLASTIC * allowed * loads.size("flange", 2) / bent,
            "the same pack, a third to all of its pressure sideways, ring plate clamped at the hub",
            why,
            "line",
        ),
    ]
