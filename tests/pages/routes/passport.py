"""Reels and customers: everybody who works here reads and writes them."""

from __future__ import annotations

from typing import Any

from tests.pages.routes.row import Row


def reel(owner: Any) -> dict[str, Any]:
    from tests.shop import walk

    return {"reel_id": walk.arrived(owner).reel_id}


def customer(owner: Any) -> dict[str, Any]:
    from spoolwright.shop.acts.add_customer import add_customer

    return {"number": add_customer(hand=owner, name="Ragna Solbu").pk}


ROWS = [
    Row("passport:passport", "GET", 200, 200, address=reel),
    Row("passport:passport", "POST", 405, 405, address=reel),
    Row("passport:add", "GET", 200, 200),
    Row("passport:add", "POST", 200, 200),
    Row("passport:mark", "GET", 405, 405, address=reel),
    Row("passport:mark", "POST", 422, 422, address=reel),
    Row("passport:describe", "GET", 405, 405, address=reel),
    Row("passport:describe", "POST", 422, 422, address=reel),
    Row("customer:customer", "GET", 200, 200, address=customer),
    Row("customer:customer", "POST", 405, 405, address=customer),
    Row("customer:add", "GET", 200, 200),
    Row("customer:add", "POST", 422, 422),
    Row("customer:change", "GET", 200, 200, address=customer),
    Row("customer:change", "POST", 422, 422, address=customer),
]
