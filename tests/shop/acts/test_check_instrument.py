"""A check keeps its day, what the instrument was held against, and what it showed."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import Any

import pytest

from spoolwright.shop.acts import clock
from spoolwright.shop.acts.check_instrument import HeldAgainst, check_instrument
from spoolwright.shop.acts.refused import FieldWasRefused, WordsWereMissing
from tests.shop import walk

pytestmark = pytest.mark.django_db
HELD = HeldAgainst("gauge block", nominal=0.01, found=0.01002, uncertainty=1e-6, words="three times")


def test_it_is_kept_with_its_day(hand: Any) -> None:
    kept = walk.caliper(hand)
    check = check_instrument(hand=hand, instrument=kept, held=HELD)
    assert (check.day, check.found_si, check.words) == (clock.today(), 0.01002, "three times")


@pytest.mark.parametrize(
    ("changed", "field"),
    [
        ({"against": ""}, "against"),
        ({"uncertainty": -1.0}, "uncertainty"),
        ({"uncertainty": float("nan")}, "uncertainty"),
        ({"found": float("inf")}, "found_si"),
    ],
)
def test_what_is_no_check_is_refused(hand: Any, changed: dict[str, Any], field: str) -> None:
    kept = walk.caliper(hand)
    with pytest.raises((FieldWasRefused, WordsWereMissing)) as told:
        check_instrument(hand=hand, instrument=kept, held=replace(HELD, **changed))
    assert told.value.field == field
    assert not kept.checks.exists()


def test_a_day_to_come_is_refused(hand: Any) -> None:
    kept = walk.caliper(hand)
    tomorrow = replace(HELD, day=clock.today() + timedelta(days=1))
    with pytest.raises(FieldWasRefused):
        check_instrument(hand=hand, instrument=kept, held=tomorrow)
