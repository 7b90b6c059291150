"""`spoolwright ladder`: in words for an angler, and whole as JSON."""

import json

import pytest

from spoolwright.command.__main__ import main
from spoolwright.sheets import reel_sheet


def words(capsys: pytest.CaptureFixture[str], *typed: str) -> str:
    assert main(["ladder", *typed]) == 0
    return capsys.readouterr().out


@pytest.mark.parametrize("slug", reel_sheet.shipped())
def test_a_shipped_sheet_is_told_in_words(slug: str, capsys: pytest.CaptureFixture[str]) -> None:
    told = words(capsys, slug)
    for part in ("Drag, at its greatest", "gives first, as it should", "We ask for", "What the limits are",
                 "judgement prior", "Not reckoned", "whips back"):  # fmt: skip
        assert part in told


def test_an_upgrade_and_a_line_are_told(capsys: pytest.CaptureFixture[str]) -> None:
    told = words(capsys, "tarvak-58r", "--work", "carbon-drag-set", "--work", "under-gear-disc",
                 "--line", "nylon 0.40 mm", "--fill", "0,8")  # fmt: skip
    assert "after: Carbon drag set, greased; One more slipping pair under the gear." in told
    assert "that is not there: keep the drag under about" in told
    assert "These works take the drag's greatest from" in told
    assert "Line at its knot" in told
    imperial = words(capsys, "tarvak-58r", "--units", "imperial")
    assert " lb" in imperial
    assert " kg" not in imperial


def test_the_same_as_one_json_object(capsys: pytest.CaptureFixture[str]) -> None:
    told = json.loads(words(capsys, "tarvak-58r", "--work", "carbon-drag-set", "--json"))
    assert told["works"] == ["carbon-drag-set"]
    assert [row["limit"]["value"] for row in told["rungs"]] == sorted(
        r["limit"]["value"] for r in told["rungs"]
    )
    assert told["drag"]["unit"] == "N"
    assert told["drag"]["low"] < told["drag"]["value"] < told["drag"]["high"]
    assert told["weakest"] == told["weakest_before"] == "main gear"
    assert told["enough"] is True
    assert told["margin"]["value"] > told["margin_asked_for"] == 1.25
    assert all(row["source"] and row["mark"] and row["held_against"] for row in told["rungs"])
    assert any(row["lasts"] for row in told["rungs"])


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        (["tarvak-58r", "--work", "magic"], "is not on the list"),
        (["brekkas-9-10", "--work", "under-gear-disc"], "is not done on a fly"),
        (["tarvak-58r", "--line", "string 3"], "is not a line that we know"),
        (["tarvak-58r", "--fill", "2"], "a number from 0 to 1"),
        (["tarvak-58r", "--fill", "most"], "a number from 0 to 1"),
        (["no-such-reel"], "No such file"),
    ],
)
def test_what_cannot_be_asked_is_refused_in_words(
    typed: list[str], said: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["ladder", *typed]) == 2
    assert said in capsys.readouterr().err
