"""The standard run of a fish against a reel's drag: how hot it gets, how it starts, whether it judders."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from spoolwright.judgement import drag_train
from spoolwright.judgement.changed_sheet import changed
from spoolwright.judgement.fish_run import Course, FishRun, as_recorded, steady
from spoolwright.judgement.hot_stack import HEAT_DRAWS
from spoolwright.judgement.monte_carlo import Sample, draw
from spoolwright.judgement.narrowing import Known, know, then
from spoolwright.judgement.prediction import Predicted
from spoolwright.judgement.reel_state import ReelState, after
from spoolwright.judgement.run_heat import RunHeat, run_heat
from spoolwright.judgement.run_judder import JUDDER_DRAWS, RunJudder, run_judder
from spoolwright.judgement.rung import band
from spoolwright.judgement.taken import Readings
from spoolwright.judgement.works import chosen
from spoolwright.sheets import materials
from spoolwright.sheets.reel_sheet import ReelSheet

NO_DRAG = (
    "This reel has no drag of slipping discs: its check and your hand hold the line, so a run heats no disc "
    "and none can judder. Mind your knuckles."
)


@dataclass(frozen=True)
class RunTest:
    """One run against one state of a reel; where it has no meaning `why_not` says why and the rest is empty.

    `pull` [N] is what the drag is set to as the run begins, `greatest` [N] the most that it can be set to
    there; `way` [m] how far the run goes; the line leaves at `starts_at` [m] first, at `falls_to` [m] last.
    `rests_on` says what the answer leans on most.
    """

    fish: FishRun
    works: tuple[str, ...]
    pull: Predicted | None = None
    greatest: Predicted | None = None
    way: float = 0.0
    starts_at: float = 0.0
    falls_to: float = 0.0
    empties: bool = False
    heat: RunHeat | None = None
    judder: RunJudder | None = None
    rests_on: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    samples: int = 0
    seed: int = 1
    why_not: str = ""


def run_test(
    sheet: ReelSheet,
    readings: Readings | None = None,
    works: Sequence[str] = (),
    *,
    fish: FishRun | None = None,
    samples: int = 400,
    seed: int = 1,
    known: Known | None = None,
) -> RunTest:
    """Run a fish against a reel, as it is or as some works would leave it.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    readings : mapping of str to Measured or Taken, or None
        This reel's own readings by kind **[SI]**; none: a sound reel of this model is meant.
    works : sequence of str
        Ids of works **[-]**; none: the reel as it is.
    fish : FishRun or None
        The run **[SI]**; None: 100 m at 4 m/s from a full spool against half of the greatest usable pull.
    samples : int
        Draws that are kept **[-]**, 100 or more; the heat follows 40 of them.
    seed : int
        Start of the generator **[-]**.
    known : Known or None
        What `know` made of the same sheet and readings, so that several sets of works share it **[SI]**.

    Returns
    -------
    RunTest
        Heat and judder in SI, each with its band.

    Raises
    ------
    ValueError
        A work that is not known or not done on this kind of reel; a distance, speed or line out that is not
        above 0; fewer than 100 samples.
    NotAQuantity
        The line is not one that we know.

    Notes
    -----
    All of pull times speed becomes heat in the drag, on whichever shaft it sits: a drag on the main gear
    turns slower by the ratio and holds more by the ratio. With the drag untouched the pull grows as the
    radius falls. Two sets of works with the same seed share every draw that the works do not touch.

    Source
    ------
    mechanics.heat, mechanics.judder; JCGM 101:2008 for the draws; ranges with their marks in `rests_on`.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> test = run_test(reel_sheet.load("tarvak-58r"), samples=100)
    >>> bool(300 < test.heat.after_run.middle < 700), round(test.way)
    (True, 100)
    """
    fish = fish or FishRun()
    known = known or know(sheet, readings or {}, samples=samples, seed=seed)
    done = chosen(tuple(works), sheet.reel.kind)
    state, sheet = after(known.state, sheet, done), changed(sheet, done)
    if sheet.drag is None or not state.pairs:
        return RunTest(fish, tuple(works), samples=known.samples, seed=known.seed, why_not=NO_DRAG)
    drawn = draw({**HEAT_DRAWS, **JUDDER_DRAWS}, samples=known.samples, seed=known.seed + 2)
    draws = {**then(known, state), **drawn}
    course = as_recorded(sheet, fish) if fish.recorded is not None else steady(sheet, fish)
    clamp, _ = drag_train.greatest_clamp(sheet.drag, draws, draws["spring_force"])
    greatest = drag_train.spool_torque(sheet, state, draws, clamp) / course.starts_at
    pull = _pull(sheet, state, draws, fish, course, greatest)
    scale = np.ones_like(pull) if fish.recorded is not None else pull
    return RunTest(
        fish=fish,
        works=tuple(works),
        pull=band("pull as the run begins", pull, "force"),
        greatest=band("greatest usable pull there", greatest, "force"),
        way=course.way,
        starts_at=course.starts_at,
        falls_to=course.falls_to,
        empties=course.empties,
        heat=run_heat(sheet, state, draws, course, scale),
        judder=run_judder(sheet, draws, fish, course.starts_at, pull),
        rests_on=_rests_on(state),
        notes=(*known.notes, *_notes(pull, greatest, course)),
        samples=known.samples,
        seed=known.seed,
    )


def _pull(
    sheet: ReelSheet,
    state: ReelState,
    draws: Mapping[str, Sample],
    fish: FishRun,
    course: Course,
    greatest: Sample,
) -> Sample:
    """What the drag is set to: recorded, asked for, by the star, or a share of what it can."""
    if fish.recorded is not None:
        running = fish.recorded.pull[fish.recorded.speed > 0]
        return np.full_like(greatest, float(np.mean(running)) if len(running) else 1e-6)
    if fish.pull is None and fish.turns is not None:
        assert sheet.drag is not None
        clamp = drag_train.clamp_at(sheet.drag, fish.turns, draws, draws["spring_force"])
        by_star = drag_train.spool_torque(sheet, state, draws, clamp) / course.starts_at
        return np.asarray(np.maximum(by_star, 1e-6))
    asked = fish.pull if fish.pull is not None else fish.share * float(np.median(greatest))
    return np.asarray(max(asked, 1e-6) * draws["pull_set"])


def _notes(pull: Sample, greatest: Sample, course: Course) -> tuple[str, ...]:
    found = []
    if np.mean(pull > greatest) > 0.5:
        found.append("This is more than the drag can be set to: such a run would slip at less and heat less.")
    if course.empties:
        found.append("The run is longer than the line on the spool: it is reckoned to the bare spool.")
    return tuple(found)


def _rests_on(state: ReelState) -> tuple[str, ...]:
    said = {}
    for pair in state.pairs:
        entry = materials.friction_material(pair.face_material)
        said[pair.face_material] = (
            f"{pair.face_material}: conductivity ({entry.conductivity.how}), density ({entry.density.how}), "
            f"specific heat ({entry.specific_heat.how}), limit ({entry.temperature_limit.how}), "
            f"fade ({entry.fade.how})"
        )
    return (
        *said.values(),
        "how heat leaves the discs for sleeve, frame and air: judgement prior",
        f"start-up ratio ({state.ranges['start_up_ratio'].mark})",
        "stretch of the line (its own range) and its damping: judgement prior",
    )
