"""The frame of a reel, plates and pillars: how far a pull leans the spool's axis and its gears' mesh."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import lru_cache
from math import cos, pi, sin
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

Place = tuple[float, float, float]
CLAMPED = (True,) * 6
WAYS = ("FX", "FY", "FZ", "MX", "MY", "MZ")
SPOKE_SHARE = 0.8
"""Width of a plate's strip from bearing to pillar, over an even share of the circle halfway out."""
RIM_SHARE = 0.3
"""Width of the strip along a plate's rim, over the plate's radius."""
REFERENCE_MODULUS = 1e11
"""The frame is solved once at this stiffness; what it does goes with 1 / E."""


class Bar(NamedTuple):
    """A straight bar of a frame between two joints; `roll` turns its section about its own axis."""

    start: int
    end: int
    area: float
    moment_y: float
    moment_z: float
    torsion: float
    roll: float = 0.0


class Moved(NamedTuple):
    """How the joints of a frame move, and what holds them: shape (cases, joints, 6)."""

    movements: NDArray[np.float64]
    reactions: NDArray[np.float64]


class Lean(NamedTuple):
    """What one newton at the line does to the spool's axis, to the mesh and to the spool's place."""

    tilt: Number
    mesh: Number
    give: Number


def joint_movements(
    joints: Sequence[Place],
    bars: Sequence[Bar],
    held: Mapping[int, tuple[bool, ...]],
    cases: Sequence[Mapping[int, Sequence[float]]],
    youngs_modulus: float,
    shear_modulus: float,
) -> Moved:
    """How the joints of a frame of straight bars in space move under forces at them.

    Parameters
    ----------
    joints : Sequence[Place]
        Places of the joints (x, y, z) [m].
    bars : Sequence[Bar]
        Bars by the numbers of their joints, area [m^2], second moments about their own y and z and torsion
        constant [m^4], roll [rad]. Own z lies level (square to y of the frame), unless the bar stands along
        y: then it is the frame's z.
    held : Mapping[int, tuple[bool, ...]]
        Joint and which of its ways x, y, z and turns about them are held [-].
    cases : Sequence[Mapping[int, Sequence[float]]]
        One mapping a load case: joint and its three forces [N] and three moments [N m].
    youngs_modulus : float
        Young's modulus of all bars [Pa], above zero.
    shear_modulus : float
        Their shear modulus [Pa], above zero.

    Returns
    -------
    Moved
        Movements [m] and turns [rad], reactions [N] and [N m], each of shape (cases, joints, 6).

    Raises
    ------
    ValueError
        A stiffness that is not above zero, or a frame that holds nothing.

    Notes
    -----
    Linear stiffness method with slender bars (no shear), solved by the frame library PyNite, which is loaded
    here on the first call: about two seconds, once for each run of the program.

    Source
    ------
    Any text on matrix analysis of frames; the tests hold Logan's, Ferreira's and Sennett's printed frames.

    Examples
    --------
    >>> rod = Bar(0, 1, 1e-4, 1e-9, 1e-9, 2e-9)
    >>> push = {1: (0, 3, 0, 0, 0, 0)}
    >>> moved = joint_movements([(0, 0, 0), (1, 0, 0)], [rod], {0: CLAMPED}, [push], 1e9, 1e9)
    >>> round(float(moved.movements[0, 1, 1]), 6)
    1.0
    """
    from Pynite import FEModel3D  # type: ignore[import-untyped]

    arguments.positive(youngs_modulus=youngs_modulus, shear_modulus=shear_modulus)
    if not any(any(ways) for ways in held.values()):
        raise ValueError("held must hold at least one joint; came none")
    model = FEModel3D()
    model.add_material("metal", youngs_modulus, shear_modulus, 0.3, 1.0)
    for i, place in enumerate(joints):
        model.add_node(f"{i}", *(float(v) for v in place))
    for i, ways in held.items():
        model.def_support(f"{i}", *ways)
    for i, bar in enumerate(bars):
        model.add_section(f"{i}", bar.area, bar.moment_y, bar.moment_z, bar.torsion)
        model.add_member(f"{i}", f"{bar.start}", f"{bar.end}", "metal", f"{i}", np.degrees(bar.roll))
    for number, case in enumerate(cases):
        model.add_load_combo(f"{number}", {f"{number}": 1.0})
        for joint, loads in case.items():
            for way, load in zip(WAYS, loads, strict=True):
                model.add_node_load(f"{joint}", way, float(load), case=f"{number}")
    model.analyze_linear(check_stability=False, sparse=False)
    nodes = [model.nodes[f"{i}"] for i in range(len(joints))]
    moved = [
        [[n.DX[c], n.DY[c], n.DZ[c], n.RX[c], n.RY[c], n.RZ[c]] for n in nodes]
        for c in (f"{number}" for number in range(len(cases)))
    ]
    pushed = [
        [[getattr(n, f"Rxn{way}")[c] for way in WAYS] for n in nodes]
        for c in (f"{number}" for number in range(len(cases)))
    ]
    return Moved(np.array(moved, dtype=float), np.array(pushed, dtype=float))


