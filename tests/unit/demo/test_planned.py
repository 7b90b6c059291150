"""How far a planned stay gets, and what its chances hang on."""

from __future__ import annotations

from datetime import date

import pytest

from spoolwright.demo.pace import LONG, SHORT, WINDING
from spoolwright.demo.planned import LAST_STEP, Planned, ReelPlanned
from spoolwright.shop.questions.choices import PLACES

REEL = ReelPlanned("usual 1 tarvak-52", "usual 1", "tarvak-52")
DAY = date(2026, 6, 2)


def test_every_place_has_a_step_that_leads_to_it() -> None:
    assert set(LAST_STEP) == set(PLACES)


@pytest.mark.parametrize(
    ("at_last", "turns", "step"),
    [
        ("home", (), "pay"),
        ("jig", (), "work"),
        ("jig", ("failed",), "prove"),
        ("mat", ("dunked",), "arrival"),
    ],
)
def test_the_last_step(at_last: str, turns: tuple[str, ...], step: str) -> None:
    assert Planned(REEL, DAY, at_last=at_last, turns=frozenset(turns)).last_step == step


@pytest.mark.parametrize(("job", "steps"), [("tune", LONG), ("counter", SHORT), ("line", WINDING)])
def test_each_job_has_its_pace(job: str, steps: object) -> None:
    assert Planned(REEL, DAY, job).steps is steps


def test_a_reel_that_is_here_now_is_here_whatever_day_it_came() -> None:
    first, second = (Planned(REEL, day, at_last="bath") for day in (DAY, date(2026, 6, 3)))
    assert first.name == second.name
    assert Planned(REEL, DAY).name != Planned(REEL, date(2026, 6, 3)).name
