"""What a fish does in the run test: how far, how fast, against which pull; or a run as it was recorded."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.run_record import RunRecord
from spoolwright.judgement.line_said import SaidLine, read_line
from spoolwright.judgement.prediction import EXAMPLE_LINE
from spoolwright.mechanics import spool
from spoolwright.mechanics.heat import Run
from spoolwright.sheets.lines import LineMaterial, line_material
from spoolwright.sheets.reel_sheet import ReelSheet

Array = NDArray[np.float64]

PACKING = 0.71
"""How densely line lies on a spool, the middle of the prior in free_spin: sets how fast the radius falls."""

POINTS = 31
"""Moments of a steady run, between which the heat is taken as straight."""

MOST_POINTS = 200
"""Moments that a recorded run is brought down to, its heat kept."""

EXAMPLE_MATERIAL = "nylon"


@dataclass(frozen=True)
class FishRun:
    """The run that is asked for, in SI.

    `pull` [N] is what the drag is set to as the run begins; where it is None, `turns` of the star, knob or
    lever set it, and where both are None it is `share` of the greatest usable pull. `fill` is the share of a
    full spool's line on the spool as the run begins, `line` what it is ("nylon 0.40 mm"; empty: that line as
    an example), `line_out` [m] what is out already: it is the spring of the judder. `recorded` goes
    before distance, speed and pull.
    """

    distance: float = 100.0
    speed: float = 4.0
    pull: float | None = None
    turns: float | None = None
    share: float = 0.5
    fill: float = 1.0
    line: str = ""
    line_out: float = 20.0
    recorded: RunRecord | None = None

    @property
    def said_line(self) -> SaidLine | None:
        return read_line(self.line) if self.line.strip() else None

    @property
    def material(self) -> LineMaterial:
        said = self.said_line
        return said.material if said else line_material(EXAMPLE_MATERIAL)

    @property
    def diameter(self) -> float:
        said = self.said_line
        return said.diameter if said else EXAMPLE_LINE


@dataclass(frozen=True)
class Course:
    """The run on this spool for a pull of 1 N at its beginning; `way` [m] is how far it really goes.

    `falls_to` [m] is the radius at its end: with the drag untouched the pull grows as the radius falls.
    """

    run: Run
    way: float
    starts_at: float
    falls_to: float
    empties: bool


def line_on(sheet: ReelSheet, fish: FishRun) -> float:
    """Line on the spool as the run begins.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    fish : FishRun
        The run, for its line and its fill **[SI]**.

    Returns
    -------
    float
        Length **[m]**.

    Source
    ------
    Geometry, mechanics.spool; how densely the line lies is a judgement prior.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> 250 < line_on(reel_sheet.load("tarvak-58r"), FishRun()) < 400
    True
    """
    room = sheet.spool
    whole = spool.line_length(room.arbor_radius, room.full_radius, room.width, fish.diameter, PACKING)
    return float(whole) * fish.fill


def steady(sheet: ReelSheet, fish: FishRun) -> Course:
    """The run at one speed, on this spool: as the line goes the radius falls and the pull grows.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    fish : FishRun
        The run **[SI]**, its distance and speed above 0.

    Returns
    -------
    Course
        The run for a pull of 1 N at its beginning **[s]**, **[m/s]**, **[N]**.

    Raises
    ------
    ValueError
        Distance, speed or line out not above 0, a fill outside 0 to 1.

    Notes
    -----
    pull(t) = radius at the beginning / radius(t): the drag's torque stays. A run that is longer than the
    line ends where the spool is bare.

    Source
    ------
    Geometry, mechanics.spool.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> course = steady(reel_sheet.load("tarvak-58r"), FishRun())
    >>> course.way, bool(1.1 < course.run.pull[-1] < 1.5)
    (100.0, True)
    """
    for name in ("distance", "speed", "line_out", "share"):
        if not 0 < getattr(fish, name) < np.inf:
            raise ValueError(f"{name}: more than 0 is accepted; got {getattr(fish, name)}")
    if not 0 < fish.fill <= 1:
        raise ValueError(f"fill: more than 0 and at most 1 is accepted; got {fish.fill}")
    room, on = sheet.spool, line_on(sheet, fish)
    way = min(fish.distance, on)
    gone = np.linspace(0.0, way, POINTS)
    radius = _radius(sheet, fish, np.maximum(on - gone, 0.0))
    run = Run(gone / fish.speed, np.full(POINTS, fish.speed), radius[0] / radius)
    return Course(run, way, float(radius[0]), max(float(radius[-1]), room.arbor_radius), way < fish.distance)


def _radius(sheet: ReelSheet, fish: FishRun, left: Array) -> Array:
    room = sheet.spool
    return np.asarray(spool.fill_radius(room.arbor_radius, left, room.width, fish.diameter, PACKING))


def as_recorded(sheet: ReelSheet, fish: FishRun) -> Course:
    """The recorded run, brought down to a few moments with its heat and its way kept.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    fish : FishRun
        The run with its recording **[SI]**.

    Returns
    -------
    Course
        The run as it was **[s]**, **[m/s]**, **[N]**.

    Raises
    ------
    ValueError
        No recording, fewer than two moments, moments that do not rise, a negative speed or pull.

    Notes
    -----
    Heat until each kept moment is what the recording has until then; speed and pull at the kept moments are
    read off it and scaled to that heat.

    Source
    ------
    Work is force times way.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> run = RunRecord(np.array([0.0, 5.0, 10.0]), np.array([0.0, 4.0, 0.0]), np.full(3, 30.0))
    >>> as_recorded(reel_sheet.load("tarvak-58r"), FishRun(recorded=run)).way
    20.0
    """
    told = fish.recorded
    if told is None:
        raise ValueError("recorded: a recording is accepted; got none")
    if len(told.time) < 2 or not np.all(np.diff(told.time) > 0):
        raise ValueError("recorded: two moments or more that rise are accepted")
    if np.any(told.speed < 0) or np.any(told.pull < 0):
        raise ValueError("recorded: speeds and pulls of zero or more are accepted")
    time = told.time - told.time[0]
    way = float(np.trapezoid(told.speed, time))
    run = _thinned(time, told.speed, told.pull)
    on = line_on(sheet, fish)
    ends = _radius(sheet, fish, np.array([on, max(on - way, 0.0)]))
    return Course(run, way, float(ends[0]), float(ends[1]), way > on)


def _thinned(time: Array, speed: Array, pull: Array) -> Run:
    if len(time) <= MOST_POINTS:
        return Run(time, speed, pull)
    kept = np.linspace(0.0, float(time[-1]), MOST_POINTS)
    less = Run(kept, np.interp(kept, time, speed), np.interp(kept, time, pull))
    whole, now = float(Run(time, speed, pull).energy), float(less.energy)
    return Run(kept, less.speed, less.pull * (whole / now)) if now > 0 else less
