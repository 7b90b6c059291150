"""{% load small_lines %}: the two small drawings that stand inside a line of text.

{% day_scale likely late %}                 a promise on a thin scale of days
{% pull_line forces "words for it" %}       a pull trace the width of the column
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from itertools import pairwise
from typing import Any

from django import template

from spoolwright.pages.words import when

register = template.Library()

SCALE_WIDTH, SCALE_EDGE, SHORTEST_SCALE, LONGEST_SCALE = 260.0, 4.0, 14, 60
LINE_WIDTH, LINE_HEIGHT, MOST_POINTS = 600.0, 80.0, 400


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
def pull_line(forces: Sequence[float], words: str, running: float | None = None) -> dict[str, Any]:
    """The trace as a line; `running` (same unit as the forces) is ruled across it."""
    top = max((*forces, 0.0)) or 1.0

    def height(force: float) -> float:
        return round(LINE_HEIGHT - max(force, 0.0) / top * (LINE_HEIGHT - 8), 1)

    kept = thinned(forces)
    step = LINE_WIDTH / max(len(kept) - 1, 1)
    points = " ".join(f"{n * step:.1f},{height(force)}" for n, force in enumerate(kept))
    rule = None if running is None else height(running)
    return {"points": points, "words": words, "rule": rule, "width": LINE_WIDTH, "ground": LINE_HEIGHT}


def thinned(forces: Sequence[float]) -> list[float]:
    """At most so many points that the eye sees them all; of each stretch the lowest and the highest stay."""
    if len(forces) <= MOST_POINTS:
        return list(forces)
    count = MOST_POINTS // 2
    bounds = [round(n * len(forces) / count) for n in range(count + 1)]
    kept: list[float] = []
    for start, end in pairwise(bounds):
        stretch = forces[start:end]
        low, high = min(stretch), max(stretch)
        kept += [low, high] if list(stretch).index(low) < list(stretch).index(high) else [high, low]
    return kept
