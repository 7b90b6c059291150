"""What the shop has decided about itself, and what it charges by."""

from __future__ import annotations

from spoolwright.judgement import money
from spoolwright.judgement.shop_rates import ShopRates
from spoolwright.shop.records.shop_settings import ShopSettings, standing


def shop_settings() -> ShopSettings:
    return standing()


def rates() -> ShopRates:
    return standing().rates()


def money_shown(minor: int, shop: ShopSettings | None = None) -> str:
    """A sum as this shop writes it."""
    shop = shop or standing()
    return money.show(minor, shop.currency_mark or shop.currency, 10**shop.minor_digits)