def portal_sway(
    force: Number,
    span: Number,
    height: Number,
    youngs_modulus: Number,
    beam_moment: Number,
    column_moment: Number,
    base: str = "fixed",
) -> Number:
    """How far a portal of two posts and a beam leans under a force along its beam.

    Parameters
    ----------
    force : Number
        Force along the beam [N], any sign.
    span : Number
        Distance of the posts [m], above zero.
    height : Number
        Height of the posts [m], above zero.
    youngs_modulus : Number
        Young's modulus [Pa], above zero.
    beam_moment : Number
        Second moment of area of the beam [m^4], above zero.
    column_moment : Number
        Second moment of area of a post [m^4], above zero.
    base : str
        How the posts stand [-]: "fixed" or "pinned".

    Returns
    -------
    Number
        Sideways movement of the beam [m], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or another base.

    Notes
    -----
    With k = I_beam height / (I_post span): F h^3 (3 k + 2) / (12 E I_post (6 k + 1)) where the posts are
    clamped, F h^3 (2 + 1 / k) / (12 E I_post) where they are pinned. No shortening of the bars.

    Source
    ------
    Kleinlogel, Rigid Frame Formulas, frames 1 and 2 (from memory).

    Examples
    --------
    >>> round(portal_sway(100.0, 0.060, 0.040, 70e9, 1e-10, 1e-10) * 1e6, 2)
    60.95
    """
    arguments.finite(force=force)
    arguments.positive(span=span, height=height, youngs_modulus=youngs_modulus)
    arguments.positive(beam_moment=beam_moment, column_moment=column_moment)
    arguments.one_of(("fixed", "pinned"), base=base)
    k = beam_moment * height / (column_moment * span)
    shape = (3 * k + 2) / (6 * k + 1) if base == "fixed" else 2 + 1 / k
    return force * height**3 * shape / (12 * youngs_modulus * column_moment)


def spool_axis_tilt(
    line_position: Number,
    line_radius: Number,
    *,
    plate_spacing: float,
    plate_radius: float,
    plate_thickness: float,
    pillars: int,
    pillar_diameter: float,
    pillar_circle: float,
    youngs_modulus: Number,
    shaft_slope: Number = 0.0,
    poisson: float = 0.33,
    foot_share: float = 0.5,
) -> Lean:
    """How far a newton at the line leans the spool's axis, and its pinion from its main gear.

    Parameters
    ----------
    line_position : Number
        Where the line leaves the spool, from the gear-side plate [m], zero to plate_spacing.
    line_radius : Number
        Radius where it leaves [m], zero or more; the pull's torque goes into the gear-side plate.
    plate_spacing : float
        Distance of the plates' middles [m], above zero.
    plate_radius : float
        Radius of a plate [m], above zero.
    plate_thickness : float
        Thickness of a plate [m], above zero.
    pillars : int
        Pillars between the plates [-], 3 to 12; the two lowest stand in the foot.
    pillar_diameter : float
        Diameter of a pillar [m], above zero.
    pillar_circle : float
        Radius of the circle on which they stand [m], above zero, at most plate_radius.
    youngs_modulus : Number
        Young's modulus of plates and pillars [Pa], above zero.
    shaft_slope : Number
        Slope of the shaft's gear-side end against the line between its bearings, for a newton at the line
        [rad/N]: beams.stepped_shaft tells it, positive as it stands there; zero for a rigid shaft.
    poisson : float
        Poisson's ratio of the frame [-], zero to 0.5.
    foot_share : float
        Share of the plates' distance over which the foot holds its pillars [-], above zero, below 1.

    Returns
    -------
    Lean
        For one newton: tilt of the line between the bearings and misalignment of pinion to main gear
        [rad/N], and movement of the axis under the line [m/N]; broadcast shape of line_position,
        line_radius, youngs_modulus and shaft_slope.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    Each plate is a wheel of flat strips (spokes to the pillars, a rim), pillars are round bars, the foot
    holds the lowest two. Bearings pass force and no moment. The main gear leans with the gear-side plate,
    the pinion with the shaft's end. A mesh of 270 shell nodes leaned 13 to 30 % less in three two-plate
    frames of common sizes, and more the finer it was; ports and thin places make a real plate softer: give
    it a band of 0.7 to 1.6. Frames of one piece are stiffer than this.

    Source
    ------
    Stiffness method as joint_movements; strip widths are a judgement prior, fitted to that mesh.

    Examples
    --------
    >>> lean = spool_axis_tilt(0.010, 0.022, plate_spacing=0.038, plate_radius=0.031, plate_thickness=0.002,
    ...     pillars=4, pillar_diameter=0.005, pillar_circle=0.027, youngs_modulus=97e9)
    >>> round(lean.tilt * 100 * 1e3, 2)
    0.16
    """
    arguments.positive(plate_spacing=plate_spacing, plate_radius=plate_radius, pillar_circle=pillar_circle)
    arguments.positive(plate_thickness=plate_thickness, pillar_diameter=pillar_diameter)
    arguments.positive(youngs_modulus=youngs_modulus)
    arguments.finite(shaft_slope=shaft_slope)
    arguments.at_most("pillar_circle", pillar_circle, "plate_radius", plate_radius)
    arguments.whole(3, pillars=pillars)
    arguments.between(3, 12, pillars=pillars)
    arguments.between(0.0, 0.5, poisson=poisson)
    arguments.above_up_to(0.0, 0.99, foot_share=foot_share)
    arguments.not_negative(line_position=line_position, line_radius=line_radius)
    arguments.at_most("line_position", line_position, "plate_spacing", plate_spacing)
    sizes = (plate_spacing, plate_radius, plate_thickness, pillar_diameter, pillar_circle)
    gear, off, torque = _compliance(pillars, *(float(v) for v in (*sizes, poisson, foot_share)))
    far = line_position / plate_spacing
    softer = REFERENCE_MODULUS / youngs_modulus
    moved = [
        (near * (1 - far) + away * far + twist * line_radius) * softer
        for near, away, twist in zip(gear, off, torque, strict=True)
    ]
    near_x, near_z, away_x, away_z, plate_x, plate_z = moved
    tilt_x, tilt_z = (away_x - near_x) / plate_spacing, (away_z - near_z) / plate_spacing
    return Lean(
        arguments.plain(np.hypot(tilt_x, tilt_z)),
        arguments.plain(np.hypot(tilt_x + shaft_slope - plate_x, tilt_z - plate_z)),
        arguments.plain(np.hypot(near_x + tilt_x * line_position, near_z + tilt_z * line_position)),
    )


