"""A fixed-spool reel in section: spool with its drag well, rotor with bail arms, line roller, main shaft."""

from __future__ import annotations

from spoolwright.papers.materials_key import family
from spoolwright.papers.section import drive, fixed_body, spool
from spoolwright.papers.section.fixed_measures import (
    CAP_WALL,
    CLUTCH_WALL,
    NUT_DEPTH,
    NUT_RADIUS,
    ROTOR_WALL,
    FixedMeasures,
)
from spoolwright.papers.section.measures import MM
from spoolwright.papers.section.shapes import Outline, Part, Point, Shape, halves, rectangle, ring, stroke
from spoolwright.papers.section.stack import cut_of, washer_key

HUB_WALL = 2.0
ARM_THICK = 3.0
STACK_ROOM = 0.25
"""Room between the discs and the main shaft where a disc is not keyed to it."""


def parts(m: FixedMeasures, level: float) -> list[Part | None]:
    """All parts in the order of drawing."""
    found: list[Part | None] = [*fixed_body.behind(m), _rotor(m), _line_roller(m)]
    found += [spool.line_fill(m, level), _spool(m), *_discs(m), _springs(m), _knob(m)]
    found += [fixed_body.pinion(m), _clutch(m), *fixed_body.bearings(m), _rotor_nut(m), _shaft(m)]
    return [*found, *fixed_body.before(m)]


def axes(m: FixedMeasures) -> list[Outline]:
    """The chain lines through the main shaft and through the main gear."""
    lines = [stroke((m.off_end - 3.0, 0.0), (m.body_out + 3.0, 0.0), line="chain")]
    if m.sheet.gears:
        ends = (-m.body_side - 3.0, m.arm_level + m.arm_thick + 3.0)
        lines.append(stroke((m.gear_centre, ends[0]), (m.gear_centre, ends[1]), line="chain"))
    return lines


def _spool(m: FixedMeasures) -> Part:
    """Lip, arbor with the well for the drag, rear flange and skirt, and the hub on the main shaft."""
    front, end = -m.spool_end, m.spool_end
    floor, back = m.floor_faces
    bore, hub = m.shaft_radius + 0.1, m.shaft_radius + HUB_WALL
    inner = m.rear - m.skirt_wall
    profile: tuple[Point, ...] = (
        (front, m.well), (front, m.rim), (-m.half_width, m.rim), (-m.half_width, m.arbor),
        (m.half_width, m.arbor), (m.half_width, m.rear), (m.skirt_end, m.rear), (m.skirt_end, inner),
        (end, inner), (end, m.well), (back, m.well), (back, hub), (m.hub_end, hub), (m.hub_end, bore),
        (floor, bore), (floor, m.well),
    )  # fmt: skip
    shapes = halves(profile, cut=family(m.sheet.spool.material))
    return Part("spool", "Spool", "spool", shapes, ((front - m.half_width) / 2, -(m.rim + m.full) / 2))


def _discs(m: FixedMeasures) -> list[Part]:
    """The members of the drag in the well; its floor is the spool's own."""
    found = []
    for place, (washer, left, right) in enumerate(m.stack_places, start=1):
        inner, outer = washer.inner_diameter * MM / 2, min(washer.outer_diameter * MM / 2, m.well - 0.1)
        cut = cut_of(washer)
        shapes = ring(left, right, inner, outer, cut=cut, crossed=bool(place % 2), line="hair")
        mark = ((left + right) / 2, -outer * 0.8)
        found.append(Part(washer_key(washer, place), washer.name.capitalize(), "", shapes, mark))
    return found


def _springs(m: FixedMeasures) -> Part | None:
    return drive.springs(m, m.springs_in, 0.0)


def _knob(m: FixedMeasures) -> Part | None:
    """The drag knob over the springs; its form is taken by custom."""
    drag = m.sheet.drag
    if drag is None:
        return None
    left, right = m.knob_out, m.stack_end + 0.4
    radius = min(m.well - 0.8, m.sheet.drag.springs.outer_diameter * MM / 2 + 4.0) if m.sheet.drag else 8.0
    outer = max(radius, m.shaft_radius + 5.0)
    profile: tuple[Point, ...] = (
        (left, 0.0), (left, outer), (right, outer), (right, outer - CAP_WALL),
        (left + CAP_WALL, outer - CAP_WALL), (left + CAP_WALL, 0.0),
    )  # fmt: skip
    shapes = halves(profile, line="phantom")
    mark = (left + CAP_WALL / 2, outer * 0.6)
    return Part("star", f"The {drag.control} of the drag", f"drag {drag.control}", shapes, mark, "below")


