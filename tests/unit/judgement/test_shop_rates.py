"""The rates a shop starts with are whole, and bad ones are refused by name."""

from dataclasses import replace
from fractions import Fraction

import pytest

from spoolwright.judgement.shop_rates import starting_rates


def test_the_starting_rates_hold_the_four_tiers() -> None:
    rates = starting_rates()
    assert [tier.price_minor for tier in rates.tiers] == [15000, 25000, 52000, 115000]
    assert rates.tax_rate == Fraction(1, 4)
    assert rates.money_mark == "kr"


def test_an_unknown_tier_is_refused_with_the_known_ones() -> None:
    with pytest.raises(KeyError, match="quick, basic, common, full"):
        starting_rates().tier("royal")


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("tax_rate", Fraction(1)),
        ("tax_rate", Fraction(-1, 10)),
        ("parts_margin", Fraction(1)),
        ("legal_ceiling", Fraction(-1, 100)),
        ("tax_basis", "yearly"),
        ("hourly_minor", -1),
        ("minor_per_major", 7),
    ],
)
def test_a_bad_rate_is_refused_by_name(field: str, value: object) -> None:
    with pytest.raises(ValueError, match=field):
        replace(starting_rates(), **{field: value})


def test_the_mark_falls_back_on_the_currency() -> None:
    assert replace(starting_rates(), mark="").money_mark == "NOK"
