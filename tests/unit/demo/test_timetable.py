"""Stories are told side by side in the order of time, each at its own moment."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime

import pytest

from spoolwright.demo.shop_hours import at
from spoolwright.demo.timetable import play
from spoolwright.shop.acts import clock

DAY = date(2026, 6, 2)
END = at(DAY, "18:00")


def story(said: list[tuple[str, datetime]], name: str, *clocks: str) -> Iterator[datetime]:
    for one in clocks:
        yield at(DAY, one)
        said.append((name, clock.now()))


def test_the_earlier_moment_comes_first_whichever_story_it_is_in() -> None:
    said: list[tuple[str, datetime]] = []
    play([story(said, "a", "09:00", "11:00"), story(said, "b", "10:00", "12:00")], until=END)
    assert [name for name, _ in said] == ["a", "b", "a", "b"]
    assert [moment.strftime("%H:%M") for _, moment in said] == ["09:00", "10:00", "11:00", "12:00"]


def test_afterwards_it_is_now_again() -> None:
    play([story([], "a", "09:00")], until=END)
    assert clock.now() > END or clock.now().date() != DAY


def test_nothing_may_happen_after_the_end() -> None:
    with pytest.raises(ValueError, match="goes on at 2026-06-02 19:00"):
        play([story([], "a", "09:00", "19:00")], until=END)


def test_no_story_goes_back_in_time() -> None:
    with pytest.raises(ValueError, match="goes back in time"):
        play([story([], "a", "11:00", "10:00")], until=END)


def test_it_is_told_how_far_it_has_come() -> None:
    heard: list[tuple[str, int, int]] = []
    stories = [story([], "a", "09:00"), story([], "b", "10:00"), iter(())]
    play(stories, until=END, told=lambda m, over, every: heard.append((m.strftime("%H:%M"), over, every)))
    assert heard == [("09:00", 1, 2), ("10:00", 2, 2)]
