"""The run that is asked for, on the spool that it is asked of."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench.run_record import RunRecord
from spoolwright.judgement.fish_run import MOST_POINTS, FishRun, as_recorded, line_on, steady
from spoolwright.mechanics.heat import Run
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")


def test_the_pull_grows_as_the_radius_falls_and_the_torque_stays() -> None:
    course = steady(SHEET, FishRun(distance=200.0))
    assert course.run.pull[0] == 1.0
    assert np.all(np.diff(course.run.pull) > 0)
    assert course.run.pull[-1] == pytest.approx(course.starts_at / course.falls_to)
    assert course.run.time[-1] == pytest.approx(50.0)


def test_thicker_line_empties_the_spool_sooner_and_the_run_ends_there() -> None:
    thin, thick = FishRun(distance=300.0), FishRun(distance=300.0, line="nylon 0.60 mm")
    assert line_on(SHEET, thick) < line_on(SHEET, thin)
    assert not steady(SHEET, thin).empties
    course = steady(SHEET, thick)
    assert course.empties
    assert course.way == pytest.approx(line_on(SHEET, thick))
    assert course.falls_to == pytest.approx(SHEET.spool.arbor_radius)


def test_half_a_spool_starts_at_a_smaller_radius() -> None:
    assert steady(SHEET, FishRun(fill=0.5)).starts_at < steady(SHEET, FishRun()).starts_at


@pytest.mark.parametrize("wrong", [{"speed": 0.0}, {"distance": -1.0}, {"fill": 1.2}, {"line_out": 0.0}])
def test_a_run_that_cannot_be_is_refused_by_name(wrong: dict) -> None:
    with pytest.raises(ValueError, match=next(iter(wrong))):
        steady(SHEET, FishRun(**wrong))


def test_a_recorded_run_keeps_its_heat_and_its_way() -> None:
    time = np.linspace(3.0, 33.0, 3001)
    speed, pull = 4 * np.sin(np.pi * (time - 3) / 30) ** 2, 20 + 5 * np.sin(7 * time)
    told = as_recorded(SHEET, FishRun(recorded=RunRecord(time, speed, pull)))
    assert len(told.run.time) == MOST_POINTS
    assert told.run.time[0] == 0.0
    assert told.run.energy == pytest.approx(float(Run(time, speed, pull).energy), rel=1e-9)
    assert told.way == pytest.approx(60.0, rel=1e-6)


def test_a_recording_that_runs_backwards_is_refused() -> None:
    wrong = RunRecord(np.array([0.0, 2.0, 1.0]), np.ones(3), np.ones(3))
    with pytest.raises(ValueError, match="recorded"):
        as_recorded(SHEET, FishRun(recorded=wrong))
    with pytest.raises(ValueError, match="recorded"):
        as_recorded(SHEET, FishRun())
