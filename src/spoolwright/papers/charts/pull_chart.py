"""The pull trace: force against time, with the promise behind it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from spoolwright import quantities
from spoolwright.bench.uncertainty import Measured
from spoolwright.papers.charts import house_chart as house
from spoolwright.papers.charts.house_chart import Chart, Scale, Spec
from spoolwright.papers.figures import Span, shown

HEIGHT = 185
HEADROOM = 0.34
ROW = 17 / HEIGHT
"""Height of one row of lettering as a share of the chart."""


@dataclass(frozen=True)
class Pull:
    """What a pull trace shows: samples in s and N, when the drag slipped, and its two pulls.

    `promised` is what was promised for the running pull, if anything was.
    """

    times: Sequence[float]
    forces: Sequence[float]
    slip_start: float
    slip_end: float
    start_up: Measured
    running: Measured
    promised: Span | None = None


def pull_trace(pull: Pull, *, system: str = "metric", width: int | None = None) -> Chart:
    """Force against time: where slip began and ended, both pulls by name, the promise behind."""
    force = house.scale("force", system, max(pull.forces))
    promised_top = pull.promised.high if pull.promised else 0.0
    top = house.headroom([force(max(pull.forces)), force(promised_top)], HEADROOM)
    lowest = min(0.0, force(min(pull.forces)))
    encoding = {
        "x": house.x_axis("time, s", [float(pull.times[0]), float(pull.times[-1])]),
        "y": house.y_axis(force.title("pull"), [lowest, top[1]]),
    }
    layers = [
        *_promise(pull, force, encoding, top[1], system),
        _line(pull, force, encoding),
        *_slip(pull, encoding, top[1]),
        *_names(pull, force, encoding, top[1], system),
    ]
    spec = house.chart_spec(_description(pull, system), layers, width=width, height=HEIGHT)
    return Chart(spec, says(pull, system), ("time", "pull"), _rows(pull, system))


def _line(pull: Pull, force: Scale, encoding: Spec) -> Spec:
    points = [{"x": round(t, 4), "y": force(f)} for t, f in house.thinned(pull.times, pull.forces)]
    mark = {"type": "line", "color": house.ACCENT, "strokeWidth": 1.3, "strokeJoin": "round", "aria": False}
    return {"data": {"values": points}, "mark": mark, "encoding": encoding}


def _promise(pull: Pull, force: Scale, encoding: Spec, top: float, system: str) -> list[Spec]:
    if pull.promised is None:
        return []
    low, high = force(pull.promised.low), force(pull.promised.high)
    box = {"x": pull.slip_start, "x2": pull.slip_end, "y": low, "y2": high}
    text = "promised " + quantities.show_interval(pull.promised.low, pull.promised.high, "force", system)
    under = pull.running.value >= pull.promised.middle
    place = {"baseline": "top", "dy": 4} if under else {"baseline": "bottom", "dy": -4}
    where = house.at(pull.slip_end, low if under else high)
    return [house.band(box, encoding), house.words(text, where, encoding, align="right", dx=-4, **place)]


def _slip(pull: Pull, encoding: Spec, top: float) -> list[Spec]:
    ends = {"y2": {"field": "y2"}}
    layers: list[Spec] = []
    for moment, text, align, dx in (
        (pull.slip_start, "slip begins", "left", 4),
        (pull.slip_end, "slip ends", "right", -4),
    ):
        data = {"values": [{"x": moment, "y": 0, "y2": top * 0.94}]}
        rule = {"type": "rule", "color": house.INK, "strokeWidth": 0.6, "strokeDash": [2, 3], "aria": False}
        layers.append({"data": data, "mark": rule, "encoding": encoding | ends})
        layers.append(
            house.words(text, house.at(moment, 0), encoding, align=align, dx=dx, dy=-5, baseline="bottom")
        )
    return layers


def _names(pull: Pull, force: Scale, encoding: Spec, top: float, system: str) -> list[Spec]:
    """Running pull beside the trace at the right, start-up pull one row higher beside its peak."""
    points = _slipping(pull)
    peak_time, peak = max(points, key=lambda p: p[1])
    later = [f for t, f in points if t > (pull.slip_start + pull.slip_end) / 2] or [peak]
    below = _crowded_above(pull, force(max(later)), force, top)
    level = force(min(later) if below else max(later))
    side = {"baseline": "top", "dy": 5} if below else {"baseline": "bottom", "dy": -4}
    start_level = max(force(peak), level + ROW * top * (0.0 if below else 1.2))
    running = f"running {shown(pull.running, system)}"
    start = f"start-up {shown(pull.start_up, system)}"
    beside = {"align": "left", "dx": 6, "dy": -4, "baseline": "bottom"}
    return [
        house.words(running, house.at(pull.slip_end, level), encoding, align="right", dx=-4, **side),
        house.words(start, house.at(float(peak_time), start_level), encoding, **beside),
    ]


def _slipping(pull: Pull) -> list[tuple[float, float]]:
    points = list(zip(pull.times, pull.forces, strict=True))
    return [(t, f) for t, f in points if pull.slip_start <= t <= pull.slip_end] or points


def _crowded_above(pull: Pull, level: float, force: Scale, top: float) -> bool:
    """Whether the promise lies so close above the trace that its name must go below."""
    if pull.promised is None or pull.running.value >= pull.promised.middle:
        return False
    return force(pull.promised.low) - level < 1.3 * ROW * top


def _description(pull: Pull, system: str) -> str:
    promise = ""
    if pull.promised:
        low, high = pull.promised.low, pull.promised.high
        promise = f" The promised running pull is {quantities.show_interval(low, high, 'force', system)}."
    return (
        f"Pull trace. The pull rises to {shown(pull.start_up, system)} when the drag starts to slip "
        f"and runs at {shown(pull.running, system)} until slip ends after "
        f"{quantities.show(pull.slip_end - pull.slip_start, 'time', system)}.{promise}"
    )


def says(pull: Pull, system: str = "metric") -> str:
    """What the trace means for the person who fishes the reel."""
    ratio = pull.start_up.value / pull.running.value if pull.running.value > 0 else float("inf")
    excess = f"{100 * (ratio - 1):.0f} %"
    if ratio <= 1.10:
        return f"The drag starts smoothly: the pull at the start is {excess} above the pull while it runs."
    if ratio <= 1.30:
        return f"The drag holds a little before it gives: {excess} above its running pull."
    return (
        f"The drag sticks before it gives: a fish must pull {excess} harder to start it than to keep it "
        "running, and that is when a line breaks or a hook tears out."
    )


def _rows(pull: Pull, system: str) -> tuple[tuple[str, ...], ...]:
    unit = house.scale("force", system, max(pull.forces)).unit
    points = house.spaced(house.thinned(pull.times, pull.forces))
    return tuple(
        (quantities.show(t, "time", system, unit="s"), quantities.show(f, "force", system, unit=unit))
        for t, f in points
    )
