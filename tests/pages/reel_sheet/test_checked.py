"""A text looked through: every fault with its line, or everything that is new."""

from __future__ import annotations

import pytest

from spoolwright.pages.reel_sheet.checked import LONGEST_EXCERPT, MOST_FAULTS, check
from spoolwright.sheets import reel_sheet

TEXT = reel_sheet.shipped()["tarvak-54c"]


def swapped(old: str, new: str) -> str:
    assert old in TEXT
    return TEXT.replace(old, new, 1)


FAULTS = [
    ('width = "32 mm"', 'width = "-32 mm"', "spool.width", "“-32 mm” is out of range", "more than 0 mm"),
    ('width = "32 mm"', 'width = "32"', "spool.width", "“32” has no unit", "mm"),
    ('width = "32 mm"', 'width = "32 g"', "spool.width", "“32 g”", "mm"),
    ('width = "32 mm"', "", "spool.width", "is missing", "mm"),
    ("main_teeth = 53", 'main_teeth = "many"', "gears.main_teeth", "“many”", "a whole number"),
    ('"woven carbon"', '"woven carbn"', "drag.stack[2].material", "nearest is “woven carbon”", "felt"),
    (
        'turns_with = "gear"',
        'turns_with = "spool"',
        "drag.stack[3]",
        "does not fit a drag",
        "gear, shaft, neither",
    ),
    ('"3 x 10 x 4 mm"', '"10 x 3 x 4 mm"', "bearings[1].size", "a bore or a width", "bore x outer x width"),
    ('"round multiplier"', '"round multiplyer"', "reel.kind", "nearest is “round multiplier”", "fly"),
    ("[spool]", "[spool", "line ", "", "TOML"),
]


@pytest.mark.parametrize(("old", "new", "where", "what", "accepted"), FAULTS)
def test_each_fault_says_where_what_and_what_is_accepted(
    old: str, new: str, where: str, what: str, accepted: str
) -> None:
    found = check(swapped(old, new), last=TEXT, system="metric")
    assert found.sheet is None
    fault = next(one for one in found.faults if one.fault.where.startswith(where))
    assert what in fault.fault.what
    assert accepted in fault.fault.accepted
    assert fault.line is not None
    if new:
        assert new in fault.excerpt


def test_every_fault_is_found_at_once() -> None:
    text = swapped('width = "32 mm"', 'width = "-32 mm"').replace("main_teeth = 53", "main_teeth = 0", 1)
    assert len(check(text, last="", system="metric").faults) == 2


def test_a_text_in_order_is_told_by_what_is_new_in_it() -> None:
    found = check(swapped('line_level = "2.0 mm"', 'line_level = "2.5 mm"'), last=TEXT, system="metric")
    assert found.changes == ("Spool, line level: 2.5 mm in place of 2 mm.",)
    assert not found.is_same_text
    assert check(TEXT, last=TEXT, system="metric").is_same_text
    assert check(TEXT, last="", system="metric").changes == ()


def test_a_text_of_another_sheet_is_refused_on_this_page() -> None:
    found = check(
        swapped('slug = "tarvak-54c"', 'slug = "tarvak-54d"'), last=TEXT, system="metric", slug="tarvak-54c"
    )
    assert found.sheet is None
    assert found.faults[0].fault.where == "reel.slug"
    assert found.faults[0].excerpt == 'slug = "tarvak-54d"'


def test_a_washer_put_in_wrong_is_remarked_and_not_refused() -> None:
    before, _, after = TEXT.partition('name = "inner eared disc"')
    wrong = (
        before + 'name = "inner eared disc"' + after.replace('turns_with = "gear"', 'turns_with = "shaft"', 1)
    )
    found = check(wrong, last=TEXT, system="metric")
    assert found.sheet is not None
    assert any("one pair is lost" in words for words in found.remarks)


def test_a_hostile_text_is_answered_in_bounds() -> None:
    long = check("x" * 2_000_000, last="", system="metric")
    assert "more than 200000 characters" in long.faults[0].fault.what
    assert long.faults[0].line is None
    many = check(TEXT + "\n[[parts]]\n" * 200, last="", system="metric")
    assert len(many.faults) <= MOST_FAULTS
    assert many.more_faults > 0
    wide = check("a = " + "9" * 5000, last="", system="metric")
    assert all(len(one.excerpt) <= LONGEST_EXCERPT for one in wide.faults)
