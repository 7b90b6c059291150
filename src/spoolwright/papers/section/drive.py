"""The gear side: gear pair, drive shaft, roller clutch, springs, star and handle."""

from __future__ import annotations

from spoolwright.papers.materials_key import family
from spoolwright.papers.section import spool
from spoolwright.papers.section.measures import (
    CLUTCH_WALL,
    CLUTCH_WIDTH,
    KNOB_LENGTH,
    KNOB_RADIUS,
    MM,
    NUT_RADIUS,
    NUT_WIDTH,
    STAR_RADIUS,
    STAR_WIDTH,
    Measures,
    is_main_gear,
)
from spoolwright.papers.section.shapes import (
    Outline,
    Part,
    Point,
    Shape,
    halves,
    rectangle,
    ring,
    stroke,
)

LEAST_RIM = 1.2
DEDENDUM = 1.25
"""Depth of a tooth below the pitch circle in modules (ISO 53, basic rack)."""
ARM_HALF = 4.0
STUB = 15.0
"""How much of the second arm of a double handle is drawn before it is broken off."""


def main_gear(m: Measures, left: float | None = None, axis: float | None = None) -> Part:
    """The main gear: its disc and rim cut, its teeth not, by custom."""
    start, end = m.gear_faces
    shift = 0.0 if left is None else left - start
    y = m.drive_axis if axis is None else axis
    gears = m.sheet.gears
    metal = family(gears.main_material if gears else None)
    tip, root = m.main_pitch + m.module, m.main_pitch - DEDENDUM * m.module
    shapes: list[Shape] = [*halves(_gear_profile(m, root, shift), y, cut=metal)]
    for side in (-1, 1):
        a, b = sorted((y + side * root, y + side * tip))
        shapes.append(rectangle(start + shift, a, end + shift, b, wash=metal))
        pitch = y + side * m.main_pitch
        shapes.append(stroke((start + shift - 1.2, pitch), (end + shift + 1.2, pitch), line="chain"))
    mark = ((start + end) / 2 + shift, y + root - 1.0)
    return Part(
        "main-gear",
        f"Main gear, {gears.main_teeth} teeth" if gears else "Main gear",
        "main gear",
        tuple(shapes),
        mark,
        "below",
    )


def _gear_profile(m: Measures, root: float, shift: float) -> tuple[Point, ...]:
    """From the bore to the root of the teeth; dished where the discs lie inside the rim."""
    start, end = (face + shift for face in m.gear_faces)
    gear = next((w for w in m.stack if is_main_gear(w)), None)
    bore = gear.inner_diameter * MM / 2 if gear else m.drive_radius
    web = start + (gear.thickness * MM if gear else end - start)
    discs = [w.outer_diameter * MM / 2 for w in _after_gear(m)]
    dish = max(discs, default=0.0) + 0.4
    if web >= end - 0.2 or root - dish < LEAST_RIM:
        return ((start, bore), (end, bore), (end, root), (start, root))
    return ((start, bore), (web, bore), (web, dish), (end, dish), (end, root), (start, root))


def _after_gear(m: Measures) -> list:
    members = list(m.stack)
    place = next((k for k, w in enumerate(members) if is_main_gear(w)), None)
    return [] if place is None else members[place + 1 :]


def pinion(m: Measures) -> Part:
    """The pinion on the spool's axis: cut round its bore, its teeth not."""
    gears = m.sheet.gears
    metal = family(gears.pinion_material if gears else None)
    left, right = m.pinion_faces
    tip, root = m.pinion_pitch + m.module, m.pinion_pitch - DEDENDUM * m.module
    bore = min(m.shaft_radius + 0.1, root - 0.3)
    shapes: list[Shape] = [*ring(left, right, bore, root, cut=metal, crossed=True, line="thin")]
    for side in (-1, 1):
        a, b = sorted((side * root, side * tip))
        shapes.append(rectangle(left, a, right, b, wash=metal))
        shapes.append(
            stroke((left - 1, side * m.pinion_pitch), (right + 1, side * m.pinion_pitch), line="chain")
        )
    title = f"Pinion, {gears.pinion_teeth} teeth" if gears else "Pinion"
    return Part("pinion", title, "pinion", tuple(shapes), ((left + right) / 2, -(root + tip) / 2))


