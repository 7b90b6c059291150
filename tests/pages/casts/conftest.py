"""What a picture is drawn from, without a shop around it; the cast is compiled beforehand."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from spoolwright.pages.casts import ready
from spoolwright.pages.gathered.subject import State, Subject
from spoolwright.sheets import reel_sheet

TODAY, MOST = State("today", "today"), State("option-0", "Most", ("hybrid-spool-bearings",))


@pytest.fixture(autouse=True, scope="session")
def compiled() -> None:
    assert ready.is_ready(patience=600.0)


@pytest.fixture
def subject_of() -> Callable[..., Subject]:
    """`subject_of("tarvak-58r", TODAY, MOST)`: a reel at the bench with these states; no states: a sheet."""

    def make(slug: str = "tarvak-58r", *states: State, **more: Any) -> Subject:
        told = {"door": "visit", "key": 68, "title": "a reel", "margin": "68", "rests_on": "", "back": "/"}
        told |= {"back_words": "Back", "taken": (), "system": "metric", "states": states or (TODAY,)} | more
        return Subject(sheet=reel_sheet.load(slug), **told)

    return make
