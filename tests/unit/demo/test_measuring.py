"""What the demonstration measures is read by the bench's own readers, from files of physics and noise."""

from __future__ import annotations

import pytest

from spoolwright.demo.measuring import pull, pull_that_reads, spin, values_of_typed
from spoolwright.demo.nature import Nature
from spoolwright.demo.signals import KILOGRAM as KG
from spoolwright.demo.signals import PULL_STYLES

REEL = Nature(2.6 * KG, 1.5, 0.18, 5.8 * KG, 23.5e-3, 2.5, 200.0, 11.0, 0.42e-3, 3, 0.286)


@pytest.mark.parametrize("style", PULL_STYLES)
def test_a_pull_in_any_gauges_file_reads_near_what_the_reel_does(style: str) -> None:
    read = pull(REEL, 5, style).read
    assert read.running.value == pytest.approx(REEL.running, rel=0.03)
    assert read.start_up_ratio.value == pytest.approx(REEL.ratio, rel=0.03)
    assert read.judder.value == pytest.approx(REEL.judder, rel=0.25)


def test_a_pull_whose_numbers_are_told_reads_them() -> None:
    read = pull_that_reads(REEL, 5).read
    # Trade handbook, chapter 9, scenario 1 (invented): 2.6 kg at 23.5 mm are 0.599 N m, started at 3.9 kg.
    assert read.running.value * REEL.radius == pytest.approx(0.599, abs=0.001)
    assert read.start_up_ratio.value == pytest.approx(1.50, abs=0.003)


@pytest.mark.parametrize("name", ["spin.wav", "spin.csv"])
def test_a_spin_comes_to_rest_when_the_reel_does(name: str) -> None:
    dropped = spin(REEL, 3, None, name)
    assert dropped.read.stop_time.value == pytest.approx(REEL.spins, rel=0.01)
    assert dropped.read.per_inertia
    assert dropped.data.startswith(b"RIFF") == (name == "spin.wav")


def test_with_an_inertia_the_drags_are_torques() -> None:
    read = spin(REEL, 3, 1.2e-5, "spin.csv").read
    assert read.constant.dimension == "torque"
    assert read.constant.uncertainty > 0


def test_the_same_seed_makes_the_same_file() -> None:
    assert pull(REEL, 7).data == pull(REEL, 7).data
    assert pull(REEL, 7).data != pull(REEL, 8).data


def test_what_is_typed_keeps_each_try_beside_the_mean() -> None:
    values = values_of_typed("pull_full", "5.8 kg; 5.7 kg; 5.9 kg")
    assert [value.repeat for value in values] == [0, 1, 2, 3]
    assert values[0].value == pytest.approx(5.8 * KG)
    assert [value.typed for value in values[1:]] == ["5.8 kg", "5.7 kg", "5.9 kg"]
    assert [value.repeat for value in values_of_typed("feel", "3")] == [0]
