"""How fast judder and heat are worked out beside SciPy's general solvers, and how near both come."""

from __future__ import annotations

from dataclasses import dataclass
from math import pi, sqrt
from typing import Any

import numpy as np

from spoolwright.command.speed_clock import processor_seconds
from spoolwright.mechanics import heat, judder
from spoolwright.mechanics.drag_layers import Face, Layer, constant_run

RTOL = 1e-6
MASS, STIFFNESS, SPEED, STATIC, KINETIC = 0.2, 300.0, 0.3, 30.0, 22.0
EVENTS = 50
MANY = 10_000


@dataclass(frozen=True)
class Pair:
    """Answers a second of this program and of SciPy; how far SciPy's, and ours, are from the reference."""

    ours: float
    theirs: float
    our_error: float
    their_error: float
    work: str


def slips() -> Pair:
    """Slips of a juddering drag: in closed form for many drags at once, and one after another by RK45."""
    period = 2 * (STATIC - KINETIC) / (STIFFNESS * SPEED) + _slip_time()
    long = STATIC / (STIFFNESS * SPEED) + EVENTS * period
    masses = np.full(MANY, MASS)
    times = np.zeros(1)

    def ours() -> Any:
        return judder.stick_slip(masses, STIFFNESS, SPEED, STATIC, KINETIC, long, times=times)

    answer = ours()
    rate = float(np.sum(answer.breaks)) / processor_seconds(ours, 5)
    theirs: list[float] = []
    seconds = processor_seconds(lambda: theirs.append(_by_scipy(EVENTS)), 2)
    highest = KINETIC + sqrt((STATIC - KINETIC) ** 2 + SPEED**2 * STIFFNESS * MASS)
    return Pair(
        rate,
        EVENTS / seconds,
        float(abs(answer.highest_pull[0] / highest - 1)),
        abs(theirs[0] / highest - 1),
        f"{MANY} drags at once against {EVENTS} slips of one by RK45, the end of each slip located",
    )


def _slip_time() -> float:
    natural = sqrt(STIFFNESS / MASS)
    return 2 / natural * (pi - np.arctan((STATIC - KINETIC) * natural / (STIFFNESS * SPEED)))


def _by_scipy(events: int) -> float:
    """The highest pull of slip after slip by RK45; the sticking between is a straight line, for nothing."""
    from scipy.integrate import solve_ivp

    def stops(t: float, y: np.ndarray) -> float:
        return float(y[1])

    stops.terminal, stops.direction = True, -1.0  # type: ignore[attr-defined]
    highest = 0.0
    for _ in range(events):
        found = solve_ivp(
            lambda t, y: [SPEED - y[1], (STIFFNESS * y[0] - KINETIC) / MASS],
            (0.0, 10.0),
            [STATIC / STIFFNESS, 1e-12],
            rtol=RTOL,
            atol=1e-9,
            events=stops,
            dense_output=True,
        )
        fine = found.sol(np.linspace(0.0, found.t[-1], 200))
        highest = max(highest, float(STIFFNESS * fine[0].max()))
    return highest


def stacks() -> Pair:
    """The hottest face of a stack in a run of 25 s: ours, and a method of lines by BDF on the same cells."""
    steel, fibre = Layer(1e-3, 17.0, 7900.0, 460.0, 4e-4), Layer(1e-3, 0.3, 1300.0, 1500.0, 4e-4)
    layers = [steel, fibre, steel, fibre, steel]
    faces = [Face(below, 0.25) for below in range(4)]
    run = constant_run(25.0, 4.0, 20.0)

    def ours(cells: int = 4, steps: int = 100) -> float:
        return float(np.max(heat.stack_temperatures(layers, faces, run, cells=cells, steps=steps).faces))

    reference = ours(32, 1600) - heat.ROOM
    theirs: list[float] = []
    seconds = processor_seconds(lambda: theirs.append(_lines(layers, 20.0 * 4.0, 25.0)), 2)
    return Pair(
        1 / processor_seconds(ours, 5),
        1 / seconds,
        abs((ours() - heat.ROOM) / reference - 1),
        abs(theirs[0] / reference - 1),
        "five discs, a run of 25 s, against a method of lines by BDF, 8 cells a disc",
    )


def _lines(layers: list[Layer], power: float, seconds: float, cells: int = 8) -> float:
    """The same stack as one row of cells, the heat of each face laid where it is; gives the greatest rise."""
    from scipy.integrate import solve_ivp
    from scipy.sparse import diags

    width = np.repeat([float(one.thickness) / cells for one in layers], cells)
    conducts = np.repeat([float(one.conductivity * one.area) for one in layers], cells)
    holds = np.repeat([float(one.heat_capacity) / cells for one in layers], cells)
    half = width / (2 * conducts)
    passes = 1 / (half[:-1] + half[1:])
    edges = cells * np.arange(1, len(layers)) - 1
    share = half[edges + 1] / (half[edges] + half[edges + 1])
    born = np.zeros_like(holds)
    each = power / len(edges)
    np.add.at(born, edges, each * share)
    np.add.at(born, edges + 1, each * (1 - share))
    middle = -np.append(passes, 0) - np.append(0, passes)
    matrix = diags([passes, middle, passes], [-1, 0, 1]).tocsc() / holds[:, np.newaxis]
    found = solve_ivp(
        lambda t, rise: matrix @ rise + born / holds,
        (0.0, seconds),
        np.zeros_like(holds),
        method="BDF",
        jac=matrix,
        rtol=RTOL,
        atol=1e-6,
    )
    end = found.y[:, -1]
    face = (end[edges] / half[edges] + end[edges + 1] / half[edges + 1] + each) / (
        1 / half[edges] + 1 / half[edges + 1]
    )
    return float(np.max(face))
