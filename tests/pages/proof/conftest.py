"""The pier reel after its work, read again, and somebody who writes its proof."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client, RequestFactory

from spoolwright.pages.proof.bench import Bench
from tests.pages import pier_reel
from tests.people import bench_hand
from tests.shop import walk


@pytest.fixture
def hand(db: None) -> Any:
    return bench_hand()


@pytest.fixture
def desk_client(hand: Any) -> Client:
    return pier_reel.signed_in(hand)


@pytest.fixture
def visit(hand: Any) -> Any:
    """Agreed with two promises, worked on, not yet read again."""
    visit = pier_reel.on_the_mat(hand)
    walk.read(hand, visit, "pull_full", 5.8 * walk.G, 0.5, "force")
    walk.answered(hand, walk.quoted(hand, visit))
    walk.worked(hand, visit)
    return visit


@pytest.fixture
def bench(hand: Any) -> Any:
    """`bench(visit)`: the bench as one request sees it."""

    def make(visit: Any, person: Any = None) -> Bench:
        request = RequestFactory().get(f"/visits/{visit.tag}/proof/")
        request.user = person or hand
        return Bench(request, visit.tag)

    return make
