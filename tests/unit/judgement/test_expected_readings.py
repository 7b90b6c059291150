"""What a reading should have been, and which readings say nothing."""

import numpy as np
import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.expected_readings import deviation, expected
from spoolwright.judgement.narrowing import know
from spoolwright.judgement.taken import Taken
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")
KNOWN = know(SHEET, {}, samples=300, seed=1)
PULL = Measured(25.0, 0.5, "force")
AT = {"radius": 0.0235, "star_turns": 2.5}


def said(kind: str, measured: Measured = PULL, speed: float | None = None, **conditions: float | str):
    return expected(SHEET, KNOWN.state, KNOWN.draws, Taken(kind, measured, conditions), speed)


@pytest.mark.parametrize("kind", ["pull_run", "pull_start", "drag_torque"])
def test_a_pull_without_its_radius_and_star_says_nothing(kind: str) -> None:
    measured = PULL if kind != "drag_torque" else Measured(0.6, 0.01, "torque")
    assert "unknown" in said(kind, measured)
    assert isinstance(said(kind, measured, **AT), np.ndarray)


def test_a_start_is_harder_than_a_run() -> None:
    assert np.all(said("pull_start", **AT) > said("pull_run", **AT))


def test_torque_is_pull_times_radius() -> None:
    torque = said("drag_torque", Measured(0.6, 0.01, "torque"), star_turns=2.5)
    assert torque == pytest.approx(said("pull_run", **AT) * 0.0235)


def test_a_full_pull_is_taken_at_a_full_spool_unless_it_says_otherwise() -> None:
    assert said("pull_full") == pytest.approx(said("pull_full", radius=SHEET.spool.full_radius))
    assert np.all(said("pull_full", radius=0.015) > said("pull_full"))


def test_a_stop_time_needs_the_speed_it_started_at() -> None:
    time = Measured(11.0, 0.2, "time")
    assert said("stop_time", time) is None
    assert np.all(said("stop_time", time, speed=300.0) > said("stop_time", time, speed=100.0))


def test_other_kinds_are_passed_by() -> None:
    assert said("mass", Measured(0.3, 0.001, "mass")) is None


def test_a_reel_without_a_drag_has_nothing_to_say_of_pulls() -> None:
    bare = SHEET.model_copy(update={"drag": None})
    assert expected(bare, KNOWN.state, KNOWN.draws, Taken("pull_full", PULL)) is None


def test_a_reading_scatters_from_day_to_day_besides_its_own_uncertainty() -> None:
    assert deviation(Taken("pull_full", Measured(50.0, 0.0, "force"))) == pytest.approx(1.5)
    assert deviation(Taken("pull_full", Measured(0.0, 0.0, "force"))) > 0
