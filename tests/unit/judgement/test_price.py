"""Charges become lines with tax, and the lines add back."""

from dataclasses import replace
from fractions import Fraction

import pytest

from spoolwright.judgement.price import Charge, compared_with_trade, labour, part_price, price
from spoolwright.judgement.shop_rates import starting_rates

RATES = starting_rates()
NET = replace(RATES, prices_include_tax=False)


def test_with_tax_included_the_stated_price_is_the_gross_one() -> None:
    priced = price([Charge("tier", "Common tune", 52000)], RATES)
    assert (priced.net_minor, priced.tax_minor, priced.total_minor) == (41600, 10400, 52000)


def test_with_tax_added_the_stated_price_is_the_net_one() -> None:
    priced = price([Charge("tier", "Common tune", 52000)], NET)
    assert (priced.net_minor, priced.tax_minor, priced.total_minor) == (52000, 13000, 65000)


def test_a_discount_takes_tax_off_too() -> None:
    priced = price([Charge("tier", "Full tune", 115000), Charge("discount", "Fleet, 10 %", -11500)], RATES)
    assert (priced.total_minor, priced.tax_minor) == (103500, 20700)
    assert sum(line.tax_minor for line in priced.lines) == priced.tax_minor


def test_a_deposit_is_taken_off_what_is_due() -> None:
    priced = price([Charge("tier", "Common tune", 52000)], RATES, deposit_minor=20000)
    assert priced.due_minor == 32000
    with pytest.raises(ValueError, match="deposit_minor"):
        price([], RATES, deposit_minor=-1)


def test_labour_by_the_minute() -> None:
    assert labour("Free the bearing", 35, RATES).unit_minor == 35000
    with pytest.raises(ValueError, match="minutes"):
        labour("Nothing", -1, RATES)


def test_a_part_sold_at_a_margin_keeps_that_margin() -> None:
    sold = part_price(3000, replace(NET, parts_margin=Fraction(2, 5)))
    assert Fraction(sold - 3000, sold) == Fraction(2, 5)
    with pytest.raises(ValueError, match="cost_minor"):
        part_price(-1, RATES)


def test_no_legal_ceiling_where_no_law_caps_it() -> None:
    assert price([], replace(RATES, legal_ceiling=None)).ceiling_minor is None


def test_the_ceiling_is_never_rounded_up() -> None:
    assert price([Charge("other", "Odd", 103)], RATES).ceiling_minor == 118


@pytest.mark.parametrize(("minor", "said"), [(52000, "4 % more"), (50000, "the same"), (40000, "20 % less")])
def test_the_work_is_set_beside_the_customary_ask(minor: int, said: str) -> None:
    priced = price([Charge("tier", "Common tune", minor), Charge("part", "Pawl", 9500)], RATES)
    assert said in compared_with_trade(priced, "common", RATES)
