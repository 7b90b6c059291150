"""The tables of a sheet and what they know about themselves."""

from __future__ import annotations

from math import radians

import pytest
from pydantic import ValidationError

from spoolwright.sheets import reel_sheet
from spoolwright.sheets.sheet_tables import Part, Springs
from tests.unit.sheets.sheet_text import SMALL, changed

SPRING = {
    "outer_diameter": "14 mm",
    "inner_diameter": "7.2 mm",
    "thickness": "0.7 mm",
    "cone_height": "0.3 mm",
}


@pytest.mark.parametrize(
    ("arrangement", "nests"),
    [("()", (1, 1)), ("))", (2,)), ("(())", (2, 2)), ("()()", (1, 1, 1, 1)), ("(", (1,)), ("())", (1, 2))],
)
def test_brackets_say_how_springs_stand(arrangement: str, nests: tuple[int, ...]) -> None:
    springs = Springs.model_validate({**SPRING, "arrangement": arrangement})
    assert springs.nests == nests
    assert springs.youngs_modulus == 206e9


def test_radii_of_the_spool() -> None:
    spool = reel_sheet.read(SMALL).spool
    assert spool.arbor_radius == pytest.approx(0.010)
    assert spool.full_radius == pytest.approx(0.022)


def test_ratio_is_teeth_by_teeth() -> None:
    sheet = reel_sheet.read(SMALL)
    assert sheet.gears is not None
    assert sheet.gears.ratio == pytest.approx(50 / 12)


def test_what_may_be_left_out_has_a_plain_default() -> None:
    sheet = reel_sheet.read(SMALL)
    assert sheet.gears is not None
    assert sheet.drag is not None
    assert sheet.gears.helix_angle == 0.0
    assert sheet.drag.thread.flank_angle == pytest.approx(radians(30))
    assert sheet.brakes is None
    assert sheet.handle is None


def test_a_sheet_cannot_be_changed_once_it_is_read() -> None:
    sheet = reel_sheet.read(SMALL)
    with pytest.raises(ValidationError):
        sheet.spool.width = 1.0  # type: ignore[misc]


def test_parts_sort_by_number_and_then_by_letter() -> None:
    orders = ["10", "4b", "4", "0", "4a"]
    row = {"name": "n", "quantity": 1, "material": "m", "lubricant": "DRY"}
    parts = sorted((Part.model_validate({**row, "order": order}) for order in orders), key=lambda p: p.turn)
    assert [part.order for part in parts] == ["0", "4", "4a", "4b", "10"]


def test_a_lever_drag_carries_its_cam() -> None:
    text = changed(
        ('control = "star"', 'control = "lever"'),
        (
            "[drag.springs]",
            '[drag.lever]\narm_length = "30 mm"\ncam_rise = "2 mm"\ncam_angle = "80 deg"\n[drag.springs]',
        ),
    )
    drag = reel_sheet.read(text).drag
    assert drag is not None
    assert drag.lever is not None
    assert drag.lever.cam_angle == pytest.approx(radians(80))
