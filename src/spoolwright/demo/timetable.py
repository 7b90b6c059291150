"""Plays stories side by side in the order of time, so that tags and invoice numbers run as they would have.

A story is a generator. It yields the moment at which it wants to go on; what it does then is done at that
moment, through the shop's own acts.
"""

from __future__ import annotations

import heapq
from collections.abc import Callable, Iterable, Iterator
from datetime import datetime

from spoolwright.shop.acts import clock

Story = Iterator[datetime]
Told = Callable[[datetime, int, int], None]


def play(stories: Iterable[Story], *, until: datetime, told: Told | None = None) -> None:
    """Play every story to its end; nothing may happen after `until`.

    `told` hears after each step the moment, how many stories are over, and how many there are.
    """
    waiting: list[tuple[datetime, int, Story]] = []
    for number, story in enumerate(stories):
        _wait_for(waiting, next(story, None), number, story)
    heapq.heapify(waiting)
    every, over = len(waiting), 0
    while waiting:
        moment, number, story = heapq.heappop(waiting)
        if moment > until:
            raise ValueError(
                f"story {number} goes on at {moment:%Y-%m-%d %H:%M}, after {until:%Y-%m-%d %H:%M}"
            )
        with clock.as_of(moment):
            then = next(story, None)
        if then is not None and then < moment:
            raise ValueError(f"story {number} goes back in time, from {moment} to {then}")
        over += then is None
        _wait_for(waiting, then, number, story)
        if told:
            told(moment, over, every)


def _wait_for(
    waiting: list[tuple[datetime, int, Story]], moment: datetime | None, number: int, story: Story
) -> None:
    if moment is not None:
        heapq.heappush(waiting, (moment, number, story))
