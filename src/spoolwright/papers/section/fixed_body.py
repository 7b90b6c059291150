"""The body of a fixed-spool reel in section: pinion and main gear, bearings, oscillation, handle."""

from __future__ import annotations

from spoolwright.papers.materials_key import family
from spoolwright.papers.section import drive, spool
from spoolwright.papers.section.fixed_measures import FixedMeasures
from spoolwright.papers.section.measures import KNOB_LENGTH, KNOB_RADIUS, MM
from spoolwright.papers.section.shapes import Outline, Part, Point, Shape, rectangle, ring, stroke

ARM_HALF = 4.5
SLIDER_HALF = 3.0


def behind(m: FixedMeasures) -> list[Part | None]:
    """What is drawn first, so that the main shaft passes before it: body, main gear and its shaft."""
    return [_body(m), _gear_shaft(m), _main_gear(m)]


def before(m: FixedMeasures) -> list[Part | None]:
    """What is drawn last: the oscillation and the handle."""
    return [_oscillation(m), _cogs(m), _handle(m)]


def _metal(m: FixedMeasures) -> str:
    return family(m.sheet.frame.material if m.sheet.frame else "composite")


def _body(m: FixedMeasures) -> Part | None:
    """The body with its collar in the rotor and its cover; stem and foot stand square to this section."""
    if m.sheet.frame is None:
        return None
    metal, wall, side = _metal(m), m.plate_wall, m.body_side
    bearing = m.front_bearing
    seat = bearing[0].size.outer * MM / 2 if bearing else m.clutch_radius + 3.5
    start = m.clutch[0]
    hole = m.drive_radius + 0.3
    reach = {1: _gear_bearing_radius(m, near=True) or hole, -1: _gear_bearing_radius(m, near=False) or hole}
    shapes: list[Shape] = []
    for s in (-1, 1):
        lip = m.collar if m.collar > seat + 0.4 else seat + 0.4
        upper: tuple[Point, ...] = (
            (start, s * seat), (start, s * lip), (m.body_in, s * lip), (m.body_in, s * side),
            (m.gear_centre - reach[s], s * side), (m.gear_centre - reach[s], s * m.body_half),
            (m.body_in + wall, s * m.body_half), (m.body_in + wall, s * seat),
        )  # fmt: skip
        rear: tuple[Point, ...] = (
            (m.gear_centre + reach[s], s * side), (m.body_out, s * side), (m.body_out, 0.0),
            (m.body_out - wall, 0.0), (m.body_out - wall, s * m.body_half),
            (m.gear_centre + reach[s], s * m.body_half),
        )  # fmt: skip
        shapes += [Outline(upper, cut=metal), Outline(rear, cut=metal, crossed=s > 0)]
    mark = (m.body_out - wall / 2, -m.body_half * 0.6)
    return Part(
        "frame", "Body with its cover; stem and foot stand square to the section", "body", tuple(shapes), mark
    )


def _gear_bearing_radius(m: FixedMeasures, *, near: bool) -> float | None:
    words = ("handle side",) if near else ("far side",)
    found = m.bearing_at(*words)
    return found.size.outer * MM / 2 if found else None


def pinion(m: FixedMeasures) -> Part | None:
    """The pinion: its sleeve from the rotor through clutch and bearing, its teeth in the body."""
    gears = m.sheet.gears
    if gears is None:
        return None
    metal = family(gears.pinion_material)
    left, right = m.pinion_faces
    tip, root = m.pinion_pitch + m.module, m.pinion_pitch - drive.DEDENDUM * m.module
    bore = min(m.shaft_radius + 0.1, root - 0.2)
    seat = m.front_bearing[0].size.bore * MM / 2 if m.front_bearing else m.pinion_pitch
    shapes: list[Shape] = [
        *ring(m.web_in - 3.0, left, bore, max(min(seat, m.pinion_pitch), bore + 0.3), cut=metal, line="thin")
    ]
    shapes += ring(left, right, bore, root, cut=metal, line="thin")
    for side in (-1, 1):
        a, b = sorted((side * root, side * tip))
        shapes.append(rectangle(left, a, right, b, wash=metal))
        shapes.append(
            stroke((left - 1, side * m.pinion_pitch), (right + 1, side * m.pinion_pitch), line="chain")
        )
    title = f"Pinion, {gears.pinion_teeth} teeth"
    return Part("pinion", title, "pinion", tuple(shapes), ((left + right) / 2, -(root + tip) / 2))


