"""A size taken by hand is a reading of its own way, with its part as the place and its verdict beside it."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from spoolwright.shop.acts.take_by_hand import take_by_hand
from spoolwright.shop.records.kept_by_hand import from_data
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_it_is_kept_with_its_part_its_verdict_and_its_instrument(hand: Any) -> None:
    visit, tool = walk.arrived(hand), walk.caliper(hand)
    taken = replace(walk.by_hand(), instrument=tool)
    reading = take_by_hand(hand=hand, visit=visit, taken=taken, conditions={}).entry.reading
    assert (reading.way, reading.instrument, reading.place_measured) == (
        "by hand",
        tool,
        "first friction disc, hard fibre",
    )
    kept = from_data(reading.analysis)
    assert kept == taken.kept
    assert kept is not None
    assert kept.call is not None
    assert kept.call.verdict == "accept"


def test_a_place_that_was_named_stays(hand: Any) -> None:
    visit = walk.arrived(hand)
    conditions = {"place_measured": "the thin edge"}
    written = take_by_hand(hand=hand, visit=visit, taken=walk.by_hand(), conditions=conditions)
    assert written.entry.reading.place_measured == "the thin edge"
