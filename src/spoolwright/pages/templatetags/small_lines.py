"""{% load small_lines %}: the two small drawings that stand inside a line of text.

{% day_scale likely late %}                 a promise on a thin scale of days
{% pull_line times forces "words for it" %} a pull trace the width of the column
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Any

from django import template

from spoolwright.pages.words import when
from spoolwright.papers.charts.house_chart import thinned

register = template.Library()

SCALE_WIDTH, SCALE_EDGE, SHORTEST_SCALE, LONGEST_SCALE = 260.0, 4.0, 14, 60
LINE_WIDTH, LINE_HEIGHT = 600.0, 80.0


@register.inclusion_tag("_day_scale.html")
def day_scale(likely: date | None, late: date | None, now: date | None = None) -> dict[str, Any]:
    """The likely day as a bar of ink, the safe day at the end of a thinner one, today a tall tick."""
    this = now or when.today()
    if likely is None or late is None:
        return {"promised": False}
    first = min(this, likely)
    days = min(max(SHORTEST_SCALE, (late - first).days + 1, (this - first).days + 1), LONGEST_SCALE)
    step = (SCALE_WIDTH - 2 * SCALE_EDGE) / days

    def place(that: date) -> float:
        return round(SCALE_EDGE + step * min(max((that - first).days, 0), days), 1)

    ticks = [
        (round(SCALE_EDGE + step * n, 1), 15 if (first.toordinal() + n) % 7 == 1 else 11)
        for n in range(days + 1)
    ]
    return {
        "promised": True,
        "words": when.spread(likely, late, this),
        "width": SCALE_WIDTH,
        "ticks": ticks,
        "today": place(this),
        "from": place(max(first, this)) if late >= this else place(likely),
        "likely": place(likely),
        "late": place(late),
        "gone_by": late < this,
    }


@register.inclusion_tag("_pull_line.html")
def pull_line(
    times: Sequence[float], forces: Sequence[float], words: str, running: float | None = None
) -> dict[str, Any]:
    """The trace as a line over its ground; `running`, in the unit of the forces, is ruled across it."""
    top = max(max(forces, default=0.0), 0.0) or 1.0
    start, length = (times[0], times[-1] - times[0]) if len(times) > 1 else (0.0, 0.0)

    def height(force: float) -> float:
        return round(LINE_HEIGHT - max(force, 0.0) / top * (LINE_HEIGHT - 8), 1)

    kept = thinned(times, forces) if length > 0 else []
    points = " ".join(f"{(t - start) / length * LINE_WIDTH:.1f},{height(force)}" for t, force in kept)
    rule = None if running is None else height(running)
    return {"points": points, "words": words, "rule": rule, "width": LINE_WIDTH, "ground": LINE_HEIGHT}
