"""Three people, and a folder of their own for files."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from tests import people


@pytest.fixture(autouse=True)
def files(settings: Any, tmp_path: Path) -> Path:
    settings.MEDIA_ROOT = tmp_path / "files"
    return settings.MEDIA_ROOT


@pytest.fixture
def owner(db: None) -> Any:
    return people.owner()


@pytest.fixture
def hand(db: None) -> Any:
    return people.bench_hand()
