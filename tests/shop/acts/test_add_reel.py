"""Reels that look alike get a visible difference before either is opened."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.add_customer import add_customer
from spoolwright.shop.acts.add_reel import NewReel, TwinWasNotMarked, add_reel
from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from spoolwright.shop.acts.refused import WordsWereMissing

pytestmark = pytest.mark.django_db


@pytest.fixture
def aslak(hand: Any) -> Any:
    return add_customer(hand=hand, name="Aslak Rein")


def test_a_twin_is_refused_until_it_is_marked(hand: Any, aslak: Any) -> None:
    first = add_reel(hand=hand, customer=aslak, reel=NewReel(described="Pellmar 30-2"))
    for mark in ("", "   "):
        with pytest.raises(TwinWasNotMarked) as refusal:
            add_reel(hand=hand, customer=aslak, reel=NewReel(described="pellmar 30-2", twin_mark=mark))
    assert refusal.value.twin == first
    assert refusal.value.field == "twin_mark"
    second = add_reel(
        hand=hand, customer=aslak, reel=NewReel(described="Pellmar 30-2", twin_mark="white dot")
    )
    with pytest.raises(TwinWasNotMarked):
        add_reel(hand=hand, customer=aslak, reel=NewReel(described="Pellmar 30-2", twin_mark="White dot"))
    third = add_reel(
        hand=hand, customer=aslak, reel=NewReel(described="Pellmar 30-2", twin_mark="two white dots")
    )
    assert [r.marks.count() for r in (first, second, third)] == [0, 1, 1]


def test_another_customers_reel_is_no_twin(hand: Any, aslak: Any) -> None:
    add_reel(hand=hand, customer=aslak, reel=NewReel(described="Pellmar 30-2"))
    add_reel(
        hand=hand,
        customer=add_customer(hand=hand, name="Ragna Solbu"),
        reel=NewReel(described="Pellmar 30-2"),
    )


def test_one_sheet_makes_twins_whatever_they_are_called(hand: Any, aslak: Any) -> None:
    version = add_sheet_version(hand=hand, toml=reel_sheet.shipped()["tarvak-58r"])
    reel = add_reel(hand=hand, customer=aslak, reel=NewReel(sheet_version=version))
    assert reel.described == version.sheet.shown
    with pytest.raises(TwinWasNotMarked):
        add_reel(hand=hand, customer=aslak, reel=NewReel(sheet_version=version, described="the green one"))


def test_a_reel_is_something(hand: Any, aslak: Any) -> None:
    with pytest.raises(WordsWereMissing) as refusal:
        add_reel(hand=hand, customer=aslak, reel=NewReel())
    assert refusal.value.field == "described"
