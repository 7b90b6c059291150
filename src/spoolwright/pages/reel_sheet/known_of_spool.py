"""What is known of the spool, the line, the shaft, the bearings and what holds them."""

from __future__ import annotations

from collections.abc import Iterator

from spoolwright import quantities
from spoolwright.judgement import free_spin
from spoolwright.pages.reel_sheet.rows import Row, marked, material, size, worked_out
from spoolwright.pages.words import shown
from spoolwright.papers.section.arrangement import reel_parts
from spoolwright.papers.section.measures import measure
from spoolwright.sheets import lubricants
from spoolwright.sheets.bearing_sizes import bearing_size
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Bearing
from spoolwright.sheets.sourced import Sourced


def spool(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    it = sheet.spool
    yield from size("flange diameter", it.flange_diameter, system)
    yield from size("arbor diameter", it.arbor_diameter, system)
    yield from size("width between the flanges", it.width, system)
    yield from size("diameter of the rear flange", it.rear_flange_diameter, system)
    yield from size("flange wall", it.wall, system)
    yield from size("thickness of a flange", it.flange_thickness, system)
    yield from size("mass, bare", it.mass, system, "mass")
    yield from material(it.material, system)
    inertia = free_spin.bare_inertia(sheet)
    if it.inertia is not None:
        yield Row("inertia, bare", shown.quantity(inertia, "inertia", system))
    else:
        yield worked_out("inertia, bare", inertia, "inertia", system)


def line(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    it = sheet.spool
    yield from size("full when it lies below the lip by", it.line_level, system)
    yield worked_out("leaves a full spool at a radius of", it.full_radius, "length", system)
    yield worked_out("leaves a bare arbor at a radius of", it.arbor_radius, "length", system)


def shaft(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    it = sheet.shaft
    if it is None:
        return
    yield from size("diameter", it.diameter, system)
    yield from size("span between its bearings", it.span, system)
    yield from size("from there to the middle of the spool", it.overhang, system)
    if it.steps:
        steps = "; ".join(f"{_stated(s.length, system)} of {_stated(s.diameter, system)}" for s in it.steps)
        yield Row("steps, length of diameter", steps)
    yield Row("borne", "on both ends" if it.borne == "both ends" else it.borne)
    yield from material(it.material, system)


def _stated(length: float, system: str) -> str:
    return shown.unbroken(quantities.show_stated(length, "length", system))


def bearing(sheet: ReelSheet, key: str, system: str) -> Iterator[Row]:
    found = bearing_of(sheet, key)
    return iter(()) if found is None else bearing_rows(found, system)


def bearing_of(sheet: ReelSheet, key: str) -> Bearing | None:
    """The bearing that the drawing shows under this key."""
    m = measure(sheet)
    title = next((part.title for part in reel_parts(m, m.full) if part.key == key), "")
    return next((b for b in sheet.bearings if title == f"Bearing, {b.place}"), None)


def bearing_rows(it: Bearing, system: str) -> Iterator[Row]:
    """Size, kind, oil, and what the catalogues say of a bearing of this size."""
    yield Row("place", it.place)
    yield Row("size, bore by outside by width", in_millimetres(it))
    yield Row("rings and balls", f"{it.kind}, {it.shields}")
    oil = lubricants.lubricant(it.lubricant)
    yield Row("runs in", f"{oil.name}, {oil.title} ({oil.code})")
    try:
        known = bearing_size(it.size.bore, it.size.outer, it.size.width)
    except KeyError as fault:
        yield Row("standard size", f"none of these: {fault.args[0]}")
        return
    yield _rating("dynamic rating", known.dynamic_rating)
    yield _rating("static rating", known.static_rating)
    balls = it.balls or known.balls
    if balls:
        yield Row("balls", f"{balls} balls", "" if it.balls else marked(known.balls_how))
    if known.ball_diameter:
        yield Row(
            "ball diameter", shown.quantity(known.ball_diameter, "length", system), marked(known.balls_how)
        )


def _rating(label: str, value: Sourced) -> Row:
    return Row(label, newtons(value), f"two makers’ catalogues, {marked(value.how)}")


def newtons(value: Sourced) -> str:
    """ "628 to 630 N": a rating is a load, not a pull at the line, so it is said as the catalogues say it."""
    low, high = f"{value.low:.0f}", f"{value.high:.0f}"
    return f"{low} to {high}\u00a0N" if low != high else f"{low}\u00a0N"


def bearing_in_short(it: Bearing) -> str:
    """One line for the list of bearings."""
    oil = lubricants.lubricant(it.lubricant)
    said = f"{in_millimetres(it)}, {it.kind}, {it.shields}, runs in {oil.name} ({oil.code})"
    try:
        known = bearing_size(it.size.bore, it.size.outer, it.size.width)
    except KeyError as fault:
        return f"{said}; {fault.args[0]}"
    return f"{said}; dynamic rating {newtons(known.dynamic_rating)}, static {newtons(known.static_rating)}"


def in_millimetres(it: Bearing) -> str:
    """ "3 x 10 x 4 mm": a bearing is called by its millimetres all over the world."""
    sizes = (it.size.bore, it.size.outer, it.size.width)
    return " x ".join(f"{one * 1000:g}" for one in sizes) + "\u00a0mm"


def brakes(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    it = sheet.brakes
    if it is None:
        return
    if it.blocks:
        yield Row("blocks", f"{it.blocks} blocks")
    yield from size("mass of a block", it.block_mass, system, "mass")
    yield from size("radius of the blocks’ middle", it.block_radius, system)
    yield from size("friction on the ring", it.ring_friction, system, "ratio")
    if it.magnets:
        yield Row("magnets", f"{it.magnets} magnets")
    yield from size("drag of the magnets at their most", it.magnet_drag, system, "viscous_drag")
    if it.note:
        yield Row("note", it.note)


def level_wind(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    it = sheet.level_wind
    if it is None:
        return
    yield Row("kind", it.kind)
    yield from size("worm diameter", it.worm_diameter, system)
    yield from size("lead of the worm", it.worm_lead, system)
    yield from size("travel of the guide", it.travel, system)
    yield from size("width of the pawl in the groove", it.pawl_width, system)
    yield from size("depth of the groove", it.groove_depth, system)
    yield Row("worm", it.worm_material)
    yield Row("pawl", it.pawl_material)


def cogs(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    if sheet.level_wind is None:
        return
    pairs, ratio = sheet.level_wind.cogs, 1.0
    for driver, driven in pairs:
        ratio *= driven / driver
    yield Row("pairs from the spool upwards", "; ".join(f"{a} teeth drive {b} teeth" for a, b in pairs))
    yield worked_out("turns of the spool for one of the worm", ratio, "ratio", system)


def frame(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    it = sheet.frame
    if it is None:
        return
    yield Row("built", it.construction)
    yield from size("plate thickness", it.plate_thickness, system)
    yield from size("plates apart, inside", it.plate_spacing, system)
    if it.pillars:
        yield Row("pillars", f"{it.pillars} pillars")
    yield from size("pillar diameter", it.pillar_diameter, system)
    yield from size("diameter of the plates", it.plate_diameter, system)
    yield from size("spool's axis above the reel seat", it.foot_height, system)
    yield from size("foot screws apart", it.foot_screw_spacing, system)
    yield from material(it.material, system)
