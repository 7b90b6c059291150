"""Customers, and the reels that each has with us."""

from __future__ import annotations

from django.db.models import Q, QuerySet

from spoolwright.shop.records.customer import Customer
from spoolwright.shop.records.findable import Findable, folded
from spoolwright.shop.records.reel import Reel


def customers(named: str = "", limit: int = 50) -> tuple[Customer, ...]:
    """Customers by name, those whose name holds `named`."""
    return tuple(Customer.objects.filter(name__icontains=named).order_by("name", "pk")[:limit])


def known_as(text: str, limit: int = 8) -> tuple[Customer, ...]:
    """Customers in whom each word typed begins a word of name, address, e-mail, telephone or note."""
    words = folded(text).split()[:6]
    if not words:
        return ()
    rows = Findable.objects.filter(kind="customer")
    for word in words:
        rows = _beginning(rows, word)
    numbers = list(rows.order_by("folded_title", "ref").values_list("ref", flat=True)[:limit])
    found = Customer.objects.in_bulk(numbers)
    return tuple(found[number] for number in numbers)


def _beginning(rows: QuerySet[Findable], word: str) -> QuerySet[Findable]:
    begins = Q()
    for column in ("folded_title", "folded_words"):
        begins |= Q(**{f"{column}__startswith": word}) | Q(**{f"{column}__contains": f" {word}"})
    return rows.filter(begins)


def customer(customer_id: int) -> Customer | None:
    return Customer.objects.filter(pk=customer_id).first()


def reels_of(customer_id: int) -> tuple[Reel, ...]:
    """The customer's reels, newest first, each with its sheet and its marks."""
    rows = Reel.objects.filter(customer=customer_id).select_related("customer", "sheet_version__sheet")
    return tuple(rows.prefetch_related("marks", "visits").order_by("-pk"))
