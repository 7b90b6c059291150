"""A hand of the shop at its browser."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from tests.people import bench_hand


@pytest.fixture
def torbal(db: None) -> Any:
    return bench_hand()


@pytest.fixture
def bench(torbal: Any) -> Client:
    client = Client()
    client.force_login(torbal)
    return client
