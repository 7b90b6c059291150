"""A repeatability study: every try beside the mean of its part, one block for each person."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.papers.charts import house_chart as house
from spoolwright.papers.charts.history_chart import raised
from spoolwright.papers.charts.house_chart import Chart, Scale, Spec

HEIGHT = 220
HEADROOM = 0.16
_GAP = 1.0
"""Room between the blocks of two people, in columns."""


@dataclass(frozen=True)
class Studied:
    """Tries [SI] as parts by persons by tries, who took them, and the spread of instrument and hands."""

    parts: Sequence[str]
    persons: Sequence[str]
    values: NDArray[np.float64]
    gauge: float
    dimension: str


def study(studied: Studied, says: str, *, system: str = "metric", width: int | None = None) -> Chart:
    """How far each try lies from the mean of its part; the band is twice the spread of a single try."""
    apart = studied.values - studied.values.mean(axis=(1, 2), keepdims=True)
    far = max(float(np.abs(apart).max()), 2 * studied.gauge) or 1.0
    scale = house.scale(studied.dimension, system, far)
    scale = Scale(scale.dimension, scale.unit, scale.factor)
    top = scale(far) * (1 + 2 * HEADROOM)
    whole = len(studied.persons) * (len(studied.parts) + _GAP)
    encoding = {
        "x": house.x_axis("", [-_GAP / 2 - 0.5, whole - _GAP / 2 - 0.5]) | {"axis": None},
        "y": house.y_axis(raised(scale.title("try less the mean of its part")), [-top, top]),
    }
    band = {"x": -_GAP / 2 - 0.5, "x2": whole - _GAP / 2 - 0.5}
    band |= {"y": -scale(2 * studied.gauge), "y2": scale(2 * studied.gauge)}
    layers = [house.band(band, encoding)]
    for number, person in enumerate(studied.persons):
        layers += _block(number, person, apart[:, number, :], scale, encoding, top)
    spec = house.chart_spec(_described(studied), layers, width=width, height=HEIGHT)
    head = ("part", *studied.persons)
    return Chart(spec, says, head, tuple(_rows(studied, system)))


def _block(
    number: int, person: str, apart: NDArray[np.float64], scale: Scale, encoding: Spec, top: float
) -> list[Spec]:
    start = number * (len(apart) + _GAP)
    points = [
        {"x": start + column, "y": scale(float(value))} for column, row in enumerate(apart) for value in row
    ]
    mean = scale(float(apart.mean()))
    line = [{"x": start - 0.4, "x2": start + len(apart) - 0.6, "y": mean}]
    dot = {"type": "point", "filled": False, "color": house.ACCENT, "size": 30, "opacity": 1, "aria": False}
    rule = {"type": "rule", "color": house.INK, "strokeWidth": 1.2, "aria": False}
    middle = house.at(start + (len(apart) - 1) / 2, top)
    return [
        {"data": {"values": line}, "mark": rule, "encoding": encoding | {"x2": {"field": "x2"}}},
        {"data": {"values": points}, "mark": dot, "encoding": encoding},
        house.words(person[:14], middle, encoding, align="center", baseline="top", dy=2),
    ]


def _described(studied: Studied) -> str:
    people = ", ".join(studied.persons)
    return (
        f"Each try of {len(studied.parts)} parts, in their order from left to right, by {people}: how far it "
        "lies from the mean of its part. A line is the mean of one person; the band is twice the spread of a "
        "single try."
    )


def _rows(studied: Studied, system: str) -> list[tuple[str, ...]]:
    from spoolwright import quantities

    def told(values: NDArray[np.float64]) -> str:
        return "; ".join(quantities.show(float(value), studied.dimension, system) for value in values)

    return [
        (part, *(told(studied.values[k, person]) for person in range(len(studied.persons))))
        for k, part in enumerate(studied.parts)
    ]
