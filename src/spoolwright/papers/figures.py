"""Numbers as they reach a paper: ready text, a measured value, or a predicted span; never a bare number."""

from __future__ import annotations

from dataclasses import dataclass

from spoolwright import quantities
from spoolwright.bench.uncertainty import Measured


@dataclass(frozen=True)
class Span:
    """A predicted value: the middle and the interval that holds `share` of what is likely, SI."""

    middle: float
    low: float
    high: float
    dimension: str
    share: float = 0.9


Figure = str | Measured | Span


def shown(figure: Figure, system: str = "metric") -> str:
    """The figure in the reader's units: "2.65 kg ± 0.11 kg"; a span as "8.20 kg, 7.6 to 8.8 kg"."""
    if isinstance(figure, str):
        return figure
    if isinstance(figure, Measured):
        return quantities.show(figure.value, figure.dimension, system, uncertainty=figure.expanded)
    width = figure.high - figure.low
    middle = quantities.show(figure.middle, figure.dimension, system, uncertainty=width).partition(" ±")[0]
    return f"{middle}, {quantities.show_interval(figure.low, figure.high, figure.dimension, system)}"
