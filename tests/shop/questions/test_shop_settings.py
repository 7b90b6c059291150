"""What the shop charges by, and how it writes a sum."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.judgement.shop_rates import starting_rates
from spoolwright.shop.acts.change_settings import change_settings
from spoolwright.shop.questions.shop_settings import money_shown, rates, shop_settings

pytestmark = pytest.mark.django_db


def test_a_shop_that_changed_nothing_charges_the_starting_rates() -> None:
    assert rates() == starting_rates()


def test_money_as_this_shop_writes_it(owner: Any) -> None:
    assert money_shown(1169_00) == "1,169.00 kr"
    changed = change_settings(hand=owner, version=1, currency="JPY", currency_mark="", minor_digits=0)
    assert money_shown(1500) == money_shown(1500, changed) == "1,500 JPY"
    assert shop_settings() == changed
