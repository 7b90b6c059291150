"""A shop with the four shipped sheets on its shelf, and somebody at the desk."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from tests.people import bench_hand, owner


@pytest.fixture
def hand(db: None) -> Any:
    return owner()


@pytest.fixture
def shelf(hand: Any) -> dict[str, Any]:
    """Every shipped sheet in its first version, by slug."""
    return {slug: add_sheet_version(hand=hand, toml=text) for slug, text in reel_sheet.shipped().items()}


@pytest.fixture
def desk(hand: Any) -> Client:
    client = Client()
    client.force_login(hand)
    return client


@pytest.fixture
def bench(hand: Any) -> Client:
    client = Client()
    client.force_login(bench_hand())
    return client
