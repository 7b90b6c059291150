"""What a coast-down says, and when it says nothing."""

from dataclasses import replace

import numpy as np
import pytest
from numpy.typing import NDArray

from spoolwright.bench import spin_down
from spoolwright.bench.mending import Mended, mend
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable
from spoolwright.demo.signals import SpinShape, spin_recording
from spoolwright.mechanics import coastdown

TURN = 2 * np.pi


def counted(speed: float, *drags: float, turns: int = 120) -> Mended:
    at = coastdown.time_at_angle(TURN * np.arange(turns), speed, 1.0, *drags)
    return Mended(np.asarray(at, dtype=np.float64), np.arange(turns), 0, 0)


def test_drag_without_an_inertia_is_per_inertia_and_with_one_a_torque() -> None:
    ticks = counted(100.0, 2.0, 0.02, 1e-4)
    plain = spin_down.fit(ticks)
    heavy = spin_down.fit(ticks, Measured(3e-5, 0.0, "inertia"))
    assert (plain.constant.dimension, heavy.constant.dimension) == ("deceleration", "torque")
    for name in ("constant", "viscous", "quadratic"):
        assert getattr(heavy, name).value == pytest.approx(3e-5 * getattr(plain, name).value)
    assert heavy.stop_time == plain.stop_time
    assert (plain.per_inertia, heavy.per_inertia) == (True, False)


def test_the_uncertainty_of_the_inertia_goes_into_the_torques() -> None:
    found = spin_down.fit(counted(100.0, 2.0), Measured(3e-5, 3e-6, "inertia"))
    assert found.constant.uncertainty / found.constant.value == pytest.approx(0.1, rel=0.01)
    assert ("constant", "inertia") in {(row.result, row.source) for row in found.budget}


def test_time_to_rest_is_that_of_the_law() -> None:
    found = spin_down.fit(counted(100.0, 2.0, 0.02, 1e-4))
    law = coastdown.stop_time(100.0, 1.0, 2.0, 0.02, 1e-4)
    assert found.stop_time.value == pytest.approx(float(law), rel=1e-3)


def test_two_marks_a_turn_halve_the_speed() -> None:
    one = spin_down.fit(counted(100.0, 2.0, 0.02, 1e-4))
    two = spin_down.fit(counted(100.0, 2.0, 0.02, 1e-4), ticks_per_turn=2)
    assert two.initial_speed.value == pytest.approx(one.initial_speed.value / 2)
    assert two.stop_time.value == pytest.approx(one.stop_time.value, rel=1e-6)


def test_the_curve_has_a_point_for_each_interval() -> None:
    signal = spin_recording(SpinShape(missed=0.1, doubled=0.0), seed=4)
    found = spin_down.fit(mend(signal.ticks))
    assert (
        len(found.time) == len(found.speed) == len(found.fitted) == len(found.turns) == found.ticks_used - 1
    )
    assert (found.turns > 1).any()
    assert np.sqrt(np.mean((found.speed - found.fitted) ** 2)) / found.initial_speed.value == pytest.approx(
        found.relative_rms
    )


def test_ticks_of_the_spinning_up_are_left_out_with_a_note() -> None:
    signal = spin_recording(SpinShape(missed=0.0, doubled=0.0), seed=5)
    up = np.cumsum(0.5 * 0.93 ** np.arange(35))
    later = up[-1] + 0.04 - signal.ticks[0]
    found = spin_down.fit(mend(np.concatenate((up, later + signal.ticks))))
    assert found.start == pytest.approx(up[-1] + 0.04, abs=0.4)
    true = signal.truth.speed_at(found.start - later)
    assert abs(found.initial_speed.value - true) < 2 * found.initial_speed.expanded
    assert any("left out" in note for note in found.notes)


def test_a_recording_that_ends_early_says_that_the_rest_is_foretold() -> None:
    found = spin_down.fit(mend(spin_recording(SpinShape(seconds=6.0), seed=6).ticks))
    assert any("foretold, not seen" in note for note in found.notes)
    full = spin_down.fit(mend(spin_recording(SpinShape(), seed=6).ticks))
    assert not any("foretold" in note for note in full.notes)
    assert found.stop_time.uncertainty > 3 * full.stop_time.uncertainty


def test_viscous_and_quadratic_drag_that_cannot_be_parted_are_said_to_be_so() -> None:
    shape = SpinShape(
        initial_speed=60.0, constant=3.0, viscous=0.02, quadratic=3e-4, jitter=0.02, seconds=6.0
    )
    found = spin_down.fit(mend(spin_recording(shape, seed=7).ticks))
    assert any("does not part viscous from quadratic" in note for note in found.notes)


