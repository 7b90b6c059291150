"""The shop about itself: read by everybody here, changed by the owner, guarded by its version."""

from __future__ import annotations

import re

import pytest
from django.test import Client

from spoolwright.shop.questions.shop_settings import shop_settings
from tests.people import bench_hand, owner

pytestmark = pytest.mark.django_db


@pytest.fixture
def desk() -> Client:
    client = Client()
    client.force_login(owner())
    return client


def as_shown(client: Client) -> dict[str, str]:
    """What the browser would send if the owner changed nothing."""
    form = client.get("/shop/change/").context["form"]
    return {bound.html_name: bound.value() for bound in form if bound.value() is not None}


def test_nothing_changed_is_written_as_nothing_changed(desk: Client) -> None:
    before = shop_settings()
    assert desk.post("/shop/change/", as_shown(desk)).status_code == 302
    after = shop_settings()
    names = [field.name for field in before._meta.local_concrete_fields if field.name != "version"]
    assert {n: getattr(after, n) for n in names} == {n: getattr(before, n) for n in names}


def test_prices_tax_and_days_are_read_as_typed(desk: Client) -> None:
    sent = as_shown(desk) | {
        "name": "Kvie & Vannes",
        "hourly_minor": "650 kr",
        "tier_common": "1 020,50",
        "tax_rate": "12,5 %",
        "own_prices": "pawl 95 kr\nspool bearing: 1,085.50",
        "legal_ceiling": "",
        "reminder_days": "5 10 20",
    }
    assert desk.post("/shop/change/", sent).status_code == 302
    shop = shop_settings()
    assert (shop.name, shop.hourly_minor, shop.tier_prices["common"]) == ("Kvie & Vannes", 65_000, 102_050)
    assert (shop.tax_rate, shop.legal_ceiling, shop.reminder_days) == (
        pytest.approx(0.125),
        None,
        [5, 10, 20],
    )
    assert shop.own_prices == {"pawl": 9_500, "spool bearing": 108_550}


def test_amounts_are_read_in_the_currency_of_the_same_form(desk: Client) -> None:
    sent = as_shown(desk) | {"currency": "JPY", "currency_mark": "¥", "minor_digits": "0"}
    amounts = {name: "700" for name, value in sent.items() if str(value).endswith(" kr")}
    assert desk.post("/shop/change/", sent | amounts | {"own_prices": "pawl 700 ¥"}).status_code == 302
    assert shop_settings().hourly_minor == 700


@pytest.mark.parametrize(
    ("field", "typed"),
    [
        ("hourly_minor", "a lot"),
        ("tax_rate", "250 %"),
        ("tax_rate", "a quarter"),
        ("reminder_days", "14, 7"),
        ("reminder_days", "soon"),
        ("own_prices", "pawl"),
        ("own_prices", "pawl cheap 9 9 9 kroner"),
        ("currency", "crowns"),
        ("payment_days", "-1"),
        ("tax_basis", "never"),
        ("name", ""),
        ("name", "x" * 500),
    ],
)
def test_what_cannot_be_read_is_kept_and_answered_beside_the_field(
    desk: Client, field: str, typed: str
) -> None:
    before = shop_settings().version
    response = desk.post("/shop/change/", as_shown(desk) | {field: typed, "warranty": "Two <b>years</b>"})
    page = response.content.decode()
    assert response.status_code == 422
    assert f'id="id_{field}_error"' in page
    assert "Two &lt;b&gt;years&lt;/b&gt;" in page
    assert re.search(rf'<a href="#id_{field}', page), "the summary leads to the field"
    assert shop_settings().version == before


def test_the_second_of_two_at_once_is_told_and_loses_nothing(desk: Client) -> None:
    first = second = as_shown(desk)
    assert desk.post("/shop/change/", first | {"name": "First"}).status_code == 302
    response = desk.post("/shop/change/", second | {"name": "Second"})
    assert response.status_code == 422
    assert "changed by somebody else" in response.content.decode()
    assert 'value="Second"' in response.content.decode()
    assert shop_settings().name == "First"


def test_a_bench_hand_reads_and_does_not_change() -> None:
    owner()
    client = Client()
    client.force_login(bench_hand())
    assert "Change any of this" not in client.get("/shop/").content.decode()
    response = client.post("/shop/change/", {"name": "Mine"})
    assert response.status_code == 403
    assert "owner" in response.content.decode()
