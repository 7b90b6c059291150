"""A typed pull in ink: what few numbers say, under its conditions, every number kept."""

from __future__ import annotations

import pytest

from spoolwright.bench import live_pull, live_rows
from spoolwright.bench.gauge import Gauge
from spoolwright.shop.acts.take_live_pull import TypedPull, take_live_pull
from spoolwright.shop.acts.take_reading import ConditionsWereMissing
from spoolwright.shop.questions.signals import pull_of
from tests.people import bench_hand
from tests.shop.walk import PULLS, arrived

pytestmark = pytest.mark.django_db
ROWS = "0 0\n1.2 2.9\n2.5 2.41\n3.6 2.35\n4.8 2.38"


def typed(*, hard_on: bool = False) -> TypedPull:
    trace = live_rows.read(ROWS)
    return TypedPull(trace, live_pull.analyse(trace, Gauge(accuracy_of_reading=0.005)), hard_on)


def test_start_and_running_pull_are_written_and_nothing_that_cannot_be_told() -> None:
    hand, read = bench_hand(), typed()
    written = take_live_pull(hand=hand, visit=arrived(hand), pulled=read, conditions=PULLS)
    reading = written.entry.reading
    values = {value.kind: value for value in reading.values.all()}
    assert set(values) == {"pull_start", "pull_run", "start_up_ratio"}
    assert values["pull_run"].value_si == pytest.approx(2.38 * 9.80665)
    assert values["pull_run"].standard_uncertainty_si == pytest.approx(read.read.running.uncertainty)
    assert reading.way == "pull trace"


def test_every_number_is_kept_so_that_it_can_be_drawn_again() -> None:
    hand, read = bench_hand(), typed()
    written = take_live_pull(hand=hand, visit=arrived(hand), pulled=read, conditions=PULLS)
    kept = pull_of(written.entry.reading)
    assert kept is not None
    assert kept.times == pytest.approx([0, 1.2, 2.5, 3.6, 4.8])
    assert kept.forces == pytest.approx(list(read.trace.force), abs=0.001)
    assert (kept.notes, kept.budget) == (read.read.notes, read.read.budget)


def test_with_the_drag_hard_on_it_is_the_most_the_reel_holds() -> None:
    hand = bench_hand()
    conditions = {key: value for key, value in PULLS.items() if key != "star_turns"}
    written = take_live_pull(
        hand=hand, visit=arrived(hand), pulled=typed(hard_on=True), conditions=conditions
    )
    assert [value.kind for value in written.entry.reading.values.all()] == ["pull_full"]


def test_without_its_conditions_it_is_refused() -> None:
    hand = bench_hand()
    with pytest.raises(ConditionsWereMissing, match="radius"):
        take_live_pull(hand=hand, visit=arrived(hand), pulled=typed(), conditions={**PULLS, "radius": None})