def _main_gear(m: FixedMeasures) -> Part | None:
    """The main gear on its own axis across the section: blank cut, teeth towards the pinion washed."""
    gears = m.sheet.gears
    if gears is None:
        return None
    metal, (tips, back) = family(gears.main_material), m.gear_levels
    foot = tips + 2.25 * m.module
    half = gears.face_width * MM / 2
    outer, inner = m.main_pitch + half, m.main_pitch - half
    x, bore = m.gear_centre, m.drive_radius
    shapes: list[Shape] = []
    for side in (-1, 1):
        a, b = sorted((x + side * bore, x + side * outer))
        shapes.append(rectangle(a, foot, b, back, cut=metal))
        c, d = sorted((x + side * inner, x + side * outer))
        shapes.append(rectangle(c, tips, d, foot, wash=metal))
    forms = {"face": "a face gear", "worm": "a worm wheel", "bevel": "a bevel gear"}
    form = forms.get(gears.form, "its axis across the shaft's")
    mark = (x + outer * 0.7, (foot + back) / 2)
    return Part(
        "main-gear", f"Main gear, {gears.main_teeth} teeth, {form}", "main gear", tuple(shapes), mark, "below"
    )


def _gear_shaft(m: FixedMeasures) -> Part | None:
    if m.sheet.gears is None:
        return None
    r, x = m.drive_radius, m.gear_centre
    low = m.arm_level if m.sheet.handle else m.body_side + 3.0
    shown = rectangle(x - r, m.shaft_radius, x + r, low, wash="steel")
    behind_shaft = rectangle(x - r, -m.body_side, x + r, m.shaft_radius, line="phantom")
    return Part(
        "gear-shaft",
        "Shaft of the main gear",
        "gear shaft",
        (shown, behind_shaft),
        (x, m.body_side + 2.0),
        "below",
        minor=True,
    )


def bearings(m: FixedMeasures) -> list[Part]:
    """The bearings of pinion, rotor nut and main gear."""
    found = []
    if m.front_bearing:
        it, middle = m.front_bearing
        mark = (middle, -(it.size.outer + it.size.bore) * MM / 4)
        found.append(
            Part(
                "bearing-pinion",
                f"Bearing, {it.place}",
                "pinion bearing",
                spool.bearing(it, middle, 0.0),
                mark,
            )
        )
    for near, words, name in ((True, "handle side", "gear bearing"), (False, "far side", "far gear bearing")):
        it = m.bearing_at(words)
        if it is None:
            continue
        side = 1 if near else -1
        y = side * (m.body_half + it.size.width * MM / 2 - max(0.0, it.size.width * MM - m.plate_wall))
        mark = (m.gear_centre + (it.size.outer + it.size.bore) * MM / 4, y)
        place = "below" if near else "above"
        key = "bearing-handle" if near else "bearing-far-side"
        shapes = _turned(it, m.gear_centre, y)
        found.append(Part(key, f"Bearing, {it.place}", name, shapes, mark, place, minor=not near))
    return found


def _turned(it: object, x: float, y: float) -> tuple[Shape, ...]:
    """A bearing whose axis lies across the section."""
    upright = spool.bearing(it, 0.0, 0.0)  # type: ignore[arg-type]
    return tuple(_quarter(shape, x, y) for shape in upright)


def _quarter(shape: Shape, x: float, y: float) -> Shape:
    from dataclasses import replace

    if isinstance(shape, Outline):
        return replace(shape, points=tuple((x + b, y + a) for a, b in shape.points))
    return replace(shape, centre=(x + shape.centre[1], y + shape.centre[0]))


