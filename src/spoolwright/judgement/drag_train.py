"""From the star to the line: clamp force, slip torque and pull of one reel, for every draw at once."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.reel_state import ReelState
from spoolwright.mechanics import clutch, spool, springs, threads
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Drag

STEPS = 61
"""Points on the curve of the springs; the force between two of them is taken as straight."""

LIMITS = ("the springs lie flat", "the hand on the star", "the turns of the star")
RUNNING_GAP = 0.2e-3
"""How far the plates of a lever drag clear one another at free, at most, where the sheet says nothing [m]:
judgement prior."""


@dataclass(frozen=True)
class Travel:
    """How the star's travel is used up: by springs, and by what gives or is loose besides them; [m], [N].

    Of a lever's spare way nothing gives: it is the gap by which the plates run clear at free.
    """

    deflection: NDArray[np.float64]
    force: NDArray[np.float64]
    per_turn: float
    spare: float
    gives: bool = True

    @property
    def flat_force(self) -> float:
        return float(self.force[-1])


@lru_cache(maxsize=64)
def travel(drag: Drag) -> Travel:
    """The curve of the springs, and the travel that they do not account for.

    Parameters
    ----------
    drag : Drag
        Drag table of a reel sheet **[SI]**.

    Returns
    -------
    Travel
        Deflection **[m]** and force **[N]** of the springs, shape `(61,)`; travel of a turn and spare
        travel **[m]**.

    Notes
    -----
    spare = turns_to_full * pitch - deflection at flat. Where it is negative the turns end before the
    springs are flat, and the curve is cut there. A lever's cam has no spare: with the preset as far on as
    leaves the spool free, the plates clear one another by up to the running gap.

    Source
    ------
    EN 16984 for the springs; the split of the spare travel and the running gap are judgement priors.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> drag = reel_sheet.load("tarvak-54c").drag
    >>> bool(travel(drag).flat_force > 0)
    True
    """
    per_turn = drag.lever.cam_rise / drag.turns_to_full if drag.lever else drag.thread.pitch
    pack = drag.springs
    flat = len(pack.nests) * pack.cone_height
    reach = min(flat, drag.turns_to_full * per_turn)
    deflection = np.linspace(0.0, reach, STEPS)
    # The last point may pass "flat" by the last bit of a float.
    force = springs.stack_force(
        np.minimum(deflection, flat * (1 - 1e-12)),
        pack.outer_diameter,
        pack.inner_diameter,
        pack.thickness,
        pack.cone_height,
        pack.arrangement,
        pack.youngs_modulus,
    )
    rising = np.maximum.accumulate(np.asarray(force))
    if drag.lever:
        gap = drag.lever.running_gap
        return Travel(deflection, rising, per_turn, RUNNING_GAP if gap is None else gap, gives=False)
    return Travel(deflection, rising, per_turn, max(0.0, drag.turns_to_full * per_turn - flat))


def clamp_by_hand(drag: Drag, draws: Mapping[str, Sample]) -> Sample:
    """The most that a hand on the star or knob can clamp.

    Parameters
    ----------
    drag : Drag
        Drag table of a reel sheet **[SI]**.
    draws : mapping of str to array
        `hand` and `thread_friction` factors **[-]**, shape `(n,)`.

    Returns
    -------
    array
        Clamp force **[N]**, shape `(n,)`; infinite for a lever, whose cam is not limited by the hand.

    Source
    ------
    Screw statics, mechanics.threads.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> ones = {"hand": np.ones(1), "thread_friction": np.ones(1)}
    >>> 1200 < float(clamp_by_hand(reel_sheet.load("tarvak-54c").drag, ones)[0]) < 1600
    True
    """
    if drag.lever:
        return np.full_like(draws["hand"], np.inf)
    thread = drag.thread
    force = threads.axial_force(
        drag.hand_torque * draws["hand"],
        thread.pitch,
        thread.pitch_diameter,
        thread.friction * draws["thread_friction"],
        thread.flank_angle,
        thread.bearing_radius,
        thread.bearing_friction * draws["thread_friction"],
    )
    return np.asarray(force, dtype=np.float64)


def clamp_at(drag: Drag, turns: float, draws: Mapping[str, Sample], spring_force: Sample) -> Sample:
    """Clamp force at so many turns of the star from free.

    Parameters
    ----------
    drag : Drag
        Drag table of a reel sheet **[SI]**.
    turns : float
        Turns from free **[-]**, 0 to turns_to_full; beyond that the end is taken.
    draws : mapping of str to array
        `take_up` (share of the spare travel that is loose, 0 to 1) and what clamp_by_hand needs **[-]**,
        shape `(n,)`.
    spring_force : array
        Factor on the force of the springs as drawn **[-]**, shape `(n,)`.

    Returns
    -------
    array
        Clamp force **[N]**, shape `(n,)`.

    Notes
    -----
    travel = loose + springs + give of the stack, the last growing with the force; the most a hand gives
    caps it.

    Source
    ------
    Series springs; which part of the spare travel is loose and which gives is a judgement prior.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> drag = reel_sheet.load("tarvak-54c").drag
    >>> draws = {name: np.ones(1) for name in ("hand", "thread_friction")} | {"take_up": np.zeros(1)}
    >>> full = clamp_at(drag, drag.turns_to_full, draws, np.ones(1))
    >>> bool(full[0] == travel(drag).flat_force and clamp_at(drag, 0.0, draws, np.ones(1))[0] == 0.0)
    True
    """
    way = travel(drag)
    loose = way.spare * draws["take_up"][:, np.newaxis]
    give = (way.spare - loose) * (way.force / way.force[-1]) * way.gives
    used = way.deflection + give
    wanted = np.maximum(turns * way.per_turn - loose, 0.0)
    at = np.clip((used < wanted).sum(axis=1), 1, STEPS - 1)
    row = np.arange(len(at))
    before, beyond = used[row, at - 1], used[row, at]
    part = np.clip((wanted[:, 0] - before) / (beyond - before), 0.0, 1.0)
    force = way.force[at - 1] + part * (way.force[at] - way.force[at - 1])
    return np.asarray(np.minimum(force * spring_force, clamp_by_hand(drag, draws)))


def greatest_clamp(
    drag: Drag, draws: Mapping[str, Sample], spring_force: Sample
) -> tuple[Sample, dict[str, float]]:
    """The most that still can be set: springs not yet flat, a hand on the star, turns or way left.

    Parameters
    ----------
    drag : Drag
        Drag table of a reel sheet **[SI]**.
    draws : mapping of str to array
        As clamp_by_hand needs, and `take_up` for a lever **[-]**, shape `(n,)`.
    spring_force : array
        Factor on the force of the springs as drawn **[-]**, shape `(n,)`.

    Returns
    -------
    tuple
        Clamp force **[N]**, shape `(n,)`, and the share of draws **[-]** in which each limit came first.

    Notes
    -----
    Past flat springs the star has no feel left: one touch more locks the spool. That is not usable drag. A
    lever goes to the end of its cam, with its preset as far on as leaves the spool free.

    Source
    ------
    Trade sense, common practice; the arithmetic is mechanics'.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> ones = {"hand": np.ones(1), "thread_friction": np.ones(1)}
    >>> greatest_clamp(reel_sheet.load("tarvak-54c").drag, ones, np.ones(1))[1]
    {'the springs lie flat': 1.0, 'the hand on the star': 0.0, 'the turns of the star': 0.0}
    """
    way = travel(drag)
    if drag.lever:
        return _greatest_of_lever(drag, draws, spring_force)
    by_springs = way.flat_force * spring_force
    by_hand = clamp_by_hand(drag, draws)
    hand = float(np.mean(by_hand < by_springs))
    cut = way.deflection[-1] < 0.999 * len(drag.springs.nests) * drag.springs.cone_height
    springs_or_turns = (0.0, 1 - hand) if cut else (1 - hand, 0.0)
    shares = dict(zip(LIMITS, (springs_or_turns[0], hand, springs_or_turns[1]), strict=True))
    return np.minimum(by_springs, by_hand), shares


def _greatest_of_lever(
    drag: Drag, draws: Mapping[str, Sample], spring_force: Sample
) -> tuple[Sample, dict[str, float]]:
    clamp = clamp_at(drag, drag.turns_to_full, draws, spring_force)
    flat = float(np.mean(clamp >= 0.9999 * travel(drag).flat_force * spring_force))
    cut = travel(drag).deflection[-1] < 0.999 * len(drag.springs.nests) * drag.springs.cone_height
    shares = (0.0, 0.0, 1.0) if cut else (flat, 0.0, 1 - flat)
    return clamp, dict(zip(LIMITS, shares, strict=True))


def spool_torque(sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], clamp: Sample) -> Sample:
    """Torque on the spool at which the drag slips: pull times radius, whatever the fill.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    state : ReelState
        Its slipping pairs **[SI]**.
    draws : mapping of str to array
        `face` (0 run in, 1 even pressure), `drag_condition` and one friction per face **[-]**, shape `(n,)`.
    clamp : array
        Clamp force **[N]**, shape `(n,)`.

    Returns
    -------
    array
        Torque **[N m]**, shape `(n,)`.

    Source
    ------
    Plate-clutch formula, mechanics.clutch.

    Examples
    --------
    >>> from spoolwright.judgement.reel_state import as_built
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-54c")
    >>> draws = {"face": np.zeros(1), "drag_condition": np.ones(1)}
    >>> draws["woven carbon, greased"] = np.full(1, 0.155)
    >>> round(float(spool_torque(sheet, as_built(sheet), draws, np.full(1, 1000.0))[0]), 2)
    1.58
    """
    torque = np.zeros_like(clamp)
    for pair in state.pairs:
        worn = clutch.effective_radius(pair.outer_radius, pair.inner_radius)
        even = clutch.effective_radius(pair.outer_radius, pair.inner_radius, model="uniform-pressure")
        radius = worn + draws["face"] * (even - worn)
        torque = torque + draws[friction_name(pair.face_material, pair.lubrication)] * clamp * radius
    return np.asarray(torque * draws["drag_condition"] / sheet.drag_ratio)


def friction_name(material: str, lubrication: str) -> str:
    """Under what name the friction of a face is drawn.

    Parameters
    ----------
    material : str
        Material of the face **[-]**.
    lubrication : str
        "dry" or "greased" **[-]**.

    Returns
    -------
    str
        Name **[-]**.

    Source
    ------
    Our own bookkeeping.

    Examples
    --------
    >>> friction_name("felt", "greased")
    'felt, greased'
    """
    return f"{material}, {lubrication}"


def radius_at_fill(sheet: ReelSheet, share: float) -> float:
    """Radius where the line leaves when so much of a full spool's line is left.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    share : float
        Share of the line left **[-]**, 0 to 1.

    Returns
    -------
    float
        Radius **[m]**.

    Raises
    ------
    ValueError
        The share is outside 0 to 1.

    Notes
    -----
    Half of the line is half of the volume, not half of the depth.

    Source
    ------
    Geometry, mechanics.spool.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-58r")
    >>> [round(1000 * radius_at_fill(sheet, share), 2) for share in (1.0, 0.5, 0.1)]
    [23.5, 18.35, 12.81]
    """
    if not 0 <= share <= 1:
        raise ValueError(f"share: 0 to 1 is accepted; got {share}")
    room = sheet.spool
    thread = 0.3e-3  # any thickness gives the same radius: only the volume counts
    whole = spool.line_length(room.arbor_radius, room.full_radius, room.width, thread)
    return float(spool.fill_radius(room.arbor_radius, share * whole, room.width, thread))
