"""Two hands at two desks, files in a folder of their own, and reels as far along as a test needs them."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from django.test import Client

from tests.pages.diary.at_the_desk import signed_in
from tests.people import bench_hand, owner


@pytest.fixture(autouse=True)
def files(settings: Any, tmp_path: Path) -> Path:
    settings.MEDIA_ROOT = tmp_path / "files"
    return settings.MEDIA_ROOT


@pytest.fixture
def torbal(db: None) -> Any:
    return bench_hand()


@pytest.fixture
def ingjerd(db: None) -> Any:
    return owner()


@pytest.fixture
def bench(torbal: Any) -> Client:
    """The bench hand's browser."""
    return signed_in(torbal)


@pytest.fixture
def post(ingjerd: Any) -> Client:
    """The owner's browser."""
    return signed_in(ingjerd)
