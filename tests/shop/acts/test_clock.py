"""The clock of the shop: now, unless the demo or a test has set it, and back again afterwards."""

from __future__ import annotations

from datetime import UTC, date, datetime
from typing import Any

import pytest
from django.utils import timezone

from spoolwright.shop.acts import clock
from tests.shop import walk


@pytest.mark.django_db
def test_what_is_written_inside_carries_that_moment(hand: Any) -> None:
    then = datetime(2026, 1, 31, 23, 30, tzinfo=UTC)
    with clock.as_of(then):
        visit = walk.arrived(hand)
    assert (visit.arrived_at, visit.entries.get().written_at) == (then, then)
    assert abs((clock.now() - timezone.now()).total_seconds()) < 5


def test_the_day_is_the_shops_own(settings: Any) -> None:
    settings.TIME_ZONE = "Europe/Oslo"
    with clock.as_of(datetime(2026, 1, 31, 23, 30, tzinfo=UTC)):
        assert clock.today() == date(2026, 2, 1)


def test_it_goes_back_even_when_something_falls_over() -> None:
    with pytest.raises(RuntimeError), clock.as_of(datetime(2026, 1, 1, tzinfo=UTC)):
        raise RuntimeError
    assert clock.now().year != 2026 or clock.now() > datetime(2026, 1, 2, tzinfo=UTC)
