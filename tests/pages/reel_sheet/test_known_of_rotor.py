"""What is told of rotor, line roller, oscillation and check."""

from __future__ import annotations

from collections.abc import Iterable

from spoolwright.pages.reel_sheet import known_of_rotor as known
from spoolwright.pages.reel_sheet.rows import Row
from tests.unit.papers.section import reels


def told(rows: Iterable[Row]) -> dict[str, str]:
    return {row.label: row.text for row in rows}


def test_the_roller_turns_as_often_as_the_line_lies_longer() -> None:
    """By hand: a full spool of 47 mm over a roller of 9.5 mm is 4.95 turns for one of the rotor."""
    rows = told(known.line_roller(reels.shipped("lumvik-4000"), "", "metric"))
    assert rows["turns for one turn of the rotor, full spool"] == "4.95"
    assert rows["size, bore by outside by width"].startswith("4 x 7 x 2.5")


def test_the_oscillation_is_told_with_its_cogs() -> None:
    """By hand: 38 / 14 x 24 / 18 = 3.62 turns of the rotor for one of the worm."""
    sheet = reels.shipped("lumvik-4000")
    assert told(known.oscillation(sheet, "", "metric"))["by"] == "a worm"
    rows = told(known.cogs(sheet, "", "metric"))
    assert rows["turns of the rotor for one of the worm"] == "3.62"
    assert rows["pairs from the pinion"] == "14 teeth drive 38 teeth; 18 teeth drive 24 teeth"


def test_the_check_is_told_with_its_pull() -> None:
    rows = told(known.check(reels.shipped("brekkas-9-10"), "", "metric"))
    assert rows["wheel"] == "60 teeth"
    assert rows["pawls"] == "1 pawl"
    assert "0.12" in rows["pull over the check, full spool"]


def test_a_sheet_that_says_nothing_of_its_rotor_says_so() -> None:
    fixed = reels.fixed_spool()
    assert told(known.rotor(fixed, "", "metric"))["sizes"].startswith("not on the sheet")
    for tell in (known.line_roller, known.oscillation, known.cogs, known.check):
        assert list(tell(fixed, "", "metric")) == []
