"""How a coefficient of the shop book moved: the sheet's band, then what was believed after each proof."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from spoolwright.papers.charts import house_chart as house
from spoolwright.papers.charts.house_chart import Chart, Spec

HEIGHT = 190
ROOM = 0.08


@dataclass(frozen=True)
class Step:
    """What was believed at one moment, with the ends of the 90 % interval; `alone` is what its proof said.

    `words` say which proof it was, `odd` that it is an outlier.
    """

    words: str
    middle: float
    low: float
    high: float
    alone: float | None = None
    odd: bool = False


def coefficient_moves(
    what: str,
    steps: Sequence[Step],
    *,
    unit: str = "",
    names: tuple[str, str] = ("sheet", ""),
    width: int | None = None,
) -> Chart:
    """The first step is the sheet's; a ring is what one proof alone would say.

    `names` are what stands under the first step and, where it is no count of proofs, under the last.
    """
    if not steps:
        raise ValueError(f"{what}: at least what the sheet says is needed")
    first, last = steps[0], steps[-1]
    count = len(steps) - 1
    behind = f" {unit}" if unit else ""
    description = (
        f"{what}: from {_said(first)}{behind} on the sheet to {_said(last)}{behind} after {count} "
        f"proof{'' if count == 1 else 's'}."
    )
    spec = house.chart_spec(description, _layers(steps, unit, names), width=width, height=HEIGHT)
    rows = tuple(
        (step.words, _number(step.alone) if step.alone is not None else "–", _said(step)) for step in steps
    )
    return Chart(spec, _says(steps, behind), ("after", "it alone says", f"believed{behind}"), rows)


def _says(steps: Sequence[Step], behind: str) -> str:
    first, last = steps[0], steps[-1]
    if len(steps) == 1:
        return f"No proof yet: what stands is the sheet's own range, {_said(first)}{behind}."
    before, now = (step.high - step.low for step in (first, last))
    way = "The interval is no narrower than the sheet's"
    if now < before:
        way = f"The interval is {100 * (1 - now / before):.0f} % narrower than the sheet's"
    odd = sum(step.odd for step in steps)
    ringed = f"; {odd} outlier{'' if odd == 1 else 's'} ringed twice" if odd else ""
    return f"{way}{ringed}. A ring is what one proof alone says, with everything else as its sheet has it."


def _said(step: Step) -> str:
    return f"{_number(step.middle)} ({_number(step.low)} to {_number(step.high)})"


def _number(value: float) -> str:
    return f"{value:.3f}" if value < 1.0 else f"{value:.2f}" if value < 10 else f"{value:.0f}"


def _layers(steps: Sequence[Step], unit: str, names: tuple[str, str]) -> list[Spec]:
    values = [end for step in steps for end in (step.low, step.high)]
    values += [step.alone for step in steps if step.alone is not None]
    low, high = min(values), max(values)
    room = (high - low) * ROOM or abs(high) * ROOM or 1.0
    last = len(steps) - 1
    ticks = [n for n in range(last + 1) if n % max(1, round(last / 8)) == 0]
    other = f"datum.value == {last} ? '{names[1]}' : ''" if names[1] else "datum.label"
    label = f"datum.value == 0 ? '{names[0]}' : {other}"
    encoding = {
        "x": house.x_axis(
            "" if names[1] else "proofs", (-0.5, last + 0.5), values=ticks, labelExpr=label, format="d"
        ),
        "y": house.y_axis(unit, (low - room, high + room)),
    }
    first = steps[0]
    box = {"x": -0.5, "x2": last + 0.5, "y": first.low, "y2": first.high}
    rows = [{"x": n, "y": step.middle, "low": step.low, "high": step.high} for n, step in enumerate(steps)]
    alone = [
        {"x": n, "y": step.alone, "odd": step.odd} for n, step in enumerate(steps) if step.alone is not None
    ]
    ends = {"y": encoding["y"] | {"field": "low"}, "y2": {"field": "high"}}

    def layer(mark: Spec, how: Spec) -> Spec:
        return {
            "data": {"values": rows},
            "mark": mark | {"color": house.ACCENT, "aria": False},
            "encoding": how,
        }

    return [
        house.band(box, encoding, opacity=house.BAND / 2),
        layer({"type": "rule", "strokeWidth": 2}, encoding | ends),
        layer({"type": "line", "strokeWidth": 1.2}, encoding),
        layer({"type": "point", "filled": True, "size": 22}, encoding),
        _rings(alone, encoding, 26),
        _rings([row for row in alone if row["odd"]], encoding, 110),
    ]


def _rings(rows: list[Spec], encoding: Spec, size: int) -> Spec:
    mark = {"type": "point", "filled": False, "size": size, "color": house.INK, "strokeWidth": 1}
    return {"data": {"values": rows}, "mark": mark | {"aria": False}, "encoding": encoding}
