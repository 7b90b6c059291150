"""A drag written out anew for the tests: its faults, its pulls, the hand that sets it and reads a scale."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from spoolwright.bench.pulls import OnePull
from spoolwright.judgement.reel_state import as_built
from spoolwright.mechanics import springs, threads
from spoolwright.sheets.reel_sheet import ReelSheet


@dataclass
class Truth:
    """One reel and what is wrong with it: friction by face, loose share of the travel, springs, losses."""

    friction: dict[tuple[str, str], float]
    loose: float
    spring: float
    start: float
    left: float = 1.0
    worn: float = 0.0
    weak: float = 1.0
    set_by: float = 0.0
    pairs_lost: int = 0
    day: float = 1.0
    faults: list[str] = field(default_factory=list)


def reel(rng: np.random.Generator, sheet: ReelSheet) -> Truth:
    state = as_built(sheet)
    held = state.ranges["start_up_ratio"]
    faces = {
        (p.face_material, p.lubrication): float(
            rng.triangular(p.friction.low, (p.friction.low + p.friction.high) / 2, p.friction.high)
        )
        for p in state.pairs
    }
    return Truth(faces, rng.uniform(), rng.triangular(0.92, 1.0, 1.08), rng.uniform(held.low, held.high))


def with_fault(rng: np.random.Generator, truth: Truth, fault: str, sheet: ReelSheet) -> Truth:
    """The same reel later, with one fault."""
    assert sheet.drag is not None
    thick = sum(w.thickness for w in sheet.drag.stack if w.turns_with == "neither")
    changes = {
        "sound": dict,
        "worn": lambda: {"worn": thick * rng.uniform(0.10, 0.25)},
        "glazed": lambda: {"left": rng.uniform(0.5, 0.8), "start": truth.start * rng.uniform(1.15, 1.5)},
        "oiled": lambda: {"left": rng.uniform(0.5, 0.8), "start": truth.start * rng.uniform(0.92, 0.99)},
        "weak": lambda: {"weak": rng.uniform(0.5, 0.8), "set_by": rng.uniform(0.0, 0.2)},
        "misstacked": lambda: {"pairs_lost": 1 if rng.uniform() < 0.67 else 2},
    }
    return Truth(**(vars(truth) | changes[fault]() | {"day": rng.normal(1.0, 0.03)}))


def pull_at(turns: float, sheet: ReelSheet, truth: Truth, radius: float) -> float:
    """Screw or cam, springs, stack, gear and line: from turns to pull."""
    drag = sheet.drag
    assert drag is not None
    pack = drag.springs
    per = drag.lever.cam_rise / drag.turns_to_full if drag.lever else drag.thread.pitch
    sizes = (pack.outer_diameter, pack.inner_diameter, pack.thickness)
    new = len(pack.nests) * pack.cone_height
    spare = (drag.lever.running_gap or 0.0) if drag.lever else max(0.0, drag.turns_to_full * per - new)
    give = 0.0 if drag.lever else spare * (1 - truth.loose)
    height = pack.cone_height * (1 - truth.set_by)
    flat = len(pack.nests) * height
    wanted = turns * per - spare * truth.loose - truth.worn - (new - flat)

    def force(deflection: np.ndarray, cone: float) -> np.ndarray:
        return np.asarray(
            springs.stack_force(deflection, *sizes, cone, pack.arrangement, pack.youngs_modulus)
        )

    along = np.linspace(0.0, flat * (1 - 1e-9), 300)
    made = force(along, height)
    hardest = float(force(np.array([new * (1 - 1e-9)]), pack.cone_height)[0])
    clamp = (
        float(np.interp(max(wanted, 0.0), along + give * made / hardest, made)) * truth.spring * truth.weak
    )
    if not drag.lever:
        screw = drag.thread
        by_hand = threads.axial_force(
            drag.hand_torque, screw.pitch, screw.pitch_diameter, screw.friction, screw.flank_angle,
            screw.bearing_radius, screw.bearing_friction,
        )  # fmt: skip
        clamp = min(clamp, float(by_hand))
    pairs = as_built(sheet).pairs
    lever = sum(
        truth.friction[p.face_material, p.lubrication] * (p.outer_radius + p.inner_radius) / 2 for p in pairs
    )
    left = truth.left * (len(pairs) - truth.pairs_lost) / len(pairs)
    return lever * clamp * left * truth.day / sheet.drag_ratio / radius


def series(rng: np.random.Generator, sheet: ReelSheet, truth: Truth, each: int = 2) -> list[OnePull]:
    """A hand sets the drag a little off, pulls, and reads a scale with steps."""
    drag = sheet.drag
    assert drag is not None
    radius, off = sheet.spool.full_radius, 0.012 if drag.lever else 0.05
    hardest = pull_at(drag.turns_to_full, sheet, truth, radius)
    step = 0.098 if hardest < 100 else 0.49
    taken = []
    for share in (0.3, 0.45, 0.6, 0.75, 0.9, 1.0):
        turns = drag.turns_to_full * share
        true = pull_at(max(turns + rng.normal(0, off), 0.0), sheet, truth, radius) * rng.normal(1.0, 0.02)
        for _ in range(each):
            run = true * rng.normal(1.0, 0.025)
            start = run * truth.start * rng.normal(1.0, 0.02)
            shown = round(run / step) * step
            taken.append(OnePull(turns, shown, max(round(start / step) * step, 0.6 * shown), step))
    return taken
