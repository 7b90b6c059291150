"""Correct what is written about a customer; the address on issued papers stays as it was."""

from __future__ import annotations

from django.db import transaction

from spoolwright.shop.acts import add_reel, receive_parcel
from spoolwright.shop.acts.add_customer import NewCustomer, let_search_find
from spoolwright.shop.acts.put import checked, needed, our_hand
from spoolwright.shop.acts.refused import SomeoneElseWroteFirst
from spoolwright.shop.records.customer import Customer
from spoolwright.shop.records.people import Person

_FIELDS = ("name", "address", "email", "telephone", "water", "note")


@transaction.atomic
def change_customer(*, hand: Person, customer: Customer, to: NewCustomer, version: int) -> Customer:
    """`version` is the customer's version that was on the screen."""
    our_hand(hand)
    needed(to.name, "name", "The customer's name")
    fresh = Customer.objects.select_for_update().get(pk=customer.pk)
    if fresh.version != version:
        raise SomeoneElseWroteFirst(fresh.name)
    for field in _FIELDS:
        setattr(fresh, field, getattr(to, field))
    fresh.version += 1
    checked(fresh).save(update_fields=[*_FIELDS, "version"])
    let_search_find(fresh)
    for reel in fresh.reels.prefetch_related("visits__parcel"):
        add_reel.let_search_find(reel)
        for visit in reel.visits.all():
            receive_parcel.let_search_find(visit)
    return fresh
