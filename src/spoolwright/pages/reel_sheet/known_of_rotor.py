"""What is known of a fixed spool's rotor, line roller and oscillation, and of a fly reel's check."""

from __future__ import annotations

from collections.abc import Iterator
from math import pi

from spoolwright.pages.reel_sheet.known_of_spool import bearing_rows
from spoolwright.pages.reel_sheet.rows import Row, material, size, worked_out
from spoolwright.papers.section.measures import measure
from spoolwright.sheets.reel_sheet import ReelSheet


def rotor(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    it = sheet.rotor
    if it is None:
        yield Row("sizes", "not on the sheet: drawn by custom, clear of the spool at both ends of its stroke")
        return
    yield from size("over its arms", it.diameter, system)
    yield from size("length", it.length, system)
    yield from size("mass", it.mass, system, "mass")
    yield from size("inertia", it.inertia, system, "inertia")
    yield from size("bail wire", it.bail_wire_diameter, system)
    yield from material(it.material, system)


def line_roller(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    it = sheet.rotor
    if it is None:
        return
    yield from size("diameter", it.roller_diameter, system)
    yield from size("width", it.roller_width, system)
    lay = 2 * pi * sheet.spool.full_radius / (pi * it.roller_diameter)
    yield worked_out("turns for one turn of the rotor, full spool", lay, "ratio", system)
    bearing = measure(sheet).bearing_at("line roller")
    if bearing is not None:
        yield from bearing_rows(bearing, system)


def oscillation(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    it = sheet.oscillation
    if it is None:
        return
    yield Row("by", f"a {it.kind}")
    yield from size("stroke of the spool", it.stroke, system)
    yield from size("worm diameter", it.worm_diameter, system)
    yield from size("lead of the worm", it.worm_lead, system)
    if it.worm_material:
        yield Row("worm", it.worm_material)
    if it.pawl_material:
        yield Row("pawl", it.pawl_material)


def cogs(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    it = sheet.oscillation
    if it is None:
        return
    ratio = 1.0
    for driver, driven in it.cogs:
        ratio *= driven / driver
    yield Row("pairs from the pinion", "; ".join(f"{a} teeth drive {b} teeth" for a, b in it.cogs))
    yield worked_out("turns of the rotor for one of the worm", ratio, "ratio", system)


def check(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    it = sheet.check
    if it is None:
        return
    yield Row("wheel", f"{it.wheel_teeth} teeth")
    yield Row("pawls", f"{it.pawls} pawl{'' if it.pawls == 1 else 's'}")
    yield Row("springs", f"{it.springs} spring{'' if it.springs == 1 else 's'}")
    yield from size("pull over the check, full spool", it.pull, system, "force")
    if it.pawl_material:
        yield Row("pawl", it.pawl_material)
