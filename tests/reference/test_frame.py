"""Frames in space and portals: printed frames of texts on the stiffness method, Kleinlogel's formulas."""

from __future__ import annotations

from math import pi

import pytest

from spoolwright.mechanics import frame
from spoolwright.mechanics.frame import CLAMPED, Bar, Moved
from tests.reference.published import Published, each

PINNED = (True, True, True, True, True, False)
STIFF = 1e3
"""Area of a bar that does not change its length, against second moments of 1."""
SENNETT = "Sennett, Matrix Analysis of Structures, sec. 6.4, as worked in an open frame library"
FERREIRA = "Ferreira, MATLAB Codes for Finite Element Analysis, ex. 8.3"
LOGAN = "Logan, A First Course in the Finite Element Method, 4th ed., problem 5.30"
KLEINLOGEL = "Kleinlogel, Rigid Frame Formulas (formula; number from a stiffness solution of the collection)"


def sennett() -> Moved:
    """Three bars from one joint, inches and pounds, turned by a moment about y."""
    joints = [(180.0, 0.0, 180.0), (0.0, 0.0, 180.0), (180.0, 180.0, 180.0), (180.0, 0.0, 0.0)]
    section = (7.08, 82.8, 18.3, 0.35)
    bars = [Bar(0, 1, *section), Bar(2, 0, *section), Bar(0, 3, *section)]
    held = dict.fromkeys((1, 2, 3), CLAMPED)
    return frame.joint_movements(joints, bars, held, [{0: (0, 0, 0, 0, 492000, 0)}], 29e6, 11.15e6)


def moment_at_the_joint(moved: Moved) -> float:
    """About y, from what holds the far end of the first bar: its moment and its force times 180 in."""
    far = moved.reactions[0, 1]
    return float(abs(far[2]) * 180 - abs(far[4]))


def ferreira() -> Moved:
    joints = [(0.0, 0.0, 0.0), (3.0, 0.0, 0.0), (0.0, 0.0, -3.0), (0.0, -4.0, 0.0)]
    bars = [Bar(0, end, 0.02, 1e-4, 2e-4, 5e-5) for end in (1, 2, 3)]
    held = dict.fromkeys((1, 2, 3), CLAMPED)
    return frame.joint_movements(joints, bars, held, [{0: (-10, 0, 20, 0, 0, 0)}], 210e6, 84e6)


def logan() -> Moved:
    places = [(0, 0), (0, 360), (180, 480), (420, 480), (600, 360), (600, 0)]
    bars = [Bar(i, i + 1, 12.0, 200.0, 200.0, 400.0) for i in range(5)]
    loads = {2: (0, -30, 0, 0, 0, 0), 3: (0, -30, 0, 0, 0, 0)}
    joints = [(float(x), float(y), 0.0) for x, y in places]
    return frame.joint_movements(joints, bars, {0: CLAMPED, 5: CLAMPED}, [loads], 30000.0, 11500.0)


def portal(base: tuple[bool, ...], load: dict[int, tuple[float, ...]]) -> Moved:
    """60 wide, 40 high, one section, a joint in the middle of the beam; N and mm, modulus 1000."""
    joints = [(0.0, 0.0, 0.0), (0.0, 40.0, 0.0), (30.0, 40.0, 0.0), (60.0, 40.0, 0.0), (60.0, 0.0, 0.0)]
    bars = [Bar(i, i + 1, STIFF, 1.0, 1.0, 1.0) for i in range(4)]
    return frame.joint_movements(joints, bars, {0: base, 4: base}, [load], 1000.0, 400.0)


def whirling_of_a_shaft_in_long_bearings() -> float:
    """15 mm shaft of 1 m clamped at both ends, 15 kg in its middle: root of g over the sag, in rpm."""
    moment = pi * 0.015**4 / 64
    bars = [Bar(i, i + 1, pi * 0.015**2 / 4, moment, moment, 2 * moment) for i in range(2)]
    joints = [(0.0, 0.0, 0.0), (0.5, 0.0, 0.0), (1.0, 0.0, 0.0)]
    load = {1: (0, -15 * 9.81, 0, 0, 0, 0)}
    moved = frame.joint_movements(joints, bars, {0: CLAMPED, 2: CLAMPED}, [load], 200e9, 77e9)
    return float((9.81 / -moved.movements[0, 1, 1]) ** 0.5 * 30 / pi)


