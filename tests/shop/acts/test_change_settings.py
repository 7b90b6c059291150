"""The owner changes the settings, one screen at a time, and nonsense is refused in words."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from typing import Any

import pytest

from spoolwright.shop.acts.change_settings import change_settings
from spoolwright.shop.acts.refused import FieldWasRefused, OwnerWasNeeded, SomeoneElseWroteFirst
from spoolwright.shop.questions.shop_settings import money_shown, rates, shop_settings
from tests import people
from tests.shop.at_once import at_once


@pytest.mark.django_db
def test_the_owner_changes_them_and_judgement_reads_them(owner: Any) -> None:
    change_settings(
        hand=owner,
        version=1,
        currency="EUR",
        currency_mark="€",
        tax_rate=Decimal("0.255"),
        tier_prices={"common": 60_00},
        legal_ceiling=None,
    )
    now = rates()
    assert (now.currency, now.tax_rate, now.legal_ceiling) == ("EUR", Fraction("0.255"), None)
    assert now.tier("common").price_minor == 60_00
    assert money_shown(1234_50) == "1,234.50 €"
    assert shop_settings().version == 2


@pytest.mark.django_db
def test_a_bench_hand_does_not(hand: Any) -> None:
    with pytest.raises(OwnerWasNeeded):
        change_settings(hand=hand, version=1, name="Mine now")


@pytest.mark.django_db
def test_the_second_screen_is_told(owner: Any) -> None:
    change_settings(hand=owner, version=1, name="Kvie and Vannes")
    with pytest.raises(SomeoneElseWroteFirst):
        change_settings(hand=owner, version=1, name="Vannes and Kvie")
    assert shop_settings().name == "Kvie and Vannes"


def test_at_the_very_same_moment_too(own_database: None) -> None:
    owner = people.owner()
    names = ("Kvie and Vannes", "Vannes and Kvie")
    came = at_once([lambda n=name: change_settings(hand=owner, version=1, name=n) for name in names])
    assert sum(isinstance(thing, SomeoneElseWroteFirst) for thing in came) == 1
    assert shop_settings().version == 2


@pytest.mark.django_db
@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("tax_rate", Decimal("1.5")),
        ("tax_rate", "a quarter"),
        ("tax_rate", Decimal("-0.1")),
        ("parts_margin", Decimal("1")),
        ("hourly_minor", -1),
        ("minor_digits", 7),
        ("currency", "KRONER"),
        ("tax_basis", "by feeling"),
        ("legal_ceiling", Decimal("-0.1")),
        ("reminder_days", [14, 7]),
        ("reminder_days", "weekly"),
        ("tier_prices", {"common": 520.0}),
        ("own_prices", {"pawl": -1}),
        ("units", "furlongs"),
        ("shoe_size", 44),
        ("id", 2),
    ],
)
def test_nonsense_is_refused_at_its_field(owner: Any, field: str, value: Any) -> None:
    with pytest.raises(FieldWasRefused) as told:
        change_settings(hand=owner, version=1, **{field: value})
    assert told.value.field == field
    assert shop_settings().version == 1
