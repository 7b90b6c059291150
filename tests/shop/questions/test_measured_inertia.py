"""Which measured inertia a spin-down may use: this visit's first, bare for bare, struck ones never."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.shop.acts.take_inertia import take_inertia
from spoolwright.shop.questions import measured_inertia
from tests.people import bench_hand
from tests.shop import walk
from tests.shop.acts.test_take_inertia import fell

pytestmark = pytest.mark.django_db


def take(hand: Any, visit: Any, value: float, line: str = "off") -> Any:
    kept = replace(fell(), inertia=Measured(value, value / 50, "inertia"))
    return take_inertia(hand=hand, visit=visit, kept=kept, conditions={"line": line}).entry


def test_the_newest_counts_and_the_line_is_told_apart() -> None:
    hand = bench_hand()
    visit = walk.arrived(hand)
    assert measured_inertia.latest(visit, line_on=False) is None
    for value, line in ((9e-6, "off"), (3e-5, "on"), (8e-6, "off")):
        take(hand, visit, value, line)
    bare, both = (measured_inertia.latest(visit, line_on=on) for on in (False, True))
    assert bare is not None
    assert both is not None
    assert (bare.measured.value, both.measured.value) == (8e-6, 3e-5)
    assert bare.method == "fall"


def test_what_was_struck_does_not_count() -> None:
    hand = bench_hand()
    visit = walk.arrived(hand)
    take(hand, visit, 9e-6)
    walk.strike_entry(hand=hand, entry=take(hand, visit, 8e-6), reason="the thread slipped")
    found = measured_inertia.latest(visit, line_on=False)
    assert found is not None
    assert found.measured.value == 9e-6


def test_another_reels_is_another_reels() -> None:
    hand = bench_hand()
    take(hand, walk.arrived(hand), 9e-6)
    assert measured_inertia.of_reel(walk.arrived(hand, name="Aslak Rein")) == ()
