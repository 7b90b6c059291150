"""One quantity along another for several states of a reel: today as it stands, each option beside it.

The first state is a solid line in the accent on its band of ink. Every other is a line of its own dashes,
named at its end, with its band as an upright bar. No colour tells them apart: they are told in print and by
everybody.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from itertools import pairwise
from typing import Literal

from spoolwright import quantities
from spoolwright.papers.charts import house_chart as house
from spoolwright.papers.charts.house_chart import Chart, Scale, Spec
from spoolwright.papers.figures import Span, shown

HEIGHT = 250
LINE_STYLES: tuple[tuple[int, ...], ...] = ((), (7, 3), (2, 3), (9, 3, 2, 3), (4, 2), (12, 4))
"""Dashes of the first, second, ... state; after the last they begin again at the second."""
ROW = 15
"""Height of one line of lettering [px]."""
BARS_FROM, BARS_APART = 0.92, 0.055
"""Where along the axis the upright bars stand, as shares of it."""
LONGEST_NAME = 15


@dataclass(frozen=True)
class Along:
    """What runs along an axis: dimension, words beside it, SI ends where they are not those of the data."""

    dimension: str
    words: str
    ends: tuple[float, float] | None = None


@dataclass(frozen=True)
class Curve:
    """One state: SI positions, its middle there, and where it has a band the ends of it."""

    words: str
    x: Sequence[float]
    middle: Sequence[float]
    low: Sequence[float] = ()
    high: Sequence[float] = ()

    @property
    def has_band(self) -> bool:
        return len(self.low) == len(self.x) == len(self.high) > 0

    def span(self, k: int, dimension: str) -> Span | None:
        return Span(self.middle[k], self.low[k], self.high[k], dimension) if self.has_band else None


@dataclass(frozen=True)
class Rule:
    """A straight line across the chart at one SI value of x or y, named: a limit, a moment."""

    axis: Literal["x", "y"]
    at: float
    words: str


@dataclass(frozen=True)
class Zone:
    """A strip across the chart between two SI values of y, named above it: a limit that is a range."""

    low: float
    high: float
    words: str


@dataclass(frozen=True)
class Story:
    """What the chart is of, for readers who do not see it, and the sentence under it."""

    description: str
    says: str
    rules: tuple[Rule, ...] = field(default=())
    zones: tuple[Zone, ...] = field(default=())

    @property
    def levels(self) -> list[float]:
        """Every SI value of y that has to fit on the chart besides the curves."""
        ends = [end for zone in self.zones for end in (zone.low, zone.high)]
        return [rule.at for rule in self.rules if rule.axis == "y"] + ends


def states(
    x: Along,
    y: Along,
    curves: Sequence[Curve],
    story: Story,
    *,
    system: str = "metric",
    width: int | None = None,
    height: int = HEIGHT,
) -> Chart:
    """Several states on one chart, with a table of the same numbers.

    The table has the positions of the first curve as its rows and one column a state; another curve has its
    nearest position read there.
    """
    if not curves or not all(len(curve.x) == len(curve.middle) > 1 for curve in curves):
        raise ValueError("curves: one or more, each of two positions or more, as many middles as positions")
    place, level = _scales(x, y, curves, story, system)
    encoding = _axes(x, y, curves, story, (place, level))
    drawn = [_Drawn(curve, k, place, level, encoding) for k, curve in enumerate(curves)]
    layers = _zones(story.zones, level, encoding)
    layers += [layer for one in reversed(drawn) for layer in one.layers()]
    layers += _rules(story.rules, place, level, encoding)
    layers += _names(drawn, encoding, height) if len(drawn) > 1 else []
    spec = house.chart_spec(story.description, layers, width=width, height=height)
    return Chart(spec, story.says, (x.words, *(c.words for c in curves)), _rows(x, y, curves, system))


def _scales(x: Along, y: Along, curves: Sequence[Curve], story: Story, system: str) -> tuple[Scale, Scale]:
    along = [abs(v) for c in curves for v in c.x] + [abs(end) for end in x.ends or ()]
    tall = [abs(v) for c in curves for v in (*c.middle, *c.high)] + [abs(end) for end in y.ends or ()]
    tall += [abs(at) for at in story.levels]
    return house.scale(x.dimension, system, max(along)), house.scale(y.dimension, system, max(tall))


def _axes(x: Along, y: Along, curves: Sequence[Curve], story: Story, scales: tuple[Scale, Scale]) -> Spec:
    place, level = scales
    along = [v for c in curves for v in c.x]
    tall = [v for c in curves for v in (*c.middle, *c.low, *c.high)]
    tall += story.levels
    ends = [level(end) for end in y.ends] if y.ends else list(house.headroom([level(v) for v in tall], 0.1))
    across = [place(end) for end in x.ends or (min(along), max(along))]
    return {"x": house.x_axis(place.title(x.words), across), "y": house.y_axis(level.title(y.words), ends)}


@dataclass(frozen=True)
class _Drawn:
    curve: Curve
    number: int
    place: Scale
    level: Scale
    encoding: Spec

    @property
    def is_first(self) -> bool:
        return self.number == 0

    @property
    def dashes(self) -> list[int]:
        styles = LINE_STYLES[1:]
        return list(LINE_STYLES[0] if self.is_first else styles[(self.number - 1) % len(styles)])

    @property
    def colour(self) -> str:
        return house.ACCENT if self.is_first else house.INK

    def layers(self) -> list[Spec]:
        return [*self._band(), self._line()]

    def _line(self) -> Spec:
        points = [
            {"x": self.place(a), "y": self.level(b), "n": n}
            for n, (a, b) in enumerate(zip(self.curve.x, self.curve.middle, strict=True))
        ]
        mark = {
            "type": "line",
            "color": self.colour,
            "strokeWidth": 1.8 if self.is_first else 1.3,
            "strokeDash": self.dashes,
            "clip": True,
            "aria": False,
        }
        return {
            "data": {"values": house.spaced(points, house.MOST_POINTS)},
            "mark": mark,
            "encoding": self._in_order(),
        }

    def _in_order(self) -> Spec:
        """Joined in the order of the points: a path may turn back upon itself."""
        return self.encoding | {"order": {"field": "n", "type": "quantitative"}}

    def _band(self) -> list[Spec]:
        if not self.curve.has_band:
            return []
        return [self._area()] if self.is_first else self._bar()

    def _area(self) -> Spec:
        points = [
            {"x": self.place(a), "y": self.level(b), "y2": self.level(c)}
            for a, b, c in zip(self.curve.x, self.curve.low, self.curve.high, strict=True)
        ]
        mark = {"type": "area", "color": house.INK, "opacity": house.BAND, "clip": True, "aria": False}
        ends = self.encoding | {"y2": {"field": "y2"}}
        return {"data": {"values": house.spaced(points, house.MOST_POINTS)}, "mark": mark, "encoding": ends}

    def _bar(self) -> list[Spec]:
        """The band of an option where its bar stands: an upright line with two feet."""
        at, low, high = self._bar_at()
        here, feet = self.place(at), {"type": "tick", "orient": "horizontal", "size": 9}
        look = {"color": house.INK, "thickness": 1, "opacity": 1, "aria": False, "clip": True}
        rule = {"type": "rule", "color": house.INK, "strokeWidth": 1, "aria": False, "clip": True}
        low, high = self.level(low), self.level(high)
        ends = [{"x": here, "y": low}, {"x": here, "y": high}]
        return [
            {
                "data": {"values": [{"x": here, "y": low, "y2": high}]},
                "mark": rule,
                "encoding": self.encoding | {"y2": {"field": "y2"}},
            },
            {"data": {"values": ends}, "mark": feet | look, "encoding": self.encoding},
        ]

    def _bar_at(self) -> tuple[float, float, float]:
        """Where an option's bar stands, and its ends: a little before the last, so that none is hidden."""
        share = max(0.1, BARS_FROM - BARS_APART * (self.number - 1))
        rows = sorted(zip(self.curve.x, self.curve.low, self.curve.high, strict=True))
        aim = rows[0][0] + share * (rows[-1][0] - rows[0][0])
        before, after = next((a, b) for a, b in pairwise(rows) if b[0] >= aim)
        part = (aim - before[0]) / ((after[0] - before[0]) or 1.0)
        low, high = (a + part * (b - a) for a, b in zip(before[1:], after[1:], strict=True))
        return aim, low, high

    @property
    def end(self) -> tuple[float, float]:
        last = max(range(len(self.curve.x)), key=lambda k: self.curve.x[k])
        return self.place(self.curve.x[last]), self.level(self.curve.middle[last])


