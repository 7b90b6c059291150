"""`spoolwright pull`: words for an angler, one object for a program, a question where the file is silent."""

import json
from pathlib import Path

import pytest

from spoolwright.command.__main__ import main
from spoolwright.demo.signals import PULL_STYLES, PullShape, pull_trace, spin_recording

SIGNAL = pull_trace(PullShape(), seed=12)


def written(folder: Path, data: bytes, name: str = "pull.csv") -> str:
    path = folder / name
    path.write_bytes(data)
    return str(path)


def asked(capsys: pytest.CaptureFixture[str], *typed: str, code: int = 0) -> str:
    assert main(["pull", *typed]) == code
    out, err = capsys.readouterr()
    return out or err


def data(capsys: pytest.CaptureFixture[str], *typed: str, code: int = 0) -> dict:
    return json.loads(asked(capsys, *typed, "--json", code=code))


@pytest.mark.parametrize("style", PULL_STYLES)
def test_every_style_gives_the_four_fixed_results(
    style: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    found = data(capsys, written(tmp_path, SIGNAL.to_csv(style)), "--gauge-accuracy", "0.5 %")
    for name, unit in {"start_up": "N", "running": "N", "start_up_ratio": "1", "judder": "1"}.items():
        assert set(found[name]) == {"value", "uncertainty", "unit"}
        assert found[name]["unit"] == unit
        assert abs(found[name]["value"] - getattr(SIGNAL.truth, name)) < 1.5 * found[name]["uncertainty"]
    assert found["coverage_factor"] == 2
    assert found["drift"]["unit"] == "1"


def test_it_says_pulls_with_their_spread_and_asks_for_the_radius(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    told = asked(capsys, written(tmp_path, SIGNAL.to_csv()))
    for line in told.splitlines()[:5]:
        assert "±" in line
    assert "kg" in told
    assert "radius" in told
    assert "accuracy was not given" in told


def test_an_angler_may_have_pounds(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert " lb ± " in asked(capsys, written(tmp_path, SIGNAL.to_csv()), "--units", "imperial")


def bare(folder: Path) -> str:
    rows = "".join(f"{f / 9.80665:.3f}\n" for f in SIGNAL.force)
    return written(folder, rows.encode())


def test_a_bare_column_is_asked_about_by_the_names_of_the_options(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    told = asked(capsys, bare(tmp_path), code=2)
    assert "--force-unit" in told
    assert "--rate" in told


def test_the_options_answer(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    for rate in ("100 Hz", "0.1 kHz", "100"):
        found = data(capsys, bare(tmp_path), "--force-unit", "kg", "--rate", rate)
        assert found["running"]["value"] == pytest.approx(SIGNAL.truth.running, rel=0.01)


def test_a_column_may_be_named(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    rows = "".join(f"{t:.3f};{f:.3f};{-f / 3:.3f}\n" for t, f in zip(SIGNAL.time, SIGNAL.force, strict=True))
    path = written(tmp_path, f"t [s];near [N];far [N]\n{rows}".encode())
    assert "--column" in asked(capsys, path, code=2)
    found = data(capsys, path, "--column", "near", "--delimiter", "semicolon", "--decimal", "point")
    assert found["read_as"]["force_column"].startswith("2")


def test_the_gauge_widens_what_it_should(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = written(tmp_path, SIGNAL.to_csv())
    plain = data(capsys, path)
    rough = data(capsys, path, "--gauge-accuracy", "5 %", "--resolution", "0.01 kg")
    wide = data(capsys, path, "--range-accuracy", "1 %", "--range", "50 kg")
    assert rough["running"]["uncertainty"] > 5 * plain["running"]["uncertainty"]
    assert wide["running"]["uncertainty"] > 5 * plain["running"]["uncertainty"]
    assert rough["start_up_ratio"]["uncertainty"] == pytest.approx(
        plain["start_up_ratio"]["uncertainty"], rel=0.1
    )


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        (["--range-accuracy", "1 %"], "needs the range"),
        (["--gauge-accuracy", "a lot"], "does not begin with a number"),
        (["--resolution", "0.01"], "has no unit"),
        (["--resolution", "-1 kg"], "below zero"),
        (["--rate", "often"], "does not begin with a number"),
        (["--force-unit", "stone"], "no unit of force"),
        (["--delimiter", "slash"], "no delimiter"),
        (["--column", "9"], "no single column"),
        (["--pull", "7"], "no pull number 7"),
    ],
)
def test_what_was_typed_wrongly_is_said(
    typed: list[str], words: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert words in asked(capsys, written(tmp_path, SIGNAL.to_csv()), *typed, code=2)


def test_ticks_and_recordings_are_sent_to_spin(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    spin = spin_recording(seed=1)
    assert "spin" in asked(capsys, written(tmp_path, spin.to_csv()), code=2)
    assert "sound recording" in asked(capsys, written(tmp_path, spin.to_wav()), code=2)


def test_a_refusal_is_one_object_too(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    found = data(capsys, written(tmp_path, b"\xff\xd8\xff\xe0 photo"), code=2)["error"]
    assert found["kind"] == "Unreadable"
    assert "photo" in found["reason"]
    assert found["where"] == "pull.csv"


def test_a_file_that_is_not_there_is_said(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert "no such file" in asked(capsys, str(tmp_path / "gone.csv"), code=2)
