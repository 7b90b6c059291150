"""What `run` and `judder` ask alike."""

import argparse
from pathlib import Path

import pytest

from spoolwright.bench.unreadable import NeedsAnswer
from spoolwright.command.fish import fish_arguments, fish_asked, numbers, value
from spoolwright.judgement.prediction import Predicted


def asked(*typed: str) -> argparse.Namespace:
    parser = argparse.ArgumentParser()
    fish_arguments(parser)
    return parser.parse_args(["tarvak-52", *typed])


def test_everything_has_an_answer_before_anything_is_typed() -> None:
    fish = fish_asked(asked())
    assert (fish.distance, fish.speed, fish.fill, fish.line_out) == (100.0, 4.0, 1.0, 20.0)
    assert fish.pull is None
    assert fish.turns is None


def test_units_are_read() -> None:
    fish = fish_asked(asked("--pull", "10 lb", "--speed", "10 km/h", "--distance", "50 yd", "--fill", "50 %"))
    assert fish.pull == pytest.approx(44.482, abs=1e-3)
    assert fish.speed == pytest.approx(2.7778, abs=1e-4)
    assert fish.distance == pytest.approx(45.72)
    assert fish.fill == 0.5


def test_a_recording_without_speeds_asks_for_one_by_its_option(tmp_path: Path) -> None:
    file = tmp_path / "run.csv"
    file.write_text("time [s];pull [kg]\n" + "".join(f"{n};{n / 10}\n" for n in range(30)))
    with pytest.raises(NeedsAnswer, match="--speed"):
        fish_asked(asked("--recorded", str(file)))
    told = fish_asked(asked("--recorded", str(file), "--speed", "3 m/s")).recorded
    assert told is not None
    assert told.speed[0] == 3.0


def test_a_value_is_handed_on_with_its_band_and_unit() -> None:
    told = value(Predicted("", 300.0, 290.0, 320.0, 5.0, "temperature"))
    assert told == {
        "value": 300.0, "low": 290.0, "high": 320.0, "coverage": 0.9,
        "uncertainty": 10.0, "coverage_factor": 2, "unit": "K",
    }  # fmt: skip
    assert value(None) is None
    assert numbers([1 / 3]) == [0.333333]
