"""The spin-down: speed of the free spool against time, tick by tick, with the fit and what it leaves over."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from spoolwright import quantities
from spoolwright.bench.uncertainty import Measured
from spoolwright.papers.charts import house_chart as house
from spoolwright.papers.charts.house_chart import Chart, Scale, Spec
from spoolwright.papers.figures import shown

HEIGHT = 215
WIDEST = 38
"""Room for "2,000" beside the axis, also where a page measures it before its lettering has arrived."""
CROSS = "M-0.8,-0.8L0.8,0.8M-0.8,0.8L0.8,-0.8"
STRIP_TOP, STRIP_BOTTOM = -0.16, -0.40
"""The strip of residuals lies under the curve, as shares of the greatest speed."""


@dataclass(frozen=True)
class Spin:
    """What a spin-down shows at each tick: s, measured and fitted rad/s, and whether it was mended."""

    times: Sequence[float]
    speeds: Sequence[float]
    fitted: Sequence[float]
    mended: Sequence[bool]
    stop_time: Measured
    before: Sequence[tuple[float, float]] = ()
    after: Sequence[tuple[float, float]] = ()

    @property
    def ends(self) -> list[float]:
        """From the first to the last moment that is drawn."""
        moments = [moment for moment, _ in (*self.before, *self.after)]
        return [min([0.0, *moments]), 1.02 * max([*self.times, *moments])]


def spin_down(spin: Spin, *, system: str = "metric", width: int | None = None) -> Chart:
    """Ticks as dots, mended ticks as crosses, the fit as a line, and the residuals as a thin strip below."""
    turning = house.scale("rotation", system)
    top = turning(max(max(spin.speeds), max(spin.fitted)))
    encoding = {
        "x": house.x_axis("time, s", spin.ends),
        "y": house.y_axis(
            turning.title("spool speed"),
            [STRIP_BOTTOM * top, 1.08 * top],
            values=_round_ticks(top),
            minExtent=WIDEST,
        ),
    }
    layers = [
        *_dots(spin, turning, encoding),
        *_cut_off(spin, turning, encoding, top),
        _fit(spin, turning, encoding),
        *_words(spin, turning, encoding),
    ]
    spec = house.chart_spec(
        _description(spin, system),
        [{"layer": layers}, *_strip(spin, turning, encoding["x"])],
        width=width,
        height=HEIGHT,
        resolve={"scale": {"y": "independent"}},
    )
    return Chart(spec, says(spin, system), ("time", "measured", "fit", "tick"), _rows(spin, system))


def _round_ticks(top: float) -> list[float]:
    step = 10 ** len(str(int(top))) / 10
    step = next(s for s in (step / 5, step / 2, step, 2 * step, 5 * step) if top / s <= 5.5)
    return [k * step for k in range(int(top / step) + 1)]


def _picked(spin: Spin) -> list[int]:
    """Which ticks are drawn: all mended ones, and of the others enough to see."""
    plain = [k for k, mended in enumerate(spin.mended) if not mended]
    return sorted(
        {*house.spaced(plain, house.MOST_POINTS // 2), *(k for k, m in enumerate(spin.mended) if m)}
    )


def _dots(spin: Spin, turning: Scale, encoding: Spec) -> list[Spec]:
    marks = {
        False: {"shape": "circle", "size": 12, "filled": True},
        True: {"shape": CROSS, "size": 50, "filled": False},
    }
    layers: list[Spec] = []
    for mended, look in marks.items():
        points = [
            {"x": round(spin.times[k], 4), "y": turning(spin.speeds[k])}
            for k in _picked(spin)
            if bool(spin.mended[k]) is mended
        ]
        if points:
            mark = {"type": "point", "color": house.INK, "opacity": 0.75, "aria": False} | look
            layers.append({"data": {"values": points}, "mark": mark, "encoding": encoding})
    return layers


def _cut_off(spin: Spin, turning: Scale, encoding: Spec, top: float) -> list[Spec]:
    """What was left out of the fit: the hand before, the touch after; faint, with its word."""
    layers: list[Spec] = []
    for points, text, align in ((spin.before, "hand", "left"), (spin.after, "left out", "right")):
        drawn = [{"x": round(t, 4), "y": turning(w)} for t, w in points if 0 <= turning(w) <= 1.08 * top]
        if not drawn:
            continue
        mark = {"type": "point", "shape": "circle", "size": 14, "filled": False, "color": house.INK}
        layers.append(
            {"data": {"values": drawn}, "mark": mark | {"opacity": 0.5, "aria": False}, "encoding": encoding}
        )
        place = house.at(drawn[0 if align == "left" else -1]["x"], drawn[-1]["y"])
        below = align == "left"  # the axis has its title above the first speeds
        lie = {"dy": 7, "baseline": "top"} if below else {"dy": -6, "baseline": "bottom"}
        layers.append(house.words(text, place, encoding, align=align, **lie))
    return layers


def _fit(spin: Spin, turning: Scale, encoding: Spec) -> Spec:
    points = [{"x": round(spin.times[k], 4), "y": turning(spin.fitted[k])} for k in _picked(spin)]
    mark = {"type": "line", "color": house.ACCENT, "strokeWidth": 1.6, "aria": False}
    return {"data": {"values": points}, "mark": mark, "encoding": encoding}


def _words(spin: Spin, turning: Scale, encoding: Spec) -> list[Spec]:
    third = len(spin.times) // 3
    count = sum(map(bool, spin.mended))
    start = house.at(spin.times[third], turning(spin.fitted[third]))
    lines = [house.words("fit", start, encoding, align="left", dx=6, dy=-8, color=house.ACCENT)]
    if count:
        corner = house.at(spin.ends[1], 1.08 * turning(max(spin.fitted)))
        text = f"× {count} of {len(spin.times)} ticks mended"
        lines.append(house.words(text, corner, encoding, align="right", baseline="top"))
    return lines


def _strip(spin: Spin, turning: Scale, x: Spec) -> list[Spec]:
    """Residuals on a scale of their own, placed so that the strip lies below the foot of the curve."""
    left = [turning(a) - turning(b) for a, b in zip(spin.speeds, spin.fitted, strict=True)]
    reach = max(max(abs(r) for r in left), 1e-6)
    whole, room = 1.08 - STRIP_BOTTOM, STRIP_TOP - STRIP_BOTTOM
    per_share = 2 * reach / room
    middle = (room / 2) * per_share
    domain = [-middle, whole * per_share - middle]
    axis = {
        "orient": "right",
        "values": [-round(reach, 2), 0, round(reach, 2)],
        "domain": False,
        "minExtent": 24,
    }
    y = house.y_axis("", domain, **axis)
    points = [{"x": round(spin.times[k], 4), "y": round(left[k], 4), "y2": 0} for k in _picked(spin)]
    mark = {"type": "rule", "color": house.INK, "strokeWidth": 0.7, "opacity": 0.8, "aria": False}
    zero = {"values": [{"x": spin.ends[0], "y": 0, "x2": spin.ends[1]}]}
    thin = mark | {"strokeWidth": 0.5}
    text = house.words(
        f"left over by the fit, {turning.unit}",
        house.at(spin.ends[0], reach),
        {"x": x, "y": y},
        align="left",
        dx=5,
        dy=-2,
        baseline="bottom",
    )
    sticks = {"data": {"values": points}, "mark": mark, "encoding": {"x": x, "y": y, "y2": {"field": "y2"}}}
    base = {"data": zero, "mark": thin, "encoding": {"x": x, "y": y, "x2": {"field": "x2"}}}
    return [{"layer": [base, sticks, text]}]


def _description(spin: Spin, system: str) -> str:
    first = quantities.show(spin.fitted[0], "rotation", system)
    return (
        f"Spin-down of the free spool. It starts at {first} and the fit stops after "
        f"{shown(spin.stop_time, system)}; {len(spin.times)} ticks, {sum(map(bool, spin.mended))} mended. "
        "A strip below shows what the fit leaves over at each tick."
    )


def says(spin: Spin, system: str = "metric") -> str:
    """What the spin-down means, and what it must not be taken for."""
    return (
        f"From its first measured speed the free spool takes {shown(spin.stop_time, system)} to stop. "
        "Compare this only with the same reel, the same spool, line and brakes: it is no measure of one "
        "reel against another."
    )


def _rows(spin: Spin, system: str) -> tuple[tuple[str, ...], ...]:
    return tuple(
        (
            quantities.show(spin.times[k], "time", system, unit="s"),
            quantities.show(spin.speeds[k], "rotation", system),
            quantities.show(spin.fitted[k], "rotation", system),
            "mended" if spin.mended[k] else "heard",
        )
        for k in house.spaced(range(len(spin.times)))
    )