@lru_cache(maxsize=256)
def _compliance(
    pillars: int,
    spacing: float,
    radius: float,
    thickness: float,
    pillar: float,
    circle: float,
    poisson: float,
    foot: float,
) -> tuple[tuple[float, ...], ...]:
    """For a newton forward at the gear-side bearing, one at the off side, and 1 N m in the gear side.

    Each: forward and upward movement of the gear-side and the off-side bearing, and lean of the gear side's
    normal forward and upward. The spool's axis is the frame's y, forward its x, upward its z.
    """
    joints: list[Place] = [(0.0, 0.0, 0.0), (0.0, spacing, 0.0)]
    turns = [-pi / 2 + pi * (2 * k - 1) / pillars for k in range(pillars)]
    joints += [(circle * cos(a), y, circle * sin(a)) for y in (0.0, spacing) for a in turns]
    round_moment = pi * pillar**4 / 64
    rod = (pi * pillar**2 / 4, round_moment, round_moment, 2 * round_moment)
    spoke = _strip(SPOKE_SHARE * pi * circle / pillars, thickness)
    rim = _strip(RIM_SHARE * radius, thickness)
    bars, held = [], {}
    for side, first in enumerate((2, 2 + pillars)):
        for k in range(pillars):
            bars.append(Bar(side, first + k, *spoke))
            bars.append(Bar(first + k, first + (k + 1) % pillars, *rim))
    for k in range(pillars):
        near, away = 2 + k, 2 + pillars + k
        if k > 1:
            bars.append(Bar(near, away, *rod))
            continue
        for end, share in ((near, (1 - foot) / 2), (away, (1 + foot) / 2)):
            held[len(joints)] = CLAMPED
            bars.append(Bar(end, len(joints), *rod))
            joints.append((joints[near][0], spacing * share, joints[near][2]))
    cases = [{0: (1, 0, 0, 0, 0, 0)}, {1: (1, 0, 0, 0, 0, 0)}, {0: (0, 0, 0, 0, 1, 0)}]
    shear = REFERENCE_MODULUS / (2 * (1 + poisson))
    moved = joint_movements(joints, bars, held, cases, REFERENCE_MODULUS, shear).movements
    return tuple(
        tuple(float(v) for v in (m[0, 0], m[0, 2], m[1, 0], m[1, 2], -m[0, 5], m[0, 3])) for m in moved
    )


def _strip(width: float, thickness: float) -> tuple[float, float, float, float]:
    """Section of a flat strip whose own y is square to the plate: in its plane it is stiff."""
    return (
        width * thickness,
        width**3 * thickness / 12,
        width * thickness**3 / 12,
        width * thickness**3 / 3,
    )
