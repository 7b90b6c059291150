"""A date is promised as a spread, in ink, by a hand that has seen the last promise."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest

from spoolwright.shop.acts.promise_date import DatesWereOutOfOrder, promise_date
from spoolwright.shop.acts.refused import SomeoneElseWroteFirst
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_a_date_is_promised_as_a_spread_and_in_ink(hand: Any) -> None:
    visit = walk.arrived(hand)
    p50, p90 = date(2026, 3, 4), date(2026, 3, 9)
    entry = promise_date(hand=hand, visit=visit, p50=p50, p90=p90, version=visit.version).entry
    assert (entry.visit.promised_p50, entry.visit.promised_p90) == (p50, p90)
    assert "likely by 4 March 2026" in entry.words
    assert "almost surely by 9 March 2026" in entry.words
    with pytest.raises(SomeoneElseWroteFirst):
        promise_date(hand=hand, visit=visit, p50=p50, p90=p50, version=visit.version)
    with pytest.raises(DatesWereOutOfOrder):
        promise_date(hand=hand, visit=visit, p50=p90, p90=p50, version=entry.visit.version)
