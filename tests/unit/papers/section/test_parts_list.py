"""A line of the parts list finds its part on the drawing, and a part its lines."""

import pytest

from spoolwright.papers import section_drawing
from spoolwright.papers.section.parts_list import drawn_as, lines_of
from spoolwright.sheets.sheet_tables import Part
from tests.unit.papers.section import reels

# By hand, from the parts lists of the four sheets: what a bench would call each line.
BELONGS = {
    "handle nut cover": "handle",
    "knob pin": "handle",
    "handle bearing": "bearing-handle",
    "spool bearing, gear side": "bearing-gear-side",
    "off-side bearing clip": "bearing-off-side",
    "spool-side drive cog": "level-wind-cogs",
    "spool cross pin": "spool",
    "pawl cap": "level-wind",
    "cap shim": "cast-cap",
    "brake ring": "brakes",
    "frame pillar": "pillars",
    "gear bridge": "frame",
    "main gear": "main-gear",
    "top keyed disc": "drag-11",
    "free-spool button": "",
    "click spring": "",
    "kick lever": "",
}


@pytest.mark.parametrize(("name", "key"), BELONGS.items())
def test_each_line_finds_its_part(name: str, key: str) -> None:
    line = Part(order="1", name=name, quantity=1, material="brass", lubricant="DRY")
    assert drawn_as(reels.shipped("tarvak-58r"), line) == key


@pytest.mark.parametrize("slug", reels.SLUGS)
def test_every_part_that_is_drawn_has_a_line_but_for_the_line_itself(slug: str) -> None:
    sheet = reels.shipped(slug)
    without = [part.key for part in section_drawing.parts(sheet) if not lines_of(sheet, part.key)]
    # The one-piece frame of the 54C has no pillars to list: its cross bars are the frame.
    assert set(without) <= {"line", "pillars"}


def test_no_line_belongs_to_two_parts() -> None:
    sheet = reels.shipped()
    keys = [part.key for part in section_drawing.parts(sheet)]
    lines = [line.name for key in keys for line in lines_of(sheet, key)]
    assert len(lines) == len(set(lines))


def test_a_sheet_without_a_list_has_no_lines() -> None:
    assert lines_of(reels.without("tarvak-52", "parts"), "spool") == ()
