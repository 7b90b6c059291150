"""Level wind and worm: gear trains and worms of machine design texts, winding of the textile trade."""

from __future__ import annotations

from math import atan, degrees, pi, radians, tan

import numpy as np
import pytest

from spoolwright.mechanics import level_wind, threads
from tests.reference.published import Published, each

NOTEBOOK = "opened: companion notebook of the textbook"
JINDAL = "V. Jindal, Machine Design"
WENTZELL = "T. H. Wentzell, Machine Design"
PRESSED = {"worm_lead": 2 / 10 * pi * 0.050, "worm_diameter": 0.050}
"""The worm of ex. 28-3: 50 mm, lead angle atan(2 / 10)."""


def axial_force() -> float:
    """Force along the worm that 6 kW at 1440 rpm give: the other way round of worm_torque."""
    each = float(level_wind.worm_torque(1.0, **PRESSED, friction=0.08, flank_angle=radians(20)))
    return 6000 / (1440 * 2 * pi / 60) / each


def power_screw(sign: float) -> float:
    """Torque of a square thread without its collar [N m], worm and thread chapters alike."""
    mean, lead, force = 0.030, 0.008, 6400.0
    return float(level_wind.worm_torque(force, lead * sign, mean, 0.08))


CHECKS = [
    Published(
        "train with an idler, rpm at its end",
        lambda: 3000 * level_wind.train_ratio([20, 20, 22], [65, 22, 60]),
        307.69,
        0.005,
        f"{WENTZELL}, ex. 11.2 p. 219: 20-65, then 20-22-60, at 3000 rpm",
        NOTEBOOK,
    ),
    Published(
        "torque after a train, lbf in",
        lambda: 63025 * 1.5 / 1750 / level_wind.train_ratio([12, 16], [36, 64]),
        648,
        0.5,
        f"{WENTZELL}, ex. 11.5 p. 241: 1.5 hp at 1750 rpm through 12/36 and 16/64",
        NOTEBOOK,
    ),
    Published(
        "force along a worm, N",
        axial_force,
        5487,
        1,
        f"{JINDAL}, ex. 28-3 p. 727: 6 kW, 1440 rpm, 50 mm, lead angle atan 0.2, flank 20 deg, friction 0.08",
        NOTEBOOK,
    ),
    Published(
        "output of a worm set, kW",
        lambda: 1.2 * level_wind.worm_efficiency(2 / 8 * pi * 0.1, 0.1, 0.032, radians(20)),
        1.047,
        0.0005,
        f"{JINDAL}, ex. 28-4 p. 728: 1.2 kW, 2 starts, q = 8, friction 0.032, pressure angle 20 deg",
        NOTEBOOK,
    ),
    Published(
        "raising torque of a power screw without its collar, N m",
        lambda: power_screw(1.0),
        15.94,
        0.01,
        "Shigley's Mechanical Engineering Design, ex. 8-1: mean diameter 30 mm, lead 8 mm, 6.4 kN, 0.08",
        "from memory",
    ),
    Published(
        "coil angle of a wound cheese, degrees from its axis",
        lambda: 90 - degrees(float(level_wind.crossing_angle(0.160 / 2.5, 0.0375)) / 2),
        74.75,
        1.25,
        "examination in textile engineering (GATE 2017, question 44): traverse 160 mm, drum 75 mm, 2.5 "
        "crossings; accepted 73.5 to 76.0",
        "opened: textiletriangle.com",
    ),
]


@each(CHECKS)
def test_printed(check: Published) -> None:
    check.agrees()


def test_the_radial_force_takes_the_pressure_angle() -> None:
    """Jindal, ex. 28-3 (notebook opened), prints 5487 N along the worm; its radial 1188 N is a slip.

    Radial = N sin a with N from pawl_force: the slip takes the lead angle for the pressure angle.
    """
    normal = float(level_wind.pawl_force(5487.0, **PRESSED, friction=0.08, flank_angle=radians(20)))
    assert normal * np.sin(radians(20)) == pytest.approx(2072, rel=0.005)
    assert normal * np.sin(atan(0.2)) == pytest.approx(1188, rel=0.01)


@pytest.mark.parametrize("friction", [0.0, 0.08, 0.2])
@pytest.mark.parametrize("flank", [0.0, radians(20)])
def test_rivals_worm_and_screw_thread(friction: float, flank: float) -> None:
    """A worm pushing its pawl is a screw lifting its load.

    The thread chapter takes friction over cos(flank) at the lead angle in the common approximation; with
    square flanks both are exact.
    """
    lead, mean = 7e-3, 5e-3
    screw = threads.tightening_torque(10.0, lead, mean, friction, flank)
    tolerance = 1e-9 if flank == 0 else 0.03
    assert level_wind.worm_torque(10.0, lead, mean, friction, flank) == pytest.approx(screw, rel=tolerance)


def test_work_of_a_turn_is_conserved() -> None:
    """Efficiency = force times lead over 2 pi torque (definition)."""
    size = (6e-3, 5e-3, 0.15, 0.2)
    torque = float(level_wind.worm_torque(3.0, *size))
    assert level_wind.worm_efficiency(*size) == pytest.approx(3.0 * 6e-3 / (2 * pi * torque), rel=1e-12)


def test_lead_angle_is_the_helix_of_the_groove() -> None:
    """tan(lead angle) = lead / (pi d); stroke = lead times turns a pass (geometry of any screw)."""
    lead, diameter = 7e-3, 5e-3
    slide = level_wind.pawl_slide(1.0, lead, diameter, 1 / (2 * pi))
    assert slide == pytest.approx(lead / np.sin(atan(lead / (pi * diameter))), rel=1e-12)
    pitch = level_wind.line_pitch(lead, 0.5)
    assert level_wind.turns_per_layer(43e-3, pitch) * pitch == pytest.approx(43e-3)


@pytest.mark.parametrize("turns", [8.0, 23.0, 40.0])
def test_a_whole_number_of_turns_a_cycle_falls_on_its_own_track(turns: float) -> None:
    """Ribbons: a wind ratio that is a whole number lays yarn exactly on the layer below.

    Textile teaching page on patterning (opened: questions.collegedunia.com).
    """
    travel = 0.030
    assert level_wind.track_offset(travel, 2 * travel / turns) == pytest.approx(0.0, abs=1e-12)
    beside = level_wind.track_offset(travel, 2 * travel / (turns + 0.5))
    assert beside == pytest.approx(travel / (turns + 0.5), rel=1e-9)


def test_rivals_helix_by_small_steps() -> None:
    """The groove's length, summed over chords of a helix."""
    lead, diameter, ratio, radius = 7e-3, 5e-3, 0.53, 0.02
    angle = np.linspace(0, 2 * pi * ratio / (2 * pi * radius), 20001)
    points = np.stack([diameter / 2 * np.cos(angle), diameter / 2 * np.sin(angle), lead * angle / (2 * pi)])
    length = float(np.sum(np.linalg.norm(np.diff(points), axis=0)))
    assert level_wind.pawl_slide(ratio, lead, diameter, radius) == pytest.approx(length, rel=1e-6)
    assert tan(level_wind.crossing_angle(lead * ratio, radius) / 2) == pytest.approx(
        lead * ratio / (2 * pi * radius)
    )