def _zones(zones: Sequence[Zone], level: Scale, encoding: Spec) -> list[Spec]:
    layers: list[Spec] = []
    left, right = encoding["x"]["scale"]["domain"]
    mark = {"type": "rect", "color": house.INK, "opacity": house.BAND, "aria": False}
    ends = encoding | {"x2": {"field": "x2"}, "y2": {"field": "y2"}}
    side = {"align": "left", "dx": 6, "dy": -4, "baseline": "bottom"}
    for zone in zones:
        foot, top = level(zone.low), level(zone.high)
        box = {"x": left, "x2": right, "y": foot, "y2": top}
        layers.append({"data": {"values": [box]}, "mark": mark, "encoding": ends})
        layers.append(house.words(zone.words, house.at(left, top), encoding, **side))
    return layers


def _rules(rules: Sequence[Rule], place: Scale, level: Scale, encoding: Spec) -> list[Spec]:
    layers: list[Spec] = []
    left, right = encoding["x"]["scale"]["domain"]
    foot, top = encoding["y"]["scale"]["domain"]
    mark = {"type": "rule", "color": house.INK, "strokeWidth": 0.7, "strokeDash": [1, 2], "aria": False}
    for rule in rules:
        if rule.axis == "y":
            at = level(rule.at)
            box, words = {"x": left, "x2": right, "y": at}, house.at(left, at)
            side, ends = {"align": "left", "dx": 6, "dy": -4, "baseline": "bottom"}, {"x2": {"field": "x2"}}
        else:
            at = place(rule.at)
            box, words = {"x": at, "y": foot, "y2": top}, house.at(at, top)
            beside = {"align": "right", "dx": -4} if at > (left + right) / 2 else {"align": "left", "dx": 4}
            side, ends = beside | {"dy": 2, "baseline": "top"}, {"y2": {"field": "y2"}}
        layers.append({"data": {"values": [box]}, "mark": mark, "encoding": encoding | ends})
        layers.append(house.words(rule.words, words, encoding, **side))
    return layers


