"""A lever drag in section: plates and bars, the disc and its plate on the spool, two gears, lever and cam."""

from __future__ import annotations

from spoolwright.papers.materials_key import family
from spoolwright.papers.section import drive, frame, spool
from spoolwright.papers.section.lever_measures import CAM_WIDTH, PRESET_RADIUS, THRUST_WIDTH, LeverMeasures
from spoolwright.papers.section.measures import MM, NUT_WIDTH
from spoolwright.papers.section.shapes import (
    Outline,
    Part,
    Point,
    Shape,
    rectangle,
    ring,
    stroke,
)
from spoolwright.papers.section.stack import cut_of, washer_key

LEVER_HALF, BOSS_WALL = 3.0, 3.0


def parts(m: LeverMeasures, level: float) -> list[Part | None]:
    """All parts in the order of drawing."""
    found: list[Part | None] = [_plates(m), _bars(m), frame.foot(m), _cover(m)]
    found += [spool.line_fill(m, level), spool.spool(m), *_discs(m), _pinions(m), _main_gears(m)]
    found += [_drive_shaft(m), spool.shaft(m), *spool.spool_bearings(m), *_bearings(m)]
    return [*found, _cam(m), drive.springs(m, m.springs_in, 0.0), _preset(m), _lever(m), drive.handle(m)]


def axes(m: LeverMeasures) -> list[Outline]:
    """The chain lines through the rod and through the drive shaft."""
    rod = stroke((m.off_end - 3.0, 0.0), (m.shaft_ends[1] + 4.0, 0.0), line="chain")
    return [rod, drive.drive_axis(m)] if m.drive_axis else [rod]


def _metal(m: LeverMeasures) -> str:
    return family(m.sheet.frame.material if m.sheet.frame else None)


def _bore(m: LeverMeasures) -> float:
    own = m.bearing_at("pinion")
    return own.size.outer * MM / 2 if own else m.shaft_radius + 3.0


def _plates(m: LeverMeasures) -> Part:
    """Both plates cut, the gear side bored for the pinion's bearing and for the drive shaft."""
    metal, reach = _metal(m), m.plate_radius
    inner = m.bearing_at("inner")
    drive_bore = inner.size.outer * MM / 2 if inner else m.drive_radius
    edges = [-reach, -_bore(m), _bore(m), m.drive_axis - drive_bore, m.drive_axis + drive_bore, reach]
    shapes: list[Shape] = [
        rectangle(m.plate_in, top, m.plate_out, bottom, cut=metal)
        for top, bottom in zip(edges[::2], edges[1::2], strict=True)
        if bottom - top > 0.3
    ]
    seat = m.shaft_radius + 0.1
    shapes += ring(m.off_out, m.off_in, seat, reach, cut=metal)
    mark = (m.off_in - m.plate_wall / 2, -reach + 3.0)
    return Part("frame", "Frame and side plates", "side plate", tuple(shapes), mark, minor=True)


def _bars(m: LeverMeasures) -> Part:
    """The bars between the plates, above and below the spool; not cut, by custom."""
    r = m.pillar_radius
    y = m.rim + m.bar_gap + r
    shapes = tuple(rectangle(m.off_in, s * y - r, m.plate_in, s * y + r, wash=_metal(m)) for s in (-1, 1))
    mark = (m.half_width * 0.4, y)
    return Part("pillars", "Bars of the frame", "frame bar", shapes, mark, "below", minor=True)


def _cover(m: LeverMeasures) -> Part:
    """The gear-side cover over both gear pairs, with the boss that carries the drive shaft outwards."""
    metal, wall, top, bottom = _metal(m), m.plate_wall, -m.rim * 0.6, m.cover_bottom
    outer = m.bearing_at("outer")
    reach = outer.size.outer * MM / 2 if outer else m.drive_radius + 0.3
    hole = m.shaft_radius + 0.3
    boss = m.drive_axis + reach + BOSS_WALL
    low = m.drive_axis - reach - BOSS_WALL
    upper: tuple[Point, ...] = (
        (m.plate_out, top), (m.cover_out, top), (m.cover_out, -hole), (m.cover_in, -hole),
        (m.cover_in, top + wall), (m.plate_out, top + wall),
    )  # fmt: skip
    middle: tuple[Point, ...] = (
        (m.cover_in, hole), (m.cover_out, hole), (m.cover_out, low), (m.boss_out, low),
        (m.boss_out, m.drive_axis - reach), (m.cover_in, m.drive_axis - reach),
    )  # fmt: skip
    lower: tuple[Point, ...] = (
        (m.plate_out, bottom), (m.cover_out, bottom), (m.cover_out, boss), (m.boss_out, boss),
        (m.boss_out, m.drive_axis + reach), (m.cover_in, m.drive_axis + reach),
        (m.cover_in, bottom - wall), (m.plate_out, bottom - wall),
    )  # fmt: skip
    shapes = tuple(Outline(points, cut=metal, crossed=True) for points in (upper, middle, lower))
    mark = (m.cover_in + wall / 2, bottom - wall * 2.5)
    return Part("gear-cover", "Gear-side cover", "gear-side cover", shapes, mark, "below", minor=True)