def _rotor(m: FixedMeasures) -> Part:
    """The rotor: web on the pinion, cup inside the skirt, flange behind it and an arm on either side."""
    said = m.sheet.rotor
    metal = family(said.material if said else "composite")
    bore, cup, end = m.pinion_pitch, m.cup, m.rotor_end
    arm = m.rotor_radius
    profile: tuple[Point, ...] = (
        (m.web_in, bore), (m.web_in, cup), (end - ROTOR_WALL, cup), (end - ROTOR_WALL, arm - ARM_THICK),
        (m.arm_tip, arm - ARM_THICK), (m.arm_tip, arm), (end, arm), (end, cup - ROTOR_WALL),
        (m.web_out, cup - ROTOR_WALL), (m.web_out, bore),
    )  # fmt: skip
    shapes: list[Shape] = list(halves(profile, cut=metal, crossed=True))
    if said and said.bail_wire_diameter:
        half = said.bail_wire_diameter * MM / 2
        tip = m.arm_tip
        for side in (-1, 1):
            y = side * (arm - ARM_THICK / 2)
            shapes.append(rectangle(tip - 9.0, y - half, tip, y + half, line="phantom"))
    mark = (end - ROTOR_WALL / 2, -(cup + arm) / 2)
    return Part("rotor", "Rotor with its bail arms", "rotor", tuple(shapes), mark)


def _line_roller(m: FixedMeasures) -> Part | None:
    """The line roller on the tip of the upper arm, its axis across the reel, and its bearing."""
    it = m.sheet.rotor
    if it is None:
        return None
    half, wide = it.roller_diameter * MM / 2, it.roller_width * MM
    x, top = m.arm_tip + half, -(m.rotor_radius - ARM_THICK) - 0.4
    bearing = m.bearing_at("line roller")
    outer = min(bearing.size.outer * MM / 2, half - 0.8) if bearing else half * 0.5
    inner = bearing.size.bore * MM / 2 if bearing else half * 0.35
    shapes: list[Shape] = []
    for side in (-1, 1):
        a, b = sorted((x + side * outer, x + side * half))
        shapes.append(rectangle(a, top, b, top + wide, cut="steel", line="thin"))
        c, d = sorted((x + side * inner, x + side * outer))
        shapes.append(rectangle(c, top + 0.6, d, top + wide - 0.6, cut="steel", crossed=True, line="thin"))
    shapes.append(rectangle(x - inner, top - 1.5, x + inner, top + wide + 1.0, wash="steel", line="thin"))
    return Part(
        "line-roller",
        "Line roller on its bearing",
        "line roller",
        tuple(shapes),
        (x + half * 0.8, top + wide / 2),
    )


def _rotor_nut(m: FixedMeasures) -> Part:
    """The nut that holds the rotor on the pinion; its form is taken by custom."""
    bore = min(m.pinion_pitch, NUT_RADIUS - 1.0)
    shapes = ring(m.web_in - NUT_DEPTH, m.web_in, bore, NUT_RADIUS, line="phantom")
    mark = (m.web_in - NUT_DEPTH / 2, NUT_RADIUS * 0.85)
    return Part("rotor-nut", "Rotor nut", "rotor nut", shapes, mark, "below", minor=True)


def _clutch(m: FixedMeasures) -> Part | None:
    """The one-way clutch between the pinion's sleeve and the body's collar."""
    held = m.sheet.anti_reverse
    if held is None or not held.roller_clutch:
        return None
    left, right = m.clutch
    inner = m.clutch_radius
    shapes: list[Shape] = [
        *ring(left, right, m.pinion_pitch, inner, wash="steel", line="thin"),
        *ring(left, right, inner, inner + CLUTCH_WALL, line="phantom"),
    ]
    for side in (-1, 1):
        a, b = sorted((side * (inner + 0.3), side * (inner + 2.0)))
        shapes.append(rectangle(left + 1.2, a, right - 1.2, b, wash="steel", line="thin"))
    mark = ((left + right) / 2, inner + CLUTCH_WALL * 0.6)
    return Part(
        "roller-clutch", "One-way clutch of the anti-reverse", "one-way clutch", tuple(shapes), mark, "below"
    )


def _shaft(m: FixedMeasures) -> Part:
    """The main shaft from the knob to the slider; not cut, by custom."""
    left, right = m.shaft_ends
    r = m.shaft_radius
    shape = rectangle(left, -r, right, r, wash=family(m.sheet.shaft.material if m.sheet.shaft else "steel"))
    mark = (m.half_width * 0.75, r * 0.3)
    return Part("spool-shaft", "Main shaft", "main shaft", (shape,), mark, "below")
