"""The pictures behind a reading: of every kind of signal, none where nothing was kept."""

from __future__ import annotations

from types import SimpleNamespace
from typing import Any

import pytest

from spoolwright.pages.gathered import told_signals
from spoolwright.papers import charts
from tests.pages import pier_reel
from tests.shop import walk
from tests.shop.records.test_kept_inertia import FELL, KEPT


def kept(data: dict[str, Any]) -> Any:
    return SimpleNamespace(analysis=data)


def test_a_pull_has_its_trace(hand: Any) -> None:
    reading = pier_reel.pull(hand, walk.arrived(hand), 2.7, 1.07).reading
    (chart,) = told_signals.pictures_of(reading, "metric")
    assert chart.description.startswith("Pull trace")


def test_a_swing_has_its_record_and_what_it_is_set_beside() -> None:
    swing, beside = told_signals.pictures_of(kept(KEPT.as_data()), "metric")
    assert swing.description.startswith("A swing of")
    assert beside.description.startswith("moment of inertia")
    assert all(charts.to_svg(chart.spec) for chart in (swing, beside))


def test_a_fall_has_no_record() -> None:
    assert len(told_signals.pictures_of(kept(FELL.as_data()), "metric")) == 1


@pytest.mark.parametrize("data", [{}, {"signal": "song"}])
def test_what_was_typed_has_none(data: dict[str, Any]) -> None:
    assert told_signals.pictures_of(kept(data), "metric") == ()
