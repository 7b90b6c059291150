"""`spoolwright bearing`: a recording at a steady speed in, one of six words with its evidence out."""

import io
import json
import wave
from pathlib import Path

import numpy as np
import pytest

from spoolwright.bench.bearing_noise import VERDICTS
from spoolwright.command.__main__ import main
from tests import coasting
from tests.knocking import Case, recording

SIZES = ("--balls", "9", "--ball-diameter", "7.94 mm", "--pitch-diameter", "39.04 mm")


@pytest.fixture(scope="module")
def file(tmp_path_factory: pytest.TempPathFactory) -> str:
    sound = recording(Case("outer", 1790.0, turns=60.0, seed=4))
    out = io.BytesIO()
    with wave.open(out, "wb") as written:
        written.setparams((1, 2, int(sound.rate), 0, "NONE", ""))
        written.writeframes((sound.samples * 32767).astype("<i2").tobytes())
    path = tmp_path_factory.mktemp("sound") / "bearing.wav"
    path.write_bytes(out.getvalue())
    return str(path)


def asked(capsys: pytest.CaptureFixture[str], *typed: str, code: int = 0) -> str:
    assert main(["bearing", *typed]) == code
    out, err = capsys.readouterr()
    return out or err


def test_the_fixed_keys(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    told = json.loads(asked(capsys, file, *SIZES, "--speed", "1780 rpm", "--json"))
    assert told["verdict"] == "outer"
    assert told["verdict"] in VERDICTS
    assert 0.5 < told["confidence"] <= 1
    assert told["evidence"]
    assert all(isinstance(sentence, str) for sentence in told["evidence"])
    assert np.isclose(told["rates"]["outer"], 3.585 * told["shaft_rate"], rtol=1e-3)


def test_words_with_units_and_a_caution(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    told = asked(capsys, file, *SIZES, "--speed", "1790 rpm", "--units", "imperial")
    assert told.startswith("Outer ring damaged")
    assert "9 balls of 0.313 in" in told
    assert "fingers" in told


def test_the_bearing_of_a_sheet(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    place = ("--sheet", "tarvak-58r", "--place", "spool shaft, gear side")
    told = json.loads(asked(capsys, file, *place, "--speed", "1790 rpm", "--json"))
    assert told["bearing"]["balls"] == 7
    assert told["verdict"] in ("cannot tell", "sound")
    assert any("derived" in note for note in told["notes"])


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        (("--speed", "1790 rpm"), "which bearing"),
        (("--speed", "0 rpm", *SIZES), "not above zero"),
        (("--speed", "1790", *SIZES), "unit"),
        (("--speed", "1790 rpm", *SIZES[2:], "--balls", "2"), "2 balls"),
        (("--speed", "1790 rpm", *SIZES[:4], "--pitch-diameter", "5 mm"), "do not go"),
        (("--speed", "1790 rpm", "--sheet", "tarvak-58r"), "gear side"),
        (("--speed", "1790 rpm", "--sheet", "tarvak-58r", "--place", "moon"), "moon"),
    ],
)
def test_what_cannot_be_used_is_refused_in_words(
    typed: tuple[str, ...], said: str, file: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert said.lower() in asked(capsys, file, *typed, code=2).lower()


def test_a_size_whose_balls_are_not_known_is_said_plainly(
    file: str, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    from spoolwright.sheets.reel_sheet import shipped

    sheet = tmp_path / "reel.toml"
    text = shipped()["tarvak-58r"]
    assert '"4 x 11 x 4 mm"' in text
    sheet.write_text(text.replace('"4 x 11 x 4 mm"', '"1.2 x 4 x 1.8 mm"', 1), encoding="utf-8")
    typed = ("--sheet", str(sheet), "--place", "spool shaft, gear side", "--speed", "1790 rpm")
    assert "not known" in asked(capsys, file, *typed, code=2)


def test_a_coast_is_read_by_the_turn(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    sound = coasting.recording(coasting.Coast("outer", clear=0.1, seed=3, seconds=4.0, constant=25.0))
    out = io.BytesIO()
    with wave.open(out, "wb") as written:
        written.setparams((1, 2, int(sound.rate), 0, "NONE", ""))
        written.writeframes((sound.samples * 32767).astype("<i2").tobytes())
    path = tmp_path / "coast.wav"
    path.write_bytes(out.getvalue())
    sizes = ("--balls", "7", "--ball-diameter", "1.588 mm", "--pitch-diameter", "6.175 mm")
    told = json.loads(asked(capsys, str(path), *sizes, "--coast", "--json"))
    assert told["verdict"] == "outer"
    assert told["units"]["rates"] == "times a turn"
    assert np.isclose(told["rates"]["outer"], 2.6, atol=0.01)


def test_speed_or_coast_one_of_them(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert "--coast" in asked(capsys, file, *SIZES, code=2)
    assert "--coast" in asked(capsys, file, *SIZES, "--coast", "--speed", "1750 rpm", code=2)
