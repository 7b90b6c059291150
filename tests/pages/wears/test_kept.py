"""What was worked out is kept, and asked again it is the same thing."""

from __future__ import annotations

from collections.abc import Callable

from spoolwright.judgement.worn_face import Use
from spoolwright.pages.gathered.subject import State, Subject
from spoolwright.pages.wears import kept


def test_the_same_question_is_not_worked_out_twice(subject_of: Callable[..., Subject]) -> None:
    subject = subject_of()
    state = subject.states[0]
    assert kept.life(subject, state, Use()) is kept.life(subject_of(), state, Use(casts=60.0))
    assert kept.curve(subject, state) is kept.curve(subject_of(), state)
    assert kept.morning(subject, state, 270.0) is kept.morning(subject, state, 270.001)


def test_another_week_another_state_another_morning_are_others(subject_of: Callable[..., Subject]) -> None:
    subject = subject_of("tarvak-58r", State("today", "today"), State("option-0", "Most", ("new-pawl",)))
    today, most = subject.states
    assert kept.life(subject, today, Use()) != kept.life(subject, today, Use(casts=10.0))
    assert kept.life(subject, most, Use()).works == ("new-pawl",)
    assert kept.morning(subject, today, 265.0).morning == 265.0


def test_parts_are_named_the_soonest_first(subject_of: Callable[..., Subject]) -> None:
    assert kept.parts(subject_of())[0] == ("pawl", "pawl of the level wind")
    assert [key for key, _ in kept.parts(subject_of("brekkas-9-10"))] == ["disc-woven carbon"]
