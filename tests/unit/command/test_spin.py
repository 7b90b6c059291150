"""`spoolwright spin`: a recording or ticks in, what slows the spool out."""

import json
from pathlib import Path

import pytest

from spoolwright.command.__main__ import main
from spoolwright.demo.signals import SPIN_STYLES, SpinShape, pull_trace, spin_recording

SIGNAL = spin_recording(SpinShape(), seed=13)
FIXED = {
    "initial_speed", "constant", "viscous", "quadratic",
    "stop_time", "ticks_used", "ticks_mended", "relative_rms",
}  # fmt: skip


def written(folder: Path, data: bytes, name: str = "spin.csv") -> str:
    path = folder / name
    path.write_bytes(data)
    return str(path)


def asked(capsys: pytest.CaptureFixture[str], *typed: str, code: int = 0) -> str:
    assert main(["spin", *typed]) == code
    out, err = capsys.readouterr()
    return out or err


def data(capsys: pytest.CaptureFixture[str], *typed: str, code: int = 0) -> dict:
    return json.loads(asked(capsys, *typed, "--json", code=code))


def files(folder: Path) -> list[str]:
    lists = [written(folder, SIGNAL.to_csv(style), f"{style}.csv") for style in SPIN_STYLES]
    return [*lists, written(folder, SIGNAL.to_wav(), "spin.wav"), written(folder, SIGNAL.to_wav(), "odd.csv")]


def test_the_fixed_keys_are_plain_numbers_whatever_the_file(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    for path in files(tmp_path):
        found = data(capsys, path)
        assert set(found) >= FIXED
        assert all(type(found[name]) in (int, float) for name in FIXED)
        assert found["initial_speed"] == pytest.approx(200.0, rel=0.01)
        assert found["stop_time"] == pytest.approx(SIGNAL.truth.stop_time, rel=0.01)
        assert found["relative_rms"] < 0.01


def test_with_an_inertia_the_drags_are_torques(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = written(tmp_path, SIGNAL.to_csv())
    plain, heavy = data(capsys, path), data(capsys, path, "--inertia", "3e-5 kg m^2")
    for name in ("constant", "viscous", "quadratic"):
        assert heavy[name] == pytest.approx(3e-5 * plain[name])
    assert (plain["units"]["constant"], heavy["units"]["constant"]) == ("rad/s^2", "N m")
    assert heavy["stop_time"] == plain["stop_time"]
    same = data(capsys, path, "--inertia", "300 g cm^2")
    assert same["constant"] == pytest.approx(heavy["constant"])


def test_the_uncertainty_of_an_inertia_counts(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = written(tmp_path, SIGNAL.to_csv())
    typed = ("--inertia", "3e-5 kg m^2", "--inertia-uncertainty", "3e-6 kg m^2")
    found = data(capsys, path, *typed)
    assert found["uncertainties"]["constant"] / found["constant"] == pytest.approx(0.2, rel=0.02)


def test_it_says_speed_rest_and_drag_with_their_spread(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    told = asked(capsys, written(tmp_path, SIGNAL.to_csv()), "--inertia", "3e-5 kg m^2")
    assert "rpm ±" in told
    assert "mN m ±" in told
    assert "compares a reel with itself only" in told
    plain = asked(capsys, written(tmp_path, SIGNAL.to_csv()))
    assert "rad/s^2" in plain
    assert plain.count("±") == 5


def test_two_marks_on_the_spool(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    found = data(capsys, written(tmp_path, SIGNAL.to_csv()), "--ticks-per-turn", "2")
    assert found["initial_speed"] == pytest.approx(100.0, rel=0.01)


def test_the_verdict_stands_with_its_evidence(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = written(tmp_path, SIGNAL.to_csv())
    plain = data(capsys, path)
    assert plain["verdict"] == "cannot tell"
    assert "no reel sheet" in plain["evidence"][0]
    found = data(capsys, path, "--sheet", "tarvak-54c")
    assert found["verdict"] in ("free", "dry", "dragging", "cannot tell")
    assert found["steps"]["looked_for"] is True
    assert found["cut_off"]["touched"] is None
    assert "Verdict: " in asked(capsys, path, "--sheet", "tarvak-54c")


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        (["--orders", "0"], "0 waves a turn cannot be"),
        (["--inertia", "3e-5"], "has no unit"),
        (["--inertia", "3 kg"], "is a mass"),
        (["--inertia", "0 kg m^2"], "not above zero"),
        (["--inertia", "-3e-5 kg m^2"], "not above zero"),
        (["--time-unit", "turns"], "no unit of time"),
        (["--ticks-per-turn", "0"], "0 ticks a turn cannot be"),
    ],
)
def test_what_was_typed_wrongly_is_said(
    typed: list[str], words: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert words in asked(capsys, written(tmp_path, SIGNAL.to_csv()), *typed, code=2)


@pytest.mark.parametrize(
    ("content", "name", "words"),
    [
        (pull_trace(seed=1).to_csv(), "pull.csv", "pull trace"),
        (b"\xff\xd8\xff\xe0 photo", "spin.wav", "photo"),
        (b"time\n", "spin.wav", "no recording"),
        (b"", "spin.csv", "empty"),
    ],
)
def test_another_file_is_named_for_what_it_is(
    content: bytes, name: str, words: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert words in asked(capsys, written(tmp_path, content, name), code=2)
