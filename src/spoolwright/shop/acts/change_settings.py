"""Change what the shop has decided about itself. Papers that are out keep what stood then."""

from __future__ import annotations

from typing import Any

from django.db import transaction

from spoolwright.shop.acts.put import checked, owners_hand
from spoolwright.shop.acts.refused import FieldWasRefused, SomeoneElseWroteFirst
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.shop_settings import ShopSettings

SETTINGS = tuple(
    field.name for field in ShopSettings._meta.local_concrete_fields if field.name not in ("id", "version")
)


@transaction.atomic
def change_settings(*, hand: Person, version: int, **changes: Any) -> ShopSettings:
    """`version` is the one that was on the screen."""
    owners_hand(hand, "changes the shop's settings")
    if unknown := set(changes) - set(SETTINGS):
        raise FieldWasRefused(min(unknown), [f"There is no such setting. Accepted: {', '.join(SETTINGS)}."])
    ShopSettings.objects.get_or_create(pk=1)
    shop = ShopSettings.objects.select_for_update().get(pk=1)
    if shop.version != version:
        raise SomeoneElseWroteFirst("The shop's settings")
    for name, value in changes.items():
        setattr(shop, name, value)
    shop.version += 1
    _refuse_nonsense(shop)
    checked(shop).save()
    return shop


def _refuse_nonsense(shop: ShopSettings) -> None:
    for name in ("tier_prices", "own_prices"):
        _refuse_prices(name, getattr(shop, name))
    days = shop.reminder_days
    whole = isinstance(days, list) and all(type(day) is int and day > 0 for day in days)
    if not whole or sorted(days) != days:
        raise FieldWasRefused(
            "reminder_days", ["Whole days, each later than the one before, such as 7, 14, 28."]
        )
    checked(shop)
    try:
        shop.rates()
    except ValueError as error:
        field, _, complaint = str(error).partition(": ")
        raise FieldWasRefused(field, [complaint]) from error


def _refuse_prices(name: str, prices: object) -> None:
    if not isinstance(prices, dict) or not all(type(p) is int and p >= 0 for p in prices.values()):
        raise FieldWasRefused(name, ["A price in whole minor units, none below nothing, for each name."])
