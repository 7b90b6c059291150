"""What a browser sends from the arrival page, and what comes of it."""

from __future__ import annotations

from typing import Any

from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client

from spoolwright.shop.questions import by_number
from spoolwright.shop.questions.blocks import blocks_of
from tests.people import bench_hand
from tests.shop.walk import PHOTO

SHORTEST = {"who": "Ragna Solbu", "came_by": "post", "count_0": "1", "r0_described": "Tarvak 58R"}


def at_the_desk() -> Client:
    client = Client()
    client.force_login(bench_hand())
    return client


def send(client: Client, *, step: str = "write", **said: Any) -> Any:
    return client.post("/arrival/", SHORTEST | said | {"step": step})


def visit(tag: int) -> Any:
    return by_number.visit_tagged(tag)


def arrival(tag: int) -> Any:
    """The first entry of this number: its arrival, as the diary has it."""
    found = visit(tag)
    return blocks_of([found.pk])[found.pk][0]


def photo(name: str = "slate.jpg", data: bytes = PHOTO) -> SimpleUploadedFile:
    return SimpleUploadedFile(name, data, "image/jpeg")


def refused(response: Any, field: str) -> bool:
    """Whether this field alone was refused, beside it, with a way to it from the top."""
    page = response.content.decode()
    faulty = set(response.context["form"].errors)
    return response.status_code == 422 and faulty == {field} and f'href="#id_{field}' in page
