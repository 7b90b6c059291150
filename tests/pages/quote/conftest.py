"""The pier reel, read and looked at, and somebody who writes its quote."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client, RequestFactory

from spoolwright.pages.quote.desk import Desk
from tests.pages import pier_reel
from tests.people import bench_hand


@pytest.fixture
def hand(db: None) -> Any:
    return bench_hand()


@pytest.fixture
def desk_client(hand: Any) -> Client:
    return pier_reel.signed_in(hand)


@pytest.fixture
def visit(hand: Any) -> Any:
    return pier_reel.found(hand)


@pytest.fixture
def sit_down(hand: Any) -> Any:
    """`sit_down(visit)`: the desk as one request sees it."""

    def make(visit: Any, data: dict[str, Any] | None = None) -> Desk:
        factory = RequestFactory()
        address = f"/visits/{visit.tag}/quote/"
        request = factory.get(address) if data is None else factory.post(address, data)
        request.user = hand
        return Desk(request, visit.tag)

    return make
