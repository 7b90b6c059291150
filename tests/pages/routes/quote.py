"""The quote in the making, and the quote as the customer sees it."""

from __future__ import annotations

from typing import Any

from tests.pages.routes.row import Row


def tag(owner: Any) -> dict[str, Any]:
    from tests.shop import walk

    return {"tag": walk.arrived(owner).tag}


def asked(owner: Any) -> dict[str, Any]:
    from tests.shop import walk

    visit = walk.arrived(owner)
    return {"tag": visit.tag, "entry": walk.quoted(owner, visit).pk}


ROWS = [
    Row("quote:quote", "GET", 200, 200, address=tag),
    Row("quote:quote", "POST", 200, 200, address=tag),
    Row("quote:customer", "GET", 200, 200, address=asked),
    Row("quote:customer", "POST", 405, 405, address=asked),
]
