"""The verb `cast`."""

from __future__ import annotations

import json

import pytest

from spoolwright.command.__main__ import main

THROW = ("--payload", "150 g", "--speed", "55 m/s")


def told(capsys: pytest.CaptureFixture[str], *typed: str, code: int = 0) -> str:
    assert main(["cast", *typed]) == code
    got = capsys.readouterr()
    return got.out if code == 0 else got.err


def test_a_cast_is_told_with_its_spread_and_what_would_change_it(capsys: pytest.CaptureFixture[str]) -> None:
    said = told(capsys, "tarvak-58r", *THROW, "--work", "hybrid-spool-bearings")
    assert "150 g thrown at 55.0 m/s goes " in said
    assert "nine casts in ten go" in said
    assert "Halving the drag of bearings that are already clean adds next to nothing" in said
    assert "Hybrid spool bearings: next to no change in distance" in said
    assert "Before anybody casts" in said
    assert "judgement prior" in said


def test_a_kind_that_is_not_cast_says_why_and_nothing_more(capsys: pytest.CaptureFixture[str]) -> None:
    said = told(capsys, "brekkas-9-10", "--payload", "10 g", "--speed", "20 m/s").splitlines()
    assert len(said) == 2
    assert "its own line" in said[1]


def test_json_is_whole_and_in_si(capsys: pytest.CaptureFixture[str]) -> None:
    data = json.loads(
        told(capsys, "tarvak-58r", *THROW, "--json", "--brake", "50 %", "--work", "strip-and-wash")
    )
    assert data["distance"]["low"] < data["distance"]["value"] < data["distance"]["high"]
    assert data["distance"]["unit"] == "m"
    assert data["throw"]["payload"] == {"value": 0.15, "unit": "kg"}
    assert data["brake"]["share"] == 0.5
    assert data["compared"]["works"] == ["strip-and-wash"]
    assert {change["key"] for change in data["matters"]["changes"]} >= {"bearings freer", "line thinner"}
    series = data["middle_cast"]
    assert series["x"]["values"][-1] == pytest.approx(data["distance"]["value"], rel=0.03)
    assert len(series["time"]["values"]) == len(series["slack"]["values"]) <= 60


def test_json_of_a_kind_that_is_not_cast_holds_the_reason(capsys: pytest.CaptureFixture[str]) -> None:
    data = json.loads(told(capsys, "brekkas-9-10", "--payload", "10 g", "--speed", "20 m/s", "--json"))
    assert data["why_not"]
    assert "distance" not in data


def test_a_fixed_spool_has_nothing_that_turns(capsys: pytest.CaptureFixture[str]) -> None:
    said = told(capsys, "lumvik-4000", "--payload", "50 g", "--speed", "40 m/s")
    assert "The spool stands still" in said
    assert "What would change it" not in said


def test_units_are_the_readers(capsys: pytest.CaptureFixture[str]) -> None:
    said = told(capsys, "tarvak-58r", *THROW, "--units", "imperial")
    assert " yd" in said
    assert " m;" not in said


def test_an_unknown_work_is_refused_with_those_that_are_done_on_such_a_reel(
    capsys: pytest.CaptureFixture[str],
) -> None:
    said = told(capsys, "tarvak-58r", *THROW, "--work", "polish-the-moon", code=2)
    assert "“polish-the-moon” is no work that is done on such a reel" in said
    assert "hybrid-spool-bearings" in said
