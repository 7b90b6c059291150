"""A coasting bearing's damage in, that damage out, or nothing said; sound is never called damaged."""

from functools import cache

import numpy as np
import pytest

from spoolwright.bench import order_tracking, spin_down, ticks, turning
from spoolwright.bench.bearing_noise import Bearing, BearingNoise
from spoolwright.bench.recording import Recording
from spoolwright.bench.turning import Turning
from tests.coasting import Coast, recording, turns


@cache
def heard(coast: Coast) -> BearingNoise:
    sound = recording(coast)
    turned = turning.of_coast(spin_down.fit(ticks.mend(ticks.find(sound))))
    return order_tracking.listen(sound, Bearing(coast.balls, coast.ball, coast.pitch), turned)


def coast(kind: str, clear: float, seed: int = 3) -> Coast:
    return Coast(kind, clear=clear, seed=seed, seconds=4.0, constant=25.0, rate=16000.0)


@pytest.mark.parametrize("kind", ["outer", "inner", "ball", "cage", "sound"])
def test_truth_in_truth_out(kind: str) -> None:
    found = heard(coast(kind, 0.1))
    assert found.verdict == kind
    assert found.unit == order_tracking.A_TURN
    assert found.rates["outer"] == pytest.approx(2.60, abs=0.01)


@pytest.mark.parametrize("kind", ["outer", "ball"])
def test_faint_damage_is_never_another_part(kind: str) -> None:
    assert heard(coast(kind, 0.002, seed=5)).verdict in (kind, "cannot tell", "sound")


@pytest.mark.parametrize("seed", [11])
def test_sound_is_never_called_damaged(seed: int) -> None:
    assert heard(coast("sound", 1.0, seed)).verdict in ("sound", "cannot tell")


def test_an_angle_that_is_counted_by_knocks_instead_of_turns_names_no_part() -> None:
    made = coast("outer", 1.0)
    time = np.linspace(0.0, 3.9, 400)
    wrong = Turning(0.5 + time, 2.6 * turns(made, time))
    found = order_tracking.listen(recording(made), Bearing(made.balls, made.ball, made.pitch), wrong)
    assert found.verdict == "cannot tell"


def test_a_few_turns_tell_nothing_and_say_so() -> None:
    few = Turning(np.array([0.0, 1.0]), np.array([0.0, 20.0]))
    found = order_tracking.listen(
        Recording(np.ones(12000, np.float32), 12000.0), Bearing(7, 1.5e-3, 6e-3), few
    )
    assert found.verdict == "cannot tell"
    assert "20 turns" in found.evidence[0]


def test_what_swells_too_quickly_for_the_places_of_a_turn_averages_out() -> None:
    time = np.arange(400_000) / 20_000.0
    turned = 10.0 * time
    slow = 1 + 0.5 * np.cos(2 * np.pi * 12 * turned)
    quick = 0.5 * np.cos(2 * np.pi * (order_tracking.PLACES_A_TURN + 7) * turned)
    even = order_tracking.by_the_turn(slow + quick, turned, 200.0)
    lines = np.abs(np.fft.rfft(even))[: 48 * 200] * 2 / len(even)
    assert lines[12 * 200] == pytest.approx(0.5, rel=0.03)
    assert lines[7 * 200] < 0.02
