"""The pull trace as a small line: the visual mark by which a reel is known at a glance."""

from __future__ import annotations

from collections.abc import Sequence
from html import escape

from spoolwright.papers.charts.house_chart import thinned

WIDTH, HEIGHT = 300, 40
MOST_POINTS = 300


def trace_mark(times: Sequence[float], forces: Sequence[float], title: str = "Pull trace") -> str:
    """An SVG of one polyline, at most 300 points, in the colour of the text around it.

    The line starts at no pull and fills its box; it carries no numbers, so it is a mark and not a chart.
    """
    if len(times) < 2 or len(times) != len(forces):
        raise ValueError(
            f"a trace needs two samples or more, as many times as forces; {len(times)} and {len(forces)} came"
        )
    start, length = float(times[0]), float(times[-1]) - float(times[0])
    if not length > 0:
        raise ValueError("the times of a trace must rise")
    top = max(max(map(float, forces)), 1e-9)
    points = " ".join(
        f"{(t - start) / length * WIDTH:.1f},{HEIGHT - 1 - max(f, 0.0) / top * (HEIGHT - 2):.1f}"
        for t, f in thinned(times, forces, MOST_POINTS)
    )
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" class="trace-mark" viewBox="0 0 {WIDTH} {HEIGHT}" '
        f'width="{WIDTH}" height="{HEIGHT}" preserveAspectRatio="none" role="img" '
        f'aria-label="{escape(title, quote=True)}">'
        f'<polyline points="{points}" fill="none" stroke="currentColor" stroke-width="1" '
        'stroke-linejoin="round" vector-effect="non-scaling-stroke"/></svg>'
    )
