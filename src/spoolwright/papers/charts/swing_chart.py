"""A swing that dies away: what was recorded as dots, the fit as a line, and how its height falls."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import exp

from spoolwright.bench.uncertainty import Measured
from spoolwright.papers.charts import house_chart as house
from spoolwright.papers.charts.house_chart import Chart, Spec
from spoolwright.papers.figures import shown

HEIGHT = 190


@dataclass(frozen=True)
class Swung:
    """Moments [s], the record and its fit (both in the record's own unit), period and decay of the fit."""

    times: Sequence[float]
    signal: Sequence[float]
    fitted: Sequence[float]
    period: Measured
    decay: Measured


def swing(swung: Swung, *, system: str = "metric", width: int | None = None) -> Chart:
    """The record against time; its unit is the logger's own, so only time has a scale of numbers."""
    top = max(abs(v) for v in (*swung.signal, *swung.fitted)) or 1.0
    encoding = {
        "x": house.x_axis("time, s", [0, max(swung.times)]),
        "y": house.y_axis("as recorded, share of the greatest", [-1.15, 1.15], format=".1f"),
    }
    seen = [
        {"x": round(t, 4), "y": round(v / top, 4)} for t, v in zip(swung.times, swung.signal, strict=True)
    ]
    fitted = [
        {"x": round(t, 4), "y": round(v / top, 4)} for t, v in zip(swung.times, swung.fitted, strict=True)
    ]
    dots = {"type": "point", "color": house.INK, "size": 9, "filled": True, "opacity": 0.6, "aria": False}
    line = {"type": "line", "color": house.ACCENT, "strokeWidth": 1.4, "aria": False}
    layers: list[Spec] = [
        {"data": {"values": seen}, "mark": dots, "encoding": encoding},
        {"data": {"values": fitted}, "mark": line, "encoding": encoding},
        house.words(
            "fit", house.at(0, 1.15), encoding, align="left", baseline="top", dx=6, color=house.ACCENT
        ),
    ]
    spec = house.chart_spec(_description(swung, system), layers, width=width, height=HEIGHT)
    return Chart(spec, says(swung, system), ("time", "recorded", "fit"), _rows(swung, top))


def _description(swung: Swung, system: str) -> str:
    lasts = max(swung.times)
    return (
        f"A swing of {shown(swung.period, system)} there and back, recorded for {lasts:.3g} s, with its fit."
    )


def says(swung: Swung, system: str = "metric") -> str:
    """How long one swing takes, and what is left of it after ten."""
    left = exp(-swung.decay.value * 10 * swung.period.value)
    takes = shown(swung.period, system)
    return f"One swing there and back takes {takes}; after ten {100 * left:.0f} % of it is left."


def _rows(swung: Swung, top: float) -> tuple[tuple[str, ...], ...]:
    kept = house.spaced(range(len(swung.times)))
    return tuple(
        (f"{swung.times[k]:.3f} s", f"{swung.signal[k] / top:.3f}", f"{swung.fitted[k] / top:.3f}")
        for k in kept
    )