def _oscillation(m: FixedMeasures) -> Part | None:
    """What moves the shaft to and fro: a worm beside it with its slider, or a wheel under the slider."""
    it = m.sheet.oscillation
    if it is None:
        return None
    end = m.shaft_ends[1]
    slider = end - SLIDER_HALF - 1.0
    metal = family(it.worm_material or "brass")
    if it.kind != "worm" or it.worm_lead is None:
        half = it.stroke * MM / 2 + 2.0
        y = -m.body_half + 3.0
        wheel = rectangle(slider - half, y - 1.2, slider + half, y + 1.2, wash=metal)
        block = rectangle(slider - SLIDER_HALF, y, slider + SLIDER_HALF, m.shaft_radius + 1.5, line="phantom")
        return Part(
            "oscillation", f"Oscillation by {it.kind}, edge on", "oscillation", (wheel, block), (slider, y)
        )
    r = it.worm_diameter * MM / 2 if it.worm_diameter else 3.0
    y = -(m.body_half - r - 1.0)
    half = m.stroke / 2 + it.worm_lead * MM / 4
    left, right = (
        max(slider - half, m.body_in + m.plate_wall + 1.5),
        min(slider + half, m.body_out - m.plate_wall - 0.5),
    )
    shapes: list[Shape] = [rectangle(left, y - r, right, y + r, wash=metal)]
    step, at, number = it.worm_lead * MM / 2, left, 0
    while at + step <= right + 1e-6:
        up, down = (y + r, y - r) if number % 2 else (y - r, y + r)
        shapes += [stroke((at, down), (at + step, up)), stroke((at, up), (at + step, down))]
        at, number = at + step, number + 1
    shapes.append(
        rectangle(
            slider - SLIDER_HALF, y - r - 0.5, slider + SLIDER_HALF, m.shaft_radius + 1.5, line="phantom"
        )
    )
    return Part(
        "oscillation",
        "Oscillation: worm, pawl and slider",
        "oscillation",
        tuple(shapes),
        (left + step * 0.5, y - r * 0.3),
    )


def _cogs(m: FixedMeasures) -> Part | None:
    """The cogs from the pinion up to the oscillation, edge on."""
    it = m.sheet.oscillation
    if it is None or it.kind != "worm":
        return None
    r = it.worm_diameter * MM / 2 if it.worm_diameter else 3.0
    reach = m.body_half - r - 1.0
    module = 2 * reach / sum(a + b for a, b in it.cogs)
    right = m.pinion_faces[1] + 2.6
    y, shapes = 0.0, []
    for number, (driver, driven) in enumerate(it.cogs):
        left = right - 1.6 - number * 0.0
        if number == 0:
            shapes.append(
                rectangle(
                    left, y - module * driver / 2, right, y + module * driver / 2, wash="plastic", line="thin"
                )
            )
        y -= module * (driver + driven) / 2
        shapes.append(
            rectangle(
                left, y - module * driven / 2, right, y + module * driven / 2, wash="plastic", line="thin"
            )
        )
    words = ", ".join(f"{a} to {b} teeth" for a, b in it.cogs)
    return Part(
        "oscillation-cogs",
        f"Cogs of the oscillation, {words}",
        "cogs",
        tuple(shapes),
        (right - 0.8, y * 0.8),
        minor=True,
    )


def _handle(m: FixedMeasures) -> Part | None:
    """The handle's arm to its true length beside the body, turned towards the lip, with its knob."""
    it = m.sheet.handle
    if it is None:
        return None
    y, thick, x = m.arm_level, m.arm_thick, m.gear_centre
    tip = x - it.arm_length * MM
    arm = rectangle(tip - ARM_HALF, y, x + ARM_HALF, y + thick, wash=family(it.material or "aluminium"))
    top = y + thick + 1.0
    knob = rectangle(tip - KNOB_RADIUS, top, tip + KNOB_RADIUS, top + KNOB_LENGTH, line="phantom")
    spindle = stroke((tip, y), (tip, top + KNOB_LENGTH), line="chain")
    mark = ((x + tip) / 2, y + thick / 2)
    return Part("handle", "Handle, turned towards the lip", "handle", (arm, knob, spindle), mark, "below")