def _discs(m: LeverMeasures) -> list[Part]:
    """The members of the drag in their place between the spool's flange and the plate."""
    found = []
    for place, (washer, left, right) in enumerate(m.stack_places, start=1):
        inner, outer = washer.inner_diameter * MM / 2, washer.outer_diameter * MM / 2
        shapes = ring(left, right, inner, outer, cut=cut_of(washer), crossed=bool(place % 2), line="thin")
        mark = ((left + right) / 2, -outer * 0.9)
        found.append(Part(washer_key(washer, place), washer.name.capitalize(), "", shapes, mark))
    return found


def _wheel(
    faces: tuple[float, float], pitch: float, module: float, bore: float, axis: float, metal: str
) -> list[Shape]:
    """One gear wheel: cut from bore to root, its teeth only washed, the pitch line a chain."""
    left, right = faces
    root, tip = pitch - drive.DEDENDUM * module, pitch + module
    shapes: list[Shape] = [*ring(left, right, bore, root, axis, cut=metal, line="thin")]
    for side in (-1, 1):
        a, b = sorted((axis + side * root, axis + side * tip))
        shapes.append(rectangle(left, a, right, b, wash=metal))
        at = axis + side * pitch
        shapes.append(stroke((left - 1.0, at), (right + 1.0, at), line="chain"))
    return shapes


def _pinions(m: LeverMeasures) -> Part | None:
    """The sleeve from the drag plate through its bearing, with a pinion for each gear on it."""
    gears = m.sheet.gears
    if gears is None:
        return None
    metal = family(gears.pinion_material)
    bore = (gears.pinion_bore or 0.0) * MM / 2 or m.shaft_radius + 0.2
    bearing = m.bearing_at("pinion")
    seat = bearing.size.bore * MM / 2 if bearing else bore + 1.5
    hub = m.stack_places[-1] if m.stack_places else None
    start = hub[1] if hub else m.plate_in
    shapes: list[Shape] = [*ring(start, m.gear_faces[0], bore, max(seat, bore + 0.5), cut=metal, line="thin")]
    if hub and hub[0].inner_diameter * MM / 2 > seat:
        shapes += ring(hub[1], hub[2], seat, hub[0].inner_diameter * MM / 2, cut=metal, line="thin")
    shapes += _wheel(m.gear_faces, m.pinion_pitch, m.module, bore, 0.0, metal)
    teeth = f"{gears.pinion_teeth}"
    if m.low_faces:
        shapes += _wheel(m.low_faces, m.low_pitches[1], m.module, bore, 0.0, metal)
        teeth += f" and {gears.low_pinion_teeth}"
    mark = (sum(m.gear_faces) / 2, -(bore + m.pinion_pitch) / 2)
    name = "pinions" if m.low_faces else "pinion"
    return Part("pinion", f"{name.capitalize()}, {teeth} teeth", name, tuple(shapes), mark)


def _main_gears(m: LeverMeasures) -> Part | None:
    gears = m.sheet.gears
    if gears is None:
        return None
    metal = family(gears.main_material)
    shapes = _wheel(m.gear_faces, m.main_pitch, m.module, m.drive_radius, m.drive_axis, metal)
    teeth = f"{gears.main_teeth}"
    if m.low_faces:
        shapes += _wheel(m.low_faces, m.low_pitches[0], m.module, m.drive_radius, m.drive_axis, metal)
        teeth += f" and {gears.low_main_teeth}"
    mark = (sum(m.gear_faces) / 2, m.drive_axis + m.main_pitch * 0.8)
    name = "main gears" if m.low_faces else "main gear"
    return Part("main-gear", f"{name.capitalize()}, {teeth} teeth", name, tuple(shapes), mark, "below")


