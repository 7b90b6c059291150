"""Values in templates: in the units of the person who reads."""

from __future__ import annotations

from decimal import Decimal
from types import SimpleNamespace

import pytest
from django.template import Context, Template

from spoolwright.bench.uncertainty import Measured
from spoolwright.pages.templatetags import words

KG = 9.80665  # one kilogram-force in newtons: CGPM 1901
IMPERIAL = SimpleNamespace(user=SimpleNamespace(units="imperial"))
SHOP = SimpleNamespace(currency_mark="kr", currency="NOK", minor_digits=2)


def render(text: str, **facts: object) -> str:
    return Template("{% load words %}" + text).render(Context(facts)).replace("\u00a0", " ")


def test_a_quantity_follows_the_reader() -> None:
    tag = '{% quantity pull "force" %}'
    assert render(tag, pull=2.6 * KG) == "2.60 kg"
    assert (
        render(tag, pull=2.6 * KG, request=IMPERIAL) == "5.73 lb"
    )  # 2.6 kg / 0.45359237 kg: NIST SP 811, B.8


def test_a_reading_is_value_and_uncertainty_in_two_sizes() -> None:
    html = render("{% measured m %}", m=Measured(2.6 * KG, 0.045 * KG, "force"))
    assert html == '2.600 kg <span class="uncertainty">± 0.090 kg</span>'


def test_an_interval() -> None:
    assert render('{% interval a b "force" %}', a=6.4 * KG, b=7.4 * KG) == "6.4 to 7.4 kg"


def test_money_is_the_shops() -> None:
    request = SimpleNamespace(shop_settings=SHOP)
    assert render("{% money sum %}", sum=126_960, request=request) == "1,269.60 kr"


@pytest.mark.parametrize(
    ("share", "said"), [("0.25", "25 %"), ("0.125", "12.5 %"), ("0", "0 %"), ("1", "100 %")]
)
def test_percent(share: str, said: str) -> None:
    assert words.percent(Decimal(share)).replace("\u00a0", " ") == said
