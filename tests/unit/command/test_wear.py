"""`spoolwright wear`."""

from __future__ import annotations

import json

import pytest

from spoolwright.command.__main__ import main


def told(capsys: pytest.CaptureFixture[str], *words: str) -> str:
    assert main(["wear", *words]) == 0
    return capsys.readouterr().out


def test_it_says_what_goes_first_and_what_cold_and_line_do(capsys: pytest.CaptureFixture[str]) -> None:
    out = told(capsys, "tarvak-58r", "--cold", "-5 C", "--line", "braid 0.25 mm", "--wound", "1 kg")
    for words in (
        "pawl of the level wind",
        "goes first",
        "At -5 °C",
        "wound on at 1.00 kg",
        "What this rests on",
    ):
        assert words in out
    assert out.rstrip().splitlines()[-1].startswith("Before a worn part is looked at")


def test_one_object_in_si(capsys: pytest.CaptureFixture[str]) -> None:
    data = json.loads(told(capsys, "tarvak-58r", "--json", "--grit", "5 %", "--dry", "--work", "new-pawl"))
    assert data["use"]["grit"] == 0.05
    assert data["use"]["oiled"] is False
    assert data["works"] == ["new-pawl"]
    pawl = next(part for part in data["parts"] if part["key"] == "pawl")
    assert pawl["limit"] == {"value": 0.0002, "unit": "m", "source": pawl["limit"]["source"]}
    assert len(pawl["depth"]["value"]) == len(data["weeks"])
    assert data["bearings"][0]["static_safety"]["value"] > 1
    assert data["wound_line"]["gives_at"]["mildest_rule"] > data["wound_line"]["gives_at"]["nothing_slackens"]
    assert data["top_shot"]["backing_length"]["unit"] == "m"


def test_a_kind_for_which_it_has_no_meaning_is_told_why(capsys: pytest.CaptureFixture[str]) -> None:
    data = json.loads(told(capsys, "brekkas-9-10", "--json"))
    assert "no level wind" in data["line_lay"]["why_not"]
    assert "no spool runs free" in data["cold_morning"]["why_not"]


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        (("--cold", "-60 C"), "colder or warmer"),
        (("--grit", "300 %"), "is no share"),
        (("--casts", "-3"), "is no number of casts"),
        (("--pull", "-1 kg"), "below zero"),
        (("--work", "magic"), "no work"),
        (("--line", "wool 1 mm"), "not a line"),
    ],
)
def test_what_cannot_be_is_refused_in_words(
    capsys: pytest.CaptureFixture[str], typed: tuple[str, str], said: str
) -> None:
    assert main(["wear", "tarvak-58r", f"{typed[0]}={typed[1]}"]) == 2
    assert said in capsys.readouterr().err