DOWN = {2: (0.0, -100.0, 0.0, 0.0, 0.0, 0.0)}
ALONG = {2: (100.0, 0.0, 0.0, 0.0, 0.0, 0.0)}

CHECKS = [
    Published(
        "turn of the loaded joint, rad",
        lambda: sennett().movements[0, 0, 4],
        0.00462419592,
        5e-10,
        SENNETT,
        "opened",
    ),
    Published(
        "end moment of its first bar, lbf in",
        lambda: moment_at_the_joint(sennett()),
        245950,
        250,
        f"{SENNETT} (book figure)",
        "opened",
    ),
    Published("z movement, m", lambda: ferreira().movements[0, 0, 2], 1.418e-5, 5e-9, FERREIRA, "opened"),
    Published(
        "base moment, kip in", lambda: abs(logan().reactions[0, 0, 5]), 1810.0745, 1e-3, LOGAN, "opened"
    ),
    Published("base thrust, kip", lambda: abs(logan().reactions[0, 0, 0]), 11.6877, 5e-5, LOGAN, "opened"),
    Published(
        "whirling speed of a shaft in long bearings, rpm",
        whirling_of_a_shaft_in_long_bearings,
        762.33,
        1.5,
        "Sarkar, Theory of Machines, ex. 11-13",
        "opened: notebook of the textbook companion project, printed output",
    ),
    Published(
        "portal on fixed bases, base moment, N mm",
        lambda: abs(portal(CLAMPED, DOWN).reactions[0, 0, 5]),
        281.25,
        0.01,
        KLEINLOGEL,
        "from memory",
    ),
    Published(
        "portal on pins, thrust, N",
        lambda: abs(portal(PINNED, DOWN).reactions[0, 0, 0]),
        12.98077,
        1e-3,
        KLEINLOGEL,
        "from memory",
    ),
]


@each(CHECKS)
def test_printed(check: Published) -> None:
    check.agrees()


@pytest.mark.parametrize(("base", "held"), [("fixed", CLAMPED), ("pinned", PINNED)])
def test_rivals_kleinlogels_sway_and_the_stiffness_method(base: str, held: tuple[bool, ...]) -> None:
    """Kleinlogel's portal under a force along its beam (from memory) against the same frame in bars."""
    closed = frame.portal_sway(100.0, 60.0, 40.0, 1000.0, 1.0, 1.0, base=base)
    assert portal(held, ALONG).movements[0, 2, 0] == pytest.approx(closed, rel=1e-4)


def test_a_stiff_beam_leaves_two_guided_posts_and_a_soft_one_two_free_posts() -> None:
    """h^3 / 24 E I and h^3 / 6 E I for a newton (two posts side by side, any text on beams)."""
    stiff = frame.portal_sway(1.0, 0.06, 0.04, 1e9, 1.0, 1e-9)
    assert stiff == pytest.approx(0.04**3 / 24, rel=1e-6)
    assert frame.portal_sway(1.0, 0.06, 0.04, 1e9, 1e-20, 1e-9) == pytest.approx(0.04**3 / 6, rel=1e-6)


def test_rivals_a_reel_with_rigid_plates_and_posts_that_are_guided() -> None:
    """Plates so thick that they do not bend leave pillars clamped at both ends (any text on beams).

    A forward newton at the gear side then bends the two pillars that the foot holds over a quarter of the
    distance at each end, and the others pull the off side along: softer than all clamped, stiffer than none.
    """
    sizes = {"plate_spacing": 0.038, "plate_radius": 0.031, "pillar_diameter": 0.004, "pillar_circle": 0.027}
    lean = frame.spool_axis_tilt(0.019, 0.0, plate_thickness=0.1, pillars=4, youngs_modulus=97e9, **sizes)
    moment = pi * 0.004**4 / 64
    both_ends = 4 * 12 * 97e9 * moment / (0.038 / 4) ** 3
    assert lean.tilt == pytest.approx(0.0, abs=1e-12)  # in the middle both plates move alike
    assert 1 / both_ends < lean.give < 4 / both_ends
