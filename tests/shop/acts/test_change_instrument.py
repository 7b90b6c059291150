"""A change is a new version; two who change at once are told."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.add_instrument import Known
from spoolwright.shop.acts.change_instrument import change_instrument
from spoolwright.shop.acts.refused import SomeoneElseWroteFirst
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_the_old_version_stays(hand: Any) -> None:
    kept = walk.caliper(hand)
    change_instrument(hand=hand, instrument=kept, known=Known("The long caliper", 2e-5, limit=4e-5), after=1)
    assert [(v.number, v.resolution_si) for v in kept.versions.all()] == [(1, 1e-5), (2, 2e-5)]


def test_the_second_screen_is_told(hand: Any) -> None:
    kept = walk.caliper(hand)
    change_instrument(hand=hand, instrument=kept, known=Known("it", 2e-5), after=1)
    with pytest.raises(SomeoneElseWroteFirst):
        change_instrument(hand=hand, instrument=kept, known=Known("it", 3e-5), after=1)
    assert kept.versions.count() == 2
