"""How hot does a fish's run make this drag, when does it reach what its discs stand, how long is the wait?"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.judgement.fish_run import Course
from spoolwright.judgement.hot_stack import HotStack, hot_stack
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.prediction import COVERAGE, Predicted
from spoolwright.judgement.reel_state import ReelState
from spoolwright.judgement.rung import band
from spoolwright.mechanics.heat import ROOM, Run, StackTemperatures, stack_temperatures
from spoolwright.sheets import materials
from spoolwright.sheets.reel_sheet import ReelSheet

Array = NDArray[np.float64]

CASES = 40
"""Draws that the heat is worked out for: its priors are wide, so more would not tell more."""

STEPS, SOFT_CELLS, METAL_CELLS = 30, 2, 1
"""How finely a run and its discs are cut: within a fiftieth of the rise from a tenth of the run on."""

WATCHED = 4 * 3600.0
"""How long after the run it is watched [s]."""

TOUCH = 273.15 + 48.0
"""Metal that a hand may hold for minutes without a burn [K]: ISO 13732-1, 10 min (from memory)."""


@dataclass(frozen=True)
class RunHeat:
    """What the run does to the drag; temperatures in K, times in s, bands 5 to 95 of a hundred.

    `time`, `low`, `middle`, `high` are the hottest face from the run's start to the end of the watch, shape
    (t,); `run_end` is the position of the run's end in them. `limit` is what the least of its discs stands,
    as a range, `limit_material` which that is. `chance` is the share of the draws in which a face reaches its
    limit during the run, `time_to_limit` when, None where fewer than half do. `wait_touch` is the wait after
    the run until no disc is hotter than 48 °C; `wait_again` the wait until the same run may be made again
    and no face reaches its limit, None where such a run is more than the discs stand even from cold
    (`again_chance`: share of the draws in which it is not). `pull_lost`: share of the pull that fade takes.
    """

    time: Array
    low: Array
    middle: Array
    high: Array
    run_end: int
    energy: Predicted
    after_run: Predicted
    limit: Predicted
    limit_material: str
    chance: float
    time_to_limit: Predicted | None
    wait_touch: Predicted
    wait_again: Predicted | None
    again_chance: float
    pull_lost: Predicted
    hottest: str


def run_heat(
    sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], course: Course, pull: Sample
) -> RunHeat:
    """Put the heat of the run through the drag, for some draws at once.

    Parameters
    ----------
    sheet : ReelSheet
        The model, with a drag that slips **[SI]**.
    state : ReelState
        Its slipping pairs after some works **[SI]**.
    draws : mapping of str to array
        HEAT_DRAWS and the friction of every face **[SI]**, shape `(n,)`.
    course : Course
        The run for a pull of 1 N at its beginning **[s]**, **[m/s]**, **[N]**.
    pull : array
        Pull at its beginning **[N]**, shape `(n,)`.

    Returns
    -------
    RunHeat
        Temperatures **[K]**, times **[s]**, heat **[J]**.

    Notes
    -----
    The first 40 draws are followed. Before the run everything is at 20 °C, and so are the surroundings.

    Source
    ------
    mechanics.heat; 48 °C from ISO 13732-1 (from memory).

    Examples
    --------
    >>> from spoolwright.judgement.fish_run import FishRun, steady
    >>> from spoolwright.judgement.hot_stack import HEAT_DRAWS
    >>> from spoolwright.judgement.monte_carlo import Rectangular, draw
    >>> from spoolwright.judgement.reel_state import as_built
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-52")
    >>> drawn = draw({**HEAT_DRAWS, "felt, greased": Rectangular(0.14, 0.22)}, samples=100, seed=1)
    >>> hot = run_heat(sheet, as_built(sheet), drawn, steady(sheet, FishRun()), np.full(100, 10.0))
    >>> bool(ROOM < hot.after_run.low < hot.after_run.middle < hot.after_run.high)
    True
    """
    few = {name: sample[:CASES] for name, sample in draws.items()}
    stack = hot_stack(sheet, state, few)
    run = Run(course.run.time, course.run.speed, pull[:CASES, np.newaxis] * course.run.pull)
    told = stack_temperatures(
        stack.layers,
        stack.faces,
        run,
        bodies=stack.bodies,
        links=stack.links,
        wait=WATCHED,
        cells=stack.cells(SOFT_CELLS, METAL_CELLS),
        steps=STEPS,
    )
    return _answered(told, stack)


def _answered(told: StackTemperatures, stack: HotStack) -> RunHeat:
    low, middle, high = np.quantile(told.hottest_face, [(1 - COVERAGE) / 2, 0.5, (1 + COVERAGE) / 2], axis=0)
    least = np.min(stack.limits, axis=-1)
    reached = np.asarray(told.time_until(stack.limits))
    reaches = reached <= told.time[told.run_end]
    after = np.asarray(told.after_run)
    spare = least - (np.asarray(told.peak) - ROOM)
    again = spare > ROOM + 1.0
    waits = np.asarray(told.wait_until_below(np.maximum(spare, ROOM + 1.0)))
    hottest = int(np.bincount(np.argmax(told.faces[..., told.run_end], axis=-1)).argmax())
    return RunHeat(
        time=told.time,
        low=low,
        middle=middle,
        high=high,
        run_end=told.run_end,
        energy=band("heat of the run", np.asarray(told.heat_in), "energy"),
        after_run=band("hottest face at the end of the run", after, "temperature"),
        limit=band("what the discs stand", least, "temperature"),
        limit_material=_least_material(stack.materials),
        chance=float(np.mean(reaches)),
        time_to_limit=_if_most(reaches, "time until the discs' limit", reached),
        wait_touch=band("wait until it may be touched", _watched(told.wait_until_below(TOUCH)), "time"),
        wait_again=_if_most(again, "wait until the same run again", _watched(waits)),
        again_chance=float(np.mean(again)),
        pull_lost=band("share of the pull lost to fade", np.asarray(told.pull_lost), "ratio"),
        hottest=stack.names[hottest],
    )


def _watched(waits: object) -> Sample:
    """A wait that was not over when the watch ended counts as the whole watch."""
    return np.minimum(np.asarray(waits, dtype=np.float64), WATCHED)


def _if_most(holds: NDArray[np.bool_], quantity: str, sample: Sample) -> Predicted | None:
    return band(quantity, sample[holds], "time") if np.mean(holds) >= 0.5 else None


def _least_material(names: tuple[str, ...]) -> str:
    return min(names, key=lambda name: materials.friction_material(name).temperature_limit.middle)
