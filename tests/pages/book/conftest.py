"""A shop with one proved reel, as the book reads it."""

from __future__ import annotations

from typing import Any

import pytest

from tests.people import bench_hand
from tests.shop.proved_reel import described, proved


@pytest.fixture
def proof(db: None) -> Any:
    """The reading after the work, behind which the coefficient stands."""
    hand = bench_hand()
    return proved(hand, described(hand))[1]
