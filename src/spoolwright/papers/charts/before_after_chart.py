"""One reading before and after the work, on one line, with the promise behind it."""

from __future__ import annotations

from spoolwright import quantities
from spoolwright.bench.uncertainty import Measured
from spoolwright.papers.charts import house_chart as house
from spoolwright.papers.charts.house_chart import Chart, Scale, Spec
from spoolwright.papers.figures import Span, shown

HEIGHT = 96
ROOM = 0.18
ROWS = {"before": 0.53, "after": 0.2}


def before_after(
    what: str,
    *,
    before: Measured | None,
    after: Measured,
    promised: Span | None = None,
    system: str = "metric",
    width: int | None = None,
) -> Chart:
    """Before as an open ring, after as a dot in the accent, each with its interval; the promise behind."""
    ends = [m.value + sign * m.expanded for m in (before, after) if m for sign in (-1, 1)]
    ends += [promised.low, promised.high] if promised else []
    place = house.scale(after.dimension, system, max(map(abs, ends)))
    low, high = place(min(ends)), place(max(ends))
    room = (high - low) * ROOM or abs(high) * ROOM or 1.0
    encoding = {
        "x": house.x_axis(place.title(what), [low - room, high + room]),
        "y": {"field": "y", "type": "quantitative", "axis": None, "scale": {"domain": [0, 1], "nice": False}},
    }
    layers = [
        *_promise(promised, place, encoding, system),
        *(_reading("before", before, place, encoding, system) if before else []),
        *_reading("after", after, place, encoding, system),
    ]
    description = _description(what, before, after, promised, system)
    spec = house.chart_spec(description, layers, width=width, height=HEIGHT)
    return Chart(spec, says(what, before, after, system), ("", what), _rows(before, after, promised, system))


def _promise(promised: Span | None, place: Scale, encoding: Spec, system: str) -> list[Spec]:
    if promised is None:
        return []
    low, high = place(promised.low), place(promised.high)
    box = {"x": low, "x2": high, "y": 0, "y2": 1}
    middle = house.at((low + high) / 2, 1)
    return [
        house.band(box, encoding),
        house.words("promised", middle, encoding, align="center", baseline="top", dy=4),
    ]


def _reading(name: str, it: Measured, place: Scale, encoding: Spec, system: str) -> list[Spec]:
    after, level = name == "after", ROWS[name]
    colour = house.ACCENT if after else house.INK
    value, low, high = (place(v) for v in (it.value, it.value - it.expanded, it.value + it.expanded))
    start, end = encoding["x"]["scale"]["domain"]
    beside = {"align": "right", "dx": -7} if value > (start + end) / 2 else {"align": "left", "dx": 7}
    where = house.at(low if value > (start + end) / 2 else high, level)
    bar = {"type": "rule", "color": colour, "strokeWidth": 1.2, "aria": False}
    dot = {"type": "point", "filled": after, "color": colour, "size": 60, "opacity": 1, "aria": False}
    data = {"values": [{"x": low, "x2": high, "y": level}]}
    return [
        {"data": data, "mark": bar, "encoding": encoding | {"x2": {"field": "x2"}}},
        {"data": house.at(value, level), "mark": dot, "encoding": encoding},
        house.words(f"{name} {shown(it, system)}", where, encoding, baseline="middle", **beside),
    ]


def _description(
    what: str, before: Measured | None, after: Measured, promised: Span | None, system: str
) -> str:
    was = f"before {shown(before, system)}, " if before else ""
    text = f"{what}: {was}after {shown(after, system)}"
    if promised:
        interval = quantities.show_interval(promised.low, promised.high, promised.dimension, system)
        text += f", promised {interval}"
    return text + "."


def says(what: str, before: Measured | None, after: Measured, system: str = "metric") -> str:
    """Whether the reading moved, or the change hides within what the gauges leave unsure."""
    if before is None:
        return f"{what}: {shown(after, system)} after the work; nothing from before to set beside it."
    change = after.value - before.value
    unsure = (after.expanded**2 + before.expanded**2) ** 0.5
    if abs(change) <= unsure:
        return f"{what}: no change that the gauges could show."
    way = "up" if change > 0 else "down"
    return f"{what}: {way} from {shown(before, system)} to {shown(after, system)}."


def _rows(
    before: Measured | None, after: Measured, promised: Span | None, system: str
) -> tuple[tuple[str, ...], ...]:
    rows = [("before", shown(before, system))] if before else []
    if promised:
        rows.append(("promised", shown(promised, system)))
    return (*rows, ("after", shown(after, system)))
