"""A series as it will be kept: fitted, weighed against the sheet, said to both kinds of readers."""

from __future__ import annotations

import pytest

from spoolwright.bench.gauge import Gauge
from spoolwright.bench.pulls import OnePull
from spoolwright.bench.unreadable import Unreadable
from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.acts.take_series import take_series
from spoolwright.shop.questions.kept_series import Drag, earlier_series, kept_series, series_of
from tests.people import bench_hand
from tests.shop.walk import arrived

SHEET = reel_sheet.load("tarvak-58r")
PULLS = [OnePull(t, 6.5 * (t - 0.4), 8.5 * (t - 0.4), 0.1) for t in (1.0, 2.0, 3.0, 4.0, 5.0)]
CONDITIONS = {"line": "on", "radius": 0.0235, "temperature": 292.15}


def test_a_series_over_settings_has_its_band_and_its_verdict_in_both_systems() -> None:
    kept = kept_series("turns", PULLS, Gauge(accuracy_of_reading=0.01), Drag(SHEET, 0.0235))
    assert [kind for kind, _ in kept.results] == ["pull_per_turn", "drag_onset", "series_start_ratio"]
    assert kept.verdict
    assert kept.band[0][0] == 0.0
    assert kept.band[-1][1] < kept.band[-1][2]
    assert " kg" in " ".join(kept.said["metric"])
    assert " kg" not in " ".join(kept.said["imperial"])
    assert kept.gain > 0


def test_without_a_sheet_only_the_numbers_are_kept() -> None:
    kept = kept_series("turns", PULLS, Gauge(), Drag(None, 0.0235))
    assert kept.verdict == ""
    assert kept.band == ()
    assert "Without the reel's sheet" in kept.said["metric"][-1]


def test_fade_and_speed_are_kept_too() -> None:
    fading = kept_series("number", [OnePull(n, 40.0 - 3 * n) for n in range(6)], Gauge(), Drag(SHEET))
    assert fading.verdict == "fades"
    assert [kind for kind, _ in fading.results] == ["pull_fade"]
    taken = [OnePull(v, 30.0, 33.0, judder=0.02) for v in (0.1, 0.3, 0.6)]
    speed = kept_series("speed", taken, Gauge(), Drag(SHEET))
    assert [kind for kind, _ in speed.results] == ["pull_by_speed", "series_start_ratio"]
    with pytest.raises(Unreadable):
        kept_series("number", taken[:1], Gauge(), Drag(SHEET))


@pytest.mark.django_db
def test_earlier_series_of_the_same_reel_are_found_and_struck_ones_are_not() -> None:
    hand = bench_hand()
    visit = arrived(hand)
    kept = kept_series("turns", PULLS, Gauge(), Drag(None, 0.0235))
    written = take_series(hand=hand, visit=visit, kept=kept, conditions=CONDITIONS)
    [found] = earlier_series(visit.reel)
    assert found.kept == series_of(written.entry.reading)
    again = kept_series("turns", PULLS, Gauge(), Drag(SHEET, 0.0235, earlier=found.kept))
    assert any("earlier series" in line for line in again.said["metric"])
    visit.refresh_from_db()
    strike_entry(hand=hand, entry=written.entry, reason="the wrong reel")
    assert earlier_series(visit.reel) == ()
