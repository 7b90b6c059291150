"""Run tests are worked out once for what was asked."""

from __future__ import annotations

from collections.abc import Callable

from spoolwright.judgement.fish_run import FishRun
from spoolwright.pages.gathered.subject import State, Subject
from spoolwright.pages.long_run import kept

TODAY, MOST = State("today", "today"), State("option-0", "Most", ("carbon-drag-set",))
SHORT = FishRun(distance=20.0, pull=10.0)


def test_the_same_run_is_not_worked_out_twice(subject_of: Callable[..., Subject]) -> None:
    subject = subject_of("tarvak-58r", TODAY, MOST)
    first = kept.test_of(subject, TODAY, SHORT)
    assert kept.test_of(subject, TODAY, FishRun(distance=20.0, pull=10.0)) is first
    other = kept.test_of(subject, MOST, SHORT)
    assert other.works == ("carbon-drag-set",)
    assert other is not first
