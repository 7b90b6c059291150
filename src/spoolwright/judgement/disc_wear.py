"""How fast do the friction discs of a drag wear thin?"""

from __future__ import annotations

from collections.abc import Mapping
from math import pi

import numpy as np

from spoolwright.judgement import drag_train
from spoolwright.judgement.line_lay import turns_on
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.reel_state import ReelState
from spoolwright.judgement.worn_face import Face, Use, spread_by_powers
from spoolwright.mechanics import wear
from spoolwright.sheets import materials, wear_rates
from spoolwright.sheets.drag_stack import Pair
from spoolwright.sheets.reel_sheet import ReelSheet

THIN = 0.8e-3
"""Thickness of a friction disc where the stack names none that fits: judgement prior."""
NOT_BY_SLIDING = (
    "Discs seldom wear thin: heat glazes and chars them, water swells them, a drag left tight squeezes them. "
    "Look at them whatever this says."
)


def disc_faces(
    sheet: ReelSheet, state: ReelState, use: Use, draws: Mapping[str, Sample], friction: Mapping[str, Sample]
) -> tuple[Face, ...]:
    """Friction discs of this reel, one face for each material that slips.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    state : ReelState
        Its slipping pairs, as they are or after some works **[SI]**.
    use : Use
        Line that fish take in a week **[m]** and at which pull **[N]**.
    draws : mapping of str to array
        What `worn_face.common_draws` gave **[-]**, shape `(n,)`.
    friction : mapping of str to array
        Draws of friction by the names of `drag_train.friction_name` **[-]**, shape `(n,)`.

    Returns
    -------
    tuple of Face
        Thickness lost a week in m; none where no friction disc slips.

    Notes
    -----
    All pairs carry one clamp force, torque / sum(mu r); each slides r / (R ratio) for a metre of line. A
    loose disc slips on one of its sides at a time, so it loses k p s in all.

    Source
    ------
    Plate clutch; Archard; rates in sheets/wear.toml.
    """
    if sheet.drag is None:
        return ()
    grip = sum((friction[_name(pair)] * pair.effective_radius for pair in state.pairs), np.zeros(1))
    if not state.pairs:
        return ()
    torque = use.fish_pull * sheet.spool.full_radius * sheet.drag_ratio
    clamp = np.asarray(torque / grip)
    first = {pair.face_material: pair for pair in reversed(state.pairs)}
    discs = (pair for name, pair in first.items() if name != materials.BARE_METAL)
    return tuple(_face(sheet, pair, use, draws, clamp) for pair in discs)


def _name(pair: Pair) -> str:
    return drag_train.friction_name(pair.face_material, pair.lubrication)


def _face(sheet: ReelSheet, pair: Pair, use: Use, draws: Mapping[str, Sample], clamp: Sample) -> Face:
    share = wear_rates.reject_share(pair.face_material)
    rates = wear_rates.disc_wear(pair.face_material, pair.lubrication)
    thick = _thickness(sheet, pair)
    pressure = np.asarray(clamp / (pi * (pair.outer_radius**2 - pair.inner_radius**2)))
    turns = turns_on(sheet.spool.full_radius) / sheet.drag_ratio * use.fish
    way = np.full_like(pressure, 2 * pi * pair.effective_radius * turns)
    depth = np.asarray(wear.archard_depth(spread_by_powers(rates, draws["disc.clean"]), pressure, way))
    made = f"{pair.face_material}, {pair.lubrication}"
    why = (f"{made}: {rates.source} ({rates.how})", "the pull of fish and its metres as you gave them")
    source = f"{share.source}: {share.middle:.0%} of a new disc"
    limit = np.full_like(depth, (1 - share.middle) * thick)
    return Face(f"disc-{pair.face_material}", "friction discs of the drag", made, limit, source,
                pressure, way, depth, why)  # fmt: skip


def _thickness(sheet: ReelSheet, pair: Pair) -> float:
    """Thickness of the thinnest disc of this material, else of the thinnest friction disc there is."""
    assert sheet.drag is not None
    loose = [washer for washer in sheet.drag.stack if washer.material in materials.friction_names()]
    same = [washer.thickness for washer in loose if washer.material == pair.face_material]
    return min(same or [washer.thickness for washer in loose] or [THIN])
