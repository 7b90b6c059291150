"""The lists that forms offer are those that records, readings and prices know."""

from __future__ import annotations

from typing import get_args

from spoolwright.judgement.price import ChargeKind
from spoolwright.judgement.what_next import MINUTES
from spoolwright.sheets import reading_kinds
from spoolwright.shop.questions import choices


def test_conditions_and_ways_are_those_of_the_registry() -> None:
    assert set(choices.CONDITIONS) == set(reading_kinds.CONDITIONS)
    assert choices.WAYS == reading_kinds.WAYS


def test_kinds_of_line_are_those_that_are_priced() -> None:
    assert get_args(ChargeKind) == choices.LINE_KINDS


def test_what_can_come_next_is_an_entry() -> None:
    assert set(MINUTES) - {"nothing"} == set(choices.ENTRY_KINDS) - {"word"}


def test_the_places_are_the_nine_of_the_bench() -> None:
    """Source: the design page, the word "place", and the trade handbook 8.3."""
    assert choices.PLACES == (
        "mat",
        "bath",
        "drying rack",
        "shelf",
        "asked shelf",
        "waits for a part",
        "jig",
        "line winder",
        "post table",
    )
