"""What is known of the gears, the drag stack, its springs and star, the anti-reverse and the handle."""

from __future__ import annotations

from collections.abc import Iterator
from math import degrees

from spoolwright.judgement import drag_train
from spoolwright.pages.reel_sheet.rows import Row, material, published, size, worked_out
from spoolwright.pages.words import shown
from spoolwright.papers.section.measures import measure
from spoolwright.papers.section.stack import washer_key
from spoolwright.sheets.drag_stack import Pair, slipping_pairs
from spoolwright.sheets.materials import friction_material, friction_names
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Lever, Washer


def main_gear(sheet: ReelSheet, key: str, system: str) -> Iterator[Row]:
    gears = sheet.gears
    if gears is None:
        return
    yield from _both_gears(sheet, system)
    yield from material(gears.main_material, system)
    yield from washer(sheet, key, system)


def pinion(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    gears = sheet.gears
    if gears is None:
        return
    yield from _both_gears(sheet, system)
    yield from material(gears.pinion_material, system)


def _both_gears(sheet: ReelSheet, system: str) -> Iterator[Row]:
    gears = sheet.gears
    assert gears is not None
    yield from size("module", gears.module, system)
    yield from size("face width", gears.face_width, system)
    if gears.form != "side by side":
        yield Row("form", f"{gears.form} gear, its axis across the pinion's")
    yield from size("axes pass one another by", gears.axis_offset, system)
    if gears.helix_angle:
        yield Row("teeth lie at", f"{degrees(gears.helix_angle):.0f}\u00a0° to the axis")
    yield worked_out(_winds(sheet), gears.ratio, "ratio", system)
    if gears.low_ratio is not None:
        yield worked_out("the same in the low gear", gears.low_ratio, "ratio", system)


def _winds(sheet: ReelSheet) -> str:
    what = "rotor" if sheet.reel.kind == "fixed spool" else "spool"
    return f"turns of the {what} for one of the handle"


def washer(sheet: ReelSheet, key: str, system: str) -> Iterator[Row]:
    found = washer_of(sheet, key)
    if found is None:
        return
    if key != "main-gear":
        yield from size("outside", found.outer_diameter, system)
        yield from size("bore", found.inner_diameter, system)
        yield from size("thickness", found.thickness, system)
        yield from _disc_material(found, system)
    yield Row(
        "turns with",
        "neither side: it lies loose" if found.turns_with == "neither" else f"the {found.turns_with}",
    )
    yield Row("built", found.lubrication)
    for pair in _slips_at(sheet, found):
        yield Row("slips", f"{pair.lower} on {pair.upper}")


def washer_of(sheet: ReelSheet, key: str) -> Washer | None:
    """The member of the stack that the drawing shows under this key."""
    members = enumerate(measure(sheet).stack, start=1)
    return next((washer for place, washer in members if washer_key(washer, place) == key), None)


def _disc_material(it: Washer, system: str) -> Iterator[Row]:
    if it.material not in friction_names():
        yield from material(it.material, system)
        return
    known = friction_material(it.material)
    yield Row("material", it.material)
    yield published("friction, dry", known.dry, "ratio", system)
    yield published("friction, greased", known.greased, "ratio", system)
    yield published("start over run, as built", known.start_ratio(it.lubrication), "ratio", system)
    yield published("pressed at most, steady slip", known.pressure_limit, "pressure", system)
    yield published("as hot as", known.temperature_limit, "temperature", system)
    if known.note:
        yield Row("note", known.note)


def _slips_at(sheet: ReelSheet, it: Washer) -> list[Pair]:
    pairs = slipping_pairs(sheet.drag.stack).pairs if sheet.drag else ()
    return [pair for pair in pairs if it.name in (pair.lower, pair.upper)]


def springs(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    if sheet.drag is None:
        return
    it = sheet.drag.springs
    yield Row("stand as", f"{it.arrangement}, {arrangement_in_words(it.nests)}")
    yield from size("outside", it.outer_diameter, system)
    yield from size("bore", it.inner_diameter, system)
    yield from size("thickness", it.thickness, system)
    yield from size("cone, from flat", it.cone_height, system)
    force = drag_train.travel(sheet.drag).flat_force
    yield Row(
        "press when flat",
        shown.quantity(force, "force", system),
        "worked out after EN 16984; springs vary by a tenth",
    )


def arrangement_in_words(nests: tuple[int, ...]) -> str:
    """What the brackets mean: springs in a nest push harder, nests in a row give longer travel."""
    if len(nests) == 1:
        return "one spring alone" if nests[0] == 1 else f"one nest of {nests[0]}, all the same way round"
    each = "each of one spring" if set(nests) == {1} else f"of {', '.join(map(str, nests))} springs"
    return f"{len(nests)} nests back to back, {each}"


def control(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    it = sheet.drag
    if it is None:
        return
    if it.lever:
        yield from lever(it.lever, system)
        yield Row("the thread below is", "the preset's")
    else:
        yield Row("turns from free to full", f"{it.turns_to_full:g} turns")
        yield from size("a hand turns it with at most", it.hand_torque, system, "torque")
    yield from size("pitch of its thread", it.thread.pitch, system)
    yield from size("pitch diameter", it.thread.pitch_diameter, system)
    yield from size("friction of the thread", it.thread.friction, system, "ratio")


def lever(it: Lever, system: str) -> Iterator[Row]:
    """The lever's way, its cam, where the strike stop stands, and the preset."""
    yield from size("length of the lever", it.arm_length, system)
    yield Row("swings from free to full", f"{degrees(it.cam_angle):.0f}\u00a0°")
    if it.strike_angle is not None:
        yield Row("strike stop at", f"{degrees(it.strike_angle):.0f}\u00a0° from free")
    yield from size("rise of its cam", it.cam_rise, system)
    yield from size("plates clear at free, at most", it.running_gap, system)
    if it.preset_turns is not None:
        yield Row("preset turns", f"{it.preset_turns:g} turns")


def thumb_bar(_: ReelSheet, __: str, ___: str) -> Iterator[Row]:
    yield Row("form", "not on the sheet: drawn by custom; it lifts the pinion off the spool's pin")


def cam(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    if sheet.drag and sheet.drag.lever:
        yield from lever(sheet.drag.lever, system)


def preset(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    if sheet.drag is None:
        return
    yield from size("pitch of its thread", sheet.drag.thread.pitch, system)
    yield from size("pitch diameter", sheet.drag.thread.pitch_diameter, system)
    if sheet.drag.lever and sheet.drag.lever.preset_turns is not None:
        yield Row("turns", f"{sheet.drag.lever.preset_turns:g} turns")


def drive_shaft(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    yield worked_out("thickness at the keyed discs", 2 * measure(sheet).drive_radius / 1000, "length", system)
    if sheet.drag:
        yield from size("pitch diameter of its thread", sheet.drag.thread.pitch_diameter, system)


def anti_reverse(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    it = sheet.anti_reverse
    if it is None:
        return
    yield Row("roller clutch", "yes" if it.roller_clutch else "no")
    if it.ratchet_teeth:
        yield Row("ratchet behind it", f"{it.ratchet_teeth} teeth")
        yield Row(
            "back-play on the ratchet alone, at most",
            f"{360 / it.ratchet_teeth:.0f}\u00a0°",
            "worked out from the sheet",
        )
    if it.dogs:
        yield Row("dogs", f"{it.dogs} dog{'' if it.dogs == 1 else 's'}")


def handle(sheet: ReelSheet, _: str, system: str) -> Iterator[Row]:
    it = sheet.handle
    if it is None:
        return
    yield from size(_arm(sheet), it.arm_length, system)
    yield from size("width of the arm", it.section_width, system)
    yield from size("thickness of the arm", it.section_thickness, system)
    yield Row("knobs", "two knobs" if it.knobs == 2 else "one knob")
    yield from material(it.material, system)


def _arm(sheet: ReelSheet) -> str:
    return "spindle to knob, on the spool" if sheet.reel.kind == "fly" else "arm, shaft to knob"
