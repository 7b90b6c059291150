"""The papers of a visit."""

from __future__ import annotations

from typing import Any

from tests.pages.routes.row import Row


def tag(owner: Any) -> dict[str, Any]:
    from tests.shop import walk

    return {"tag": walk.arrived(owner).tag}


def a_quote(owner: Any) -> dict[str, Any]:
    from tests.shop import walk

    return {"entry": walk.quoted(owner, walk.arrived(owner)).pk}


def a_proof(owner: Any) -> dict[str, Any]:
    from tests.pages.routes.proof import proved

    return {"entry": proved(owner)["entry"]}


def a_reading(owner: Any) -> dict[str, Any]:
    from tests.shop import walk

    return {"entry": walk.read(owner, walk.arrived(owner), "pull_full", 69.0, 0.5, "force").entry.pk}


def a_bill(owner: Any) -> dict[str, Any]:
    from tests.shop import walk

    return {"number": walk.billed(owner, walk.agreed(owner)).number}


ROWS = [
    Row("paper:bag_tag", "GET", 200, 200, address=tag),
    Row("paper:bag_tag", "POST", 405, 405, address=tag),
    Row("paper:quote", "GET", 200, 200, address=a_quote),
    Row("paper:quote", "POST", 405, 405, address=a_quote),
    Row("paper:proof", "GET", 200, 200, address=a_proof),
    Row("paper:proof", "POST", 405, 405, address=a_proof),
    Row("paper:reading", "GET", 200, 200, address=a_reading),
    Row("paper:reading", "POST", 405, 405, address=a_reading),
    Row("paper:invoice", "GET", 200, 200, address=a_bill),
    Row("paper:invoice", "POST", 405, 405, address=a_bill),
]
