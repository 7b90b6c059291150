"""Three reels that have only just been counted out."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from spoolwright.demo.cast import Cast
from spoolwright.demo.newcomers import NEWCOMERS, key, story
from spoolwright.demo.planned import Book
from spoolwright.shop.acts.add_customer import NewCustomer
from tests.unit.demo.conftest import TUESDAY


def test_each_has_its_arrival_and_nothing_else(shop: Any, tell: Callable[..., list[Any]]) -> None:
    book = Book(people={"club 0": NewCustomer("Somebody known")})
    found = tell(story(shop, TUESDAY, Cast(shop.chance("cast")), book))
    assert len(found) == len(NEWCOMERS) == 3
    for read, newcomer in zip(found, NEWCOMERS, strict=True):
        assert [block.kind for block in read.blocks] == ["arrival"]
        assert read.next.act == "reading"
        assert read.reel.sheet_version.sheet.slug == newcomer.slug
    assert found[2].customer.name == "Somebody known"
    assert set(book.reels) == {key(n) for n in range(3)}


def test_what_each_really_is_like_is_worse_than_sound() -> None:
    for newcomer in NEWCOMERS:
        assert newcomer.nature.ratio > 1.2
        assert newcomer.nature.running < newcomer.nature.full
