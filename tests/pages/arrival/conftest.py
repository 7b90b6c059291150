"""Each test of the arrival has a folder of its own for files."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from django.test import Client

from tests.pages.arrival.sending import at_the_desk


@pytest.fixture(autouse=True)
def files(settings: Any, tmp_path: Path) -> Path:
    settings.MEDIA_ROOT = tmp_path / "files"
    return settings.MEDIA_ROOT


@pytest.fixture
def desk(db: None) -> Client:
    return at_the_desk()
