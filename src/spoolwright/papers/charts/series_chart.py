"""A series of pulls: pull against setting, number or speed, with the sheet's band and the line through."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from spoolwright import quantities
from spoolwright.bench.pulls import OnePull
from spoolwright.papers.charts import house_chart as house
from spoolwright.papers.charts.house_chart import Chart, Scale, Spec
from spoolwright.sheets.drag_setting import STAR, DragSetting

HEIGHT = 210
ALONG = {"turns": "ratio", "number": "count", "speed": "speed"}


@dataclass(frozen=True)
class Series:
    """What is drawn: pulls [N] at their settings, the line [at, N], the sheet's band [at, low, high].

    `along` is "turns", "number" or "speed"; `says` the sentence under the chart.
    """

    along: str
    pulls: Sequence[OnePull]
    fitted: Sequence[Sequence[float]]
    band: Sequence[Sequence[float]]
    says: str


def pull_series(
    series: Series, *, system: str = "metric", setting: DragSetting = STAR, width: int | None = None
) -> Chart:
    """Each pull a dot, start-up pulls open, with the line through them and what the sheet expects."""
    force = house.scale("force", system, _highest(series))
    place = house.scale(ALONG[series.along], system)
    at = [place(pull.at) for pull in series.pulls]
    reach = [place(row[0]) for row in (*series.band, *series.fitted)]
    ends = [min([0.0 if series.along == "turns" else min(at), *at]), max([*at, *reach])]
    encoding = {
        "x": house.x_axis(_title(series, place, setting), ends),
        "y": house.y_axis(force.title("pull"), house.headroom([force(_highest(series))], 0.15)),
    }
    if series.along == "speed":
        encoding["x"]["scale"]["type"] = "log"
    layers = [
        *_band(series, place, force, encoding),
        *_line(series, place, force, encoding),
        *_dots(series, place, force, encoding),
    ]
    spec = house.chart_spec(_description(series, system, setting), layers, width=width, height=HEIGHT)
    return Chart(
        spec, series.says, (_said(series, setting), "start-up", "running"), _rows(series, system, setting)
    )


def _highest(series: Series) -> float:
    pulls = [value for pull in series.pulls for value in (pull.running, pull.start_up or 0.0)]
    return max([*pulls, *(row[-1] for row in (*series.band, *series.fitted))])


def _title(series: Series, place: Scale, setting: DragSetting) -> str:
    return place.title(_said(series, setting))


def _said(series: Series, setting: DragSetting) -> str:
    named = {"turns": setting.along, "number": "number of the pull", "speed": "line speed"}
    return named[series.along]


def _band(series: Series, place: Scale, force: Scale, encoding: Spec) -> list[Spec]:
    if not series.band:
        return []
    points = [{"x": place(at), "y": force(low), "y2": force(high)} for at, low, high in series.band]
    area = {"type": "area", "color": house.INK, "opacity": house.BAND, "aria": False}
    ends = {"y2": {"field": "y2"}}
    label = points[round(0.62 * (len(points) - 1))]
    where = house.at(label["x"], label["y2"])
    words = house.words(
        "sound, by the sheet", where, encoding, align="right", dx=-8, dy=-4, baseline="bottom"
    )
    return [{"data": {"values": points}, "mark": area, "encoding": encoding | ends}, words]


def _line(series: Series, place: Scale, force: Scale, encoding: Spec) -> list[Spec]:
    if not series.fitted:
        return []
    points = [{"x": place(at), "y": force(pull)} for at, pull in series.fitted]
    mark = {"type": "line", "color": house.ACCENT, "strokeWidth": 1.5, "aria": False}
    return [{"data": {"values": points}, "mark": mark, "encoding": encoding}]


def _dots(series: Series, place: Scale, force: Scale, encoding: Spec) -> list[Spec]:
    running = [{"x": place(p.at), "y": force(p.running)} for p in series.pulls]
    starts = [{"x": place(p.at), "y": force(p.start_up)} for p in series.pulls if p.start_up is not None]
    dot = {"type": "point", "color": house.INK, "size": 34, "opacity": 1, "aria": False}
    filled = {"data": {"values": running}, "mark": dot | {"filled": True}, "encoding": encoding}
    last = running[-1]
    layers: list[Spec] = [filled]
    if starts:
        open_ = dot | {"filled": False, "strokeWidth": 1}
        layers.append({"data": {"values": starts}, "mark": open_, "encoding": encoding})
        top = max(starts, key=lambda p: p["x"])
        layers.append(
            house.words("start-up", house.at(top["x"], top["y"]), encoding, align="right", dx=-7, dy=-3)
        )
    lowered = house.words(
        "running", house.at(last["x"], last["y"]), encoding, align="right", dx=-7, dy=5, baseline="top"
    )
    return [*layers, lowered]


def _place(series: Series, at: float, system: str, setting: DragSetting) -> str:
    if series.along == "turns":
        return setting.at(at)
    return quantities.show(at, ALONG[series.along], system)


def _description(series: Series, system: str, setting: DragSetting) -> str:
    first, last = series.pulls[0], series.pulls[-1]
    shown = [
        f"{quantities.show(p.running, 'force', system)} at {_place(series, p.at, system, setting)}"
        for p in (first, last)
    ]
    band = " The grey band is what a sound drag of this model gives." if series.band else ""
    return (
        f"{len(series.pulls)} pulls against {_said(series, setting)}: running pull from {shown[0]} to "
        f"{shown[1]}.{band}"
    )


def _rows(series: Series, system: str, setting: DragSetting) -> tuple[tuple[str, ...], ...]:
    return tuple(
        (
            _place(series, p.at, system, setting),
            "not taken" if p.start_up is None else quantities.show(p.start_up, "force", system),
            quantities.show(p.running, "force", system),
        )
        for p in house.spaced(series.pulls)
    )
