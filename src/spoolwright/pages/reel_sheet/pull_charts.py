"""The pull as charts: by turns of the star, and as the line goes, with this reel's own readings on them."""

from __future__ import annotations

from collections.abc import Iterator
from math import isclose

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement import drag_train
from spoolwright.judgement.prediction import Predicted, Prediction
from spoolwright.judgement.taken import Readings, Taken, listed
from spoolwright.pages.reel_sheet.look import share_at
from spoolwright.papers import charts
from spoolwright.papers.charts import Chart
from spoolwright.papers.figures import Span
from spoolwright.sheets.reel_sheet import ReelSheet

SHARES = (0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0)
SAME_RADIUS = 0.02
"""How much two radii may differ for their pulls to stand on one chart, as a share."""


def by_turns(sheet: ReelSheet, expected: Prediction, readings: Readings, system: str) -> Chart | None:
    """Pull against turns of the star at a full spool; None where there is no table of turns."""
    rows, radius = expected.star_turns, sheet.spool.full_radius
    if len(rows) < 2:
        return None
    taken = [
        (turns, one.measured)
        for one in pulls(readings, "pull_run", "pull_full")
        if (turns := one.number("star_turns")) is not None
        and isclose(one.number("radius") or 0.0, radius, rel_tol=SAME_RADIUS)
    ]
    band = [span(row.pull) for row in rows]
    turns = [row.turns for row in rows]
    return charts.drag_by_turns(turns, band, taken, radius=radius, system=system, setting=expected.setting)


def by_fill(sheet: ReelSheet, expected: Prediction, readings: Readings, system: str) -> Chart | None:
    """Pull against the line that is left, the star hard on: the drag's torque over the radius."""
    torque, capacity = expected.values.get("drag_torque"), expected.values.get("line_capacity")
    if torque is None or capacity is None:
        return None
    radii = [drag_train.radius_at_fill(sheet, share) for share in SHARES]
    band = [Span(torque.middle / r, torque.low / r, torque.high / r, "force") for r in radii]
    lengths = [capacity.middle * share for share in SHARES]
    return charts.pull_by_fill(lengths, band, on_the_way(sheet, readings, capacity), system=system)


def on_the_way(sheet: ReelSheet, readings: Readings, capacity: Predicted) -> list[tuple[float, Measured]]:
    """Full pulls of this reel, each at the length of line that its radius means."""
    lip = sheet.spool.flange_diameter / 2
    shares = [
        (share_at(sheet, lip - radius), one.measured)
        for one in pulls(readings, "pull_full")
        if (radius := one.number("radius"))
    ]
    return [(capacity.middle * share, measured) for share, measured in shares if share >= SHARES[0]]


def pulls(readings: Readings, *kinds: str) -> Iterator[Taken]:
    return (one for one in listed(readings) if one.kind in kinds)


def span(value: Predicted) -> Span:
    return Span(value.middle, value.low, value.high, value.dimension)
