"""Ladders and wound spools are worked out once for what was asked."""

from __future__ import annotations

from collections.abc import Callable

from spoolwright.pages.carries import kept
from spoolwright.pages.gathered.subject import State, Subject

MOST = State("option-0", "Most", ("carbon-drag-set",))


def test_the_same_question_has_the_same_ladder(subject_of: Callable[..., Subject]) -> None:
    subject = subject_of()
    assert kept.ladder(subject, subject.states[0]) is kept.ladder(subject_of(), subject.states[0])
    assert kept.ladder(subject, subject.states[0]) is not kept.ladder(subject, subject.states[0], fill=0.5)


def test_works_are_those_of_the_state(subject_of: Callable[..., Subject]) -> None:
    found = kept.ladder(subject_of(), MOST, line="nylon 0.40 mm")
    assert found.works == ("carbon-drag-set",)
    assert found.before is not None
    assert "nylon" in found.line


def test_the_discs_are_those_after_the_works(subject_of: Callable[..., Subject]) -> None:
    subject = subject_of()
    assert kept.disc(subject, MOST) == "woven carbon"
    assert kept.disc(subject, subject.states[0]) != "woven carbon"


def test_a_tighter_winding_is_another_question(subject_of: Callable[..., Subject]) -> None:
    slack, tight = (kept.wound(subject_of(), line="", tension=t, fill=1.0) for t in (1.0, 40.0))
    assert slack.words != tight.words
    assert len(tight.warnings) > len(slack.warnings)