def _names(drawn: Sequence[_Drawn], encoding: Spec, height: int) -> list[Spec]:
    """Each state's name at the end of its line, moved apart where ends lie too close for the lettering."""
    foot, top = encoding["y"]["scale"]["domain"]
    right = encoding["x"]["scale"]["domain"][1]
    plot = height - 46
    wanted = {one.number: plot * (1 - (one.end[1] - foot) / ((top - foot) or 1.0)) for one in drawn}
    lines = {one.number: _wrapped(one.curve.words) for one in drawn}
    placed = _apart(wanted, {number: ROW * len(text) + 3 for number, text in lines.items()}, plot)
    return [
        house.words(
            lines[one.number],  # type: ignore[arg-type]
            house.at(right, one.end[1]),
            encoding,
            align="left",
            baseline="middle",
            dx=7,
            dy=round(placed[one.number] - wanted[one.number] - ROW * (len(lines[one.number]) - 1) / 2, 1),
            lineHeight=ROW,
            clip=False,
            color=one.colour,
        )
        for one in drawn
    ]


def _wrapped(words: str) -> list[str]:
    lines = [""]
    for word in words.split():
        longer = f"{lines[-1]} {word}".strip()
        if len(longer) > LONGEST_NAME and lines[-1]:
            lines.append(word)
        else:
            lines[-1] = longer
    return lines


def _apart(wanted: dict[int, float], sizes: dict[int, float], room: float) -> dict[int, float]:
    """Heights from the top, in order, none nearer than half of both sizes, all of them on the plot."""
    order = sorted(wanted, key=lambda number: wanted[number])
    at = {number: min(max(wanted[number], 0.0), room) for number in order}
    for above, below in pairwise(order):
        at[below] = max(at[below], at[above] + (sizes[above] + sizes[below]) / 2)
    over = at[order[-1]] - room
    if over > 0:
        at[order[-1]] = room
        for below, above in pairwise(reversed(order)):
            at[above] = min(at[above], at[below] - (sizes[above] + sizes[below]) / 2)
    return at


def _rows(x: Along, y: Along, curves: Sequence[Curve], system: str) -> tuple[tuple[str, ...], ...]:
    first = curves[0]
    return tuple(
        (
            quantities.show(first.x[k], x.dimension, system),
            *(_cell(curve, first.x[k], y.dimension, system) for curve in curves),
        )
        for k in house.spaced(range(len(first.x)))
    )


def _cell(curve: Curve, at: float, dimension: str, system: str) -> str:
    nearest = min(range(len(curve.x)), key=lambda k: abs(curve.x[k] - at))
    span = curve.span(nearest, dimension)
    return shown(span, system) if span else quantities.show(curve.middle[nearest], dimension, system)
