"""A predicted band with readings on it: pull by turns of the star, pull by the line left on the spool."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from spoolwright import quantities
from spoolwright.bench.uncertainty import Measured
from spoolwright.papers.charts import house_chart as house
from spoolwright.papers.charts.house_chart import Chart, Scale, Spec
from spoolwright.papers.figures import Span, shown
from spoolwright.sheets.drag_setting import STAR, DragSetting

HEIGHT = 210


@dataclass(frozen=True)
class Along:
    """What the band runs along: SI positions, their dimension, and the words under the axis."""

    positions: Sequence[float]
    dimension: str
    words: str


def _band_chart(
    along: Along,
    band: Sequence[Span],
    readings: Sequence[tuple[float, Measured]],
    story: tuple[str, str],
    system: str,
    width: int | None,
) -> Chart:
    description, sentence = story
    force = house.scale("force", system, max(span.high for span in band))
    place = house.scale(along.dimension, system, max(along.positions))
    tops = [force(span.high) for span in band] + [force(m.value + m.expanded) for _, m in readings]
    encoding = {
        "x": house.x_axis(
            place.title(along.words), [place(min(along.positions)), place(max(along.positions))]
        ),
        "y": house.y_axis(force.title("pull"), house.headroom(tops, 0.12)),
    }
    layers = [*_area(along, band, place, force, encoding), *_readings(readings, place, force, encoding)]
    layers += _measured_word(along, band, readings, place, force, encoding)
    spec = house.chart_spec(description, layers, width=width, height=HEIGHT)
    return Chart(spec, sentence, (along.words, "predicted", "measured"), _rows(along, band, readings, system))


def _area(along: Along, band: Sequence[Span], place: Scale, force: Scale, encoding: Spec) -> list[Spec]:
    points = [
        {"x": place(p), "y": force(s.low), "y2": force(s.high), "m": force(s.middle)}
        for p, s in zip(along.positions, band, strict=True)
    ]
    data = {"values": points}
    area = {"type": "area", "color": house.INK, "opacity": house.BAND, "aria": False}
    line = {"type": "line", "color": house.ACCENT, "strokeWidth": 1.5, "aria": False}
    middle = encoding | {"y": encoding["y"] | {"field": "m"}}
    label = (
        points[round(len(points) * 0.55)] if points[-1]["m"] > points[0]["m"] else points[len(points) // 3]
    )
    rising = points[-1]["m"] > points[0]["m"]
    text = f"predicted, {round(10 * band[0].share)} times in 10"
    side = {"align": "right", "dx": -8} if rising else {"align": "left", "dx": 8}
    return [
        {"data": data, "mark": area, "encoding": encoding | {"y2": {"field": "y2"}}},
        {"data": data, "mark": line, "encoding": middle},
        house.words(text, house.at(label["x"], label["y2"]), encoding, baseline="bottom", dy=-4, **side),
    ]


def _readings(
    readings: Sequence[tuple[float, Measured]], place: Scale, force: Scale, encoding: Spec
) -> list[Spec]:
    if not readings:
        return []
    points = [
        {
            "x": place(p),
            "m": force(m.value),
            "y": force(m.value - m.expanded),
            "y2": force(m.value + m.expanded),
        }
        for p, m in readings
    ]
    data = {"values": points}
    bar = {"type": "rule", "color": house.INK, "strokeWidth": 1, "aria": False}
    dot = {"type": "point", "filled": True, "color": house.INK, "size": 34, "opacity": 1, "aria": False}
    middle = encoding | {"y": encoding["y"] | {"field": "m"}}
    return [
        {"data": data, "mark": bar, "encoding": encoding | {"y2": {"field": "y2"}}},
        {"data": data, "mark": dot, "encoding": middle},
    ]


def _measured_word(
    along: Along,
    band: Sequence[Span],
    readings: Sequence[tuple[float, Measured]],
    place: Scale,
    force: Scale,
    encoding: Spec,
) -> list[Spec]:
    """The word under the band, on the side where the band rises away from it."""
    if not readings:
        return []
    reach = max(along.positions) - min(along.positions)
    aim = min(along.positions) + 0.6 * reach
    position, reading = min(readings, key=lambda r: abs(r[0] - aim))
    nearest = min(range(len(band)), key=lambda k: abs(along.positions[k] - position))
    level = min(force(band[nearest].low), force(reading.value - reading.expanded))
    rising = band[-1].middle > band[0].middle
    side = {"align": "left", "dx": 5} if rising else {"align": "right", "dx": -3}
    return [house.words("measured", house.at(place(position), level), encoding, baseline="top", dy=6, **side)]


def _rows(
    along: Along, band: Sequence[Span], readings: Sequence[tuple[float, Measured]], system: str
) -> tuple[tuple[str, ...], ...]:
    measured = {round(p, 9): shown(m, system) for p, m in readings}
    rows = {round(p, 9): shown(s, system) for p, s in zip(along.positions, band, strict=True)}
    kept = {*house.spaced(sorted(rows)), *measured}
    return tuple(
        (
            quantities.show(position, along.dimension, system),
            rows.get(position, "not predicted"),
            measured.get(position, "not measured"),
        )
        for position in sorted(kept)
    )


def drag_by_turns(
    turns: Sequence[float],
    band: Sequence[Span],
    readings: Sequence[tuple[float, Measured]] = (),
    *,
    radius: float,
    system: str = "metric",
    width: int | None = None,
    setting: DragSetting = STAR,
) -> Chart:
    """Pull against turns of the star from free, at the radius where the line leaves; or a lever's way."""
    where = quantities.show(radius, "length", system)
    first, last = band[0], band[-1]
    description = (
        f"Pull against {setting.by}, line leaving at {where}: from {shown(first, system)} at "
        f"{setting.at(turns[0])} to {shown(last, system)} at {setting.at(turns[-1])}; "
        f"{len(readings)} readings."
    )
    sentence = (
        f"{_each(setting)} adds about {_per_turn(turns, band, system)} of pull at a radius of {where}. "
        f"Check a setting with a scale; {_unmarked(setting)}."
    )
    along = Along(turns, "ratio", f"{setting.along} (line leaving at {where})")
    return _band_chart(along, band, readings, (description, sentence), system, width)


