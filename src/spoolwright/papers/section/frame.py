"""What holds the reel together: side plates, covers, pillars, the foot, and the brakes on the off side."""

from __future__ import annotations

from spoolwright.papers.materials_key import family
from spoolwright.papers.section.measures import CLUTCH_WALL, MM, RIM_GAP, THUMB_BAR, Measures
from spoolwright.papers.section.shapes import Outline, Part, Point, Shape, rectangle, ring, stroke

FOOT_HALF, FOOT_HEIGHT = 9.0, 3.0
BLOCK_LENGTH, BLOCK_WIDTH = 2.6, 2.0
RING_WALL = 1.2
CAP_LENGTH, CAP_RADIUS = 4.0, 6.5
BELOW = 0.82
"""How far down the off-side cover reaches, as a share of the spool's rim."""


def _metal(m: Measures) -> str:
    return family(m.sheet.frame.material if m.sheet.frame else None)


def plates(m: Measures) -> Part:
    """Both side plates, cut, with the openings that the spool's hub and the brakes need."""
    metal, gear_hole, off_hole = _metal(m), _gear_hole(m), _off_hole(m)
    spans = [
        (m.plate_in, m.plate_out, _levels(m, gear_hole, drive=m.has_cover)),
        (-m.plate_out, -m.plate_in, _levels(m, off_hole, drive=False)),
    ]
    shapes = tuple(
        rectangle(left, top, right, bottom, cut=metal)
        for left, right, levels in spans
        for top, bottom in levels
        if bottom - top > 0.3
    )
    mark = (m.plate_in + m.plate_wall / 2, m.top + 1.6)
    return Part("frame", "Frame and side plates", "side plate", shapes, mark, minor=True)


def _gear_hole(m: Measures) -> float:
    inside = [b.size.outer * MM / 2 for b, x in m.spool_bearings if m.plate_in - 1 < x < m.plate_out + 1]
    pinion = m.bearing_at("pinion")
    if pinion:
        inside.append(pinion.size.outer * MM / 2)
    return max([m.shaft_radius + 1.2, m.pinion_pitch + m.module + 0.4, *inside])


def _off_hole(m: Measures) -> float:
    brakes = m.sheet.brakes
    ring_out = (
        brakes.block_radius * MM + BLOCK_LENGTH / 2 + RING_WALL if brakes and brakes.block_radius else 0.0
    )
    return max([ring_out, m.shaft_radius + 1.0, *(b.size.outer * MM / 2 for b, _ in m.spool_bearings)])


def _levels(m: Measures, hole: float, *, drive: bool) -> list[tuple[float, float]]:
    """Stretches of a plate from top to bottom between its openings."""
    openings = [(-hole, hole)]
    if m.sheet.level_wind:
        journal = m.worm_radius * 0.6
        openings.insert(0, (m.worm_axis - journal, m.worm_axis + journal))
    if drive:
        lower = m.bearing_at("drive shaft", "lower")
        reach = lower.size.outer * MM / 2 if lower else m.drive_radius
        openings.append((m.drive_axis - reach, m.drive_axis + reach))
    edges = [m.top, *(edge for opening in openings for edge in opening), max(m.bottom, openings[-1][1] + 2.0)]
    return list(zip(edges[::2], edges[1::2], strict=True))


def gear_cover(m: Measures) -> Part:
    """The gear-side cover: a cup over the gears with a boss round the drive shaft."""
    metal, wall = _metal(m), m.plate_wall
    reach, top, bottom = m.drive_radius + 0.3, _cover_top(m), m.cover_bottom
    handle = m.bearing_at("handle")
    if handle:
        reach = handle.size.outer * MM / 2
    if m.sheet.anti_reverse and m.sheet.anti_reverse.roller_clutch:
        reach = max(reach, m.sleeve_radius + CLUTCH_WALL + 0.5)
    upper: tuple[Point, ...] = (
        (m.plate_out, top),
        (m.cover_out, top),
        (m.cover_out, m.drive_axis - reach - wall),
        (m.boss_out, m.drive_axis - reach - wall),
        (m.boss_out, m.drive_axis - reach),
        (m.cover_in, m.drive_axis - reach),
        (m.cover_in, top + wall),
        (m.plate_out, top + wall),
    )
    lower: tuple[Point, ...] = (
        (m.plate_out, bottom),
        (m.cover_out, bottom),
        (m.cover_out, m.drive_axis + reach + wall),
        (m.boss_out, m.drive_axis + reach + wall),
        (m.boss_out, m.drive_axis + reach),
        (m.cover_in, m.drive_axis + reach),
        (m.cover_in, bottom - wall),
        (m.plate_out, bottom - wall),
    )
    shapes = tuple(Outline(points, cut=metal, crossed=True) for points in (upper, lower))
    mark = (m.cover_in + wall / 2, bottom - wall * 2.5)
    return Part("gear-cover", "Gear-side cover", "gear-side cover", shapes, mark, "below", minor=True)


def _cover_top(m: Measures) -> float:
    return -min(m.rim, max(m.rim * 0.55, CAP_RADIUS + 6))


def cast_cap(m: Measures) -> Part:
    """The cap over the end of the spool's shaft: its form is taken by custom."""
    end = m.cover_out if m.has_cover else m.plate_out
    shape = rectangle(end, -CAP_RADIUS, end + CAP_LENGTH, CAP_RADIUS, line="phantom")
    mark = (end + CAP_LENGTH / 2, -CAP_RADIUS * 0.7)
    return Part("cast-cap", "Cap over the end of the spool shaft", "cast cap", (shape,), mark, minor=True)


