"""One row of settings, which judgement reads as rates."""

from __future__ import annotations

from fractions import Fraction

import pytest
from django.db import IntegrityError, transaction

from spoolwright.shop.records.shop_settings import ShopSettings, standing

pytestmark = pytest.mark.django_db


def test_there_is_one_row() -> None:
    standing().save()
    with pytest.raises(IntegrityError), transaction.atomic():
        ShopSettings(pk=2).save()


def test_they_are_rates() -> None:
    rates = ShopSettings(tax_rate="0.25", tier_prices={"common": 600_00}, currency_mark="").rates()
    assert (rates.tax_rate, rates.legal_ceiling) == (Fraction(1, 4), Fraction(15, 100))
    assert (rates.tier("common").price_minor, rates.tier("full").price_minor) == (600_00, 1150_00)
    assert rates.money_mark == "NOK"
