"""Several results of one thing under each other, each with its interval, so that agreement is seen."""

from __future__ import annotations

from collections.abc import Sequence

from spoolwright.bench.uncertainty import Measured
from spoolwright.papers.charts import house_chart as house
from spoolwright.papers.charts.history_chart import raised
from spoolwright.papers.charts.house_chart import Chart, Scale, Spec
from spoolwright.papers.figures import shown

ROW, ABOVE = 34, 40
"""Height of one row and of what stands above and below all of them, in pixels."""

Row = tuple[str, Measured]


def side_by_side(
    what: str, rows: Sequence[Row], sentence: str, *, system: str = "metric", width: int | None = None
) -> Chart:
    """The first row is the result that matters, in the accent; each bar is twice the standard uncertainty."""
    if not rows:
        raise ValueError("no result was given; one or more are needed")
    results = [measured for _, measured in rows]
    scale = house.scale(results[0].dimension, system, max(abs(one.value) + one.expanded for one in results))
    low = min(scale(one.value - one.expanded) for one in results)
    high = max(scale(one.value + one.expanded) for one in results)
    room = 0.08 * (high - low or abs(high) or 1.0)
    y = {
        "field": "y",
        "type": "quantitative",
        "scale": {"domain": [0.5 - len(rows), 0.75], "nice": False, "zero": False},
        "axis": None,
    }
    encoding = {"x": house.x_axis(raised(scale.title(what)), [low - room, high + room]), "y": y}
    layers = [layer for k, row in enumerate(rows) for layer in _row(k, row, scale, encoding, low)]
    described = "; ".join(f"{name} {shown(one, system)}" for name, one in rows)
    height = ABOVE + ROW * len(rows)
    spec = house.chart_spec(f"{what}: {described}.", layers, width=width, height=height)
    table = tuple((name, raised(shown(one, system))) for name, one in rows)
    return Chart(spec, sentence, ("by", what), table)


def _row(k: int, row: Row, scale: Scale, encoding: Spec, left: float) -> list[Spec]:
    name, one = row
    ink = house.INK if k else house.ACCENT
    ends = {"x": scale(one.value - one.expanded), "x2": scale(one.value + one.expanded), "y": -k}
    bar = {"type": "rule", "color": ink, "strokeWidth": 1.4, "aria": False}
    dot = {"type": "point", "filled": True, "color": ink, "size": 42, "opacity": 1, "aria": False}
    middle = house.at(scale(one.value), -k)
    return [
        {"data": {"values": [ends]}, "mark": bar, "encoding": encoding | {"x2": {"field": "x2"}}},
        {"data": middle, "mark": dot, "encoding": encoding},
        house.words(name, house.at(left, -k), encoding, align="left", baseline="bottom", dy=-7, color=ink),
    ]
