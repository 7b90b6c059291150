"""Names that sound alike are not the same name; the same name is, whatever its signs."""

from __future__ import annotations

import pytest

from spoolwright.pages.customer.forms import ChangeForm, NewCustomerForm
from spoolwright.shop.acts.add_customer import NewCustomer, add_customer
from tests.people import bench_hand

pytestmark = pytest.mark.django_db


@pytest.mark.parametrize(
    ("typed", "asks"), [("ragna solbu", True), ("Ragna", False), ("Ragna Solbue", False), ("", False)]
)
def test_only_the_whole_name_is_asked_back(typed: str, asks: bool) -> None:
    add_customer(hand=bench_hand(), name="Ragna Solbu")
    assert NewCustomerForm({"name": typed}).asks_back is asks


def test_a_correction_starts_from_what_is_written() -> None:
    ragna = add_customer(hand=bench_hand(), name="Ragna Solbu", water="salt")
    form = ChangeForm(customer=ragna)
    assert (form["name"].value(), form["water"].value(), form["version"].value()) == (
        "Ragna Solbu",
        "salt",
        1,
    )


def test_what_is_told_is_what_was_typed() -> None:
    form = NewCustomerForm({"name": "Sigrun Tveit", "telephone": "900", "another": "on"})
    assert form.is_valid()
    assert form.told() == NewCustomer("Sigrun Tveit", telephone="900")
