"""The spectrum of a noise's loudness, with the rates of the parts that were looked for named in it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from spoolwright import quantities
from spoolwright.papers.charts import house_chart as house
from spoolwright.papers.charts.house_chart import Chart, Spec

HEIGHT = 230
WIDEST = 38
_MULTIPLES = 3
_ROWS = 5
_ROOM = 0.5
_CLOSE = 0.08
"""Share of the height above the lines for the names; multiples nearer than that of the width have none."""


@dataclass(frozen=True)
class Noise:
    """How far loudness swells at each frequency, which rates were looked for, and which one was found.

    Frequencies and rates in `unit`, "Hz" or "times a turn"; the band listened to from `low` to `high` Hz.
    """

    frequencies: Sequence[float]
    swelling: Sequence[float]
    named: Sequence[tuple[str, float]]
    unit: str
    low: float
    high: float
    verdict: str
    found: str = ""


def noise_lines(noise: Noise, *, system: str = "metric", width: int | None = None) -> Chart:
    """Lines as sticks; each rate and its next two multiples ruled from below, its name above."""
    end = _end(noise)
    top = max([100 * s for f, s in zip(noise.frequencies, noise.swelling, strict=True) if f <= end] or [1.0])
    top = max(top, 1.0)
    ends = [0.0, top * (1 + _ROOM)]
    title = "how often, Hz" if noise.unit == "Hz" else "how often in a turn"
    encoding = {
        "x": house.x_axis(title, [0, end]),
        "y": house.y_axis("loudness swells by, %", ends, values=_ticks(top), minExtent=WIDEST),
    }
    layers = [*_rules(noise, top, end, encoding), _sticks(noise, end, encoding)]
    spec = house.chart_spec(_description(noise), layers, width=width, height=HEIGHT)
    return Chart(spec, says(noise), ("part", "how often", "swells by"), _rows(noise, end))


def _end(noise: Noise) -> float:
    """As far as the third multiple of the quickest part, or as far as the spectrum goes."""
    quickest = max((rate for _, rate in noise.named), default=0.0)
    last = max(noise.frequencies, default=1.0)
    return min(last, 3.3 * quickest) if quickest else last


def _ticks(top: float) -> list[float]:
    step = next(s * 10.0**k for k in range(-2, 5) for s in (1, 2, 5) if top / (s * 10.0**k) <= 4)
    return [round(k * step, 6) for k in range(int(top / step) + 1)]


def _sticks(noise: Noise, end: float, encoding: Spec) -> Spec:
    pairs = zip(noise.frequencies, noise.swelling, strict=True)
    points = [{"x": round(f, 3), "y": round(100 * s, 3), "y2": 0} for f, s in pairs if f <= end]
    mark = {"type": "rule", "color": house.INK, "strokeWidth": 1.0, "aria": False}
    return {"data": {"values": points}, "mark": mark, "encoding": encoding | {"y2": {"field": "y2"}}}


def _rules(noise: Noise, top: float, end: float, encoding: Spec) -> list[Spec]:
    layers: list[Spec] = []
    for row, (name, rate) in enumerate(noise.named):
        height = top * (1 + _ROOM * (1 - (row % _ROWS + 0.6) / _ROWS))
        colour = house.ACCENT if name == noise.found else house.INK
        places = [k * rate for k in range(1, _MULTIPLES + 1) if k * rate <= end]
        points = [{"x": round(place, 3), "y": 0, "y2": round(height, 4)} for place in places]
        mark = {
            "type": "rule",
            "color": colour,
            "strokeWidth": 1.4 if name == noise.found else 0.7,
            "strokeDash": [3, 3],
            "opacity": 0.9 if name == noise.found else 0.55,
            "aria": False,
        }
        layers.append(
            {"data": {"values": points}, "mark": mark, "encoding": encoding | {"y2": {"field": "y2"}}}
        )
        look = {"align": "left", "dx": 4, "baseline": "middle", "color": colour, "fontSize": 11}
        layers += [
            house.words(name if k == 0 else f"× {k + 1}", house.at(place, height), encoding, **look)
            for k, place in enumerate(places)
            if k == 0 or rate > _CLOSE * end
        ]
    return layers


def _description(noise: Noise) -> str:
    names = ", ".join(f"{name} at {rate:.4g} {noise.unit}" for name, rate in noise.named)
    return (
        f"How far loudness swells, by how often it does, in the band from {noise.low:.0f} to "
        f"{noise.high:.0f} Hz. Looked for: {names}. Verdict: {noise.verdict}."
    )


def says(noise: Noise) -> str:
    """What the lines mean."""
    if noise.found:
        return (
            f"Lines stand at the rate of the {noise.found} and at its multiples: "
            "something there knocks each time it comes round."
        )
    return (
        "Dashed rules are where a damaged part would knock. "
        "Lines elsewhere are the turning itself, other parts, or the room."
    )


def _rows(noise: Noise, end: float) -> tuple[tuple[str, ...], ...]:
    rows = []
    for name, rate in noise.named:
        for k in range(1, _MULTIPLES + 1):
            if k * rate <= end:
                often = f"{k * rate:.4g} {noise.unit}"
                words = name if k == 1 else f"{name}, times {k}"
                rows.append((words, often, _near(noise, k * rate)))
    return tuple(rows)


def _near(noise: Noise, rate: float) -> str:
    """The highest line within two hundredths of a rate."""
    pairs = zip(noise.frequencies, noise.swelling, strict=True)
    near = [s for f, s in pairs if abs(f - rate) <= 0.02 * rate]
    return quantities.show(max(near), "ratio", unit="%") if near else "not heard"
