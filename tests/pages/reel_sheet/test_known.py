"""A touched part answers with what is known of it."""

from __future__ import annotations

import pytest

from spoolwright.pages.reel_sheet.known import known_part
from spoolwright.papers import section_drawing
from tests.unit.papers.section import reels

SHEETS = [*map(reels.shipped, reels.SLUGS), reels.fly(), reels.fixed_spool()]


@pytest.mark.parametrize("sheet", SHEETS, ids=[sheet.reel.slug for sheet in SHEETS])
@pytest.mark.parametrize("system", ["metric", "imperial"])
def test_every_part_of_every_reel_says_something(sheet: object, system: str) -> None:
    for part in section_drawing.parts(sheet):  # type: ignore[arg-type]
        known = known_part(sheet, part.key, system)  # type: ignore[arg-type]
        assert known is not None
        assert known.title == part.title
        if part.key not in ("foot", "cast-cap"):
            assert known.rows, part.key
        for row in known.rows:
            assert row.label
            assert row.text not in ("", "None", "–")


def test_a_part_that_is_not_drawn_is_not_known() -> None:
    for key in ("bail", "", "drag-99", "<script>"):
        assert known_part(reels.shipped(), key, "metric") is None


def test_the_lines_of_the_parts_list_come_with_their_oil_in_words() -> None:
    known = known_part(reels.shipped("tarvak-54c"), "bearing-gear-side", "metric")
    assert known is not None
    lines = {line.name: oil for line, oil in known.lines}
    assert lines["spool bearing, gear side"] == "very thin oil (O1), 1 needle drop"
    assert lines["bearing clip, gear side"] == "left dry"