def drive_shaft(m: Measures) -> Part:
    """The drive shaft from the plate to the handle nut; not cut, by custom."""
    r, y, low = m.drive_radius, m.drive_axis, m.lower_radius
    thread = m.sheet.drag.thread.pitch_diameter * MM / 2 if m.sheet.drag else r * 0.8
    neck = min(thread, r)
    left, right, start = m.plate_in, m.arm_out + NUT_WIDTH + 0.8, m.springs_out
    step = m.plate_out + 0.4 if low < r else left
    upper = ((left, low), (step, low), (step, r), (start, r), (start, neck), (right, neck))
    points = tuple((x, y - radius) for x, radius in upper)
    points += tuple((x, y + radius) for x, radius in reversed(upper))
    screw = [stroke((start, y + s * neck * 0.82), (m.arm_in, y + s * neck * 0.82)) for s in (-1, 1)]
    shapes: list[Shape] = [Outline(points, wash="steel"), *screw]
    if m.sleeve_radius > r + 0.1:
        shapes += ring(m.cover_in, m.boss_out, r, m.sleeve_radius, y, wash="steel", line="thin")
    mark = (m.cover_in - 0.5, y + r * 0.4)
    return Part("drive-shaft", "Drive shaft", "drive shaft", tuple(shapes), mark, "below")


def drive_axis(m: Measures) -> Outline:
    """The chain line through the drive shaft."""
    return stroke((m.plate_in - 1.5, m.drive_axis), (m.arm_out + NUT_WIDTH + 4.0, m.drive_axis), line="chain")


def drive_bearings(m: Measures) -> list[Part]:
    """Bearings on the drive shaft and round the pinion, where the sheet has them."""
    parts = []
    handle = m.bearing_at("handle")
    if handle:
        half = handle.size.width * MM / 2
        middle = m.boss_out - 0.4 - half
        radius = (handle.size.outer + handle.size.bore) * MM / 4
        mark = (middle, m.drive_axis + radius)
        shapes = spool.bearing(handle, middle, m.drive_axis)
        parts.append(
            Part("bearing-handle", f"Bearing, {handle.place}", "handle bearing", shapes, mark, "below")
        )
    lower = m.bearing_at("drive shaft", "lower")
    if lower:
        middle = m.plate_in + lower.size.width * MM / 2 - max(0.0, lower.size.width * MM - m.plate_wall) / 2
        radius = (lower.size.outer + lower.size.bore) * MM / 4
        shapes = spool.bearing(lower, middle, m.drive_axis)
        mark = (middle, m.drive_axis + radius)
        parts.append(
            Part("bearing-drive-shaft", f"Bearing, {lower.place}", "lower bearing", shapes, mark, "below")
        )
    own = m.bearing_at("pinion")
    if own:
        half = own.size.width * MM / 2
        middle = m.plate_in + half - max(0.0, 2 * half - m.plate_wall) / 2
        radius = (own.size.outer + own.size.bore) * MM / 4
        shapes = spool.bearing(own, middle, 0.0)
        parts.append(
            Part("bearing-pinion", f"Bearing, {own.place}", "pinion bearing", shapes, (middle, -radius))
        )
    return parts


def roller_clutch(m: Measures) -> Part | None:
    """The one-way roller clutch in the cover's boss; its size is taken by custom."""
    if not (m.sheet.anti_reverse and m.sheet.anti_reverse.roller_clutch):
        return None
    left, right, y = m.cover_in + 0.3, m.cover_in + CLUTCH_WIDTH, m.drive_axis
    inner = m.sleeve_radius + 0.2
    outer = inner + CLUTCH_WALL
    shapes: list[Shape] = list(ring(left, right, inner, outer, y, line="phantom"))
    for side in (-1, 1):
        a, b = sorted((y + side * (inner + 0.3), y + side * (inner + 2.0)))
        shapes.append(rectangle(left + 1.2, a, right - 1.2, b, wash="steel", line="thin"))
    return Part(
        "roller-clutch",
        "Roller clutch of the anti-reverse",
        "roller clutch",
        tuple(shapes),
        ((left + right) / 2, y - inner - 1.2),
    )


