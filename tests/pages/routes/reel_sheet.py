"""Reel sheets: read and written by everybody who holds a pen here."""

from __future__ import annotations

from typing import Any

from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from tests.pages.routes.row import Row

SLUG = "tarvak-52"


def held(owner: Any) -> dict[str, Any]:
    """A sheet that the shop holds, in its one version."""
    add_sheet_version(hand=owner, toml=reel_sheet.shipped()[SLUG])
    return {"slug": SLUG}


def held_version(owner: Any) -> dict[str, Any]:
    return held(owner) | {"number": 1}


ROWS = [
    Row("reel_sheet:sheets", "GET", 200, 200),
    Row("reel_sheet:sheets", "POST", 405, 405),
    Row("reel_sheet:new_sheet", "GET", 200, 200),
    Row("reel_sheet:new_sheet", "POST", 422, 422),
    Row("reel_sheet:schema", "GET", 200, 200),
    Row("reel_sheet:schema", "POST", 405, 405),
    Row("reel_sheet:sheet", "GET", 200, 200, address=held),
    Row("reel_sheet:sheet", "POST", 405, 405, address=held),
    Row("reel_sheet:parts", "GET", 200, 200, address=held),
    Row("reel_sheet:parts", "POST", 405, 405, address=held),
    Row("reel_sheet:versions", "GET", 200, 200, address=held),
    Row("reel_sheet:versions", "POST", 405, 405, address=held),
    Row("reel_sheet:toml", "GET", 200, 200, address=held_version),
    Row("reel_sheet:toml", "POST", 405, 405, address=held_version),
    Row("reel_sheet:new_version", "GET", 200, 200, address=held),
    Row("reel_sheet:new_version", "POST", 422, 422, address=held),
]
