"""The proof and the second hand under it."""

from __future__ import annotations

from typing import Any

from tests.pages.routes.row import Row


def tag(owner: Any) -> dict[str, Any]:
    from tests.shop import walk

    return {"tag": walk.agreed(owner).tag}


def proved(owner: Any) -> dict[str, Any]:
    from tests.shop import walk

    visit = walk.agreed(owner)
    walk.worked(owner, visit)
    measured = walk.result(walk.read(owner, visit, "pull_full", 68.0, 0.5, "force"))
    pair = walk.ProofPair(walk.promise_of("pull_full"), measured)
    return {"tag": visit.tag, "entry": walk.prove(hand=owner, visit=visit, pairs=[pair]).entry.pk}


ROWS = [
    Row("proof:proof", "GET", 200, 200, address=tag),
    Row("proof:proof", "POST", 422, 422, address=tag),
    Row("proof:sign", "GET", 405, 405, address=proved),
    # The owner wrote it, so the owner does not sign it.
    Row("proof:sign", "POST", 422, 302, address=proved),
]
