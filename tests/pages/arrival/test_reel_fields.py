"""The questions about one reel: they offer what the shop can write down, and hardly any must be answered."""

from __future__ import annotations

import pytest

from spoolwright.pages.arrival import reel_fields
from spoolwright.sheets.lines import line_names
from spoolwright.shop.questions import choices

FIELDS = reel_fields.fields(())


def values(name: str) -> list[str]:
    return [value for value, _ in FIELDS[name].choices]


def test_none_must_be_answered() -> None:
    assert not [name for name, asked in FIELDS.items() if asked.required]


@pytest.mark.parametrize(
    ("name", "kept"),
    [("winding_hand", choices.HANDS), ("water", choices.WATERS), ("line_wish", choices.LINE_WISHES)],
)
def test_every_answer_is_one_that_can_be_kept(name: str, kept: tuple[str, ...]) -> None:
    assert set(values(name)) - {""} == set(kept) - {""}


def test_every_line_that_the_house_knows_is_offered() -> None:
    assert set(line_names()) < set(values("line"))


def test_a_phone_opens_its_camera_for_a_photo() -> None:
    drawn = FIELDS["photos"].widget.render("photos", None)
    assert 'capture="environment"' in drawn
    assert "multiple" in drawn


@pytest.mark.parametrize(("system", "unit"), [("metric", "g."), ("imperial", "oz.")])
def test_the_examples_are_in_the_units_of_whoever_writes(system: str, unit: str) -> None:
    assert reel_fields.fields((), system)["mass"].help_text.endswith(unit)
