"""Reading, exporting and finding reel sheets."""

from __future__ import annotations

import tomllib
from pathlib import Path

import jsonschema
import pytest

from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import SheetFault
from tests.unit.sheets.sheet_text import SMALL, changed

ROUND = ("pellmar-70", "tarvak-52", "tarvak-54c", "tarvak-58r")
SHIPPED = ("brekkas-9-10", "lumvik-4000", "ostrell-s71", "pellmar-30-2", *ROUND)
MULTIPLIER = ("gears", "drag", "shaft", "handle", "level_wind", "anti_reverse", "brakes", "frame")
OF_KIND = {
    "round multiplier": MULTIPLIER,
    "low-profile multiplier": MULTIPLIER,
    "lever drag": ("gears", "drag", "shaft", "handle", "anti_reverse", "frame"),
    "fixed spool": ("gears", "drag", "shaft", "handle", "anti_reverse", "frame", "rotor", "oscillation"),
    "fly": ("drag", "shaft", "handle", "anti_reverse", "frame", "check"),
}
"""The tables that a whole sheet of the kind has."""


def test_a_sheet_of_every_kind_comes_with_us() -> None:
    assert tuple(reel_sheet.shipped()) == SHIPPED
    assert {reel_sheet.load(slug).reel.kind for slug in SHIPPED} == set(OF_KIND)


@pytest.mark.parametrize("slug", SHIPPED)
def test_a_shipped_sheet_is_found_by_its_slug_and_says_the_same(slug: str) -> None:
    sheet = reel_sheet.load(slug)
    assert sheet.reel.slug == slug
    assert sheet == reel_sheet.read(reel_sheet.shipped()[slug])


@pytest.mark.parametrize("slug", SHIPPED)
def test_a_shipped_sheet_describes_a_whole_reel_of_its_kind(slug: str) -> None:
    sheet = reel_sheet.load(slug)
    # The trade's lists: 97, 75, 77, 60 and 40 pieces at the least of the five kinds, on generic reels.
    least = {"fly": 30, "fixed spool": 60, "lever drag": 55}.get(sheet.reel.kind, 60)
    assert len(sheet.parts) >= least
    for table in OF_KIND[sheet.reel.kind]:
        assert getattr(sheet, table) is not None, table
    assert sheet.shaft is not None
    assert sum(step.length for step in sheet.shaft.steps) >= sheet.shaft.span - 1e-6
    assert sheet.bearings
    assert sheet.screws
    assert {part.cell for part in sheet.parts if part.order != "0"} <= set(range(1, 25))
    assert len({part.order for part in sheet.parts}) == len(sheet.parts)


def test_the_older_sister_has_no_roller_and_a_long_shaft_borne_at_both_ends() -> None:
    older, newer = reel_sheet.load("tarvak-52"), reel_sheet.load("tarvak-54c")
    assert older.anti_reverse is not None
    assert newer.anti_reverse is not None
    assert older.shaft is not None
    assert not older.anti_reverse.roller_clutch
    assert newer.anti_reverse.roller_clutch
    assert older.shaft.borne == "both ends"
    assert older.shaft.span > older.spool.width


def test_ratios_as_the_line_feels_them() -> None:
    sheet = reel_sheet.load("tarvak-58r")
    assert sheet.gear_ratio == pytest.approx(5.1)
    assert sheet.drag_ratio == pytest.approx(5.1)


@pytest.mark.parametrize("slug", SHIPPED)
def test_the_schema_takes_every_shipped_sheet(slug: str) -> None:
    jsonschema.validate(tomllib.loads(reel_sheet.shipped()[slug]), reel_sheet.json_schema())


@pytest.mark.parametrize(
    "pair",
    [
        ('kind = "round multiplier"', 'kind = "kite"'),
        ("main_teeth = 50", "main_teeth = 3"),
        ('width = "34 mm"', "width = 34"),
        ('width = "34 mm"', 'width = "34 mm"\ncolour = "red"'),
        ('material = "felt"', 'material = "moss"'),
        ('winding_hand = "right"\n', ""),
    ],
)
def test_the_schema_refuses_what_the_reader_refuses(pair: tuple[str, str]) -> None:
    text = changed(pair)
    with pytest.raises(SheetFault):
        reel_sheet.read(text)
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate(tomllib.loads(text), reel_sheet.json_schema())


def test_the_schema_is_a_schema() -> None:
    schema = reel_sheet.json_schema()
    jsonschema.Draft202012Validator.check_schema(schema)
    assert schema["$schema"].endswith("2020-12/schema")


def test_a_sheet_is_loaded_from_a_path(tmp_path: Path) -> None:
    path = tmp_path / "mine.toml"
    path.write_text(SMALL, encoding="utf-8")
    assert reel_sheet.load(path).reel.model == "9"
    assert reel_sheet.load(str(path)).reel.model == "9"


def test_a_file_that_is_not_there_names_the_sheets_that_are() -> None:
    with pytest.raises(SheetFault, match=r"nowhere\.toml.*tarvak-52"):
        reel_sheet.load("nowhere.toml")


def test_a_picture_is_no_sheet(tmp_path: Path) -> None:
    path = tmp_path / "photo.toml"
    path.write_bytes(b"\xff\xd8\xff\xe0" * 10)
    with pytest.raises(SheetFault, match="UTF-8"):
        reel_sheet.load(path)


def test_a_folder_is_no_sheet(tmp_path: Path) -> None:
    with pytest.raises(SheetFault, match="Accepted: a path"):
        reel_sheet.load(tmp_path)


@pytest.mark.parametrize("text", [".".join(["a"] * 40_000) + " = 1", "[" + ".".join(["b"] * 40_000) + "]"])
def test_a_key_of_thousands_of_parts_is_refused_before_it_is_read(text: str) -> None:
    with pytest.raises(SheetFault, match="line 1: has too many dots"):
        reel_sheet.read(text)


@pytest.mark.skipif(not Path("/dev/zero").exists(), reason="no endless file on this system")
def test_an_endless_file_is_not_read_to_its_end() -> None:
    with pytest.raises(SheetFault, match="at most 200000"):
        reel_sheet.load("/dev/zero")


def test_a_byte_order_mark_and_windows_line_ends_do_no_harm(tmp_path: Path) -> None:
    path = tmp_path / "windows.toml"
    path.write_bytes(b"\xef\xbb\xbf" + SMALL.replace("\n", "\r\n").encode())
    assert reel_sheet.load(path).reel.model == "9"
