"""How loud each tooth of a wheel is when it meshes: a bar a tooth, the loudest named."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from spoolwright.papers.charts import house_chart as house
from spoolwright.papers.charts.house_chart import Chart, Spec

HEIGHT = 215
WIDEST = 38


@dataclass(frozen=True)
class Wheel:
    """Mean loudness over the middle one at places of the wheel, in teeth from where the recording begins."""

    name: str
    teeth: int
    places: Sequence[float]
    loudness: Sequence[float]
    low: float
    high: float
    verdict: str
    found: bool = False


def round_the_wheel(wheel: Wheel, *, system: str = "metric", width: int | None = None) -> Chart:
    """Loudness tooth by tooth; where one is found, it stands in the accent."""
    top = max([*wheel.loudness, 2.0]) * 1.18
    encoding = {
        "x": house.x_axis(f"tooth of the {wheel.name}, from where the recording begins", [0, wheel.teeth]),
        "y": house.y_axis("loudness, times the middle tooth", [0.0, top], minExtent=WIDEST),
    }
    layers = [_level(wheel, encoding), _sticks(wheel, encoding), *_name(wheel, encoding)]
    spec = house.chart_spec(_description(wheel), layers, width=width, height=HEIGHT)
    return Chart(spec, says(wheel), ("tooth", "times the middle one"), _rows(wheel))


def _loudest(wheel: Wheel) -> int:
    return max(range(len(wheel.loudness)), key=lambda k: wheel.loudness[k])


def _sticks(wheel: Wheel, encoding: Spec) -> Spec:
    best = _loudest(wheel) if wheel.found else -1
    points = [
        {"x": round(place, 2), "y": round(loud, 3), "y2": 0, "c": house.ACCENT if k == best else house.INK}
        for k, (place, loud) in enumerate(zip(wheel.places, wheel.loudness, strict=True))
    ]
    mark = {"type": "rule", "strokeWidth": 1.4, "aria": False}
    look = {"y2": {"field": "y2"}, "color": {"field": "c", "type": "nominal", "scale": None, "legend": None}}
    return {"data": {"values": points}, "mark": mark, "encoding": encoding | look}


def _level(wheel: Wheel, encoding: Spec) -> Spec:
    mark = {"type": "rule", "color": house.INK, "strokeWidth": 0.6, "strokeDash": [3, 3], "aria": False}
    line = {"values": [{"x": 0, "y": 1, "x2": wheel.teeth}]}
    return {"data": line, "mark": mark, "encoding": encoding | {"x2": {"field": "x2"}}}


def _name(wheel: Wheel, encoding: Spec) -> list[Spec]:
    if not wheel.found:
        return []
    best = _loudest(wheel)
    late = wheel.places[best] > 0.6 * wheel.teeth
    look = {"align": "right" if late else "left", "dx": -6 if late else 6, "color": house.ACCENT}
    where = house.at(wheel.places[best], wheel.loudness[best])
    return [house.words("this tooth knocks", where, encoding, **look)]


def _description(wheel: Wheel) -> str:
    best = wheel.loudness[_loudest(wheel)]
    return (
        f"How loud each of the {wheel.teeth} teeth of the {wheel.name} is when it meshes, from "
        f"{wheel.low:.0f} to {wheel.high:.0f} Hz; the loudest is {best:.1f} times the middle one. "
        f"Verdict: {wheel.verdict}."
    )


def says(wheel: Wheel) -> str:
    """What the bars mean."""
    if wheel.found:
        return f"One tooth of the {wheel.name} is loud each time it comes round; the others are alike."
    return f"No single tooth of the {wheel.name} stands clear of the others by enough to be named."


def _rows(wheel: Wheel) -> tuple[tuple[str, ...], ...]:
    order = sorted(range(len(wheel.loudness)), key=lambda k: -wheel.loudness[k])[:6]
    return tuple((f"{wheel.places[k]:g}", f"{wheel.loudness[k]:.1f} times") for k in sorted(order))
