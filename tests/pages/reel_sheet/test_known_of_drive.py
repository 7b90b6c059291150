"""Gears, stack, springs, star, anti-reverse and handle."""

from __future__ import annotations

import pytest

from spoolwright.pages.reel_sheet import known_of_drive as known
from tests.unit.papers.section import reels

SHEET = reels.shipped("tarvak-54c")


def told(rows: object) -> dict[str, str]:
    return {row.label: row.text for row in rows}  # type: ignore[attr-defined]


def test_a_friction_disc_is_told_with_its_friction_its_limits_and_where_it_slips() -> None:
    rows = list(known.washer(SHEET, "drag-4", "metric"))
    said = told(rows)
    assert said["outside"] == "26\u00a0mm"
    assert said["turns with"] == "neither side: it lies loose"
    assert said["slips"] == "main gear on first friction disc"
    assert next(row.mark for row in rows if row.label == "friction, greased") == "a guess (judgement prior)"
    assert "pressed at most, steady slip" in said


def test_a_metal_disc_is_told_with_what_turns_it() -> None:
    said = told(known.washer(SHEET, "drag-7", "metric"))
    assert said["turns with"] == "the gear"
    assert said["material"] == "stainless steel"


def test_the_gears_are_told_as_the_sheet_has_them() -> None:
    """By hand: 53 teeth on 10."""
    gear, pinion = (
        told(tell(SHEET, key, "metric"))
        for tell, key in ((known.main_gear, "main-gear"), (known.pinion, "pinion"))
    )
    assert gear["turns of the spool for one of the handle"] == "5.30"
    assert gear["teeth lie at"] == "15\u00a0° to the axis"
    assert pinion["material"] == "precipitation-hardened stainless steel"


@pytest.mark.parametrize(
    ("nests", "words"),
    [
        ((1,), "one spring alone"),
        ((2,), "one nest of 2, all the same way round"),
        ((1, 1), "2 nests back to back, each of one spring"),
        ((1, 2, 1), "3 nests back to back, of 1, 2, 1 springs"),
    ],
)
def test_brackets_are_put_into_words(nests: tuple[int, ...], words: str) -> None:
    assert known.arrangement_in_words(nests) == words


def test_the_star_is_told_with_its_turns_and_its_hand() -> None:
    said = told(known.control(SHEET, "star", "metric"))
    assert said["turns from free to full"] == "4 turns"
    assert said["a hand turns it with at most"] == "1.2\u00a0N\u00a0m"


def test_a_ratchet_gives_as_much_play_as_its_teeth_are_apart() -> None:
    sheet = reels.shipped("tarvak-52")
    assert sheet.anti_reverse is not None
    said = told(known.anti_reverse(sheet, "roller-clutch", "metric"))
    teeth = sheet.anti_reverse.ratchet_teeth or 0
    assert said["back-play on the ratchet alone, at most"] == f"{360 / teeth:.0f}\u00a0°"


def test_what_a_reel_does_not_have_has_no_rows() -> None:
    fly = reels.fly()
    for tell in (
        known.main_gear,
        known.pinion,
        known.springs,
        known.control,
        known.anti_reverse,
        known.washer,
    ):
        assert list(tell(fly, "drag-1", "metric")) == []
    assert told(known.handle(fly, "", "metric"))["knobs"] == "one knob"
    assert told(known.drive_shaft(SHEET, "", "metric"))["thickness at the keyed discs"] == "7.00\u00a0mm"
    assert told(known.springs(SHEET, "", "metric"))["press when flat"].endswith("kg")
