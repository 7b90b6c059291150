"""What a person should look at although the sheet is in order."""

from __future__ import annotations

import pytest

from spoolwright.sheets import reel_sheet
from spoolwright.sheets.sheet_remarks import remarks
from tests.unit.sheets.sheet_text import SMALL, changed


@pytest.mark.parametrize("slug", reel_sheet.shipped())
def test_nothing_is_odd_about_the_sheets_that_come_with_us(slug: str) -> None:
    assert remarks(reel_sheet.load(slug)) == ()


def test_a_bearing_of_no_standard_size_is_told_with_its_nearest() -> None:
    found = remarks(reel_sheet.read(changed(("4 x 10 x 4 mm", "4 x 10 x 5 mm"))))
    assert any("spool shaft, gear side" in remark and "4 x 10 x 4 mm" in remark for remark in found)


def test_a_washer_put_in_wrong_is_told() -> None:
    found = remarks(reel_sheet.read(changed(('turns_with = "gear"', 'turns_with = "shaft"'))))
    assert any("one pair is lost" in remark for remark in found)


def test_a_washer_that_no_part_line_names_is_told() -> None:
    assert any(
        "“friction disc” is in the drag stack but not" in remark for remark in remarks(reel_sheet.read(SMALL))
    )


def test_a_sheet_without_parts_is_told() -> None:
    text = SMALL[: SMALL.index("[[parts]]")]
    assert any("no parts list" in remark for remark in remarks(reel_sheet.read(text)))
