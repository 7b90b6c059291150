"""Visits to gather papers from: one in which everything was written, one proved with traces."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from spoolwright.shop.questions.shop_settings import shop_settings
from tests.people import bench_hand
from tests.shop import walk


@pytest.fixture(autouse=True)
def files(settings: Any, tmp_path: Path) -> None:
    settings.MEDIA_ROOT = tmp_path / "files"


@pytest.fixture
def hand(db: None) -> Any:
    return bench_hand()


@pytest.fixture
def shop(db: None) -> Any:
    return shop_settings()


@pytest.fixture
def whole(hand: Any) -> Any:
    """A visit with a row of everything: sums of scenario 1, an idler cog besides."""
    return walk.everything(hand)
