"""Customers, and the reels that each has with us."""

from __future__ import annotations

from spoolwright.shop.records.customer import Customer
from spoolwright.shop.records.reel import Reel


def customers(named: str = "", limit: int = 50) -> tuple[Customer, ...]:
    """Customers by name, those whose name holds `named`."""
    return tuple(Customer.objects.filter(name__icontains=named).order_by("name", "pk")[:limit])


def customer(customer_id: int) -> Customer | None:
    return Customer.objects.filter(pk=customer_id).first()


def reels_of(customer_id: int) -> tuple[Reel, ...]:
    """The customer's reels, newest first, each with its sheet and its marks."""
    rows = Reel.objects.filter(customer=customer_id).select_related("customer", "sheet_version__sheet")
    return tuple(rows.prefetch_related("marks", "visits").order_by("-pk"))
