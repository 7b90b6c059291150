"""A fault is found again in the text, by the number of its line."""

import pytest

from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import SheetFault
from spoolwright.sheets.where_in_text import line_of

TEXT = '''# a comment
[reel]
maker = "Tarvak"
note = """
[spool]
width = "not this one"
"""

[spool]
width = "30 mm"

[[drag.stack]]
name = "one"
[[drag.stack]]
name = "two"
outer_diameter = "26 mm"   # = wide

[drag.springs]
cone_height = "0.4 mm"
'''


@pytest.mark.parametrize(
    ("where", "line"),
    [
        ("reel.maker", 3),
        ("spool.width", 10),
        ("drag.stack[1].name (one)", 13),
        ("drag.stack[2].outer_diameter (two)", 16),
        ("drag.stack[2].thickness (two)", 14),
        ("drag.springs.cone_height", 19),
        ("reel.slug", 2),
        ("level_wind", None),
        ("the file", None),
        ("line 7, column 3", 7),
        ("end of the file", 20),
    ],
)
def test_the_line_is_the_one_that_a_person_counts(where: str, line: int | None) -> None:
    assert line_of(TEXT, where) == line


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ('outer_diameter = "26.0 mm"', 'outer_diameter = "-26 mm"'),
        ('material = "woven carbon"', 'material = "woven carbn"'),
        ("main_teeth = 53", "main_teeth = 5.5"),
        ('arm_length = "45 mm"', 'arm_lenght = "45 mm"'),
    ],
)
def test_the_reader_s_own_faults_are_found(old: str, new: str) -> None:
    text = reel_sheet.shipped()["tarvak-54c"]
    assert old in text
    broken = text.replace(old, new, 1)
    changed = 1 + broken[: broken.index(new)].count("\n")
    with pytest.raises(SheetFault) as caught:
        reel_sheet.read(broken)
    lines = [line_of(broken, fault.where) for fault in caught.value.faults]
    assert changed in lines


def test_a_table_inside_a_member_of_a_list_carries_the_member_s_number() -> None:
    text = "[[bearings]]\n[[bearings]]\n[bearings.size]\nbore = 1\n"
    assert line_of(text, "bearings[2].size.bore") == 4


def test_a_long_hostile_text_is_answered_at_once() -> None:
    assert line_of("[" * 100_000 + "\n" + "a=" * 50_000, "spool.width") is None
