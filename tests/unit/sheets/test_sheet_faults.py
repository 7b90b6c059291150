"""What is wrong with a sheet is said with its place, what was read and what is accepted."""

from __future__ import annotations

import pytest

from tests.unit.sheets.sheet_text import changed, faults_of, only_fault


def test_a_quantity_that_cannot_be_read_names_its_washer() -> None:
    fault = only_fault(('thickness = "1.2 mm"\nmaterial = "felt"', 'thickness = "1.2 kg"\nmaterial = "felt"'))
    assert fault.where == "drag.stack[2].thickness (friction disc)"
    assert fault.what == "“1.2 kg” is a mass, not a length"
    assert '"24.5 mm"' in fault.accepted


def test_a_missing_key_says_what_belongs_there() -> None:
    fault = only_fault(('width = "34 mm"\n', ""))
    assert (fault.where, fault.what) == ("spool.width", "is missing")
    assert "a length such as" in fault.accepted


def test_a_missing_table_lists_its_keys() -> None:
    text = changed(("[spool]", "[spol]"))
    faults = {fault.where: fault for fault in faults_of(text)}
    assert faults["spool"].what == "is missing"
    assert "flange_diameter" in faults["spool"].accepted
    assert faults["spol"].what == "is not a key of this table; nearest is “spool”"


def test_a_key_that_is_not_known_gets_the_nearest_one() -> None:
    fault = only_fault(('line_level = "2.0 mm"', 'line_level = "2.0 mm"\nwal = "1 mm"'))
    assert fault.where == "spool.wal"
    assert fault.what == "is not a key of this table; nearest is “wall”"


def test_a_word_outside_the_list_gets_the_nearest_one() -> None:
    fault = only_fault(('kind = "round multiplier"', 'kind = "round multiplyer"'))
    assert fault.where == "reel.kind"
    assert fault.what.endswith("nearest is “round multiplier”")
    assert "fixed spool" in fault.accepted


def test_a_material_gets_the_nearest_one() -> None:
    fault = only_fault(('material = "felt"', 'material = "fellt"'))
    assert fault.where == "drag.stack[2].material (friction disc)"
    assert fault.what.endswith("nearest is “felt”")


@pytest.mark.parametrize("teeth", ["5", "-3", "12.5", '"12"', "201", "true"])
def test_teeth_are_whole_numbers_from_six(teeth: str) -> None:
    fault = only_fault(("pinion_teeth = 12", f"pinion_teeth = {teeth}"))
    assert fault.where == "gears.pinion_teeth"
    assert fault.accepted == "a whole number from 6 to 200"


def test_teeth_in_a_list_of_cogs_too() -> None:
    fault = only_fault(("cogs = [[18, 24], [24, 30]]", "cogs = [[18, 24], [24, 3]]"))
    assert fault.where == "level_wind.cogs[2][2]"
    assert "pairs of teeth" in fault.accepted


def test_a_number_without_quotes_and_unit_is_told() -> None:
    fault = only_fault(('arbor_diameter = "20 mm"', "arbor_diameter = 20"))
    assert fault.what == "“20” is a bare number; write it as text with its unit"


@pytest.mark.parametrize(
    ("old", "new", "where", "accepted"),
    [
        ('slug = "tarvak-9"', 'slug = "Tarvak 9"', "reel.slug", "small letters"),
        ('arrangement = "()"', 'arrangement = "><"', "drag.springs.arrangement", "back to back"),
        ('thread = "M3"', 'thread = "<b>"', "screws[1].thread (gear-side plate)", "a thread"),
        ('order = "1a"', 'order = "first"', "parts[2].order (handle arm)", "a number and at most one letter"),
        ("roller_clutch = false", 'roller_clutch = "no"', "anti_reverse.roller_clutch", "true or false"),
        ('lubricant = "AS"', 'lubricant = "XX"', "parts[1].lubricant (handle nut)", "'O1'"),
        ("quantity = 1\n", "quantity = 0\n", "parts[1].quantity (handle nut)", "from 1 to 60"),
        ('maker = "Tarvak"', 'maker = ""', "reel.maker", "1 to 200 characters"),
        (
            'lubricant = "Tysna 10"',
            'lubricant = "Tysna 11"',
            "bearings[1].lubricant (spool shaft, gear side)",
            "Tysna 10",
        ),
        (
            'size = "4 x 10 x 4 mm"',
            'size = "10 x 4 mm"',
            "bearings[1].size (spool shaft, gear side)",
            "bore x outer",
        ),
    ],
)
def test_every_kind_of_field_says_where_and_what(old: str, new: str, where: str, accepted: str) -> None:
    fault = only_fault((old, new))
    assert fault.where == where
    assert accepted in fault.accepted


def test_all_faults_come_at_once_and_in_the_order_of_the_sheet() -> None:
    text = changed(
        ('width = "34 mm"', 'width = "34"'),
        ("main_teeth = 50", "main_teeth = 2"),
        ("count = 3", 'count = "x"'),
    )
    assert [f.where for f in faults_of(text)] == [
        "spool.width",
        "gears.main_teeth",
        "screws[1].count (gear-side plate)",
    ]


@pytest.mark.parametrize(
    ("text", "where"),
    [
        ("[reel\nmaker = 1", "line 1, column 6"),
        ("[reel]\nmaker = Tarvak", "line 2, column 9"),
        ('[reel]\nmaker = "a"\nmaker = "b"\n', "line 3, column 12"),
        ("[reel]\nwidth = 24.5 mm", "line 2, column 14"),
    ],
)
def test_broken_toml_carries_its_line(text: str, where: str) -> None:
    (fault,) = faults_of(text)
    assert fault.where == where
    assert "TOML" in fault.accepted


def test_a_text_that_ends_too_early_is_told() -> None:
    (fault,) = faults_of('[reel]\nmaker = "Tarvak')
    assert "end" in fault.where or "line 2" in fault.where


@pytest.mark.parametrize(
    "text", ["x = " + "9" * 5000, "x = " + "[" * 20000, "a" * 300_000, "\x00", "x = nan"]
)
def test_hostile_text_is_a_fault_and_never_a_crash(text: str) -> None:
    assert faults_of(text)


def test_script_in_a_name_is_only_text() -> None:
    fault = only_fault(
        ('name = "friction disc"', 'name = "<script>alert(1)</script>"'), ('"felt"', '"fellt"')
    )
    assert fault.where == "drag.stack[2].material (<script>alert(1)</script>)"


def test_a_list_where_a_table_belongs() -> None:
    faults = faults_of("spool = [1, 2]\nreel = 3")
    assert {fault.where for fault in faults} == {"reel", "spool"}
