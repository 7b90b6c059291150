"""`spoolwright series`: a table of pulls to what a turn adds, what is wrong, whether it fades or judders."""

import json
from pathlib import Path

import pytest

from spoolwright.command.__main__ import main

SOUND = "turns;start-up [kg];running [kg]\n" + "".join(
    f"{t};{1.1 * kg:.2f};{kg:.2f}\n" for t, kg in ((1.5, 2.2), (2, 3.7), (2.5, 5.0), (3, 6.4), (3.5, 7.6))
)


def written(folder: Path, text: str, name: str = "pulls.csv") -> str:
    path = folder / name
    path.write_text(text, encoding="utf-8")
    return str(path)


def asked(capsys: pytest.CaptureFixture[str], *typed: str, code: int = 0) -> str:
    assert main(["series", *typed]) == code
    out, err = capsys.readouterr()
    return out or err


def data(capsys: pytest.CaptureFixture[str], *typed: str, code: int = 0) -> dict:
    return json.loads(asked(capsys, *typed, "--json", code=code))


def test_settings_give_slope_onset_and_a_verdict_with_its_chances(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    found = data(capsys, written(tmp_path, SOUND), "--sheet", "tarvak-54c", "--gauge-accuracy", "1 %")
    assert found["pull_per_turn"]["value"] == pytest.approx(2.7 * 9.80665, rel=0.05)
    assert found["onset"]["value"] == pytest.approx(0.65, abs=0.15)
    assert found["start_up_ratio"]["value"] == pytest.approx(1.1, abs=0.01)
    assert sum(found["chances"].values()) == pytest.approx(1.0)
    assert found["verdict"] in (*found["chances"], "cannot tell", "none fits")
    assert found["radius"]["unit"] == "m"
    assert found["evidence"]


def test_without_a_sheet_the_numbers_come_alone(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    told = asked(capsys, written(tmp_path, SOUND))
    assert "One turn of the star adds" in told
    assert "--sheet" in told
    assert "verdict" not in data(capsys, written(tmp_path, SOUND))


def test_an_earlier_series_a_thickness_and_what_was_looked_for_count(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    worn = SOUND.replace("\n1.5;", "\n2.5;").replace("\n2;", "\n3;").replace("\n2.5;5", "\n3.5;5")
    rows = [line for line in worn.splitlines() if not line.startswith(("3.5;8", "3;7", "2.5;5.5"))]
    now = "\n".join(rows[:1] + ["2.5;2.42;2.2", "3;4.07;3.7", "3.5;5.5;5.0", "4;7.04;6.4"])
    found = data(
        capsys, written(tmp_path, now), "--sheet", "tarvak-54c", "--earlier",
        written(tmp_path, SOUND, "before.csv"), "--lost", "0.5 mm", "--not", "misstacked",
    )  # fmt: skip
    assert found["verdict"] == "worn"
    assert "misstacked" not in found["chances"]


def test_a_pulley_and_an_angle_are_taken_out(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    name = written(tmp_path, SOUND)
    plain = data(capsys, name)
    put_right = data(
        capsys, name, "--pulley-up", "5.50 kg", "--pulley-down", "4.545 kg", "--line-angle", "20 deg",
        "--zero-before", "0.05 kg",
    )  # fmt: skip
    ratio = put_right["pull_per_turn"]["value"] / plain["pull_per_turn"]["value"]
    assert ratio == pytest.approx(0.9397 / 1.1, rel=0.01)
    assert any("pulley" in note for note in put_right["notes"])


def test_a_drag_that_fades_and_one_that_judders_when_slow(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    fading = "number;running [kg]\n" + "".join(f"{n};{5 - 0.3 * n:.2f}\n" for n in range(8))
    assert data(capsys, written(tmp_path, fading), "--along", "number")["verdict"] == "fades"
    assert "The drag fades" in asked(capsys, written(tmp_path, fading), "--along", "number")
    slow = "speed [m/s];running [kg];judder [%]\n0.02;3.0;40\n0.1;3.0;20\n0.3;3.0;4\n0.6;3.0;3\n"
    found = data(capsys, written(tmp_path, slow), "--along", "speed")
    assert found["verdict"] == "sticks and slips when slow"
    assert (found["rough_up_to"], found["smooth_from"]) == (0.1, 0.3)
    assert "Smooth from 0.3" in asked(capsys, written(tmp_path, slow), "--along", "speed")


@pytest.mark.parametrize(
    ("text", "more", "words"),
    [
        ("a,b\n1,2\n", [], "no column"),
        (SOUND, ["--sheet", "no-such-reel"], "no-such-reel"),
        (SOUND, ["--sheet", "tarvak-54c", "--not", "rust"], "ruled out"),
        (SOUND, ["--sheet", "tarvak-54c", "--radius", "0 mm"], "radius"),
        (SOUND, ["--pulley-up", "5 kg"], "both"),
        (SOUND, ["--gauge-accuracy", "-1 %"], "below zero"),
    ],
)
def test_what_cannot_be_used_is_refused(
    text: str, more: list[str], words: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert words in asked(capsys, written(tmp_path, text), *more, code=2)
