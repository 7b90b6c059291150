"""What was kept of a size taken by hand is found again, and nothing else is."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.take_by_hand import take_by_hand
from spoolwright.shop.questions.by_hand import by_hand_of
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_it_is_found_again(hand: Any) -> None:
    visit = walk.arrived(hand)
    written = take_by_hand(hand=hand, visit=visit, taken=walk.by_hand(), conditions={})
    assert by_hand_of(written.entry.reading) == walk.by_hand().kept
    assert by_hand_of(walk.read(hand, visit, "pull_full", 60.0, 0.5, "force").entry.reading) is None
