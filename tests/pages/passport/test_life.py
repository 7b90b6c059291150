"""The life of a reel: where it is now, and when it should come back."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from spoolwright.pages.passport.life import life_of, service
from spoolwright.pages.passport.stays import stays
from spoolwright.shop.questions.passport import passport
from tests.pages.coming import came

pytestmark = pytest.mark.django_db


def life(visit: Any) -> Any:
    return life_of(passport(visit.reel_id), "metric")


def test_at_home_it_should_come_back_by_its_water(visit: Any) -> None:
    told = life(visit)
    assert told.here is None
    assert "salt water" in told.service.words
    assert not told.is_due


def test_here_it_is_somewhere_and_nothing_is_due() -> None:
    told = life(came())
    assert (told.there, told.service, told.is_due) == ("on the mat", None, False)


def test_the_interval_runs_from_the_last_work_and_not_from_a_visit_without_any(visit: Any) -> None:
    told = stays(passport(visit.reel_id))
    long_ago = datetime.now(UTC) - timedelta(days=4000)
    due = service([replace(told[0], worked_on=None), replace(told[0], worked_on=long_ago)], "")
    assert due is not None
    assert due.latest.year == (long_ago + timedelta(days=365)).year  # salt: 12 months at the latest, a prior
    assert service([replace(told[0], worked_on=None)], "salt") is None


def test_the_customers_water_answers_where_the_arrival_did_not(visit: Any) -> None:
    told = stays(passport(visit.reel_id))
    due = service([replace(told[0], water="")], "fresh")
    assert due is not None
    assert "fresh water" in due.words