def _each(setting: DragSetting) -> str:
    return "The whole way of the lever" if setting.is_lever else f"Each turn of the {setting.control}"


def _unmarked(setting: DragSetting) -> str:
    if setting.is_lever:
        return "the preset moves every place on the lever's way"
    return f"the {setting.control} has no marks"


def _per_turn(turns: Sequence[float], band: Sequence[Span], system: str) -> str:
    reach = turns[-1] - turns[0]
    return quantities.show((band[-1].middle - band[0].middle) / reach if reach else 0.0, "force", system)


def pull_by_fill(
    lengths: Sequence[float],
    band: Sequence[Span],
    readings: Sequence[tuple[float, Measured]] = (),
    *,
    system: str = "metric",
    width: int | None = None,
) -> Chart:
    """Pull against the line left on the spool, the drag untouched: it grows as the spool empties."""
    full = max(range(len(lengths)), key=lambda k: lengths[k])
    least = min(range(len(lengths)), key=lambda k: lengths[k])
    growth = band[least].middle / band[full].middle - 1
    left = quantities.show(lengths[least], "line_length", system)
    description = (
        f"Pull against line left on the spool: {shown(band[full], system)} at a full spool, "
        f"{shown(band[least], system)} with {left} left; {len(readings)} readings."
    )
    sentence = (
        f"With the drag untouched the pull grows by {100 * growth:.0f} % from a full spool "
        f"to the last {left}: ease the drag as a fish takes line."
    )
    along = Along(lengths, "line_length", "line left on the spool")
    return _band_chart(along, band, readings, (description, sentence), system, width)
