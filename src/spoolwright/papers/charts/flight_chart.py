"""The path of a cast for several states of a reel, and where nine such casts in ten come down."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from spoolwright import quantities
from spoolwright.papers.charts import house_chart as house
from spoolwright.papers.charts.house_chart import Chart, Scale, Spec
from spoolwright.papers.charts.states_chart import Along, Curve, Story, states
from spoolwright.papers.figures import Span, shown

ROOM_BELOW = 0.2
"""Of the height of the chart, kept free under the water for the marks of where casts come down."""


@dataclass(frozen=True)
class Flight:
    """One state: its name, the middle cast's path [m], and the span of the distance."""

    words: str
    x: Sequence[float]
    y: Sequence[float]
    distance: Span


def flights(
    several: Sequence[Flight], says: str, *, system: str = "metric", width: int | None = None
) -> Chart:
    """Height against distance; below the water a bar for each state, as wide as its span."""
    if not several:
        raise ValueError("flights: one or more are accepted; got none")
    far = max(flight.distance.high for flight in several)
    tall = max(max(flight.y) for flight in several)
    place, level = (house.scale("line_length", system, reach) for reach in (far, tall))
    x = Along("line_length", "distance out", (0.0, far * 1.03))
    y = Along("line_length", "height over the water", (-ROOM_BELOW * tall, tall * 1.1))
    curves = [Curve(flight.words, flight.x, flight.y) for flight in several]
    chart = states(x, y, curves, Story(_described(several, system), says), system=system, width=width)
    encoding = chart.spec["layer"][0]["encoding"]
    encoding = {name: encoding[name] for name in ("x", "y")}
    marks = _water(encoding)
    for number, flight in enumerate(several):
        marks += _landing(flight, number, len(several), tall, (place, level), encoding)
    spec = chart.spec | {"layer": [*chart.spec["layer"], *marks]}
    rows = tuple((flight.words, shown(flight.distance, system), _top(flight, system)) for flight in several)
    return Chart(spec, says, ("", "distance", "highest point"), rows)


def _described(several: Sequence[Flight], system: str) -> str:
    told = "; ".join(f"{flight.words} {shown(flight.distance, system)}" for flight in several)
    return f"Path of the cast, height over distance, and where it comes down: {told}."


def _top(flight: Flight, system: str) -> str:
    return quantities.show(max(flight.y), "line_length", system)


def _water(encoding: Spec) -> list[Spec]:
    left, right = encoding["x"]["scale"]["domain"]
    mark = {"type": "rule", "color": house.INK, "strokeWidth": 0.7, "aria": False}
    box = {"x": left, "x2": right, "y": 0.0}
    return [{"data": {"values": [box]}, "mark": mark, "encoding": encoding | {"x2": {"field": "x2"}}}]


def _landing(
    flight: Flight, number: int, count: int, tall: float, scales: tuple[Scale, Scale], encoding: Spec
) -> list[Spec]:
    """A bar under the water from the shorter to the longer end, with a tick at the middle."""
    place, level = scales
    depth = -ROOM_BELOW * tall * (0.3 + 0.6 * (number + 0.5) / count)
    low, high, at = place(flight.distance.low), place(flight.distance.high), level(depth)
    first = number == 0
    bar = {"type": "rule", "color": house.INK, "aria": False, "strokeWidth": 6 if first else 1.2}
    bar |= {"opacity": house.BAND * 2 if first else 1.0}
    tick = {"type": "tick", "orient": "vertical", "thickness": 1.6, "size": 9, "opacity": 1, "aria": False}
    tick |= {"color": house.ACCENT if first else house.INK}
    layers: list[Spec] = [
        {
            "data": {"values": [{"x": low, "x2": high, "y": at}]},
            "mark": bar,
            "encoding": encoding | {"x2": {"field": "x2"}},
        },
        {"data": house.at(place(flight.distance.middle), at), "mark": tick, "encoding": encoding},
    ]
    if first:
        said = f"{round(10 * flight.distance.share)} casts in 10 come down here"
        middle = level(-ROOM_BELOW * tall * 0.6)
        beside = {"align": "right", "baseline": "middle", "dx": -6}
        layers.append(house.words(said, house.at(low, middle), encoding, **beside))
    return layers
