"""Every address of the house: who may open it, and what each of the three people gets.

The rows stand in tests/pages/routes/, one file a room; a route without a row for GET and for POST fails here.
"""

from __future__ import annotations

from collections.abc import Iterator
from importlib import import_module
from pathlib import Path
from typing import Any

import pytest
from django.test import Client
from django.urls import URLPattern, URLResolver, get_resolver, reverse

from tests.pages.routes.row import Row
from tests.people import bench_hand, owner

FOLDER = Path(__file__).parent / "routes"
ROOMS = sorted(path.stem for path in FOLDER.glob("*.py") if path.stem != "row")
ROWS: list[Row] = [row for room in ROOMS for row in import_module(f"tests.pages.routes.{room}").ROWS]
METHODS = ("GET", "POST")


def names(patterns: list[Any], spaces: tuple[str, ...] = ()) -> Iterator[str]:
    for pattern in patterns:
        if isinstance(pattern, URLResolver):
            inner = (*spaces, pattern.namespace) if pattern.namespace else spaces
            yield from names(pattern.url_patterns, inner)
        elif isinstance(pattern, URLPattern):
            yield ":".join((*spaces, pattern.name or f"nameless {pattern.pattern}"))


def test_every_route_stands_in_the_table() -> None:
    routes = {(name, method) for name in names(get_resolver().url_patterns) for method in METHODS}
    rows = {(row.name, row.method) for row in ROWS}
    assert routes - rows == set(), "routes without a row: write one in tests/pages/routes/"
    assert rows - routes == set(), "rows without a route"


def test_no_row_stands_twice() -> None:
    seen = [str(row) for row in ROWS]
    assert sorted(set(seen)) == sorted(seen)


def answer(row: Row, person: Any, address: str, sent: dict[str, Any]) -> int:
    client = Client()
    if person is not None:
        client.force_login(person)
    response = client.get(address) if row.method == "GET" else client.post(address, sent)
    return response.status_code


@pytest.mark.django_db
@pytest.mark.parametrize("row", ROWS, ids=str)
def test_what_each_person_gets(row: Row) -> None:
    first, second = owner(), bench_hand()
    kwargs = row.address(first)
    address = reverse(row.name, kwargs=kwargs)
    sent = row.sent(first)
    got = {
        "stranger": answer(row, None, address, sent),
        "bench": answer(row, second, address, sent),
        "owner": answer(row, first, address, sent),
    }
    assert got == {"stranger": row.stranger, "bench": row.bench, "owner": row.owner}


@pytest.mark.django_db
@pytest.mark.parametrize("row", [row for row in ROWS if row.stranger == 302], ids=str)
def test_a_stranger_is_shown_to_the_front_door_and_back(row: Row) -> None:
    address = reverse(row.name, kwargs=row.address(owner()))
    response = Client().get(address)
    assert response.headers["Location"].startswith("/sign-in/?next=")
