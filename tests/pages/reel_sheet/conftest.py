"""A shop with the shipped sheets on its shelf, and somebody at the desk."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from tests.people import bench_hand, owner
from tests.unit.papers.section import reels


@pytest.fixture
def hand(db: None) -> Any:
    return owner()


@pytest.fixture
def shelf(hand: Any) -> dict[str, Any]:
    """Every shipped sheet in its first version, by slug: the round reels at once, another when asked for."""
    found = Shelf(hand)
    return found if all(found[slug] for slug in reels.ROUND) else {}


class Shelf(dict[str, Any]):
    """Versions by slug, each taken in when it is first asked for."""

    def __init__(self, hand: Any) -> None:
        self.hand = hand

    def __missing__(self, slug: str) -> Any:
        self[slug] = add_sheet_version(hand=self.hand, toml=reel_sheet.shipped()[slug])
        return self[slug]


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
