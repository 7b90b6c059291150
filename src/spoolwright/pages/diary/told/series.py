"""A series of pulls as it is read: its chart, and what was said of it in the reader's units."""

from __future__ import annotations

from typing import Any

from spoolwright import quantities
from spoolwright.papers import charts
from spoolwright.papers.charts import Chart
from spoolwright.sheets.drag_setting import STAR, DragSetting
from spoolwright.shop.questions.kept_series import KeptSeries, series_of


def chart(kept: KeptSeries, system: str, setting: DragSetting = STAR) -> Chart:
    says = _says(kept, system, setting)
    drawn = charts.Series(kept.along, kept.pulls, kept.fitted, kept.band, says)
    return charts.pull_series(drawn, system=system, setting=setting)


def _says(kept: KeptSeries, system: str, setting: DragSetting) -> str:
    """The sentence under the chart: what the line through the pulls is."""
    found = dict(kept.results)
    if kept.along == "number":
        return "Pull after pull, the drag untouched."
    if kept.along == "speed":
        return "The same setting, pulled slowly and fast."
    adds = quantities.show(found["pull_per_turn"].value, "force", system)
    each = "The whole way of the lever" if setting.is_lever else f"One turn of the {setting.control}"
    onset = found["drag_onset"].value
    return f"{each} adds {adds}, from {setting.at(round(max(onset, 0.0), 2))} on."


def below(reading: Any, system: str) -> tuple[str, ...]:
    """What stands under the lines of the reading in the diary: the verdict with its evidence."""
    kept = series_of(reading)
    return kept.said.get(system, ()) if kept else ()
