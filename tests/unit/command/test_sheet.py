"""`spoolwright sheet`: check, schema, list."""

from __future__ import annotations

import json
from pathlib import Path

import jsonschema
import pytest

from spoolwright.command.__main__ import main
from spoolwright.sheets import reel_sheet


def test_check_says_in_words_how_many_faces_slip(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["sheet", "check", "tarvak-52"]) == 0
    told = capsys.readouterr().out
    assert "Tarvak 52, round multiplier: the sheet is in order." in told
    assert "Slipping pairs in the drag stack: 3." in told
    assert "23.0 mm by 10.0 mm" in told


def test_check_shows_inches_to_whom_wants_them(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["sheet", "check", "tarvak-52", "--units", "imperial"]) == 0
    assert "0.906 in by 0.394 in" in capsys.readouterr().out


def test_check_as_json_is_one_object(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["sheet", "check", "tarvak-54c", "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert told["in_order"] is True
    assert told["slipping_pairs"] == len(told["pairs"]) == 6
    assert told["pairs"][0]["outer_radius"] == {"value": 0.013, "unit": "m"}
    assert told["remarks"] == []


def test_a_sheet_with_faults_lists_them_and_the_verb_fails(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "wrong.toml"
    text = reel_sheet.shipped()["tarvak-52"].replace('"34 mm"', '"34 kg"').replace('"felt"', '"fellt"', 1)
    path.write_text(text, encoding="utf-8")
    assert main(["sheet", "check", str(path)]) == 2
    told = capsys.readouterr().err
    assert "spool.width: “34 kg” is a mass, not a length." in told
    assert "drag.stack[2].material (lower friction disc): “fellt” is not a known material" in told


def test_faults_as_json_carry_place_and_what_is_accepted(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "wrong.toml"
    path.write_text("[reel\n", encoding="utf-8")
    assert main(["sheet", "check", str(path), "--json"]) == 2
    (fault,) = json.loads(capsys.readouterr().out)["error"]["faults"]
    assert fault["where"] == "line 1, column 6"
    assert fault["accepted"]


def test_a_misplaced_washer_is_told_although_nothing_is_refused(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "misplaced.toml"
    text = reel_sheet.shipped()["tarvak-52"]
    path.write_text(text.replace('turns_with = "shaft"', 'turns_with = "gear"', 1), encoding="utf-8")
    assert main(["sheet", "check", str(path)]) == 0
    told = capsys.readouterr().out
    assert "Slipping pairs in the drag stack: 1." in told
    assert "Look: " in told
    assert "one pair is lost" in told


def test_a_fly_reel_without_a_drag_is_checked_too(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "fly.toml"
    path.write_text(
        '[reel]\nmaker = "Brekkås"\nmodel = "8/9"\nslug = "brekkas-8-9"\n'
        'kind = "fly"\nwinding_hand = "either"\n'
        '[spool]\narbor_diameter = "40 mm"\nflange_diameter = "95 mm"\nwidth = "28 mm"\nline_level = "4 mm"\n'
        'material = "aluminium alloy"\n',
        encoding="utf-8",
    )
    assert main(["sheet", "check", str(path)]) == 0
    told = capsys.readouterr().out
    assert "Brekkås 8/9, fly" in told
    assert "Slipping pairs" not in told


def test_schema_is_printed_and_is_one(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["sheet", "schema"]) == 0
    jsonschema.Draft202012Validator.check_schema(json.loads(capsys.readouterr().out))


def test_list_names_the_sheets_that_come_with_us(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["sheet", "list"]) == 0
    told = capsys.readouterr().out
    assert all(slug in told for slug in reel_sheet.shipped())


def test_works_are_listed_with_what_each_changes(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["sheet", "works", "tarvak-58r"]) == 0
    told = capsys.readouterr().out
    assert "remove-level-wind" in told
    assert "brake blocks: 1 fewer (counted)" in told
    assert main(["sheet", "works", "brekkas-9-10", "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert found["kind"] == "fly"
    assert "remove-level-wind" not in {work["id"] for work in found["works"]}
    assert all(effect["mark"] for work in found["works"] for effect in work["effects"])
