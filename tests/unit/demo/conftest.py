"""The invented workshop, opened and empty, and a way to tell one of its stories from beginning to end."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from spoolwright.demo import timetable
from spoolwright.demo.shop_hours import at
from spoolwright.demo.workshop import open_workshop
from spoolwright.shop.questions import by_number
from spoolwright.shop.questions.diary import Diary, diary

TUESDAY = date(2026, 6, 2)
END = at(date(2027, 6, 1), "20:00")


@pytest.fixture(autouse=True)
def files(settings: Any, tmp_path: Path) -> Path:
    settings.MEDIA_ROOT = tmp_path / "files"
    return settings.MEDIA_ROOT


@pytest.fixture
def shop(db: None) -> Any:
    return open_workshop(1)


@pytest.fixture
def tell(shop: Any) -> Callable[..., list[Diary]]:
    """Plays stories to their end; gives back the diary of every visit, by tag."""

    def told(*stories: Iterable[Any]) -> list[Diary]:
        timetable.play([iter(story) for story in stories], until=END)
        return every_diary()

    return told


def every_diary() -> list[Diary]:
    found, tag = [], 1
    while visit := by_number.visit_tagged(tag):
        read = diary(visit.pk, END)
        assert read is not None
        found.append(read)
        tag += 1
    return found
