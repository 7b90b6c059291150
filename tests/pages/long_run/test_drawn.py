"""What the page shows: the first state at length, the others in short, and why not."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from spoolwright.pages.gathered.subject import State, Subject
from spoolwright.pages.long_run.asked import LongRunForm
from spoolwright.pages.long_run.drawn import Drawn, unparted

TODAY, MOST = State("today", "today"), State("option-0", "Most", ("carbon-drag-set",))
SHORT = {"distance": "20 m", "pull": "1 kg"}


def drawn(subject: Subject, **asked: str) -> Drawn:
    return Drawn(subject, LongRunForm({**SHORT, **asked}, subject))


def test_the_first_state_is_told_at_length_and_the_others_in_short(
    subject_of: Callable[..., Subject],
) -> None:
    first, other = drawn(subject_of("tarvak-58r", TODAY, MOST)).told
    assert (first.words, len(first.heat), len(first.judder)) == ("today", 4, 3)
    assert (other.words, len(other.heat), len(other.judder)) == ("Most", 1, 1)
    assert "woven carbon" in other.heat[0]
    assert "hard fibre" in first.heat[1]


def test_what_it_rests_on_is_told_once_with_its_marks(subject_of: Callable[..., Subject]) -> None:
    said = drawn(subject_of("tarvak-58r", TODAY, MOST)).rests_on
    assert len(said) == len(set(said))
    assert any("judgement prior" in words for words in said)


def test_a_reel_without_a_drag_says_why_there_is_no_run(subject_of: Callable[..., Subject]) -> None:
    subject = subject_of("tarvak-58r")
    bare = replace(subject, sheet=subject.sheet.model_copy(update={"drag": None}))
    found = drawn(bare)
    assert "no drag" in found.why_not
    assert found.tests == []


def test_no_number_parts_from_its_unit() -> None:
    assert unparted("over 48 °C for 3 min at 4 m/s") == "over 48\u00a0°C for 3\u00a0min at 4\u00a0m/s"
    assert unparted("100 of a hundred") == "100 of a hundred"
