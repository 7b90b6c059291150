"""How hard does this drag start, and does it judder, with so much line out and at such a speed?"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import pi

import numpy as np
from numpy.typing import NDArray

from spoolwright.judgement import free_spin
from spoolwright.judgement.fish_run import FishRun
from spoolwright.judgement.monte_carlo import Distribution, Rectangular, Sample, Triangular
from spoolwright.judgement.prediction import Predicted
from spoolwright.judgement.rung import band
from spoolwright.mechanics import judder, line, spool
from spoolwright.sheets.reel_sheet import ReelSheet

Array = NDArray[np.float64]

JUDDER_DRAWS: Mapping[str, Distribution] = {
    "line_modulus": Rectangular(0.0, 1.0),
    "line_damping": Triangular(0.02, 0.10),
}
"""What is not known of the line as a spring: where in its range its modulus lies, and its damping over
critical damping. Judgement priors."""

SWINGS = 5
"""Swings of the pull that the trace shows."""


@dataclass(frozen=True)
class RunJudder:
    """How the drag starts and whether it judders; pulls in N, bands 5 to 95 of a hundred.

    `static` is the pull at which it lets go, `running` the one at which it slips, `start_up_peak` the highest
    that the line feels as it starts. `highest` and `lowest`: between them the pull then swings; `frequency`
    [Hz] is None where most run smooth; `smooth_above` [m/s]; `runs_smooth` is the share of the draws
    that do so at this speed, `slack` the share in which the line goes slack in between. `time` [s] and `pull`
    [N] trace the middle case, shape (n,); `mass` [kg] and `stiffness` [N/m] are its own.
    """

    static: Predicted
    running: Predicted
    start_up_peak: Predicted
    highest: Predicted
    lowest: Predicted
    swing: Predicted
    frequency: Predicted | None
    smooth_above: Predicted
    runs_smooth: float
    slack: float
    mass: float
    stiffness: float
    time: Array
    pull: Array


def run_judder(
    sheet: ReelSheet, draws: Mapping[str, Sample], fish: FishRun, radius: float, pull: Sample
) -> RunJudder:
    """Let the line come tight at the run's speed and follow the drag, for every draw.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    draws : mapping of str to array
        JUDDER_DRAWS, `start_up_ratio`, `inertia_factor`, `packing` **[-]**, shape `(n,)`.
    fish : FishRun
        The run, for its line, how much of it is out, and its speed **[SI]**.
    radius : float
        Radius where the line leaves **[m]**.
    pull : array
        Running pull **[N]**, shape `(n,)`.

    Returns
    -------
    RunJudder
        Pulls **[N]**, speeds **[m/s]**, frequency **[Hz]**.

    Notes
    -----
    Spool with the line on it as a mass at the rim, the line that is out as a damped spring. Static over
    kinetic friction is the start-up ratio. Leaves out: the rod, the main gear (a hundredth of the mass), a
    cupped disc's ripple, friction that changes with speed.

    Source
    ------
    mechanics.judder, mechanics.line; ranges with their marks in lines.toml and reel_state.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> even = {name: np.full(100, 0.5) for name in ("line_modulus", "packing")}
    >>> even |= {"line_damping": np.full(100, 0.05), "inertia_factor": np.ones(100)}
    >>> sheet, pulls = reel_sheet.load("tarvak-58r"), np.full(100, 30.0)
    >>> told = run_judder(sheet, {**even, "start_up_ratio": np.full(100, 1.3)}, FishRun(), 0.0235, pulls)
    >>> told.static.middle, bool(told.start_up_peak.middle >= 39.0)
    (39.0, True)
    """
    speed = _speed(fish)
    static = pull * np.maximum(draws["start_up_ratio"], 1.0)
    mass = np.asarray(judder.effective_mass(_inertia(sheet, draws, fish, radius), radius))
    stiffness = _stiffness(draws, fish)
    damping = 2 * draws["line_damping"] * np.sqrt(mass * stiffness)
    none = np.zeros(1)
    told = judder.stick_slip(mass, stiffness, speed, static, pull, 1.0, damping=damping, times=none)
    smooth = np.asarray(told.runs_smooth)
    middle = _middle(mass, stiffness, speed, static, pull, damping)
    return RunJudder(
        static=band("pull at which it lets go", static, "force"),
        running=band("pull at which it slips", pull, "force"),
        start_up_peak=band("highest pull of the start", np.asarray(told.start_up_peak), "force"),
        highest=band("highest pull of the judder", np.asarray(told.highest_pull), "force"),
        lowest=band("lowest pull of the judder", np.maximum(told.lowest_pull, 0.0), "force"),
        swing=band("swing of the pull", np.asarray(told.swing), "force"),
        frequency=_frequency(np.asarray(told.frequency), smooth),
        smooth_above=band("speed above which it runs smooth", np.asarray(told.smooth_above), "speed"),
        runs_smooth=float(np.mean(smooth)),
        slack=float(np.mean(told.slack)),
        mass=float(np.median(mass)),
        stiffness=float(np.median(stiffness)),
        time=middle.time,
        pull=np.maximum(middle.pull, 0.0),
    )


def _speed(fish: FishRun) -> float:
    """The speed of the run; of a recorded one its mean while line runs."""
    if fish.recorded is None:
        return fish.speed
    running = fish.recorded.speed[fish.recorded.speed > 0]
    return float(np.mean(running)) if len(running) else fish.speed


def _inertia(sheet: ReelSheet, draws: Mapping[str, Sample], fish: FishRun, radius: float) -> Sample:
    room = sheet.spool
    bare = free_spin.bare_inertia(sheet) * draws["inertia_factor"]
    density = fish.material.density.middle
    on = spool.line_inertia(room.arbor_radius, radius, room.width, density, draws["packing"])
    return np.asarray(bare + on)


def _stiffness(draws: Mapping[str, Sample], fish: FishRun) -> Sample:
    held = fish.material.modulus
    modulus = held.low + draws["line_modulus"] * (held.high - held.low)
    return np.asarray(line.stiffness(modulus, fish.diameter, fish.line_out))


def _frequency(frequency: Sample, smooth: NDArray[np.bool_]) -> Predicted | None:
    return band("judders a second", frequency[~smooth], "frequency") if np.mean(smooth) < 0.5 else None


def _middle(
    mass: Sample, stiffness: Sample, speed: float, static: Sample, pull: Sample, damping: Sample
) -> judder.StickSlip:
    """The case of all the middles, long enough to show some swings."""
    m, k, fs, fk, c = (float(np.median(sample)) for sample in (mass, stiffness, static, pull, damping))
    swing = 2 * pi * np.sqrt(m / k) + 2 * (fs - fk) / (k * speed)
    return judder.stick_slip(m, k, speed, fs, fk, fs / (k * speed) + SWINGS * swing, damping=c)
