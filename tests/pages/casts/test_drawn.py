"""What the page shows for the answers of its form."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spoolwright.pages.casts.asked import CastsForm
from spoolwright.pages.casts.drawn import Drawn
from spoolwright.pages.gathered.subject import Subject
from tests.pages.casts.conftest import MOST, TODAY

Made = Callable[..., Subject]


def drawn(subject: Subject, share: float | None = 0.4, **asked: str) -> Drawn:
    return Drawn(subject, CastsForm(asked, subject, share))


def test_each_state_is_on_the_path_and_in_the_slack(subject_of: Made) -> None:
    found = drawn(subject_of("tarvak-58r", TODAY, MOST))
    assert [row[0] for row in found.path.rows] == ["today", "Most"]
    assert found.slack is not None
    assert len(found.slack.head) == 3
    assert len(found.beside) == 1
    assert found.beside[0][0].startswith("Most: next to no change in distance")


def test_the_state_that_is_chosen_is_the_one_whose_spool_is_drawn(subject_of: Made) -> None:
    subject = subject_of("tarvak-58r", TODAY, MOST)
    today, most = drawn(subject), drawn(subject, state="option-0")
    assert most.chosen[0] == MOST
    assert today.speeds is not None
    assert most.speeds is not None
    assert today.speeds.spec != most.speeds.spec


def test_less_brake_is_more_slack(subject_of: Made) -> None:
    soft, hard = (drawn(subject_of(), brake=brake).today for brake in ("10 %", "90 %"))
    assert soft.middle.summary.peak_slack > hard.middle.summary.peak_slack


def test_a_spool_that_stands_still_has_no_speed_and_no_slack(subject_of: Made) -> None:
    found = drawn(subject_of("lumvik-4000"), None)
    assert found.speeds is None
    assert found.slack is None
    assert found.matters == ()
    assert "nothing can over-run" in " ".join(found.told)


def test_guesses_are_marked_and_energies_sorted(subject_of: Made) -> None:
    found = drawn(subject_of())
    assert any(why.is_guess for why in found.reasons)
    assert not all(why.is_guess for why in found.reasons)
    assert found.losses[0][0] == "air on the line"


@pytest.mark.parametrize("system", ["metric", "imperial"])
def test_no_number_stands_without_its_unit(subject_of: Made, system: str) -> None:
    found = drawn(subject_of("tarvak-58r", TODAY, system=system))
    unit = {"metric": " m", "imperial": " yd"}[system]
    assert unit in found.path.rows[0][1]
    assert any(unit in words for words in found.told)
    assert not found.why_not
