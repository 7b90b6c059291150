"""A repeatability study as a file: five friction discs, two people, three tries each, by the long caliper."""

from __future__ import annotations

NAME = "study/discs.csv"
_TRIES = {
    "Ingjerd": (
        "1,52 1,46 1,38 1,30 1,11",
        "1,53 1,47 1,38 1,30 1,12",
        "1,53 1,47 1,38 1,31 1,11",
    ),
    "Torbal": (
        "1,50 1,46 1,37 1,28 1,09",
        "1,51 1,47 1,37 1,28 1,10",
        "1,52 1,45 1,37 1,28 1,09",
    ),
}
"""Thickness in millimetres, one line a try, the discs from new to worn out. Invented."""


def discs() -> bytes:
    """The file as a spreadsheet of the bench's own country writes it."""
    lines = [
        f"{disc};{person};{value}"
        for person, tries in _TRIES.items()
        for one in tries
        for disc, value in enumerate(one.split(), 1)
    ]
    return "\n".join(["part;person;value mm", *lines, ""]).encode()
