"""The drag of a reel as heat meets it: its discs after some works, and what takes heat from them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import pi

import numpy as np

from spoolwright.judgement import drag_train
from spoolwright.judgement.monte_carlo import Distribution, Rectangular, Sample, Triangular
from spoolwright.judgement.reel_state import ReelState
from spoolwright.mechanics.heat import ROOM, Body, Face, Layer, Link
from spoolwright.sheets import drag_stack, materials
from spoolwright.sheets.drag_stack import Pair
from spoolwright.sheets.materials import FrictionMaterial, StructuralMaterial
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Washer

HEAT_DRAWS: Mapping[str, Distribution] = {
    "conducts": Rectangular(0.0, 1.0),
    "stores": Rectangular(0.0, 1.0),
    "fades": Rectangular(0.0, 1.0),
    "stands": Rectangular(0.0, 1.0),
    "slips_below": Rectangular(0.0, 1.0),
    "touch": Triangular(500.0, 4000.0),
    "sleeve_share": Triangular(0.04, 0.08),
    "frame_share": Triangular(0.30, 0.50),
    "sleeve_to_frame": Rectangular(0.1, 0.6),
    "air": Triangular(5.0, 25.0),
    "pull_set": Triangular(0.95, 1.05),
}
"""What is not known of a hot drag: judgement priors. Where in its range a material conducts, stores, fades
and stands; on which side of a loose disc it slips; how well greased metal passes heat on at keys, ears and
bores [W/(m^2 K)]; shares of the reel's mass in sleeve with shaft and in frame with plates; bearings and
bridge between them [W/K]; heat to air at rest or in a breeze [W/(m^2 K)]; how near the pull is set with a
scale."""

USUAL_MASS = 0.30
"""Mass of a reel whose sheet states none [kg]."""
EAR_SHARE = 0.15
"""Share of a disc's rim that its ears touch the gear with: judgement prior."""
SPOOL_TOUCH = 5.0
"""Heat from a drag face that is part of the spool into the rest of it [W/K]: one piece of metal."""
FRAME_SKIN = 4.0
"""Skin of a reel's frame over the area of one flange: judgement prior."""
SPUN_AIR = 2.0
"""How much better a turning spool is cooled than a frame at rest: judgement prior."""

SLEEVE, FRAME, SPOOL = "sleeve", "frame", "spool"


@dataclass(frozen=True)
class Slip:
    """One slipping pair in the stack: positions of the fixed members it lies between, and the pair."""

    first: int
    last: int
    pair: Pair


@dataclass(frozen=True)
class HotStack:
    """What mechanics.heat takes, arrays over the draws; `limits` [K] of every face, shape (draws, faces)."""

    layers: tuple[Layer, ...]
    faces: tuple[Face, ...]
    bodies: tuple[Body, ...]
    links: tuple[Link, ...]
    limits: Sample
    materials: tuple[str, ...]
    names: tuple[str, ...]
    soft: tuple[bool, ...]

    def cells(self, soft: int, metal: int) -> list[int]:
        """Cells of each layer: metal is so good a conductor that it needs fewer."""
        return [soft if is_soft else metal for is_soft in self.soft]


def members(sheet: ReelSheet, state: ReelState) -> tuple[tuple[Washer, ...], tuple[Slip, ...]]:
    """The discs of the drag as some works left them, and where they slip.

    Parameters
    ----------
    sheet : ReelSheet
        The model, with a drag **[SI]**.
    state : ReelState
        Its slipping pairs **[SI]**.

    Returns
    -------
    tuple
        The discs in their order and the slipping pairs by position **[SI]**.

    Notes
    -----
    A pair that a work added lies under the gear: a friction disc and a steel one that turns with the shaft.

    Source
    ------
    The reel sheet; sheets.drag_stack for where a stack slips.

    Examples
    --------
    >>> from spoolwright.judgement.reel_state import as_built
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-52")
    >>> discs, slips = members(sheet, as_built(sheet))
    >>> len(discs), [(slip.first, slip.last) for slip in slips]
    (7, [(0, 2), (2, 4), (4, 6)])
    """
    assert sheet.drag is not None
    stack = sheet.drag.stack
    plain = drag_stack.slipping_pairs(stack).pairs
    added = max(len(state.pairs) - len(plain), 0)
    faced = dict(
        zip((p.face_material for p in plain), (p.face_material for p in state.pairs[added:]), strict=False)
    )
    discs = [w.model_copy(update={"material": faced.get(w.material, w.material)}) for w in stack]
    for pair in state.pairs[:added]:
        discs = [*_under_the_gear(discs, pair), *discs]
    slips = []
    pairs = iter(state.pairs)
    fixed = [place for place, disc in enumerate(discs) if disc.turns_with != "neither"]
    for first, last in pairwise(fixed):
        if discs[first].turns_with != discs[last].turns_with and _meet(discs[first : last + 1]):
            slips.append(Slip(first, last, next(pairs)))
    return tuple(discs), tuple(slips)


