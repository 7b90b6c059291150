"""The spool in section: flanges, arbor and hub cut, line as stippled turns, the shaft and its bearings."""

from __future__ import annotations

from spoolwright.papers.materials_key import family
from spoolwright.papers.section.measures import MM, Measures
from spoolwright.papers.section.shapes import Outline, Part, Point, Round, Shape, rectangle, ring, stroke
from spoolwright.sheets.sheet_tables import Bearing

HUB_WALL = 2.0
WEB_WALL = 1.8
LEAST_HOLLOW = 2.5
"""A hollow lower than this is not worth boring: the arbor is drawn solid."""


def spool(m: Measures) -> Part:
    """Flanges, arbor, webs and hub, upper and lower half."""
    material = family(m.sheet.spool.material)
    profile, hollow = _profile(m), _hollow(m)
    shapes = tuple(
        Outline(_turned(profile, side), cut=material, holes=(_turned(hollow, side),) if hollow else ())
        for side in (-1, 1)
    )
    mark = (m.half_width + m.wall / 2, -(m.rim + m.full) / 2)
    return Part("spool", "Spool", "spool", shapes, mark)


def _turned(points: tuple[Point, ...], side: int) -> tuple[Point, ...]:
    return tuple((x, side * radius) for x, radius in points)


def _hub(m: Measures) -> float:
    """Radius of the hub: round the shaft, or round the bearings where they sit in the spool."""
    return max([m.shaft_radius, *(b.size.outer * MM / 2 for b in pocketed(m))]) + HUB_WALL


def pocketed(m: Measures) -> list[Bearing]:
    """The bearings that sit inside the spool."""
    inside = m.sheet.shaft and m.sheet.shaft.borne == "fixed, spool on its bearings"
    return [b for b, _ in m.spool_bearings] if inside else []


def _profile(m: Measures) -> tuple[Point, ...]:
    hub = min(_hub(m), m.arbor)
    outer: tuple[Point, ...] = (
        (-m.spool_end, hub),
        (-m.spool_end, m.rim),
        (-m.half_width, m.rim),
        (-m.half_width, m.arbor),
        (m.half_width, m.arbor),
        (m.half_width, m.rim),
        (m.spool_end, m.rim),
        (m.spool_end, hub),
    )
    return outer + _bore(m)


def _bore(m: Measures) -> tuple[Point, ...]:
    """The hub's inner edge from right to left, stepped where a bearing sits in it."""
    if not pocketed(m):
        return ((m.spool_end, m.shaft_radius), (-m.spool_end, m.shaft_radius))
    clear = m.shaft_radius + 0.6
    edge: list[Point] = []
    for bearing, middle in sorted(m.spool_bearings, key=lambda it: -it[1]):
        outer, half = bearing.size.outer * MM / 2, bearing.size.width * MM / 2
        steps = [(middle + half, outer), (middle - half, outer)]
        edge += (
            [steps[0], steps[1], (middle - half, clear)] if middle > 0 else [(middle + half, clear), *steps]
        )
    right = [(m.spool_end, edge[0][1])]
    return (*right, *edge, (-m.spool_end, edge[-1][1]))


def _hollow(m: Measures) -> tuple[Point, ...]:
    """The hollow between hub and arbor, closed by a web at each end."""
    low, high, end = _hub(m), m.arbor - max(m.wall, 1.2), m.half_width - WEB_WALL
    if high - low < LEAST_HOLLOW or end <= 0:
        return ()
    return ((-end, low), (end, low), (end, high), (-end, high))


def line_fill(m: Measures, level: float) -> Part:
    """The line from the arbor to `level` (radius, mm), and the full level where it lies lower."""
    shapes: list[Shape] = list(ring(-m.half_width, m.half_width, m.arbor, level, cut="line", line="thin"))
    if level < m.full - 0.05:
        for side in (-1, 1):
            shapes.append(
                stroke((-m.half_width, side * m.full), (m.half_width, side * m.full), line="phantom")
            )
    mark = (-m.half_width * 0.45, m.arbor + 0.8 * (level - m.arbor))
    return Part("line", "Line on the spool", "line", tuple(shapes), mark, "below")


def shaft(m: Measures) -> Part:
    """The spool's shaft: not cut, by custom, only washed with its metal."""
    left, right = m.shaft_ends
    r, point = m.shaft_radius, 0.8
    points = ((left, -r + point), (left + point, -r), (right - point, -r), (right, -r + point))
    points += ((right, r - point), (right - point, r), (left + point, r), (left, r - point))
    material = family(m.sheet.shaft.material if m.sheet.shaft else "steel")
    mark = (-m.half_width * 0.12, r * 0.2)
    return Part("spool-shaft", "Spool shaft", "spool shaft", (Outline(points, wash=material),), mark, "below")


def bearing(size_of: Bearing, middle: float, axis: float) -> tuple[Shape, ...]:
    """A ball bearing about an axis: two rings cut, a ball between them above and below."""
    size = size_of.size
    bore, outer, half = size.bore * MM / 2, size.outer * MM / 2, size.width * MM / 2
    section = outer - bore
    inner_ring, outer_ring = bore + 0.29 * section, outer - 0.29 * section
    left, right = middle - half, middle + half
    shapes: list[Shape] = [
        *ring(left, right, bore, inner_ring, axis, cut="steel", line="thin"),
        *ring(left, right, outer_ring, outer, axis, cut="steel", crossed=True, line="thin"),
    ]
    ball = min(0.30 * section, 0.42 * size.width * MM)
    shapes += [Round((middle, axis + side * (bore + outer) / 2), ball) for side in (-1, 1)]
    if size_of.shields != "open":
        for side in (-1, 1):
            for face in (left + 0.25, right - 0.25):
                shapes.append(stroke((face, axis + side * inner_ring), (face, axis + side * outer_ring)))
    return tuple(shapes)


def spool_bearings(m: Measures) -> list[Part]:
    """The bearings on the spool's shaft, each its own part."""
    parts = []
    for number, (it, middle) in enumerate(m.spool_bearings):
        off = middle < 0 and len(m.spool_bearings) > 1
        key = "bearing-off-side" if off else "bearing-gear-side"
        radius = (it.size.outer + it.size.bore) * MM / 4
        side = "above" if number else "below"
        shapes = bearing(it, middle, 0.0)
        mark = (middle, radius if side == "below" else -radius)
        parts.append(Part(key, f"Bearing, {it.place}", "spool bearing", shapes, mark, side))
    return parts


def spool_axis(m: Measures, right: float) -> Outline:
    """The chain line through the whole reel."""
    return stroke((m.off_end - 3.0, 0.0), (right + 3.0, 0.0), line="chain")


def washer_box(left: float, right: float, radius: float, axis: float) -> Outline:
    """A plain outline for a part that the sheet names and does not measure."""
    return rectangle(left, axis - radius, right, axis + radius, line="phantom")
