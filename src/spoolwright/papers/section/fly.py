"""A fly reel in section: back plate, fixed spindle, the spool on its bearings with the drag in its arbor."""

from __future__ import annotations

from spoolwright.papers.materials_key import family
from spoolwright.papers.section import drive, frame, spool
from spoolwright.papers.section.fly_measures import (
    CAP_DEPTH,
    CLUTCH_WALL,
    KNOB_DEPTH,
    KNOB_RADIUS,
    PALM_WALL,
    FlyMeasures,
)
from spoolwright.papers.section.measures import MM
from spoolwright.papers.section.shapes import Outline, Part, Point, Shape, halves, rectangle, ring, stroke
from spoolwright.papers.section.stack import cut_of, washer_key

ARBOR_WALL = 1.5
PAWL = (3.0, 2.0)


def parts(m: FlyMeasures, level: float) -> list[Part | None]:
    """All parts in the order of drawing."""
    found: list[Part | None] = [_frame(m), _bar(m), _foot(m)] if m.sheet.frame else []
    found += [_drag_knob(m), spool.line_fill(m, level), _spool(m), *_discs(m), drive.springs(m)]
    found += [_spindle(m), _clutch(m), *_bearings(m), _cap(m), _check(m), drive.handle(m)]
    return found if m.sheet.drag else [part for part in found if part is None or part.key != "springs"]


def axes(m: FlyMeasures) -> list[Outline]:
    """The chain line through the spindle."""
    return [stroke((m.off_end - 3.0, 0.0), (m.spool_end + 6.0, 0.0), line="chain")]


def _metal(m: FlyMeasures) -> str:
    return family(m.sheet.frame.material if m.sheet.frame else None)


def _frame(m: FlyMeasures) -> Part:
    """The back plate, with a boss that holds the spindle."""
    seat = m.shaft_radius
    shapes = ring(m.back_out, m.back_in, seat, m.frame_radius, cut=_metal(m))
    mark = (m.back_out + m.plate_wall / 2, -m.frame_radius + 3.0)
    return Part("frame", "Frame with its back plate", "frame", shapes, mark)


def _bar(m: FlyMeasures) -> Part:
    """The bar of the frame that carries the foot; not cut, by custom."""
    y = m.rim + m.bar_gap + m.pillar_radius
    bar = rectangle(m.back_in, y - m.pillar_radius, m.spool_end - 1.0, y + m.pillar_radius, wash=_metal(m))
    frame_table = m.sheet.frame
    count = f"One of the {frame_table.pillars} bars" if frame_table and frame_table.pillars else "Bar"
    return Part(
        "pillars", f"{count} of the frame", "frame bar", (bar,), (m.half_width * 0.6, y), "below", minor=True
    )


def _foot(m: FlyMeasures) -> Part:
    """The foot under the bar; its form is taken by custom."""
    top = m.bottom
    low, half = top + frame.FOOT_HEIGHT, frame.FOOT_HALF
    points = ((-half, low), (-half, low - 1.2), (-4.5, top), (4.5, top), (half, low - 1.2), (half, low))
    return Part(
        "foot",
        "Foot",
        "foot",
        (Outline(points, line="phantom"),),
        (-half * 0.5, low - 1.2),
        "below",
        minor=True,
    )


def _spool(m: FlyMeasures) -> Part:
    """Both flanges and the arbor, open towards the frame, joined to its hub by the face with the knob."""
    metal, wall = family(m.sheet.spool.material), max(m.wall if m.sheet.spool.wall else ARBOR_WALL, 1.0)
    bore = [(m.spool_end, m.shaft_radius + 0.1), (m.hub_in, m.shaft_radius + 0.1)]
    profile: tuple[Point, ...] = (
        (-m.spool_end, m.arbor - wall), (-m.spool_end, m.rim), (-m.half_width, m.rim),
        (-m.half_width, m.arbor), (m.half_width, m.arbor), (m.half_width, m.rim), (m.spool_end, m.rim), *bore,
        (m.hub_in, m.hub), (m.half_width - 0.6, m.hub), (m.half_width - 0.6, m.arbor - wall),
    )  # fmt: skip
    shapes: list[Shape] = list(halves(profile, cut=metal))
    if m.sheet.spool.palming_rim:
        left = m.spool_end - m.sheet.spool.palming_rim * MM
        shapes += ring(left, m.spool_end, m.rim, m.rim + PALM_WALL, cut=metal)
    title = "Spool with its rim to palm" if m.sheet.spool.palming_rim else "Spool"
    return Part("spool", title, "spool", tuple(shapes), (m.half_width + m.flange / 2, -(m.rim + m.full) / 2))


