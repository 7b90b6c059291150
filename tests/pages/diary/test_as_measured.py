"""What a spin-down may take as measured: of the very spool that turned, and nothing else."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.pages.diary.ask import as_measured
from tests.pages.diary.at_the_desk import arrived, desk_of
from tests.shop.questions.test_measured_inertia import take

pytestmark = pytest.mark.django_db


def test_nothing_measured_nothing_offered(torbal: Any) -> None:
    desk = desk_of(torbal, arrived(torbal))
    assert as_measured.choices(desk) == []
    assert as_measured.chosen(desk, line_on=False) is None


def test_it_says_which_spool_by_which_way_and_how_sure(torbal: Any) -> None:
    visit = arrived(torbal)
    take(torbal, visit, 9e-6)
    ((key, words),) = as_measured.choices(desk_of(torbal, visit))
    assert key == "measured"
    assert "the bare spool 90.0\u00a0g\u00a0cm² ±\u00a03.6\u00a0g\u00a0cm², by two falling weights" in words


def test_the_bare_spools_is_not_that_with_line(torbal: Any) -> None:
    visit = arrived(torbal)
    take(torbal, visit, 9e-6)
    desk = desk_of(torbal, visit)
    bare = as_measured.chosen(desk, line_on=False)
    assert bare is not None
    assert bare.measured.value == 9e-6
    assert as_measured.chosen(desk, line_on=True) is None
    assert "With the line on" in as_measured.not_measured(line_on=True)
    assert "With the line off" in as_measured.not_measured(line_on=False)


def test_both_are_said_where_both_were_measured(torbal: Any) -> None:
    visit = arrived(torbal)
    take(torbal, visit, 9e-6)
    take(torbal, visit, 3e-5, "on")
    ((_, words),) = as_measured.choices(desk_of(torbal, visit))
    assert "the bare spool" in words
    assert "with the line on" in words
