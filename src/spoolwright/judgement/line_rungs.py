"""At which pull do the line at its knot, the arbor and the flanges under the wound line give?"""

from __future__ import annotations

import numpy as np

from spoolwright.judgement.loads import Loads, material_words
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.rung import Limit
from spoolwright.mechanics import winding
from spoolwright.sheets.materials import structural_material

WOUND_AT = (0.15, 0.45)
"""Share of the pull at which the line goes back on, averaged over the fill: judgement prior. One pumps, and
winds while the rod goes down."""

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
    Line: strength times what a knot leaves. Arbor and flanges: all of the line wound on under a share of the
    pull, 15 to 45 %, since one pumps and winds on the way down; the pack's pressure anywhere between the two
    published ends, even on a logarithmic scale, since nobody has measured the line. Left out: age, nicks, wet nylon that
    shrinks, the give of the arbor that takes pressure off.

    Source
    ------
    Strengths and knots with their sources in sheets/lines.toml; pressure of the pack: mechanics.winding.

    Examples
    --------
    >>> line_rungs.__name__
    'line_rungs'
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
    pitch, height = line.diameter, line.diameter * np.sqrt(3) / 2
    ends = winding.pressure_band(1.0, pitch, height, room.arbor_radius, loads.radius)
    low, high = np.log(float(ends["low"])), np.log(float(ends["high"]))
    each = np.exp(loads.evenly("pressure of the pack", low, high))  # [Pa] for each newton of tension
    wound = loads.between("wound at", *WOUND_AT)
    allowed = loads.yields_at("spool", room.material)
    hoop: Sample = each * room.arbor_radius / room.wall
    return [
        Limit(
            "arbor",
            "arbor of the spool",
            "the line, if all of it was wound on under such pulls, crushes the arbor",
            allowed * loads.size("spool wall") / hoop / wound,
            "pressure of a wound pack between the winch-drum rule and no slackening at all, hoop stress in the wall",
            f"{material_words(room.material, metal.yield_strength)}; stiffness of the pack unknown, hence the width",
            "line",
        )
    ]
