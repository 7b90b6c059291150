"""A series of pulls as it is read: its chart, and what was said of it in the reader's units."""

from __future__ import annotations

from typing import Any

from spoolwright.papers import charts
from spoolwright.papers.charts import Chart
from spoolwright.sheets.drag_setting import STAR, DragSetting
from spoolwright.shop.questions.kept_series import KeptSeries, series_of


def chart(kept: KeptSeries, system: str, setting: DragSetting = STAR) -> Chart:
    said = kept.said.get(system, ())
    drawn = charts.Series(kept.along, kept.pulls, kept.fitted, kept.band, said[0] if said else "")
    return charts.pull_series(drawn, system=system, setting=setting)


def below(reading: Any, system: str) -> tuple[str, ...]:
    """What stands under the lines of the reading in the diary: the verdict with its evidence."""
    kept = series_of(reading)
    return kept.said.get(system, ()) if kept else ()
