"""A series of pulls as it is read in the diary."""

from __future__ import annotations

from types import SimpleNamespace

import pytest

from spoolwright.bench.gauge import Gauge
from spoolwright.bench.pulls import OnePull
from spoolwright.pages.diary.told import series
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.drag_setting import setting_of
from spoolwright.shop.questions.kept_series import Drag, KeptSeries, kept_series


def kept(along: str) -> KeptSeries:
    rows = [OnePull(t, 20.0 * t if along == "turns" else 20.0, judder=0.02) for t in (0.2, 0.4, 0.8, 1.0)]
    return kept_series(along, rows, Gauge(), Drag(None))


@pytest.mark.parametrize(
    ("along", "words"), [("turns", "One turn of the star adds"), ("number", "untouched"), ("speed", "slowly")]
)
def test_the_sentence_under_the_chart_is_about_the_line(along: str, words: str) -> None:
    assert words in series.chart(kept(along), "metric").says


def test_a_lever_has_its_way() -> None:
    says = series.chart(kept("turns"), "imperial", setting_of(reel_sheet.load("pellmar-30-2"))).says
    assert says.startswith("The whole way of the lever adds")
    assert " lb, from " in says


def test_what_was_said_stands_below_in_the_readers_units() -> None:
    reading = SimpleNamespace(analysis=kept("number").as_data())
    assert " lb" in " ".join(series.below(reading, "imperial"))
    assert series.below(SimpleNamespace(analysis={}), "metric") == ()
