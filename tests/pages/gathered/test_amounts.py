"""Sums on papers, in the currency in which they were written."""

from decimal import Decimal
from types import SimpleNamespace

from spoolwright.pages.gathered.amounts import Amounts, percent

SHOP = SimpleNamespace(currency="NOK", currency_mark="kr", minor_digits=2)


def plain(text: str) -> str:
    return text.replace("\u00a0", " ")


def test_the_shops_own_currency_has_its_mark_and_another_its_code() -> None:
    assert plain(Amounts(SHOP, "NOK")(1269_60)) == "1,269.60 kr"
    assert plain(Amounts(SHOP)(1269_60)) == "1,269.60 kr"
    assert plain(Amounts(SHOP, "EUR")(1269_60)) == "1,269.60 EUR"


def test_a_step_has_its_sign() -> None:
    amounts = Amounts(SHOP, "NOK")
    assert plain(amounts.more(65_00)) == "+ 65.00 kr"
    assert plain(amounts.more(-10_00)) == "− 10.00 kr"


def test_a_share_in_per_cent() -> None:
    assert plain(percent(Decimal("0.25"))) == "25 %"
    assert plain(percent(Decimal("0.125"))) == "12.5 %"
