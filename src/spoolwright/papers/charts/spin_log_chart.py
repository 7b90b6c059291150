"""The spin log as a picture: each spin a dot, each kind's usual time with its interval, longest on top."""

from __future__ import annotations

from collections.abc import Sequence

from spoolwright import quantities
from spoolwright.bench.spin_log import Spin, SpinLog
from spoolwright.papers.charts import house_chart as house
from spoolwright.papers.charts.house_chart import Chart, Spec

ROW = 44
"""Height of one kind."""

MOST_DOTS = 400


def spin_log(log: SpinLog, spins: Sequence[Spin], says: str, *, width: int | None = None) -> Chart:
    """Dots on a scale of equal ratios, because spins scatter in proportion."""
    times = [spin.time for spin in spins] + [end for kind in log.kinds for end in (kind.low, kind.high)]
    ends = [min(times) / 1.1, max(times) * 1.1]
    x = house.x_axis("spin time, s", ends)
    x["scale"] = {"type": "log", "domain": x["scale"]["domain"], "nice": False}
    y = house.y_axis("", [-len(log.kinds) + 0.4, 0.9], values=[], domain=False)
    encoding = {"x": x, "y": y}
    place = {kind.kind: -row for row, kind in enumerate(log.kinds)}
    dots = [{"x": s.time, "y": place[s.kind] - 0.18} for s in house.spaced(list(spins), MOST_DOTS)]
    layers: list[Spec] = [_dots(dots, encoding)]
    for kind in log.kinds:
        row = place[kind.kind]
        layers.append(_interval(kind.low, kind.high, row, encoding))
        layers.append(_middle(kind.middle, row, encoding))
        label = house.at(ends[0], row)
        layers.append(house.words(kind.kind, label, encoding, align="left", dx=4, dy=-8, baseline="bottom"))
    spec = house.chart_spec(
        f"Spin times of {len(log.kinds)} kinds of bearing, {log.spins} spins.",
        layers,
        width=width,
        height=ROW * len(log.kinds) + 40,
    )
    return Chart(spec, says, ("bearing", "usual time", "from", "to", "spins"), _rows(log))


def _dots(dots: Sequence[Spec], encoding: Spec) -> Spec:
    mark = {"type": "point", "shape": "circle", "size": 16, "color": house.INK, "opacity": 0.5, "aria": False}
    return {"data": {"values": list(dots)}, "mark": mark, "encoding": encoding}


def _interval(low: float, high: float, row: int, encoding: Spec) -> Spec:
    mark = {"type": "rule", "color": house.ACCENT, "strokeWidth": 2, "aria": False}
    data = {"values": [{"x": low, "x2": high, "y": row}]}
    return {"data": data, "mark": mark, "encoding": encoding | {"x2": {"field": "x2"}}}


def _middle(middle: float, row: int, encoding: Spec) -> Spec:
    mark = {
        "type": "point",
        "shape": "circle",
        "size": 60,
        "filled": True,
        "color": house.ACCENT,
        "aria": False,
    }
    return {"data": house.at(middle, row), "mark": mark, "encoding": encoding}


def _rows(log: SpinLog) -> tuple[tuple[str, ...], ...]:
    return tuple(
        (
            kind.kind,
            *(quantities.show(value, "time") for value in (kind.middle, kind.low, kind.high)),
            str(kind.spins),
        )
        for kind in log.kinds
    )
