"""`spoolwright drag`: in words for an angler, and whole as JSON."""

import json
from pathlib import Path

import pytest

from spoolwright.command.__main__ import main
from spoolwright.sheets import reel_sheet


def words(capsys: pytest.CaptureFixture[str], *typed: str) -> str:
    assert main(["drag", *typed]) == 0
    return capsys.readouterr().out


def data(capsys: pytest.CaptureFixture[str], *typed: str) -> dict:
    return json.loads(words(capsys, *typed, "--json"))


@pytest.mark.parametrize("slug", reel_sheet.shipped())
def test_a_shipped_sheet_is_told_in_words(slug: str, capsys: pytest.CaptureFixture[str]) -> None:
    told = words(capsys, slug)
    along = {"star": "Turns of the star", "knob": "Turns of the knob", "lever": "Way of the lever"}
    control = reel_sheet.load(slug).drag.control
    for part in ("At a full spool", "Half of the line left", "A tenth of the line left", "Slipping pairs",
                 along[control], "What this rests on", "judgement prior", "whips back"):  # fmt: skip
        assert part in told
    assert "±" in told
    assert control == "star" or " star" not in told
    assert ("At the strike stop" in told) == (control == "lever")


def test_no_pull_is_told_without_its_spread_and_radius(capsys: pytest.CaptureFixture[str]) -> None:
    for line in words(capsys, "tarvak-52").splitlines():
        if "spool," in line or "left," in line:
            assert "±" in line
            assert "line leaving at" in line


def test_a_target_names_the_turn_in_the_units_it_was_typed_in(capsys: pytest.CaptureFixture[str]) -> None:
    metric = words(capsys, "tarvak-58r", "--target", "2.7 kg")
    assert "2.70 kg at a full spool: star about" in metric
    imperial = words(capsys, "tarvak-58r", "--target", "6 lb")
    assert "6.00 lb at a full spool: star about" in imperial
    assert "lb ±" in imperial
    assert "kg ±" in words(capsys, "tarvak-58r", "--target", "6 lb", "--units", "metric")


def test_a_target_out_of_reach_says_what_would_have_to_change(capsys: pytest.CaptureFixture[str]) -> None:
    told = words(capsys, "tarvak-52", "--target", "12 lb")
    assert "No turn of the star gives 12.0 lb" in told
    assert "What would have to change" in told
    assert "One more slipping pair under the gear" in told
    assert "this is not the reel for it" in words(capsys, "tarvak-52", "--target", "60 lb")


def test_a_washer_put_in_wrong_is_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    text = reel_sheet.shipped()["tarvak-52"]
    head, _, rest = text.partition('name = "eared disc"')
    wrong = tmp_path / "wrong.toml"
    wrong.write_text(
        head + 'name = "eared disc"' + rest.replace('turns_with = "gear"', 'turns_with = "shaft"', 1)
    )
    told = words(capsys, str(wrong))
    assert "Slipping pairs: 1." in told
    assert "Look: " in told


def test_json_is_whole_and_in_si(capsys: pytest.CaptureFixture[str]) -> None:
    told = data(capsys, "tarvak-54c", "--target", "18 lb")
    pull = told["pull"]["full_spool"]
    assert pull["unit"] == "N"
    assert pull["low"] < pull["value"] < pull["high"]
    assert pull["uncertainty"] > 0
    assert pull["coverage_factor"] == 2
    assert pull["lb"]["value"] == pytest.approx(pull["value"] / 4.4482216152605)
    assert pull["conditions"]["radius_m"] == pytest.approx(0.023)
    assert told["slipping_pairs"] == len(told["pairs"]) == 6
    assert told["star_turns"][0]["value"] == 0.0
    assert told["target"]["turns"] is not None
    assert told["target"]["pull"]["value"] == pytest.approx(18 * 4.4482216152605)
    assert told["pull"]["nearly_empty"]["value"] > told["pull"]["half_spool"]["value"] > pull["value"]
    assert told["torque"]["unit"] == "N m"


def test_json_lists_the_ways_where_no_turn_reaches_it(capsys: pytest.CaptureFixture[str]) -> None:
    told = data(capsys, "tarvak-52", "--target", "12 lb")["target"]
    assert told["turns"] is None
    assert told["ways"][0]["works"] == ["under-gear-disc"]
    assert told["ways"][0]["within_guard"] is False
    assert data(capsys, "tarvak-52")["target"] is None


@pytest.mark.parametrize("typed", ["12", "12 mm", "-3 lb", "0 kg", "nonsense", ""])
def test_a_target_that_is_no_pull_is_refused_in_one_line(
    typed: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["drag", "tarvak-52", f"--target={typed}"]) == 2
    told = capsys.readouterr()
    assert told.out == ""
    assert len(told.err.strip().splitlines()) == 1
    assert "Traceback" not in told.err


def test_an_unknown_sheet_is_refused_with_the_known_ones(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["drag", "no-such-reel"]) == 2
    assert "tarvak-52" in capsys.readouterr().err
