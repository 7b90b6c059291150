"""Write down a customer."""

from __future__ import annotations

from dataclasses import dataclass

from django.db import transaction

from spoolwright.shop.acts import clock
from spoolwright.shop.acts.make_findable import make_findable
from spoolwright.shop.acts.put import needed, our_hand, put
from spoolwright.shop.records.customer import Customer
from spoolwright.shop.records.people import Person


@dataclass(frozen=True)
class NewCustomer:
    """A customer whom the shop does not know yet."""

    name: str
    address: str = ""
    email: str = ""
    telephone: str = ""
    water: str = ""
    note: str = ""


@transaction.atomic
def add_customer(
    *,
    hand: Person,
    name: str,
    address: str = "",
    email: str = "",
    telephone: str = "",
    water: str = "",
    note: str = "",
) -> Customer:
    customer = put(
        Customer(
            name=needed(name, "name", "The customer's name"),
            address=address,
            email=email,
            telephone=telephone,
            water=water,
            note=note,
            added_by=our_hand(hand),
            added_at=clock.now(),
        )
    )
    let_search_find(customer)
    return customer


def let_search_find(customer: Customer) -> None:
    words = [customer.address, customer.email, customer.telephone, customer.note]
    make_findable(kind="customer", ref=customer.pk, title=customer.name, words=words)
