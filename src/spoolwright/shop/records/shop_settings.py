"""What the shop has decided about itself: one row, with a version that guards it."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal
from fractions import Fraction
from typing import Any

from django.db import models

from spoolwright.judgement.shop_rates import ShopRates, starting_rates
from spoolwright.shop.records.people import UNITS

TAX_BASES = ("document", "line")


def silence_days() -> list[int]:
    """Remind, remind, send back: common practice, no source."""
    return [7, 14, 28]


def starting_tiers() -> dict[str, int]:
    return {tier.key: tier.price_minor for tier in starting_rates().tiers}


def starting_parts() -> dict[str, int]:
    return dict(starting_rates().own_prices)


def standing() -> ShopSettings:
    """The settings as they stand; a shop that has changed nothing has no row yet."""
    return ShopSettings.objects.filter(pk=1).first() or ShopSettings()


class ShopSettings(models.Model):
    """`tier_prices` and `own_prices` are minor units by key; an empty ceiling: no law caps a bill."""

    name = models.CharField(max_length=200, default="Our workshop")
    address = models.TextField(blank=True)
    contact = models.CharField(max_length=300, blank=True)
    registration = models.CharField(max_length=100, blank=True)
    currency = models.CharField(max_length=3, default="NOK")
    currency_mark = models.CharField(max_length=8, blank=True, default="kr")
    minor_digits = models.PositiveSmallIntegerField(default=2, choices=[(d, d) for d in range(4)])
    minor_per_usd = models.PositiveIntegerField(default=1000)
    tax_rate = models.DecimalField(max_digits=7, decimal_places=5, default=Decimal("0.25"))
    tax_basis = models.CharField(max_length=10, choices=[(b, b) for b in TAX_BASES], default="document")
    prices_include_tax = models.BooleanField(default=True)
    hourly_minor = models.PositiveBigIntegerField(default=600_00)
    tier_prices = models.JSONField(default=starting_tiers, blank=True)
    own_prices = models.JSONField(default=starting_parts, blank=True)
    parts_margin = models.DecimalField(max_digits=6, decimal_places=4, default=Decimal("0.4"))
    consumables_minor = models.PositiveBigIntegerField(default=0)
    post_minor = models.PositiveBigIntegerField(default=129_00)
    check_fee_minor = models.PositiveBigIntegerField(default=0)
    legal_ceiling = models.DecimalField(
        max_digits=6, decimal_places=4, null=True, blank=True, default=Decimal("0.15")
    )
    reminder_days = models.JSONField(default=silence_days)
    payment_days = models.PositiveSmallIntegerField(default=14)
    units = models.CharField(max_length=10, choices=list(UNITS.items()), default="metric")
    warranty = models.TextField(blank=True)
    version = models.PositiveIntegerField(default=1)

    class Meta:
        constraints = [models.CheckConstraint(condition=models.Q(pk=1), name="shop_settings_one_row")]

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        if self.pk is None:
            self.pk = 1

    def rates(self) -> ShopRates:
        """These settings as judgement reads them."""
        start = starting_rates()
        return replace(
            start,
            currency=self.currency,
            mark=self.currency_mark,
            minor_per_major=10**self.minor_digits,
            minor_per_usd=self.minor_per_usd,
            hourly_minor=self.hourly_minor,
            tax_rate=Fraction(self.tax_rate),
            tax_basis=self.tax_basis,
            prices_include_tax=self.prices_include_tax,
            parts_margin=Fraction(self.parts_margin),
            consumables_minor=self.consumables_minor,
            post_minor=self.post_minor,
            legal_ceiling=None if self.legal_ceiling is None else Fraction(self.legal_ceiling),
            tiers=tuple(
                replace(tier, price_minor=self.tier_prices.get(tier.key, tier.price_minor))
                for tier in start.tiers
            ),
            own_prices=dict(self.own_prices),
        )
