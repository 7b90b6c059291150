"""The sheet's own word on a spool's inertia: as stated, else drawn; the line on top."""

import pytest

from spoolwright.bench.budget import combined
from spoolwright.judgement.free_spin import bare_inertia
from spoolwright.judgement.sheet_inertia import STATED, of_sheet
from spoolwright.mechanics import spool
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import ReelSheet

SHEETS = ("tarvak-52", "tarvak-58r", "lumvik-4000")


def changed(sheet: ReelSheet, **spool_fields: float | None) -> ReelSheet:
    return sheet.model_copy(update={"spool": sheet.spool.model_copy(update=spool_fields)})


@pytest.mark.parametrize("slug", SHEETS)
def test_it_is_the_value_that_everything_else_uses(slug: str) -> None:
    sheet = reel_sheet.load(slug)
    found, rows = of_sheet(sheet)
    assert found.value == pytest.approx(bare_inertia(sheet))
    assert combined(rows) == found.uncertainty > 0


def test_a_stated_one_is_taken_as_it_stands() -> None:
    sheet = reel_sheet.load("tarvak-52")
    stated = changed(sheet, inertia=7e-6)
    found, rows = of_sheet(stated)
    assert (found.value, found.uncertainty) == pytest.approx((7e-6, STATED * 7e-6))
    assert len(rows) == 1


def test_without_a_mass_the_material_is_what_is_not_known() -> None:
    sheet = reel_sheet.load("tarvak-52")
    bare = changed(sheet, inertia=None, mass=None, wall=None)
    found, rows = of_sheet(bare)
    assert found.value == pytest.approx(bare_inertia(bare))
    assert {"density of the material", "wall, which the sheet leaves out"} <= {row.source for row in rows}


def test_the_line_adds_its_own() -> None:
    sheet = reel_sheet.load("tarvak-58r")
    (bare, _), (both, _) = of_sheet(sheet), of_sheet(sheet, line_on=True)
    room = sheet.spool
    wound = spool.line_inertia(room.arbor_radius, room.full_radius, room.width, 1140.0, 0.71)
    assert both.value == pytest.approx(bare.value + float(wound))
    assert both.uncertainty > bare.uncertainty
