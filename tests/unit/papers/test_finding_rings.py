"""A finding is ringed where it was touched, or where its words lead; never at a guess."""

from __future__ import annotations

import pytest

from spoolwright.papers.finding_rings import nearest, rings
from spoolwright.papers.section_drawing import draw, parts
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")


@pytest.mark.parametrize(
    ("words", "key"),
    [
        ("pawl", "level-wind"),
        ("idler cog", "level-wind-cogs"),
        ("spool bearings", "bearing-off-side"),
        ("the main gear", "main-gear"),
        ("drag springs", "springs"),
        ("foot", "foot"),
        ("bait alarm", ""),
        ("", ""),
    ],
)
def test_words_lead_to_a_part(words: str, key: str) -> None:
    assert nearest(words, parts(SHEET)) == key


def test_what_was_touched_goes_before_the_words() -> None:
    (ring,) = rings(SHEET, [("spool", "pawl", "worn")])
    assert (ring.part, ring.words) == ("spool", "worn")


def test_a_key_of_another_reel_falls_back_on_the_words_and_no_part_gets_no_ring() -> None:
    found = rings(SHEET, [("lever", "pawl", "worn"), ("", "bait alarm", "silent")])
    assert [(ring.part, ring.words) for ring in found] == [("level-wind", "worn")]
    assert draw(SHEET, findings=found).count('class="finding"') >= 1