def _meet(run: Sequence[Washer]) -> bool:
    return all(_inner(a, b) < _outer(a, b) for a, b in pairwise(run))


def _outer(below: Washer, above: Washer) -> float:
    return min(below.outer_diameter, above.outer_diameter) / 2


def _inner(below: Washer, above: Washer) -> float:
    return max(below.inner_diameter, above.inner_diameter) / 2


def _under_the_gear(discs: Sequence[Washer], pair: Pair) -> list[Washer]:
    soft = next((w for w in discs if w.material in materials.friction_names()), discs[0])
    size = {"outer_diameter": 2 * pair.outer_radius, "inner_diameter": 2 * pair.inner_radius}
    disc = soft.model_copy(update={**size, "name": "disc under the gear", "material": pair.face_material})
    plate = soft.model_copy(
        update={**size, "name": "plate under the gear", "material": "carbon steel", "turns_with": "shaft"}
    )
    return [plate, disc]


def hot_stack(sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample]) -> HotStack:
    """Everything that the heat of a run meets in this reel, for every draw.

    Parameters
    ----------
    sheet : ReelSheet
        The model, with a drag **[SI]**.
    state : ReelState
        Its slipping pairs after some works **[SI]**.
    draws : mapping of str to array
        HEAT_DRAWS and the friction of every face **[SI]**, shape `(n,)`.

    Returns
    -------
    HotStack
        Layers, faces, bodies and links **[SI]**, arrays of shape `(n,)`; limits **[K]**, shape `(n, faces)`.

    Notes
    -----
    Every disc is a layer. Keyed discs pass heat to the sleeve, eared ones to the gear, a drag face of the
    spool to the whole spool; sleeve, gear and spool to the frame, and that to the air. A loose disc may slip
    on either side: the heat of its pair is split between its two faces, as drawn.

    Source
    ------
    Sizes from the sheet, materials with their sources in materials.toml; ways of the heat outside the discs
    are judgement priors.

    Examples
    --------
    >>> from spoolwright.judgement.monte_carlo import draw
    >>> from spoolwright.judgement.reel_state import as_built
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-52")
    >>> drawn = draw({**HEAT_DRAWS, "felt, greased": Rectangular(0.14, 0.22)}, samples=100, seed=1)
    >>> stack = hot_stack(sheet, as_built(sheet), drawn)
    >>> len(stack.layers), len(stack.faces), stack.limits.shape
    (7, 6, (100, 6))
    """
    discs, slips = members(sheet, state)
    places = {name: len(discs) + n for n, name in enumerate(_bodies_of(discs))}
    faces = [face for n, slip in enumerate(slips) for face in _faces(slips, n, draws)]
    shares = sum(face.share for face in faces)
    even = [Face(face.below, np.asarray(face.share / shares), face.fade) for face in faces]
    limits = np.stack([_limit(_slip_at(slips, face).pair, draws) for face in even], axis=-1)
    return HotStack(
        layers=tuple(_layer(discs, n, draws) for n in range(len(discs))),
        faces=tuple(even),
        bodies=tuple(_body(sheet, name, draws) for name in places),
        links=tuple(link for n in range(len(discs)) for link in _links(discs, n, places, draws))
        + (Link(places[SLEEVE], places[FRAME], draws["sleeve_to_frame"]),)
        + ((Link(places[SPOOL], places[FRAME], draws["sleeve_to_frame"]),) if SPOOL in places else ()),
        limits=limits,
        materials=tuple(dict.fromkeys(slip.pair.face_material for slip in slips)),
        names=tuple(f"{discs[f.below].name} on {discs[f.below + 1].name}" for f in even),
        soft=tuple(disc.material in materials.friction_names() for disc in discs),
    )


def _slip_at(slips: Sequence[Slip], face: Face) -> Slip:
    return next(slip for slip in slips if slip.first <= face.below < slip.last)


