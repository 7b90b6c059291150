"""Who stands on a paper, from what the shop has written down about itself, the customer and the reel."""

from __future__ import annotations

from typing import Any

from spoolwright.papers.parties import Addressee, House, ReelMark

MOST_MARKS = 2


def house(shop: Any) -> House:
    contact = tuple(filter(None, [shop.contact.strip()]))
    return House(shop.name, _lines(shop.address), contact, shop.registration)


def addressee(customer: Any) -> Addressee:
    return Addressee(customer.name, _lines(customer.address))


def reel_mark(visit: Any) -> ReelMark:
    marks = list(visit.reel.marks.order_by("id")[:MOST_MARKS])
    return ReelMark(str(visit.tag), visit.reel.described, "; ".join(marked(mark) for mark in marks))


def marked(mark: Any) -> str:
    """ "serial 5801", "a scratch on the foot": a mark by which the reel is known again."""
    return mark.words if mark.kind == "other" else f"{mark.kind} {mark.words}"


def _lines(text: str) -> tuple[str, ...]:
    return tuple(line.strip() for line in text.splitlines() if line.strip())
