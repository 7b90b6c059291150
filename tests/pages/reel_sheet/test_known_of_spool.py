"""Spool, line, shaft, bearings and frame, as the sheet and the catalogues have them."""

from __future__ import annotations

from spoolwright.pages.reel_sheet import known_of_spool as known
from spoolwright.pages.reel_sheet.rows import Row
from tests.unit.papers.section import reels

SHEET = reels.shipped("tarvak-54c")


def told(rows: object) -> dict[str, str]:
    return {row.label: row.text for row in rows}  # type: ignore[attr-defined]


def test_a_bearing_is_told_with_its_size_and_its_ratings() -> None:
    """A 623 by its boundary dimensions (ISO 15): 3 x 10 x 4 mm."""
    rows = list(known.bearing(SHEET, "bearing-gear-side", "metric"))
    said = told(rows)
    assert said["size, bore by outside by width"] == "3 x 10 x 4\u00a0mm"
    assert said["place"] == "spool shaft, gear side"
    assert said["dynamic rating"].endswith("\u00a0N")
    assert "two makers’ catalogues" in next(row.mark for row in rows if row.label == "dynamic rating")


def test_each_place_has_its_own_bearing() -> None:
    keys = (
        "bearing-gear-side",
        "bearing-off-side",
        "bearing-handle",
        "bearing-drive-shaft",
        "bearing-pinion",
    )
    places = [known.bearing_of(SHEET, key).place for key in keys]  # type: ignore[union-attr]
    assert len(set(places)) == 5
    assert known.bearing_of(reels.shipped("tarvak-52"), "bearing-handle") is None
    assert list(known.bearing(reels.shipped("tarvak-52"), "bearing-handle", "metric")) == []


def test_a_bearing_of_no_standard_size_is_answered_with_the_nearest() -> None:
    sheet = reels.changed("tarvak-54c", size="3 x 10 x 3.5 mm")
    rows = told(known.bearing_rows(sheet.bearings[0], "metric"))
    assert "no standard bearing" in rows["standard size"]
    assert "no standard bearing" in known.bearing_in_short(sheet.bearings[0])


def test_a_bearing_in_short_is_one_line() -> None:
    said = known.bearing_in_short(SHEET.bearings[0])
    assert said.startswith("3 x 10 x 4\u00a0mm, stainless, shielded, runs in ")
    assert "dynamic rating" in said


def test_the_line_leaves_at_the_lip_less_the_level() -> None:
    """By hand: 50 / 2 - 2.0 mm."""
    assert told(known.line(SHEET, "line", "metric"))["leaves a full spool at a radius of"] == "23.0\u00a0mm"


def test_an_inertia_that_the_sheet_does_not_state_is_said_to_be_worked_out() -> None:
    row = next(row for row in known.spool(SHEET, "spool", "metric") if row.label == "inertia, bare")
    assert row.mark == "worked out from the sheet"


def test_the_worm_turns_slower_than_the_spool_by_its_cogs() -> None:
    """By hand from the sheet's pairs: 18 to 22 and 22 to 32 teeth, so 32 / 18."""
    rows = told(known.cogs(SHEET, "level-wind-cogs", "metric"))
    assert rows["turns of the spool for one of the worm"] == "1.78"


def test_what_a_reel_does_not_have_has_no_rows() -> None:
    bare = reels.without("tarvak-54c", "level_wind", "brakes", "handle")
    assert list(known.brakes(bare, "", "metric")) == []
    assert list(known.level_wind(bare, "", "metric")) == []
    assert list(known.cogs(bare, "", "metric")) == []
    assert Row("magnets", "0 magnets") not in list(known.brakes(SHEET, "", "metric"))


def test_a_fixed_shaft_is_told_as_such() -> None:
    assert told(known.shaft(reels.fly(), "", "metric"))["borne"] == "fixed, spool on its bearings"
    assert told(known.frame(SHEET, "", "metric"))["plate thickness"]
