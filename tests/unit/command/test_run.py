"""`spoolwright run`: in words for an angler, and whole as JSON."""

import json
from pathlib import Path

import pytest

from spoolwright.command.__main__ import main


def words(capsys: pytest.CaptureFixture[str], *typed: str) -> str:
    assert main(["run", *typed]) == 0
    return capsys.readouterr().out


def test_a_run_is_told_with_its_band_its_limit_and_its_caution(capsys: pytest.CaptureFixture[str]) -> None:
    told = words(capsys, "tarvak-52", "--pull", "2 kg", "--distance", "60 m")
    for part in ("60 m of line in 15 s against", "felt stands 140 °C", "Fade takes", "before it is opened",
                 "Hottest face through the run", "judgement prior", "burn"):  # fmt: skip
        assert part in told


def test_json_is_whole_and_in_si(capsys: pytest.CaptureFixture[str]) -> None:
    told = json.loads(
        words(capsys, "tarvak-58r", "--work", "carbon-drag-set", "--distance", "30 m", "--json")
    )
    assert told["slug"] == "tarvak-58r"
    assert told["after_run"]["unit"] == "K"
    assert told["after_run"]["low"] < told["after_run"]["value"] < told["after_run"]["high"]
    assert told["limit"]["material"] == "woven carbon"
    trace = told["trace"]
    assert len(trace["time_s"]) == len(trace["low_k"]) == len(trace["middle_k"]) == len(trace["high_k"])
    assert trace["time_s"][trace["run_ends_at"]] == pytest.approx(7.5)
    assert told["energy"]["value"] == pytest.approx(told["pull"]["value"] * 30.0, rel=0.1)


def test_a_recorded_run_is_read(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    rows = "".join(f"{n};{3 + n % 2};{2 + n / 100:.2f}\n" for n in range(30))
    file = tmp_path / "run.csv"
    file.write_text("time [s];speed [m/s];pull [kg]\n" + rows)
    told = words(capsys, "tarvak-54c", "--recorded", str(file))
    assert "of line in 29 s against" in told


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        (("--pull", "0 kg"), "above zero"),
        (("--fill", "130 %"), "share of a full spool"),
        (("--turns", "-1"), "number of turns"),
        (("--work", "moon-dust"), "is no work"),
        (("--line", "string"), "not a line"),
    ],
)
def test_what_cannot_be_is_refused_in_words(
    typed: tuple[str, ...], said: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["run", "tarvak-52", *typed]) == 2
    assert said in capsys.readouterr().err
