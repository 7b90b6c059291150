"""What must agree between the fields of a reel sheet: a bore inside its disc, tables that a kind needs."""

from __future__ import annotations

from collections.abc import Iterator
from math import cos
from typing import TYPE_CHECKING

from spoolwright.quantities import show
from spoolwright.sheets.sheet_faults import Fault

if TYPE_CHECKING:
    from spoolwright.sheets.reel_sheet import ReelSheet
    from spoolwright.sheets.sheet_tables import Drag

NEEDED = {
    "round multiplier": ("gears", "drag", "shaft", "anti_reverse"),
    "low-profile multiplier": ("gears", "drag", "shaft", "anti_reverse"),
    "lever drag": ("gears", "drag", "shaft", "anti_reverse"),
    "fixed spool": ("gears", "drag", "shaft", "anti_reverse"),
    "fly": (),
}
OF_ONE_KIND = {"rotor": "fixed spool", "oscillation": "fixed spool", "check": "fly"}
"""Tables that no other kind of reel has."""
DEDENDUM = 1.25
"""Depth of a tooth below the pitch circle in modules (ISO 53, basic rack)."""


def faults(sheet: ReelSheet) -> tuple[Fault, ...]:
    """Every disagreement, in the order of the sheet."""
    found = [*_kind(sheet), *_spool(sheet), *_gears(sheet), *_drag(sheet), *_smaller(sheet), *_parts(sheet)]
    return tuple(found)


def _kind(sheet: ReelSheet) -> Iterator[Fault]:
    kind = sheet.reel.kind
    for table in NEEDED[kind]:
        if getattr(sheet, table) is None:
            yield Fault(table, f"is missing; a {kind} has one", f"a table [{table}]")
    if kind == "fly" and sheet.gears is not None:
        yield Fault("gears", "does not belong to a fly reel", "no table [gears] where the kind is fly")
    for table, only in OF_ONE_KIND.items():
        if kind != only and getattr(sheet, table) is not None:
            yield Fault(table, f"does not belong to a {kind}", f"a table [{table}] where the kind is {only}")


def _spool(sheet: ReelSheet) -> Iterator[Fault]:
    spool = sheet.spool
    if spool.arbor_diameter >= spool.flange_diameter:
        yield _inner_outer("spool.arbor_diameter", spool.arbor_diameter, "flange", spool.flange_diameter)
    elif spool.line_level >= (spool.flange_diameter - spool.arbor_diameter) / 2:
        depth = (spool.flange_diameter - spool.arbor_diameter) / 2
        what = f"{show(spool.line_level, 'length')} leaves no line on the spool"
        yield Fault("spool.line_level", what, f"less than the spool's depth of {show(depth, 'length')}")
    if sheet.shaft is not None and sheet.shaft.diameter >= spool.arbor_diameter:
        yield _inner_outer("shaft.diameter", sheet.shaft.diameter, "arbor", spool.arbor_diameter)
    yield from _steps(sheet)
    if spool.inertia is None and spool.mass is None and spool.material is None:
        what = "has neither mass nor material nor inertia, so its inertia cannot be known"
        yield Fault("spool", what, "inertia, or a material, or a mass")


def _steps(sheet: ReelSheet) -> Iterator[Fault]:
    """The steps of the shaft reach from bearing to bearing at least."""
    shaft = sheet.shaft
    if shaft is None or not shaft.steps:
        return
    whole = sum(step.length for step in shaft.steps)
    if whole < shaft.span - 1e-6:
        what = f"the steps add up to {show(whole, 'length')}, less than the span"
        yield Fault("shaft.steps", what, f"at least shaft.span, {show(shaft.span, 'length')}")


def _gears(sheet: ReelSheet) -> Iterator[Fault]:
    gears = sheet.gears
    if gears is None:
        return
    if (gears.low_main_teeth is None) != (gears.low_pinion_teeth is None):
        what = "has one half of its low pair"
        yield Fault("gears", what, "low_main_teeth with low_pinion_teeth, or neither")
    root = gears.module * (gears.pinion_teeth / cos(gears.helix_angle) - 2 * DEDENDUM)
    if gears.pinion_bore is not None and gears.pinion_bore >= root:
        yield _inner_outer("gears.pinion_bore", gears.pinion_bore, "teeth's root", root)