def _faces(slips: Sequence[Slip], n: int, draws: Mapping[str, Sample]) -> list[Face]:
    slip = slips[n]
    friction = draws[drag_train.friction_name(slip.pair.face_material, slip.pair.lubrication)]
    torque = friction * slip.pair.effective_radius
    entry = materials.friction_material(slip.pair.face_material)
    hot = _limit(slip.pair, draws) - ROOM
    fade = _within(entry.fade.low, entry.fade.high, draws["fades"]) / hot
    if slip.last == slip.first + 1:
        return [Face(slip.first, torque, fade)]
    # Each loose disc has its own side, so the draw is turned on by a few places from disc to disc.
    below = np.roll(draws["slips_below"], 7 * n)
    return [Face(slip.first, torque * below, fade), Face(slip.last - 1, torque * (1 - below), fade)]


def _limit(pair: Pair, draws: Mapping[str, Sample]) -> Sample:
    held = materials.friction_material(pair.face_material).temperature_limit
    return _within(held.low, held.high, draws["stands"])


def _within(low: float, high: float, at: Sample) -> Sample:
    return np.asarray(low + at * (high - low))


def _made_of(washer: Washer) -> FrictionMaterial | StructuralMaterial:
    if washer.material in materials.friction_names():
        return materials.friction_material(washer.material)
    return materials.structural_material(washer.material)


def _area(washer: Washer) -> float:
    return pi / 4 * (washer.outer_diameter**2 - washer.inner_diameter**2)


def _layer(discs: Sequence[Washer], n: int, draws: Mapping[str, Sample]) -> Layer:
    disc, made = discs[n], _made_of(discs[n])
    bare = pi * disc.outer_diameter * disc.thickness
    for neighbour in (n - 1, n + 1):
        covered = pi * _outer(disc, discs[neighbour]) ** 2 if 0 <= neighbour < len(discs) else 0.0
        bare += max(_area(disc) - covered, 0.0)
    return Layer(
        thickness=disc.thickness,
        conductivity=_within(made.conductivity.low, made.conductivity.high, draws["conducts"]),
        density=_within(made.density.low, made.density.high, draws["stores"]),
        specific_heat=_within(made.specific_heat.low, made.specific_heat.high, draws["stores"]),
        area=_area(disc),
        loss=np.asarray(draws["air"] * bare),
    )


def _bodies_of(discs: Sequence[Washer]) -> list[str]:
    return [SLEEVE, FRAME, *([SPOOL] if any(disc.turns_with == "spool" for disc in discs) else [])]


def _body(sheet: ReelSheet, name: str, draws: Mapping[str, Sample]) -> Body:
    mass = sheet.reel.mass or USUAL_MASS
    flange = pi * sheet.spool.flange_diameter**2 / 4
    if name == SLEEVE:
        steel = materials.structural_material("stainless steel").specific_heat.middle
        return Body(draws["sleeve_share"] * mass * steel)
    if name == FRAME:
        made = materials.structural_material(sheet.frame.material if sheet.frame else "aluminium alloy")
        return Body(
            draws["frame_share"] * mass * made.specific_heat.middle, draws["air"] * FRAME_SKIN * flange
        )
    made = materials.structural_material(sheet.spool.material or "aluminium alloy")
    return Body(
        np.full_like(draws["air"], (sheet.spool.mass or mass / 6) * made.specific_heat.middle),
        SPUN_AIR * draws["air"] * 2 * flange,
    )


def _links(
    discs: Sequence[Washer], n: int, places: Mapping[str, int], draws: Mapping[str, Sample]
) -> list[Link]:
    """Where a disc passes its heat on beside its neighbours."""
    disc = discs[n]
    bore = draws["touch"] * pi * disc.inner_diameter * disc.thickness
    rim = draws["touch"] * EAR_SHARE * pi * disc.outer_diameter * disc.thickness
    if disc.turns_with == "shaft":
        return [Link(n, places[SLEEVE], bore)]
    if disc.turns_with == "spool":
        part_of_it = disc.material not in materials.friction_names() and n in (0, len(discs) - 1)
        return [Link(n, places[SPOOL], np.full_like(bore, SPOOL_TOUCH) if part_of_it else rim)]
    if disc.turns_with == "gear":
        gear = _gear(discs)
        return [Link(n, places[SLEEVE], bore)] if n == gear else [Link(n, gear, rim)]
    return []


def _gear(discs: Sequence[Washer]) -> int:
    """The main gear is the widest member that turns with the gear."""
    turning = [n for n, disc in enumerate(discs) if disc.turns_with == "gear"]
    return max(turning, key=lambda n: discs[n].outer_diameter)
