"""`spoolwright gearnoise`: a recording at an even handle speed in, a wheel, sound or cannot tell out."""

import io
import json
import wave
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from spoolwright.command.__main__ import main
from tests.meshing import Mesh, recording

MADE = Mesh("pinion", clear=0.1, seed=3, seconds=7.0, turns_a_second=2.2)


def written(folder: Path, samples: np.ndarray, rate: float) -> str:
    out = io.BytesIO()
    with wave.open(out, "wb") as file:
        file.setparams((1, 2, int(rate), 0, "NONE", ""))
        file.writeframes((samples * 32767).astype("<i2").tobytes())
    path = folder / "gears.wav"
    path.write_bytes(out.getvalue())
    return str(path)


@pytest.fixture(scope="module")
def file(tmp_path_factory: pytest.TempPathFactory) -> str:
    sound = recording(MADE)
    return written(tmp_path_factory.mktemp("sound"), sound.samples, sound.rate)


def asked(capsys: pytest.CaptureFixture[str], *typed: str, code: int = 0) -> str:
    assert main(["gearnoise", *typed]) == code
    out, err = capsys.readouterr()
    return out or err


def test_the_keys(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    told = json.loads(asked(capsys, file, "--teeth", "98, 17", "--speed", "138 rpm", "--json"))
    assert told["verdict"] == "pinion"
    assert told["teeth"] == {"main": 98, "pinion": 17}
    assert np.isclose(told["handle_speed"], 2.2 * 2 * np.pi, rtol=0.02)
    assert told["loudest_tooth"]["pinion"]["swelling"] > 1
    assert set(told["sidebands"]) == {"main", "pinion"}


def test_words_with_units_and_a_caution(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    told = asked(capsys, file, "--teeth", "98, 17", "--speed", "2.3 1/s", code=2)
    assert "Accepted" in told
    told = asked(capsys, file, "--teeth", "98, 17", "--speed", "138 rpm")
    assert told.startswith("A tooth of the pinion knocks")
    assert "rpm" in told
    assert "Fingers" in told


@pytest.mark.parametrize(
    "typed",
    [
        (),
        ("--teeth", "98, 17"),
        ("--teeth", "98, 17", "--sheet", "tarvak-58r", "--speed", "138 rpm"),
        ("--teeth", "98", "--speed", "138 rpm"),
        ("--teeth", "98, 17", "--speed", "0 rpm"),
        ("--teeth", "98, 17", "--speed", "138 rpm", "--clicker-teeth", "20"),
    ],
)
def test_what_is_missing_or_said_twice_is_refused(
    file: str, capsys: pytest.CaptureFixture[str], typed: tuple[str, ...]
) -> None:
    assert asked(capsys, file, *typed, code=2)


def test_the_gears_of_a_sheet(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    told = json.loads(asked(capsys, file, "--sheet", "tarvak-58r", "--speed", "138 rpm", "--json"))
    assert told["verdict"] in ("cannot tell", "sound")


def test_the_clicker_gives_the_speed(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    even = replace(MADE, kind="sound", uneven=0.0, drift=0.0)
    sound = recording(even).samples.astype(float)
    spool = even.turns_a_second * even.main / even.pinion
    clicks = (np.arange(0.01, even.seconds - 0.02, 1 / (4 * spool)) * even.rate).astype(int)
    for at in clicks:
        sound[at : at + 40] += 0.9 * np.exp(-np.arange(40) / 8) * np.sin(np.arange(40) * 1.7)
    path = written(tmp_path, sound / np.abs(sound).max(), even.rate)
    told = json.loads(asked(capsys, path, "--teeth", "98, 17", "--clicker-teeth", "4", "--json"))
    assert np.isclose(told["handle_speed"], 2.2 * 2 * np.pi, rtol=0.03)
