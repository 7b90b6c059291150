"""A pull trace in ink: its five results under their conditions, and enough of the trace to draw it again."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.bench import pull_trace
from spoolwright.bench.gauge import Gauge
from spoolwright.demo import signals
from spoolwright.shop.acts.attach_file import attach_file
from spoolwright.shop.acts.take_pull import Pulled, take_pull
from spoolwright.shop.acts.take_reading import ConditionsWereMissing
from spoolwright.shop.questions.signals import kept_pull, pull_of
from tests.people import bench_hand
from tests.shop.walk import PULLS, arrived

pytestmark = pytest.mark.django_db


@pytest.fixture
def csv() -> bytes:
    return signals.pull_trace(signals.PullShape(running=25.0, start_up_ratio=1.5)).to_csv()


def pulled(csv: bytes, **more: Any) -> Pulled:
    trace = pull_trace.read(csv, name="pull.csv")
    return Pulled(trace, pull_trace.analyse(trace, Gauge(accuracy_of_reading=0.005)), **more)


def test_five_results_are_written_with_their_uncertainty(csv: bytes) -> None:
    hand = bench_hand()
    visit, read = arrived(hand), pulled(csv)
    file = attach_file(hand=hand, data=csv, original_name="pull.csv")
    written = take_pull(hand=hand, visit=visit, pulled=read, conditions=PULLS, attachment=file)
    reading = written.entry.reading
    values = {value.kind: value for value in reading.values.all()}
    assert set(values) == {"pull_start", "pull_run", "start_up_ratio", "judder", "drift"}
    assert values["pull_run"].value_si == pytest.approx(read.read.running.value)
    assert values["pull_run"].standard_uncertainty_si == pytest.approx(read.read.running.uncertainty)
    assert (reading.way, reading.attachment) == ("pull trace", file)


def test_with_the_drag_hard_on_it_is_the_most_the_reel_holds(csv: bytes) -> None:
    hand = bench_hand()
    conditions = {key: value for key, value in PULLS.items() if key != "star_turns"}
    written = take_pull(
        hand=hand, visit=arrived(hand), pulled=pulled(csv, hard_on=True), conditions=conditions
    )
    assert [value.kind for value in written.entry.reading.values.all()] == ["pull_full"]


def test_it_can_be_drawn_again_without_its_file(csv: bytes) -> None:
    hand, read = bench_hand(), pulled(csv)
    written = take_pull(hand=hand, visit=arrived(hand), pulled=read, conditions=PULLS)
    kept = pull_of(written.entry.reading)
    before = kept_pull(read.trace, read.read)
    assert kept is not None
    assert max(kept.forces) == pytest.approx(max(before.forces), abs=0.001)
    assert (kept.slip_start, kept.slip_end, kept.running) == (
        before.slip_start,
        before.slip_end,
        before.running,
    )
    assert kept.budget == before.budget
    assert kept.notes == before.notes


def test_without_its_conditions_it_is_refused(csv: bytes) -> None:
    hand = bench_hand()
    visit = arrived(hand)
    with pytest.raises(ConditionsWereMissing, match="radius"):
        take_pull(hand=hand, visit=visit, pulled=pulled(csv), conditions={**PULLS, "radius": None})
    visit.refresh_from_db()
    assert visit.last_seq == 1