def _drive_shaft(m: LeverMeasures) -> Part | None:
    if not m.sheet.gears:
        return None
    r, y = m.drive_radius, m.drive_axis
    left, right = m.plate_in, m.arm_out + NUT_WIDTH + 0.8
    shape = rectangle(left, y - r, right, y + r, wash="steel")
    mark = (m.cover_out + 2.0, y + r * 0.4)
    return Part("drive-shaft", "Drive shaft", "drive shaft", (shape,), mark, "below")


def _bearings(m: LeverMeasures) -> list[Part]:
    """The bearings of pinion and drive shaft."""
    found = []
    own, inner, outer = m.bearing_at("pinion"), m.bearing_at("inner"), m.bearing_at("outer")
    if own:
        middle = m.plate_in + own.size.width * MM / 2
        mark = (middle, -(own.size.outer + own.size.bore) * MM / 4)
        found.append(
            Part(
                "bearing-pinion",
                f"Bearing, {own.place}",
                "pinion bearing",
                spool.bearing(own, middle, 0.0),
                mark,
            )
        )
    for it, key, start in ((inner, "inner", m.plate_in), (outer, "outer", m.cover_in)):
        if it is None:
            continue
        middle = start + it.size.width * MM / 2
        mark = (middle, m.drive_axis + (it.size.outer + it.size.bore) * MM / 4)
        shapes = spool.bearing(it, middle, m.drive_axis)
        name = f"{key} drive bearing"
        found.append(
            Part(f"bearing-drive-{key}", f"Bearing, {it.place}", name, shapes, mark, "below", minor=True)
        )
    return found


def _cam(m: LeverMeasures) -> Part | None:
    """Fixed and moving cam with their thrust bearing; their form is taken by custom."""
    drag = m.sheet.drag
    if drag is None or drag.lever is None:
        return None
    inner, outer, rise = m.shaft_radius + 0.3, m.shaft_radius + 8.0, drag.lever.cam_rise * MM
    left = m.cover_out
    shapes: list[Shape] = []
    for side in (-1, 1):
        slope = rise / 2 * side
        half = (
            (left, side * inner), (left + CAM_WIDTH + slope / 2, side * inner),
            (left + CAM_WIDTH - slope / 2, side * outer), (left, side * outer),
        )  # fmt: skip
        other = (
            (left + CAM_WIDTH + slope / 2, side * inner), (m.cam_out, side * inner),
            (m.cam_out, side * outer), (left + CAM_WIDTH - slope / 2, side * outer),
        )  # fmt: skip
        shapes += [
            Outline(half, cut="steel", line="thin"),
            Outline(other, cut="steel", crossed=True, line="thin"),
        ]
    shapes += ring(m.cam_out, m.cam_out + THRUST_WIDTH, inner, outer - 1.5, line="phantom")
    mark = (left + CAM_WIDTH, -outer * 0.75)
    return Part(
        "cam", "Cam of the lever, fixed and moving half, with its thrust bearing", "cam", tuple(shapes), mark
    )


def _preset(m: LeverMeasures) -> Part | None:
    if not m.sheet.drag:
        return None
    hub = m.sheet.drag.thread.pitch_diameter * MM / 2
    shapes = ring(m.springs_out + 0.4, m.preset_out, hub, PRESET_RADIUS, line="phantom")
    mark = ((m.springs_out + m.preset_out) / 2, PRESET_RADIUS * 0.7)
    return Part("preset", "Preset knob on the thread of the pull rod", "preset knob", shapes, mark, "below")


def _lever(m: LeverMeasures) -> Part | None:
    """The lever to its true length, standing up; its form is taken by custom."""
    drag = m.sheet.drag
    if drag is None:
        return None
    length = drag.lever.arm_length * MM if drag.lever else 40.0
    left = m.cover_out + CAM_WIDTH + 0.4
    arm = rectangle(left, -length - LEVER_HALF, left + 2.4, -(m.shaft_radius + 8.0), wash="aluminium")
    pad = rectangle(left + 2.4, -length - LEVER_HALF, left + 7.0, -length + LEVER_HALF, line="phantom")
    return Part(
        "star", f"The {drag.control} of the drag", drag.control, (arm, pad), (left + 1.2, -length * 0.8)
    )
