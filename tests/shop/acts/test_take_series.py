"""A series of pulls in ink: its results under their conditions, its pulls kept beside them."""

from __future__ import annotations

import pytest

from spoolwright.bench.gauge import Gauge
from spoolwright.bench.pulls import OnePull
from spoolwright.shop.acts.take_reading import ConditionsWereMissing
from spoolwright.shop.acts.take_series import take_series, values_of
from spoolwright.shop.questions.kept_series import Drag, KeptSeries, kept_series, series_of
from tests.people import bench_hand
from tests.shop.walk import arrived

pytestmark = pytest.mark.django_db

CONDITIONS = {"line": "on", "radius": 0.0235, "temperature": 292.15}


def series() -> KeptSeries:
    taken = [OnePull(t, 8.0 * (t - 0.4), 9.0 * (t - 0.4)) for t in (1.0, 2.0, 3.0)]
    return kept_series("turns", taken, Gauge(), Drag(None))


def test_it_is_written_under_its_way_and_comes_back() -> None:
    hand, kept = bench_hand(), series()
    reading = take_series(hand=hand, visit=arrived(hand), kept=kept, conditions=CONDITIONS).entry.reading
    assert reading.way == "pull series"
    assert {value.kind for value in reading.values.all()} == {value.kind for value in values_of(kept)}
    back = series_of(reading)
    assert back is not None
    assert back.pulls == kept.pulls
    assert back.results == kept.results


def test_a_fade_needs_to_know_how_the_drag_was_set() -> None:
    hand = bench_hand()
    fade = kept_series("number", [OnePull(n, 40.0 - n) for n in range(5)], Gauge(), Drag(None))
    with pytest.raises(ConditionsWereMissing):
        take_series(hand=hand, visit=arrived(hand), kept=fade, conditions=CONDITIONS)
    told = {**CONDITIONS, "star_turns": 2.0}
    assert take_series(hand=hand, visit=arrived(hand, name="Egil Moen"), kept=fade, conditions=told).entry
