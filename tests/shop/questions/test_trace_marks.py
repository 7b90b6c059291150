"""The kept pulls of many entries come in one query, and entries without one are left out."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.bench import pull_trace
from spoolwright.demo import signals
from spoolwright.shop.acts.take_pull import Pulled, take_pull
from spoolwright.shop.questions.trace_marks import pulls_of_entries
from tests.shop import walk

pytestmark = pytest.mark.django_db


def pulled() -> Pulled:
    trace = pull_trace.read(signals.pull_trace(seed=4).to_csv())
    return Pulled(trace, pull_trace.analyse(trace, pull_trace.Gauge(accuracy_of_reading=0.005)))


def test_each_pull_stands_under_its_entry(hand: Any, django_assert_num_queries: Any) -> None:
    visit = walk.arrived(hand)
    typed = walk.read(hand, visit, "pull_full", 57.0, 0.5, "force").entry
    first, second = (
        take_pull(hand=hand, visit=visit, pulled=pulled(), conditions=walk.PULLS).entry for _ in range(2)
    )
    with django_assert_num_queries(1):
        found = pulls_of_entries([first.pk, None, second.pk, typed.pk])
    assert set(found) == {first.pk, second.pk}
    assert found[first.pk].running.value == pytest.approx(25.0, rel=0.05)  # PullShape.running


def test_no_entries_no_pulls() -> None:
    assert pulls_of_entries([None]) == {}
