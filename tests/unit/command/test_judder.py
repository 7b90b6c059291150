"""`spoolwright judder`: in words for an angler, and whole as JSON."""

import json

import pytest

from spoolwright.command.__main__ import main


def words(capsys: pytest.CaptureFixture[str], *typed: str) -> str:
    assert main(["judder", *typed]) == 0
    return capsys.readouterr().out


def test_it_is_told_with_its_band_and_its_caution(capsys: pytest.CaptureFixture[str]) -> None:
    told = words(capsys, "tarvak-52", "--pull", "2 kg", "--out", "30 m", "--line", "nylon 0.35 mm")
    for part in ("With 30 m of nylon of 0.35 mm out", "lets go at", "slips at", "judders between",
                 "runs smooth where", "whips back"):  # fmt: skip
        assert part in told


def test_json_is_whole_and_in_si(capsys: pytest.CaptureFixture[str]) -> None:
    told = json.loads(words(capsys, "tarvak-58r", "--distance", "20 m", "--speed", "1 m/s", "--json"))
    assert told["static"]["value"] > told["running"]["value"]
    assert told["start_up_peak"]["value"] >= told["static"]["value"]
    assert told["frequency"]["unit"] == "Hz"
    assert told["smooth_above"]["unit"] == "m/s"
    assert len(told["trace"]["time_s"]) == len(told["trace"]["pull_n"]) > 100


def test_imperial_is_shown_where_it_is_asked_for(capsys: pytest.CaptureFixture[str]) -> None:
    told = words(capsys, "tarvak-58r", "--distance", "20 yd", "--units", "imperial")
    assert " lb (" in told
    assert "ft/s" in told
