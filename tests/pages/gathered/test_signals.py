"""The traces behind a proof."""

from __future__ import annotations

from types import SimpleNamespace
from typing import Any

from spoolwright.pages.gathered import signals
from spoolwright.shop.questions.diary import diary
from tests.pages import pier_reel
from tests.shop import walk


def test_the_trace_that_the_proof_rests_on_goes_before_the_latest(hand: Any) -> None:
    visit = walk.arrived(hand)
    proving = pier_reel.pull(hand, visit, 2.7, 1.07)
    pier_reel.pull(hand, visit, 1.5, 1.3)
    blocks = diary(visit.pk).blocks
    ratio = proving.reading.values.get(kind="start_up_ratio")
    promise = SimpleNamespace(dimension="ratio", low_si=None, high_si=1.15, middle_si=None)
    row = SimpleNamespace(measured=ratio, promise=promise)
    assert "7 % above" in signals.pull_chart(blocks, [row], "metric").says
    assert "7 % above" not in signals.pull_chart(blocks, [], "metric").says


def test_a_promised_pull_lies_behind_its_own_trace(hand: Any) -> None:
    visit = walk.arrived(hand)
    entry = pier_reel.pull(hand, visit, 2.7, 1.07)
    run = entry.reading.values.get(kind="pull_run")
    promise = SimpleNamespace(dimension="force", low_si=20.0, high_si=30.0, middle_si=None)
    row = SimpleNamespace(measured=run, promise=promise)
    chart = signals.pull_chart(diary(visit.pk).blocks, [row], "metric")
    assert "promised running pull" in chart.description


def test_without_a_trace_there_is_no_chart(hand: Any) -> None:
    visit = walk.arrived(hand)
    walk.read(hand, visit, "pull_run", 26.0, 0.5, "force")
    blocks = diary(visit.pk).blocks
    assert signals.pull_chart(blocks, [], "metric") is None
    assert signals.spin_chart(blocks, "metric") is None


def test_the_latest_spin_down_is_drawn(hand: Any) -> None:
    from spoolwright.shop.acts.take_spin import take_spin
    from tests.shop.acts.test_put import a_spin

    visit = walk.arrived(hand)
    take_spin(hand=hand, visit=visit, spin=a_spin(), conditions=pier_reel.SPIN)
    assert "free spool" in signals.spin_chart(diary(visit.pk).blocks, "metric").says