def _drag(sheet: ReelSheet) -> Iterator[Fault]:
    drag = sheet.drag
    if drag is None:
        return
    member = "gear" if drag.acts_on == "main gear" else "spool"
    for number, washer in enumerate(drag.stack, 1):
        here = f"drag.stack[{number}]"
        if washer.inner_diameter >= washer.outer_diameter:
            where = f"{here}.inner_diameter ({washer.name})"
            yield _inner_outer(where, washer.inner_diameter, "outer diameter", washer.outer_diameter)
        if washer.turns_with not in (member, "shaft", "neither"):
            what = f"“{washer.turns_with}” does not fit a drag that acts on the {drag.acts_on}"
            yield Fault(f"{here}.turns_with ({washer.name})", what, f"{member}, shaft, neither")
    springs = drag.springs
    if springs.inner_diameter >= springs.outer_diameter:
        where = "drag.springs.inner_diameter"
        yield _inner_outer(where, springs.inner_diameter, "outer diameter", springs.outer_diameter)
    if drag.control == "lever" and drag.lever is None:
        yield Fault("drag.lever", "is missing; the control is a lever", "a table [drag.lever]")
    yield from _lever(drag)
    if sheet.gears is None and drag.acts_on == "main gear":
        yield Fault("drag.acts_on", "“main gear”, but the reel has no gears", "spool")
    yield from _drag_fit(sheet, drag)


def _lever(drag: Drag) -> Iterator[Fault]:
    """The strike stop on the lever's way, the running gap inside the cam's rise."""
    lever = drag.lever
    if lever is None:
        return
    if lever.strike_angle is not None and lever.strike_angle > lever.cam_angle:
        what = f"{show(lever.strike_angle, 'angle')} lies beyond the lever's way"
        accepted = f"at most drag.lever.cam_angle, {show(lever.cam_angle, 'angle')}"
        yield Fault("drag.lever.strike_angle", what, accepted)
    if lever.running_gap is not None and lever.running_gap >= lever.cam_rise:
        what = f"{show(lever.running_gap, 'length')} uses up the cam's rise: the drag would never bite"
        accepted = f"less than drag.lever.cam_rise, {show(lever.cam_rise, 'length')}"
        yield Fault("drag.lever.running_gap", what, accepted)


def _drag_fit(sheet: ReelSheet, drag: Drag) -> Iterator[Fault]:
    """The stack in its room, its discs inside the gear or the spool, its bores over the thread."""
    height = sum(washer.thickness for washer in drag.stack)
    if drag.room is not None and height > drag.room:
        what = f"the members add up to {show(height, 'length')}, more than the room for them"
        yield Fault("drag.stack", what, f"at most drag.room, {show(drag.room, 'length')}")
    widest, name = _widest(sheet, drag)
    for number, washer in enumerate(drag.stack, 1):
        if washer.outer_diameter > widest:
            what = f"{show(washer.outer_diameter, 'length')} is wider than the {name}"
            where = f"drag.stack[{number}].outer_diameter ({washer.name})"
            yield Fault(where, what, f"at most {show(widest, 'length')}")
        yield from _over_thread(f"drag.stack[{number}]", washer.inner_diameter, drag)
    yield from _over_thread("drag.springs", drag.springs.inner_diameter, drag)


def _widest(sheet: ReelSheet, drag: Drag) -> tuple[float, str]:
    gears = sheet.gears
    if drag.acts_on == "spool" or gears is None:
        return sheet.spool.flange_diameter, "spool's flange"
    tip = (gears.main_teeth / cos(gears.helix_angle) + 2) * gears.module
    return tip * 1.01, "main gear over its teeth"


def _over_thread(table: str, inner: float, drag: Drag) -> Iterator[Fault]:
    thread = drag.thread.pitch_diameter
    if drag.control == "star" and inner < thread:
        what = f"{show(inner, 'length')} does not go over the star's thread"
        yield Fault(f"{table}.inner_diameter", what, f"at least {show(thread, 'length')}")


def _smaller(sheet: ReelSheet) -> Iterator[Fault]:
    """What has to fit between the plates."""
    frame = sheet.frame
    if frame is None:
        return
    between = frame.plate_spacing
    if sheet.spool.width >= between:
        yield _too_wide("spool.width", sheet.spool.width, between)
    if sheet.level_wind is not None and sheet.level_wind.travel > between:
        yield _too_wide("level_wind.travel", sheet.level_wind.travel, between)


def _parts(sheet: ReelSheet) -> Iterator[Fault]:
    turns = [part.turn for part in sheet.parts]
    for number in range(1, len(turns)):
        if turns[number] < turns[number - 1]:
            part = sheet.parts[number]
            what = f"“{part.order}” comes after “{sheet.parts[number - 1].order}”"
            yield Fault(f"parts[{number + 1}].order ({part.name})", what, "parts in the order they come off")


def _inner_outer(where: str, inner: float, outer_name: str, outer: float) -> Fault:
    return Fault(
        where,
        f"{show(inner, 'length')} does not go inside its {outer_name} of {show(outer, 'length')}",
        f"more than 0 mm and less than {show(outer, 'length')}",
    )


def _too_wide(where: str, size: float, between: float) -> Fault:
    what = f"{show(size, 'length')} does not fit between the plates"
    return Fault(where, what, f"less than frame.plate_spacing, {show(between, 'length')}")
