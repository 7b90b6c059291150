"""A noise in ink: its value, its way, and what is kept of it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from spoolwright.shop.acts.take_noise import take_noise
from spoolwright.shop.acts.take_reading import ConditionsWereMissing
from spoolwright.shop.questions.kept_noise import GEARS, noise_of
from tests.people import bench_hand
from tests.shop.records.test_kept_noise import KEPT
from tests.shop.walk import arrived

pytestmark = pytest.mark.django_db


def test_a_bearings_noise_is_written_under_its_way_and_comes_back() -> None:
    hand = bench_hand()
    written = take_noise(hand=hand, visit=arrived(hand), kept=KEPT, conditions={"place_measured": KEPT.place})
    reading = written.entry.reading
    assert reading.way == "bearing noise"
    (value,) = reading.values.all()
    assert (value.kind, value.value_si, value.dimension) == ("bearing_swelling", 0.8, "ratio")
    assert noise_of(reading) == KEPT


def test_gears_have_a_way_and_a_kind_of_their_own() -> None:
    hand = bench_hand()
    gears = replace(KEPT, about=GEARS, place="main gear and pinion", verdict="pinion")
    written = take_noise(hand=hand, visit=arrived(hand), kept=gears, conditions={})
    assert written.entry.reading.way == "gear noise"
    assert [value.kind for value in written.entry.reading.values.all()] == ["gear_swelling"]


def test_which_bearing_it_was_has_to_be_said() -> None:
    hand = bench_hand()
    with pytest.raises(ConditionsWereMissing):
        take_noise(hand=hand, visit=arrived(hand), kept=KEPT, conditions={})
