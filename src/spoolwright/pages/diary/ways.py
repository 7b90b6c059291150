"""The ways out of a diary to the pages of other rooms; a way is empty while its page is not there."""

from __future__ import annotations

from typing import Any

from spoolwright.pages import doors


def to_quote(tag: int) -> str:
    """Where a question to the customer is put together."""
    return doors.way_to("quote:quote", tag)


def to_customers_view(entry: Any) -> str:
    """The quote as the customer sees it."""
    return doors.way_to("quote:customer", entry.visit.tag, entry.pk)


def to_proof(tag: int) -> str:
    return doors.way_to("proof:proof", tag)


def to_passport(reel_id: int) -> str:
    return doors.way_to("passport:passport", reel_id)


def to_customer(number: int) -> str:
    return doors.way_to("customer:customer", number)


def to_sheet(slug: str) -> str:
    return doors.way_to("reel_sheet:sheet", slug)


def to_paper(name: str, *args: Any) -> str:
    """A PDF: "bag_tag", "quote", "proof", "reading" or "invoice"."""
    return doors.way_to(f"paper:{name}", *args)