def off_cover(m: Measures) -> Part:
    """The off-side cover: a cup over brakes, click and bearing, and over the cogs where there are any."""
    metal, wall = _metal(m), m.plate_wall
    left, right = m.off_end, -m.plate_out
    shapes = [
        Outline(
            ((right, side * reach), (left, side * reach), (left, side * 1.0))
            + (
                (left + wall, side * 1.0),
                (left + wall, side * (reach - wall)),
                (right, side * (reach - wall)),
            ),
            cut=metal,
            crossed=True,
        )
        for side, reach in ((-1, _over_cogs(m)), (1, m.rim * BELOW))
    ]
    mark = (left + wall / 2, m.rim * BELOW * 0.6)
    return Part("off-cover", "Off-side cover", "off-side cover", tuple(shapes), mark, "below", minor=True)


def _over_cogs(m: Measures) -> float:
    if not m.cog_radii:
        return m.rim * BELOW
    return -m.worm_axis + m.cog_radii[-1][1] + 1.0 + m.plate_wall


def pillars(m: Measures) -> Part | None:
    """A pillar below the spool, and one above where no worm lies there; not cut, by custom."""
    frame = m.sheet.frame
    if frame is None:
        return None
    metal, r = _metal(m), m.pillar_radius
    y = m.rim + m.bar_gap + r
    axes = [y] if m.sheet.level_wind else [y, -y]
    shapes = tuple(rectangle(-m.plate_in, y - r, m.plate_in, y + r, wash=metal) for y in axes)
    count = f"{frame.pillars} pillars" if frame.pillars else "cross bars of the frame"
    name = "pillar" if frame.pillars else "cross bar"
    mark = (m.half_width * 0.55, axes[0])
    return Part("pillars", f"One of the {count}", name, shapes, mark, "below", minor=True)


def thumb_bar(m: Measures) -> Part | None:
    """The bar behind the spool that frees it, under the thumb; its form is taken by custom."""
    if not m.has_thumb_bar:
        return None
    top = m.rim + RIM_GAP
    bar = rectangle(-m.plate_in + 0.6, top, m.plate_in - 0.6, top + THUMB_BAR - 0.8, line="phantom")
    return Part(
        "thumb-bar", "Thumb bar of the clutch", "thumb bar", (bar,), (m.half_width * 0.5, top + 1.5), "below"
    )


def foot(m: Measures) -> Part:
    """The foot, under the reel; its form is taken by custom."""
    top = m.rim + m.bar_gap + 2 * m.pillar_radius
    low = top + FOOT_HEIGHT
    saddle = ((-FOOT_HALF, low), (-FOOT_HALF, low - 1.2), (-4.5, top), (4.5, top), (FOOT_HALF, low - 1.2))
    shape = Outline((*saddle, (FOOT_HALF, low)), line="phantom")
    return Part("foot", "Foot", "foot", (shape,), (-FOOT_HALF * 0.5, low - 1.2), "below", minor=True)


def brakes(m: Measures) -> Part | None:
    """Blocks on their pins and the ring they press on, at the radius that the sheet gives; and magnets."""
    it = m.sheet.brakes
    if it is None or not (it.blocks and it.block_radius):
        return _magnets_alone(m)
    radius = it.block_radius * MM
    left = -m.spool_end - 0.5 - BLOCK_WIDTH
    rub = radius + BLOCK_LENGTH / 2
    shapes: list[Shape] = [
        *ring(left - 0.8, left + BLOCK_WIDTH + 0.3, rub, rub + RING_WALL, cut="brass", line="thin")
    ]
    for side in (-1, 1):
        middle = left + BLOCK_WIDTH / 2
        shapes.append(
            stroke((middle, side * (m.shaft_radius + 0.4)), (middle, side * (rub - 0.2)), line="outline")
        )
        half = BLOCK_LENGTH / 2
        shapes.append(
            rectangle(
                left,
                min(side * (radius - half), side * (radius + half)),
                left + BLOCK_WIDTH,
                max(side * (radius - half), side * (radius + half)),
                cut="plastic",
                line="thin",
            )
        )
    count = f"{it.blocks} brake blocks and their ring"
    if it.magnets:
        shapes += _magnets(m)
        count += f", {it.magnets} magnets"
    return Part("brakes", count, "brake blocks", tuple(shapes), (left + BLOCK_WIDTH / 2, -radius))


MAGNET = (4.0, 1.2)
UNDER_THE_RIM = 0.75


def _magnets(m: Measures) -> list[Shape]:
    """Magnets beside the spool's off side, at a radius taken by custom: the sheet gives their number."""
    middle, half = UNDER_THE_RIM * m.rim, MAGNET[0] / 2
    left = -m.spool_end - 0.3 - MAGNET[1]
    return [
        rectangle(left, s * middle - half, left + MAGNET[1], s * middle + half, line="phantom")
        for s in (-1, 1)
    ]


def _magnets_alone(m: Measures) -> Part | None:
    it = m.sheet.brakes
    if it is None or not it.magnets:
        return None
    mark = (-m.spool_end - 0.3 - MAGNET[1] / 2, -UNDER_THE_RIM * m.rim)
    return Part("brakes", f"{it.magnets} brake magnets", "magnets", tuple(_magnets(m)), mark)
