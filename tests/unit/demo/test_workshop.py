"""Ingjerd and Torbal, their settings and their sheets; what somebody has decided already is left alone."""

from __future__ import annotations

from typing import Any

from spoolwright.demo.workshop import NAME, open_workshop
from spoolwright.shop.acts.add_person import add_person
from spoolwright.shop.acts.change_settings import change_settings
from spoolwright.shop.questions.people import people
from spoolwright.shop.questions.reel_sheets import versions
from spoolwright.shop.questions.shop_settings import shop_settings


def test_two_people_and_their_shop(shop: Any) -> None:
    assert [(one.name, one.role) for one in people()] == [
        ("Ingjerd Vannes", "owner"),
        ("Torbal Kvie", "bench"),
    ]
    assert not any(one.has_usable_password() for one in people())
    assert shop_settings().name == NAME
    assert shop.rates.own_prices["pawl"] == 95_00


def test_every_shipped_sheet_stands_and_one_was_measured_again(shop: Any) -> None:
    assert set(shop.sheets) >= {"tarvak-52", "tarvak-54c", "tarvak-58r", "pellmar-70"}
    assert [version.number for version in versions("tarvak-58r")] == [2, 1]
    assert shop.sheets["tarvak-58r"].number == 2


def test_a_shop_that_has_a_name_keeps_it(db: None) -> None:
    owner = add_person(hand=None, username="owner", name="Owner")
    change_settings(hand=owner, version=shop_settings().version, name="Somebody's own")
    open_workshop(1)
    assert shop_settings().name == "Somebody's own"
    assert {one.username for one in people() if one.is_owner} == {"owner", "ingjerd"}


def test_each_story_has_a_chance_of_its_own(shop: Any) -> None:
    assert shop.chance("a").random() == shop.chance("a").random()
    assert shop.chance("a").random() != shop.chance("b").random()
