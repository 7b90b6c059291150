"""How a drag starts and whether it judders, with its band."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench.run_record import RunRecord
from spoolwright.judgement.fish_run import FishRun
from spoolwright.judgement.monte_carlo import draw
from spoolwright.judgement.run_judder import JUDDER_DRAWS, RunJudder, run_judder
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")


def judder(ratio: float, fish: FishRun | None = None, pull: float = 30.0) -> RunJudder:
    draws = {**draw(JUDDER_DRAWS, samples=200, seed=4), "start_up_ratio": np.full(200, ratio)}
    draws |= {"inertia_factor": np.ones(200), "packing": np.full(200, 0.7)}
    return run_judder(SHEET, draws, fish or FishRun(), SHEET.spool.full_radius, np.full(200, pull))


def test_a_harder_start_peaks_higher_and_swings_wider() -> None:
    soft, hard = judder(1.1), judder(1.5)
    assert hard.static.middle == pytest.approx(45.0)
    assert hard.start_up_peak.middle > soft.start_up_peak.middle
    assert hard.swing.middle > soft.swing.middle
    assert hard.runs_smooth < soft.runs_smooth


def test_no_step_of_friction_no_judder() -> None:
    told = judder(1.0)
    assert told.runs_smooth == 1.0
    assert told.frequency is None
    assert told.swing.high == 0.0


def test_less_line_out_is_a_stiffer_spring_and_runs_smooth_sooner() -> None:
    near, far = judder(1.3, FishRun(line_out=5.0)), judder(1.3, FishRun(line_out=80.0))
    assert near.stiffness > 10 * far.stiffness
    assert near.smooth_above.middle < far.smooth_above.middle


def test_braid_runs_smooth_sooner_than_nylon() -> None:
    nylon, braid = (judder(1.3, FishRun(line=words)) for words in ("nylon 0.40 mm", "braid 0.40 mm"))
    assert braid.smooth_above.high < nylon.smooth_above.low


def test_the_trace_comes_tight_peaks_and_never_pushes() -> None:
    told = judder(1.3)
    assert told.pull[0] < 0.2 * told.running.middle
    assert np.min(told.pull) >= 0.0
    assert np.max(told.pull) == pytest.approx(told.start_up_peak.middle, rel=0.1)


def test_a_recorded_run_judders_at_its_own_mean_speed() -> None:
    slow = RunRecord(np.array([0.0, 10.0]), np.array([0.3, 0.3]), np.array([30.0, 30.0]))
    recorded = judder(1.3, FishRun(recorded=slow))
    assert recorded.swing.middle == pytest.approx(judder(1.3, FishRun(speed=0.3)).swing.middle)
