"""Files out of the record: behind the door, never guessed at, pictures only where they are pictures."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.shop.acts.attach_file import attach_file
from tests.pages.diary.at_the_desk import photo

pytestmark = pytest.mark.django_db
PAGE = b"<!doctype html><script>alert(1)</script>"


def put(hand: Any, data: bytes, name: str) -> str:
    return f"/diary/file/{attach_file(hand=hand, data=data, original_name=name).pk}/"


def test_a_picture_is_shown_and_nothing_in_it_is_run(bench: Client, torbal: Any) -> None:
    data = photo()
    answer = bench.get(put(torbal, data, "slate.jpg"))
    assert b"".join(answer.streaming_content) == data
    assert answer.headers["Content-Type"] == "image/jpeg"
    assert answer.headers["Content-Disposition"].startswith("inline")
    assert answer.headers["X-Content-Type-Options"] == "nosniff"
    assert answer.headers["Content-Security-Policy"] == "default-src 'none'; sandbox"


@pytest.mark.parametrize(
    ("data", "name"),
    [
        (PAGE, "report.html"),
        (PAGE, "photo.jpg"),
        (b"\xff\xd8\xff" + PAGE, "photo.jpg"),
        (b"time;pull\n0;1\n", "pull.csv"),
        (b"%PDF-1.7 ...", "letter.pdf"),
        (b"<svg xmlns='http://www.w3.org/2000/svg' onload='x()'/>", "mark.svg"),
    ],
)
def test_everything_else_is_handed_over_as_a_file(bench: Client, torbal: Any, data: bytes, name: str) -> None:
    answer = bench.get(put(torbal, data, name))
    assert answer.headers["Content-Type"] == "application/octet-stream"
    assert answer.headers["Content-Disposition"].startswith("attachment")
    assert answer.headers["X-Content-Type-Options"] == "nosniff"
    assert b"".join(answer.streaming_content) == data


def test_a_strange_name_breaks_no_header(bench: Client, torbal: Any) -> None:
    answer = bench.get(put(torbal, b"time;pull\n", 'x";\r\nSet-Cookie: a=b.csv'))
    assert "Set-Cookie" not in answer.headers
    assert "\n" not in answer.headers["Content-Disposition"]


def test_a_small_copy_is_made_of_pictures_alone(bench: Client, torbal: Any) -> None:
    small = bench.get(put(torbal, photo(size=(2400, 1200)), "slate.jpg") + "small/")
    assert small.headers["Content-Type"] == "image/jpeg"
    assert len(small.content) < 40_000
    assert bench.get(put(torbal, b"time;pull\n", "pull.csv") + "small/").status_code == 404


def test_what_is_not_there_is_not_found(bench: Client, torbal: Any, files: Any) -> None:
    assert bench.get("/diary/file/987/").status_code == 404
    address = put(torbal, b"time;pull\n", "pull.csv")
    for stored in files.rglob("*"):
        if stored.is_file():
            stored.unlink()
    assert bench.get(address).status_code == 404


def test_a_stranger_gets_nothing(torbal: Any) -> None:
    answer = Client().get(put(torbal, photo(), "slate.jpg"))
    assert answer.status_code == 302
    assert answer.headers["Location"].startswith("/sign-in/")
