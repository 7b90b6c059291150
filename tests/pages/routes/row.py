"""One line of the table of routes: an address, a method, and what each of the three people gets."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any

SIGN_IN = 302
"""What a stranger gets almost everywhere: shown to the front door."""


def nothing(_: Any) -> dict[str, Any]:
    return {}


@dataclass(frozen=True)
class Row:
    """`address` gets the owner and gives the arguments of the address; `sent` what the form holds."""

    name: str
    method: str
    owner: int
    bench: int
    stranger: int = SIGN_IN
    address: Callable[[Any], dict[str, Any]] = nothing
    sent: Callable[[Any], dict[str, Any]] = field(default=nothing)

    def __str__(self) -> str:
        return f"{self.method} {self.name}"


def picture_rows(picture: str) -> list[Row]:
    """The rows of a picture at its three addresses, each of a reel that a sheet describes."""
    doors = {"sheet": described_sheet, "reel": described_reel, "visit": described_visit}
    return [
        row
        for door, address in doors.items()
        for row in (
            Row(f"{picture}:{door}", "GET", 200, 200, address=address),
            Row(f"{picture}:{door}", "POST", 405, 405, address=address),
        )
    ]


def described_sheet(owner: Any) -> dict[str, Any]:
    from spoolwright.sheets import reel_sheet
    from spoolwright.shop.acts.add_sheet_version import add_sheet_version

    add_sheet_version(hand=owner, toml=reel_sheet.shipped()["tarvak-52"])
    return {"slug": "tarvak-52"}


def described_visit(owner: Any) -> dict[str, Any]:
    from spoolwright.shop.acts.describe_reel import describe_reel
    from spoolwright.shop.questions import reel_sheets
    from tests.shop import walk

    visit = walk.arrived(owner)
    version = reel_sheets.version(described_sheet(owner)["slug"])
    describe_reel(hand=owner, reel=visit.reel, sheet_version=version, version=visit.reel.version)
    return {"tag": visit.tag}


def described_reel(owner: Any) -> dict[str, Any]:
    from spoolwright.shop.questions import by_number

    return {"number": by_number.visit_tagged(described_visit(owner)["tag"]).reel_id}
