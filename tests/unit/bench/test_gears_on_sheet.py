"""Gears of a sheet or typed; refused where there are none."""

import pytest

from spoolwright.bench import gears_on_sheet
from spoolwright.bench.unreadable import Unreadable
from spoolwright.sheets import reel_sheet


def test_the_sheets_own_teeth() -> None:
    sheet = reel_sheet.load("tarvak-58r")
    found = gears_on_sheet.at(sheet)
    assert sheet.gears is not None
    assert (found.main, found.pinion) == (sheet.gears.main_teeth, sheet.gears.pinion_teeth)


def test_a_reel_without_gears_or_without_a_low_gear_is_refused() -> None:
    sheets = [reel_sheet.load(slug) for slug in reel_sheet.shipped()]
    bare = next(sheet for sheet in sheets if sheet.gears is None)
    one = next(sheet for sheet in sheets if sheet.gears and sheet.gears.low_main_teeth is None)
    with pytest.raises(Unreadable, match="no gears"):
        gears_on_sheet.at(bare)
    with pytest.raises(Unreadable, match="no low gear"):
        gears_on_sheet.at(one, low=True)


def test_teeth_are_typed_with_commas() -> None:
    assert gears_on_sheet.typed("98,17").wheels == {"main": 98, "pinion": 17}
    assert gears_on_sheet.typed("80, 18, 31").wheels["idler"] == 31


@pytest.mark.parametrize(
    "text", ["", "98", "98 17", "98, x", "98, 2", "1, 2, 3, 4", "98, -17", "9999999, 17"]
)
def test_anything_else_is_refused(text: str) -> None:
    with pytest.raises(Unreadable):
        gears_on_sheet.typed(text)
