"""Scenario 7: four of the reels on the table, one of each verdict. Source: trade handbook, chapter 9."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from spoolwright.demo.cast import Cast
from spoolwright.demo.planned import Book
from spoolwright.demo.scenarios import club_evening
from tests.unit.demo.conftest import TUESDAY


@pytest.fixture
def book() -> Book:
    return Book()


@pytest.fixture
def table(shop: Any, book: Book, tell: Callable[..., list[Any]]) -> list[Any]:
    return tell(club_evening.story(shop, TUESDAY, Cast(shop.chance("cast")), book))


def test_one_of_each_verdict(table: list[Any]) -> None:
    said = [block.entry.words for read in table for block in read.blocks if "Verdict" in block.entry.words]
    assert [words.split()[1].rstrip(":") for words in said] == ["fine", "clean", "parts", "unsafe"]


def test_the_unsafe_one_says_why_in_numbers(table: list[Any]) -> None:
    words = table[3].blocks[-2].entry.words
    for number in ("23 kg", "5 kg", "7.59 kg", "5.75", "15 to 20 kg"):
        assert number in words


def test_each_takes_less_than_fifteen_minutes_and_goes_home(table: list[Any]) -> None:
    for read in table:
        assert read.visit.parcel.came_by == "club evening"
        assert (read.visit.sent_home_at - read.visit.arrived_at).total_seconds() <= 15 * 60
        assert not read.of_kind("invoice")


def test_the_two_who_booked_can_bring_their_reels(table: list[Any], book: Book) -> None:
    booked = club_evening.booked(TUESDAY)
    assert len(booked) == 2
    assert all(one.came > TUESDAY and one.reel.key in book.reels for one in booked)
