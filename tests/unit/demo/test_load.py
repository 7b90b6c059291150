"""The demonstration goes into an empty shop only. What it puts there: see tests/shop/test_demo.py."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import Any

import pytest

from spoolwright.demo.load import ShopWasNotEmpty, load
from spoolwright.demo.scenarios import estate_reel
from spoolwright.shop.questions import by_number
from tests.unit.demo.conftest import TUESDAY


def test_a_shop_with_visits_is_left_alone(shop: Any, tell: Callable[..., list[Any]]) -> None:
    tell(estate_reel.story(shop, TUESDAY))
    with pytest.raises(ShopWasNotEmpty, match="an empty shop only"):
        load(today=date(2026, 11, 25))
    assert by_number.visit_tagged(2) is None
