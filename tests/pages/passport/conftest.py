"""A reel with a whole visit behind it, and somebody at a desk."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from django.test import Client

from tests.people import bench_hand
from tests.shop import walk


@pytest.fixture(autouse=True)
def files(settings: Any, tmp_path: Path) -> Path:
    settings.MEDIA_ROOT = tmp_path / "files"
    return settings.MEDIA_ROOT


@pytest.fixture
def desk(db: None) -> Client:
    client = Client()
    client.force_login(bench_hand())
    return client


@pytest.fixture
def visit(db: None) -> Any:
    """The pier reel of scenario 1, from its parcel to its way home."""
    return walk.everything(bench_hand())
