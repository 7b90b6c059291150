"""What the drag would do after an option: pull by turns of the star, pull as the spool empties."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from spoolwright.judgement import drag_train
from spoolwright.judgement.prediction import Predicted
from spoolwright.papers import charts
from spoolwright.papers.charts import Chart
from spoolwright.papers.figures import Span
from spoolwright.sheets.drag_setting import STAR, DragSetting
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.shop.questions.predictions import KeptPrediction, prediction_of

FILLS = (0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0)
MUCH_THE_SAME = 0.03
"""Two options whose greatest pulls lie nearer than this share get one chart."""


def by_turns(
    kept: KeptPrediction, system: str, width: int | None = None, setting: DragSetting = STAR
) -> Chart | None:
    """Pull against turns of the star, or the lever's way, at a full spool."""
    if len(kept.star_turns) < 2:
        return None
    turns = [row.turns for row in kept.star_turns]
    band = [span(row.pull) for row in kept.star_turns]
    radius = float(kept.star_turns[0].pull.conditions["radius"])
    return charts.drag_by_turns(turns, band, radius=radius, system=system, width=width, setting=setting)


def by_fill(kept: KeptPrediction, sheet: ReelSheet, system: str, width: int | None = None) -> Chart | None:
    """Pull against the line left, the star untouched: the torque over the radius at each fill."""
    torque, capacity = kept.values.get("drag_torque"), kept.values.get("line_capacity")
    if torque is None or capacity is None:
        return None
    radii = [drag_train.radius_at_fill(sheet, share) for share in FILLS]
    band = [Span(torque.middle / r, torque.low / r, torque.high / r, "force") for r in radii]
    lengths = [capacity.middle * share for share in FILLS]
    return charts.pull_by_fill(lengths, band, system=system, width=width)


def span(value: Predicted) -> Span:
    return Span(value.middle, value.low, value.high, value.dimension)


def worth_drawing(options: Sequence[Any]) -> list[tuple[Any, KeptPrediction]]:
    """The options of a quote whose greatest pull is their own, each with what was expected of it."""
    found: list[tuple[Any, KeptPrediction]] = []
    for option in options:
        kept = prediction_of(option)
        if kept is None or "pull_full_spool" not in kept.values:
            continue
        pull = kept.values["pull_full_spool"].middle
        others = [other.values["pull_full_spool"].middle for _, other in found]
        if all(abs(pull - other) > MUCH_THE_SAME * other for other in others):
            found.append((option, kept))
    return found
