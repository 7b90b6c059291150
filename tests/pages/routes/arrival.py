"""What comes through the door."""

from __future__ import annotations

from typing import Any

from tests.pages.routes.row import Row


def envelope(owner: Any) -> dict[str, Any]:
    from tests.shop import walk

    return {"number": walk.arrived(owner).parcel.number}


ROWS = [
    Row("arrival:arrive", "GET", 200, 200),
    Row("arrival:arrive", "POST", 422, 422),
    Row("arrival:known", "GET", 302, 302),
    Row("arrival:known", "POST", 405, 405),
    Row("arrival:reels", "GET", 302, 302),
    Row("arrival:reels", "POST", 405, 405),
    Row("arrival:reel", "GET", 302, 302),
    Row("arrival:reel", "POST", 405, 405),
    Row("arrival:arrived", "GET", 200, 200, address=envelope),
    Row("arrival:arrived", "POST", 405, 405, address=envelope),
]