def springs(m: Measures, left: float | None = None, axis: float | None = None) -> Part | None:
    """The cupped springs as they stand, each nest with its springs side by side."""
    drag = m.sheet.drag
    if drag is None:
        return None
    x, y = (m.springs_in if left is None else left), (m.drive_axis if axis is None else axis)
    it = drag.springs
    outer, inner = it.outer_diameter * MM / 2, it.inner_diameter * MM / 2
    cone, thick = it.cone_height * MM, it.thickness * MM
    shapes: list[Shape] = []
    start, turned = x, it.arrangement[0] == "("
    for count in it.nests:
        for number in range(count):
            at = start + number * thick
            # "(" opens to the right: its rim lies towards the star, its bore towards the gear.
            rim, bore = (at + cone, at) if turned else (at, at + cone)
            profile = ((bore, inner), (bore + thick, inner), (rim + thick, outer), (rim, outer))
            shapes += halves(profile, y, cut="steel", line="thin")
        start += cone + count * thick
        turned = not turned
    title = f"Cupped springs, stood as {it.arrangement}"
    return Part("springs", title, "cupped springs", tuple(shapes), ((x + start) / 2, y - outer * 0.85))


def star(m: Measures) -> Part | None:
    """The star, lever or knob that sets the drag; its form is taken by custom."""
    drag = m.sheet.drag
    if drag is None:
        return None
    left, y = m.star_out - STAR_WIDTH, m.drive_axis
    hub = m.sheet.drag.thread.pitch_diameter * MM / 2 if m.sheet.drag else 3.0
    shapes = halves(
        (
            (left, hub),
            (m.star_out, hub),
            (m.star_out, STAR_RADIUS * 0.55),
            (m.star_out, STAR_RADIUS),
            (left + 1.2, STAR_RADIUS),
            (left, STAR_RADIUS * 0.55),
        ),
        y,
        line="phantom",
    )
    return Part(
        "star",
        f"The {drag.control} of the drag",
        drag.control,
        shapes,
        ((left + m.star_out) / 2, y + STAR_RADIUS * 0.8),
        "below",
    )


def handle(m: Measures) -> Part | None:
    """The handle's arm to its true length, with the knob; of a second arm only the beginning is drawn."""
    it = m.sheet.handle
    if it is None:
        return None
    if not m.has_cover:
        return _knob_on_spool(m, it.arm_length * MM)
    y, tip = m.drive_axis, m.drive_axis - it.arm_length * MM
    metal = family(it.material or "aluminium")
    low = y + (STUB if it.knobs == 2 else ARM_HALF)
    arm = rectangle(m.arm_in, tip - ARM_HALF, m.arm_out, low, wash=metal)
    nut = rectangle(m.arm_out, y - NUT_RADIUS, m.arm_out + NUT_WIDTH, y + NUT_RADIUS, wash="steel")
    knob_left = m.arm_out + 1.0
    knob = rectangle(knob_left, tip - KNOB_RADIUS, knob_left + KNOB_LENGTH, tip + KNOB_RADIUS, line="phantom")
    spindle = stroke((m.arm_out, tip), (knob_left + KNOB_LENGTH, tip), line="chain")
    shapes: list[Shape] = [arm, nut, knob, spindle]
    if it.knobs == 2:
        shapes.append(_break(m.arm_in, m.arm_out, low))
    mark = ((m.arm_in + m.arm_out) / 2, tip + 0.25 * (y - tip))
    words = "Handle with two knobs, the second arm broken off" if it.knobs == 2 else "Handle"
    return Part("handle", words, "handle", tuple(shapes), mark)


def _knob_on_spool(m: Measures, radius: float) -> Part:
    """A fly reel's knob sits on the spool itself, at the radius that the sheet gives as its arm."""
    left = m.plate_out if radius > m.rim else m.spool_end
    knob = rectangle(left, -radius - KNOB_RADIUS, left + KNOB_LENGTH, -radius + KNOB_RADIUS, line="phantom")
    spindle = stroke((m.half_width, -radius), (left + KNOB_LENGTH, -radius), line="chain")
    return Part(
        "handle", "Handle knob on the spool", "handle", (knob, spindle), (left + KNOB_LENGTH / 2, -radius)
    )


def _break(left: float, right: float, y: float) -> Outline:
    step = (right - left + 2.4) / 4
    return stroke(*((left - 1.2 + k * step, y + (0.9 if k % 2 else -0.9)) for k in range(5)), line="thin")