@pytest.mark.parametrize("drags", [(0.0, 0.1, 0.0), (0.0, 0.05, 5e-4)])
@pytest.mark.parametrize("seed", range(4))
def test_a_spool_without_constant_drag_keeps_its_law_and_a_guess_of_its_stop(
    drags: tuple[float, float, float], seed: int
) -> None:
    noise = np.random.default_rng(seed).normal(0.0, 1e-5, 130)
    ticks = counted(100.0, *drags, turns=130)
    found = spin_down.fit(replace(ticks, times=ticks.times + noise))
    assert found.initial_speed.value == pytest.approx(100.0, rel=1e-3)
    assert found.viscous.value == pytest.approx(drags[1], rel=0.01)
    assert 0 < found.constant.value <= found.constant.expanded + 1e-4
    assert np.isfinite(found.stop_time.value)


@pytest.mark.parametrize("seed", range(5))
def test_a_long_silence_and_a_few_lost_ticks_at_the_end_leave_the_law_as_it_was(seed: int) -> None:
    rng = np.random.default_rng(seed)
    first = int(rng.integers(40, 150))
    heard = np.r_[0:first, first + int(rng.integers(20, 60)) : 260, 268, 275, 287, 293]
    at = coastdown.time_at_angle(TURN * heard, 100.0, 1.0, 1.0, 0.02, 5e-5)
    found = spin_down.fit(mend(np.asarray(at) + rng.normal(0.0, 5e-5, len(heard))))
    assert found.stop_time.value == pytest.approx(
        float(coastdown.stop_time(100.0, 1.0, 1.0, 0.02, 5e-5)), rel=0.01
    )
    assert found.ticks_used == len(heard)


def test_the_count_of_mended_ticks_is_that_of_the_faults_put_in() -> None:
    signal = spin_recording(SpinShape(missed=0.05, doubled=0.05), seed=8)
    found = spin_down.fit(mend(signal.ticks))
    put_in = signal.truth.missed + signal.truth.doubled
    assert abs(found.ticks_mended - put_in) <= 3


def even(step: float) -> NDArray[np.float64]:
    return step * np.arange(60.0) * (1 + 1e-4 * np.arange(60))


@pytest.mark.parametrize(
    ("ticks", "words"),
    [
        (Mended(even(0.005), np.arange(60), 0, 0), "rad/s at the start"),
        (Mended(even(8.0), np.arange(60), 0, 0), "rad/s at the start"),
        (Mended(even(0.1)[:5], np.arange(5), 0, 0), "there are 5 ticks"),
        (Mended(np.cumsum(0.3 * 0.95 ** np.arange(40)), np.arange(40), 0, 0), "follow the fastest moment"),
    ],
)
def test_what_no_spool_does_is_refused(ticks: Mended, words: str) -> None:
    with pytest.raises(Unreadable, match=f"(?i){words}"):
        spin_down.fit(ticks)


@pytest.mark.parametrize("noise", [0.0, 1e-4])
def test_a_spool_that_turns_on_evenly_says_nothing_about_its_drag(noise: float) -> None:
    ticks = 0.2 * np.arange(100) + np.random.default_rng(1).normal(0.0, noise, 100)
    with pytest.raises(Unreadable, match="hardly slows down"):
        spin_down.fit(mend(ticks))


def test_a_count_of_which_most_is_missing_is_not_believed() -> None:
    every_fifth = counted(100.0, 0.1, turns=400)
    heard = slice(None, None, 5)
    with pytest.raises(Unreadable, match="nly 80 ticks fall on turns"):
        spin_down.fit(Mended(every_fifth.times[heard], every_fifth.turns[heard], 0, 320))


def test_of_few_ticks_half_of_the_turns_must_be_heard() -> None:
    every_third = counted(100.0, 1.0, turns=90)
    heard = slice(None, None, 3)
    with pytest.raises(Unreadable, match="50% of the turns"):
        spin_down.fit(Mended(every_third.times[heard], every_third.turns[heard], 0, 60))


def test_ticks_that_no_drag_explains_are_refused() -> None:
    swinging = counted(100.0, 2.0)
    wild = replace(swinging, times=swinging.times + 0.02 * np.sin(np.arange(120) / 3.0))
    with pytest.raises(Unreadable, match="o drag explains"):
        spin_down.fit(wild)


@pytest.mark.parametrize(("inertia", "marks"), [(Measured(0.0, 0.0, "inertia"), 1), (None, 0)])
def test_an_inertia_or_marks_of_nothing_are_refused(inertia: Measured | None, marks: int) -> None:
    with pytest.raises(ValueError, match="must be"):
        spin_down.fit(counted(100.0, 2.0), inertia, ticks_per_turn=marks)
