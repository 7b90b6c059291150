"""The level wind: worm and carriage, turned up into the plane of the section, and the cogs that drive it."""

from __future__ import annotations

from spoolwright.papers.materials_key import family
from spoolwright.papers.section.measures import MM, Measures
from spoolwright.papers.section.shapes import Part, Shape, rectangle, stroke

CARRIAGE_HALF = 3.2


def worm(m: Measures) -> Part | None:
    """The worm with its crossed grooves at their true lead, and the carriage in the middle of its way."""
    it = m.sheet.level_wind
    if it is None:
        return None
    y, r = m.worm_axis, m.worm_radius
    half, metal = min(it.travel * MM / 2 + it.worm_lead * MM / 4, m.plate_in - 0.8), family(it.worm_material)
    journal = r * 0.6
    shapes: list[Shape] = [rectangle(-half, y - r, half, y + r, wash=metal)]
    for left, right in ((m.cog_faces[0] - 0.6, -half), (half, m.plate_out)):
        shapes.append(rectangle(left, y - journal, right, y + journal, wash=metal))
    shapes += _grooves(half, y, r, it.worm_lead * MM)
    top = m.top - 2.0
    shapes.append(rectangle(-CARRIAGE_HALF, top, CARRIAGE_HALF, y + r + 1.0, line="phantom"))
    shapes.append(rectangle(-1.0, y + r * 0.2, 1.0, y + r + 0.9, wash=family(it.pawl_material), line="thin"))
    title = f"Level wind, {it.kind}: worm, pawl and line guide"
    return Part("level-wind", title, "level wind", tuple(shapes), (-half * 0.62, y - r * 0.3))


def _grooves(half: float, y: float, r: float, lead: float) -> list[Shape]:
    """Both hands of the groove: half a turn across the worm takes half a lead."""
    shapes: list[Shape] = []
    step, count = lead / 2, int(2 * half / lead * 2)
    start = -count * step / 2
    for number in range(count):
        left, right = start + number * step, start + (number + 1) * step
        up, down = (y + r, y - r) if number % 2 else (y - r, y + r)
        shapes.append(stroke((left, down), (right, up)))
        shapes.append(stroke((left, up), (right, down)))
    return shapes


def cogs(m: Measures) -> Part | None:
    """The cogs between spool and worm, edge on."""
    it = m.sheet.level_wind
    if it is None:
        return None
    y = 0.0
    shapes: list[Shape] = [*_edge_on(m, y, m.cog_radii[0][0])]
    for driver, driven in m.cog_radii:
        y -= driver + driven
        shapes += _edge_on(m, y, driven)
    words = ", ".join(f"{a} to {b} teeth" for a, b in it.cogs)
    left, right = m.cog_faces
    mark = ((left + right) / 2, m.worm_axis - m.cog_radii[-1][1] * 0.7)
    return Part("level-wind-cogs", f"Cogs of the level wind, {words}", "cogs", tuple(shapes), mark)


def _edge_on(m: Measures, y: float, radius: float) -> list[Shape]:
    left, right = m.cog_faces
    rim = rectangle(left, y - radius, right, y + radius, wash="plastic", line="thin")
    return [rim, stroke((left - 0.8, y), (right + 0.8, y), line="chain")]