def _discs(m: FlyMeasures) -> list[Part]:
    """The members of the drag in the arbor, from the back plate inwards."""
    found = []
    for place, (washer, left, right) in enumerate(m.stack_places, start=1):
        inner, outer = washer.inner_diameter * MM / 2, washer.outer_diameter * MM / 2
        shapes = ring(left, right, inner, outer, cut=cut_of(washer), crossed=bool(place % 2), line="thin")
        found.append(
            Part(
                washer_key(washer, place),
                washer.name.capitalize(),
                "",
                shapes,
                ((left + right) / 2, -outer * 0.9),
            )
        )
    return found


def _spindle(m: FlyMeasures) -> Part:
    """The spindle from the back plate to the cap, stepped as the sheet says; not cut, by custom."""
    left, right = m.shaft_ends
    steps = m.sheet.shaft.steps if m.sheet.shaft else ()
    edges: list[Point] = []
    at = left
    for step in steps:
        end = min(at + step.length * MM, right)
        edges += [(at, step.diameter * MM / 2), (end, step.diameter * MM / 2)]
        at = end
    if at < right - 0.1:
        radius = edges[-1][1] if edges else m.shaft_radius
        edges += [(at, radius), (right, radius)]
    points = tuple((x, -r) for x, r in edges) + tuple((x, r) for x, r in reversed(edges))
    metal = family(m.sheet.shaft.material if m.sheet.shaft else "steel")
    mark = (m.hub_in + 2.0, m.shaft_radius * 0.3)
    return Part(
        "spool-shaft", "Spindle, fixed in the frame", "spindle", (Outline(points, wash=metal),), mark, "below"
    )


def _clutch(m: FlyMeasures) -> Part | None:
    """The one-way clutch in the spool's hub; it lets the spool wind in without the drag."""
    if m.clutch is None:
        return None
    left, right = m.clutch
    inner = m.clutch_radius
    shapes: list[Shape] = [
        *ring(left, right, inner - 0.9, inner, wash="steel", line="thin"),
        *ring(left, right, inner, inner + CLUTCH_WALL, line="phantom"),
    ]
    for side in (-1, 1):
        a, b = sorted((side * (inner + 0.4), side * (inner + CLUTCH_WALL - 0.6)))
        shapes.append(rectangle(left + 1.0, a, right - 1.0, b, wash="steel", line="thin"))
    mark = ((left + right) / 2, inner + CLUTCH_WALL / 2)
    return Part("roller-clutch", "One-way clutch of the drag", "one-way clutch", tuple(shapes), mark, "below")


def _bearings(m: FlyMeasures) -> list[Part]:
    found = []
    for number, (it, middle) in enumerate(m.spool_bearings):
        rear = number == 0 and len(m.spool_bearings) > 1
        key, name = ("bearing-off-side", "rear bearing") if rear else ("bearing-gear-side", "front bearing")
        shapes = spool.bearing(it, middle, 0.0)
        radius = (it.size.outer + it.size.bore) * MM / 4
        found.append(Part(key, f"Bearing, {it.place}", name, shapes, (middle, -radius)))
    return found


def _cap(m: FlyMeasures) -> Part:
    shapes = ring(m.spool_end, m.spool_end + CAP_DEPTH, 0.0, m.shaft_radius + 3.0, line="phantom")
    mark = (m.spool_end + CAP_DEPTH / 2, -(m.shaft_radius + 1.5))
    return Part("cast-cap", "Cap that releases the spool", "spool cap", shapes, mark, minor=True)


def _drag_knob(m: FlyMeasures) -> Part | None:
    """The knob on the back plate; its form is taken by custom."""
    if not m.sheet.drag:
        return None
    hub = m.sheet.drag.thread.pitch_diameter * MM / 2
    left = m.back_out - KNOB_DEPTH
    shapes = ring(left, m.back_out - 0.3, hub, KNOB_RADIUS, line="phantom")
    mark = (left + KNOB_DEPTH / 2, KNOB_RADIUS * 0.7)
    control = m.sheet.drag.control
    return Part("star", f"The {control} of the drag", f"drag {control}", shapes, mark, "below")


def _check(m: FlyMeasures) -> Part | None:
    """The click: a wheel on the spool's back and a pawl on the plate, at a place taken by custom."""
    it = m.sheet.check
    if it is None:
        return None
    members = [w.outer_diameter * MM / 2 for w in m.stack]
    wheel = min(max([m.hub, *members]) + 2.5, m.arbor - 3.0)
    gap = (m.back_in, -m.spool_end)
    left, right = (gap[0] + 0.3, gap[0] + 0.3 + PAWL[1])
    shapes: list[Shape] = [*ring(left, right, wheel - 1.6, wheel, line="phantom")]
    shapes.append(rectangle(left, wheel, right, wheel + PAWL[0], wash="steel", line="thin"))
    words = f"Check: wheel of {it.wheel_teeth} teeth, {it.pawls} pawl{'' if it.pawls == 1 else 's'}"
    return Part("check", words, "check", tuple(shapes), ((left + right) / 2, wheel + PAWL[0] * 0.6), "below")
