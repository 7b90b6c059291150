"""What changed between two versions is said so that a bench hand sees it at a glance."""

import pytest

from spoolwright.sheets import reel_sheet
from spoolwright.sheets.sheet_differences import differences

TEXT = reel_sheet.shipped()["tarvak-54c"]


def told(text: str, system: str = "metric") -> tuple[str, ...]:
    return differences(reel_sheet.read(TEXT), reel_sheet.read(text), system)


def swapped(old: str, new: str, count: int = 1) -> str:
    assert old in TEXT
    return TEXT.replace(old, new, count)


def test_nothing_changed_is_nothing_said() -> None:
    assert told(TEXT) == ()
    assert told(TEXT + "\n# a comment\n") == ()


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ('line_level = "2.0 mm"', 'line_level = "2.5 mm"', "Spool, line level: 2.5 mm in place of 2 mm."),
        ("main_teeth = 53", "main_teeth = 55", "Gears, main teeth: 55 in place of 53."),
        ('mass = "328 g"\n', "", "Reel, mass: no longer said; it was 328 g."),
        (
            'winding_hand = "right"',
            'winding_hand = "left"',
            "Reel, winding hand: “left” in place of “right”.",
        ),
        ("turns_to_full = 4", "turns_to_full = 5", "Drag, turns to full: 5 in place of 4."),
    ],
)
def test_one_change_is_one_sentence(old: str, new: str, said: str) -> None:
    assert told(swapped(old, new)) == (said,)


def test_a_size_is_said_in_the_readers_units() -> None:
    assert told(swapped('width = "32 mm"', 'width = "30 mm"'), "imperial") == (
        "Spool, width: 1.18 in in place of 1.26 in.",
    )


def test_a_member_is_known_again_by_its_name() -> None:
    before, _, rest = TEXT.partition('name = "third friction disc"')
    disc = rest.replace('thickness = "0.8 mm"', 'thickness = "0.9 mm"', 1)
    said = told(before + 'name = "third friction disc"' + disc)
    assert said == ("Drag stack, “third friction disc”, thickness: 0.9 mm in place of 0.8 mm.",)


def test_a_disc_taken_out_and_one_put_in_are_two_sentences() -> None:
    assert told(swapped('name = "third friction disc"', 'name = "grey disc"')) == (
        "Drag stack: “third friction disc” taken out.",
        "Drag stack: “grey disc” added after “inner eared disc”.",
    )


def test_a_stack_in_another_order_is_said_with_its_new_order() -> None:
    first, second = 'name = "inner keyed disc"', 'name = "inner eared disc"'
    text = swapped(first, 'name = "@"').replace(second, first, 1).replace('name = "@"', second, 1)
    said = told(text)
    assert any("Drag stack: in another order, now " in one for one in said)
    order = next(one for one in said if "in another order" in one)
    assert order.index("inner eared disc") < order.index("inner keyed disc")


def test_a_table_that_comes_or_goes_is_said_once() -> None:
    start = TEXT.index("[brakes]")
    end = TEXT.index("[", start + 1)
    assert told(TEXT[:start] + TEXT[end:]) == ("Brakes: no longer described.",)


def test_two_members_of_one_name_go_by_their_turn() -> None:
    start = TEXT.index("[[screws]]")
    end = TEXT.index("[[", start + 2)
    assert told(TEXT[:end] + TEXT[start:end] + TEXT[end:])[0].startswith("Screws: “")
