"""The shop book: everybody who works here reads it, sets a proof aside and takes it back."""

from __future__ import annotations

from typing import Any

from tests.pages.routes.row import Row


def a_coefficient(owner: Any) -> dict[str, Any]:
    from spoolwright.sheets import reel_sheet
    from spoolwright.shop.acts.add_sheet_version import add_sheet_version

    add_sheet_version(hand=owner, toml=reel_sheet.shipped()["tarvak-52"])
    return {"key": "friction-felt-greased-in-order"}


def set_aside(owner: Any) -> dict[str, Any]:
    from tests.shop import walk

    entry = walk.read(owner, walk.arrived(owner), "pull_full", 60.0, 0.5, "force").entry
    row = walk.set_aside(hand=owner, entry=entry, reason="the gauge was not at zero")
    return {**a_coefficient(owner), "number": row.pk}


ROWS = [
    Row("book:book", "GET", 200, 200),
    Row("book:book", "POST", 405, 405),
    Row("book:coefficient", "GET", 200, 200, address=a_coefficient),
    # No entry is named, so there is nothing to set aside.
    Row("book:coefficient", "POST", 404, 404, address=a_coefficient),
    Row("book:back", "GET", 405, 405, address=set_aside),
    # Taken back once: the second hand finds it done.
    Row("book:back", "POST", 422, 302, address=set_aside),
]
