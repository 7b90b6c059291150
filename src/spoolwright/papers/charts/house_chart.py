"""What every chart of the house shares: ink that follows the page, one accent, a sentence and a table."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any

from spoolwright import quantities
from spoolwright.bench import thinning
from spoolwright.bench.thinning import thinned as thinned
from spoolwright.papers.ink import ACCENT as ACCENT
from spoolwright.papers.ink import DRAWING_FACE
from spoolwright.papers.ink import INK as INK
from spoolwright.papers.typesetting import FONTS, Picture

Spec = dict[str, Any]

SCHEMA = "https://vega.github.io/schema/vega-lite/v6.json"
VEGA_LITE = "6.4"
"""The version inside vl-convert that stands nearest to the one the pages carry."""

BAND = 0.16
"""Opacity of a band of ink behind the accent."""

PAPER_WIDTH = 520
LETTERING = f"{DRAWING_FACE}, Libertinus Serif, serif"
LETTER_SIZE = 12
MOST_POINTS = thinning.MOST
MOST_ROWS = 24


@dataclass(frozen=True)
class Chart:
    """One chart: a Vega-Lite specification, the sentence under it, and a table of the same numbers."""

    spec: Spec
    says: str
    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]

    @property
    def description(self) -> str:
        """The words that stand for the picture where it cannot be seen."""
        return str(self.spec["description"])


@dataclass(frozen=True)
class Scale:
    """One axis in the reader's units: SI numbers in, numbers of that unit out."""

    dimension: str
    unit: str
    factor: float
    offset: float = 0.0

    def __call__(self, value: float) -> float:
        return round((value - self.offset) / self.factor, 6)

    def title(self, words: str) -> str:
        return f"{words}, {self.unit}" if self.unit else words


def scale(dimension: str, system: str, largest: float | None = None) -> Scale:
    """The scale on which a reader of this system reads the dimension; `largest` picks kilograms or grams."""
    name = quantities.display_unit(dimension, system)
    if largest is not None:
        name = quantities.show(largest, dimension, system).partition(" ")[2]
    unit = quantities.DIMENSIONS[dimension].unit(name)
    return Scale(dimension, unit.name, float(unit.factor), float(unit.offset))


def chart_spec(
    description: str, layers: Sequence[Spec], *, width: int | None, height: int, **rest: Any
) -> Spec:
    """A layered specification in the house's look; no width means the width of its place on the page."""
    return {
        "$schema": SCHEMA,
        "description": description,
        "width": "container" if width is None else width,
        "height": height,
        "autosize": {"type": "fit", "contains": "padding"},
        "background": None,
        "padding": {"left": 4, "right": 10, "top": 4, "bottom": 2},
        "config": _look(),
        "layer": list(layers),
    } | rest


def _look() -> Spec:
    lettering = {"labelFont": LETTERING, "titleFont": LETTERING, "labelFontSize": 11, "titleFontSize": 11}
    return {
        "font": LETTERING,
        "view": {"stroke": None},
        "axis": lettering
        | {
            "domainColor": INK,
            "tickColor": INK,
            "labelColor": INK,
            "titleColor": INK,
            "titleFontWeight": "normal",
            "titleAnchor": "end",
            "domainWidth": 0.7,
            "tickWidth": 0.7,
            "tickSize": 4,
            "grid": False,
            "labelFlush": True,
        },
        "axisY": {
            "titleAngle": 0,
            "titleAlign": "left",
            "titleBaseline": "bottom",
            "titleX": 0,
            "titleY": -7,
        },
        "text": {"font": LETTERING, "fontSize": LETTER_SIZE, "color": INK},
    }


def x_axis(title: str, ends: Sequence[float], **axis: Any) -> Spec:
    """A quantitative x channel over a stated domain, about six ticks."""
    return _channel("x", title, ends, {"tickCount": 6} | axis)


def y_axis(title: str, ends: Sequence[float], **axis: Any) -> Spec:
    """A quantitative y channel over a stated domain, about five ticks, its title lying flat above it."""
    return _channel("y", title, ends, {"tickCount": 5} | axis)


def _channel(field: str, title: str, ends: Sequence[float], axis: Spec) -> Spec:
    scale_of_it = {"domain": [round(end, 6) for end in ends], "nice": False, "zero": False}
    return {"field": field, "type": "quantitative", "scale": scale_of_it, "axis": {"title": title} | axis}


def at(x: float, y: float) -> Spec:
    """Data of a single point."""
    return {"values": [{"x": x, "y": y}]}


def words(text: str, where: Spec, encoding: Spec, **mark: Any) -> Spec:
    """A direct label at one point."""
    return {"data": where, "mark": {"type": "text", "text": text, "aria": False} | mark, "encoding": encoding}


def band(box: Mapping[str, float], encoding: Spec, **mark: Any) -> Spec:
    """A rectangle of thin ink: x, x2, y, y2 in chart units."""
    ends = {"x2": {"field": "x2"}, "y2": {"field": "y2"}}
    shape = {"type": "rect", "color": INK, "opacity": BAND, "aria": False}
    return {"data": {"values": [dict(box)]}, "mark": shape | mark, "encoding": encoding | ends}


def spaced(points: Sequence[Any], most: int = MOST_ROWS) -> list[Any]:
    """At most `most` of the points, evenly spaced, the first and the last among them."""
    if len(points) <= most:
        return list(points)
    return [points[round(k * (len(points) - 1) / (most - 1))] for k in range(most)]


def headroom(values: Iterable[float], share: float) -> tuple[float, float]:
    """From nothing to the greatest value and a share above it, for an axis that starts at zero."""
    top = max([*values, 0.0]) or 1.0
    return 0.0, top * (1 + share)


@cache
def _lettered() -> None:
    import vl_convert

    vl_convert.register_font_directory(str(FONTS))


def to_svg(spec: Spec) -> str:
    """The chart as SVG text, for a paper; a page draws the same specification itself."""
    import vl_convert

    _lettered()
    if spec.get("width") == "container":
        spec = spec | {"width": PAPER_WIDTH}
    return str(vl_convert.vegalite_to_svg(spec, vl_version=VEGA_LITE))


def picture(chart: Chart) -> Picture:
    """The chart as a paper carries it, with its description."""
    return Picture(to_svg(chart.spec), chart.description)
