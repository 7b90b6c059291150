"""Reel sheets for the tests of the drawing: the shipped ones, changed where a test needs it."""

import re

from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import ReelSheet

SLUGS = sorted(reel_sheet.shipped())
ROUND = ["pellmar-70", "tarvak-52", "tarvak-54c", "tarvak-58r"]
OTHERS = [slug for slug in SLUGS if slug not in ROUND]
MULTIPLIERS = [slug for slug in SLUGS if "multiplier" in reel_sheet.load(slug).reel.kind]


def shipped(slug: str = "tarvak-58r") -> ReelSheet:
    return reel_sheet.load(slug)


def changed(slug: str = "tarvak-58r", **swaps: str) -> ReelSheet:
    """A shipped sheet with `key="value"` lines set anew: changed(width="88 mm"). A new span has no steps."""
    text = reel_sheet.shipped()[slug]
    if "span" in swaps:
        text = re.sub(r"(?ms)^\[\[shaft\.steps\]\].*?(?=^\[)", "", text)
    for key, value in swaps.items():
        text, count = re.subn(rf"(?m)^{key} = .*$", f'{key} = "{value}"', text, count=1)
        assert count, f"{slug} has no {key}"
    return reel_sheet.read(text)


def without(slug: str, *tables: str) -> ReelSheet:
    """A shipped sheet with whole tables left out."""
    text = reel_sheet.shipped()[slug]
    for table in tables:
        text = re.sub(rf"(?ms)^\[\[?{re.escape(table)}\]\]?.*?(?=^\[(?!{re.escape(table)}\.)|\Z)", "", text)
    return reel_sheet.read(text)


FLY = """
[reel]
maker = "Brekkås"
model = "8/9"
slug = "brekkas-89"
kind = "fly"
winding_hand = "either"
[spool]
arbor_diameter = "45 mm"
flange_diameter = "95 mm"
width = "24 mm"
line_level = "6 mm"
material = "aluminium alloy"
[shaft]
diameter = "6 mm"
span = "18 mm"
material = "stainless steel"
borne = "fixed, spool on its bearings"
[[bearings]]
place = "spool, gear side"
size = "6 x 13 x 5 mm"
kind = "stainless"
shields = "open"
lubricant = "Tysna 10"
[[bearings]]
place = "spool, off side"
size = "6 x 13 x 5 mm"
kind = "stainless"
shields = "open"
lubricant = "Tysna 10"
[handle]
arm_length = "38 mm"
knobs = 1
[frame]
construction = "one piece"
material = "aluminium alloy"
plate_thickness = "2.5 mm"
plate_spacing = "31 mm"
"""

DRAG = """
[drag]
acts_on = "spool"
control = "knob"
hand_torque = "0.5 N m"
turns_to_full = 2
[[drag.stack]]
name = "spool"
outer_diameter = "22 mm"
inner_diameter = "12 mm"
thickness = "2 mm"
material = "aluminium alloy"
turns_with = "spool"
lubrication = "dry"
[[drag.stack]]
name = "felt disc"
outer_diameter = "20 mm"
inner_diameter = "14 mm"
thickness = "3 mm"
material = "felt"
turns_with = "neither"
lubrication = "greased"
[[drag.stack]]
name = "pressure plate"
outer_diameter = "22 mm"
inner_diameter = "8 mm"
thickness = "1.5 mm"
material = "stainless steel"
turns_with = "shaft"
lubrication = "greased"
[drag.springs]
outer_diameter = "14 mm"
inner_diameter = "7.2 mm"
thickness = "0.74 mm"
cone_height = "0.30 mm"
arrangement = "()"
[drag.thread]
pitch = "0.5 mm"
pitch_diameter = "5.675 mm"
friction = 0.12
bearing_radius = "4.5 mm"
bearing_friction = 0.12
"""

FIXED = FLY.replace('"fly"', '"fixed spool"').replace("95 mm", "48 mm").replace("45 mm", "34 mm").replace(
    "6 mm\"\nmaterial", "2 mm\"\nmaterial"
) + """
[gears]
main_teeth = 37
pinion_teeth = 7
module = "0.7 mm"
face_width = "4 mm"
main_material = "zinc alloy"
pinion_material = "brass"
[anti_reverse]
roller_clutch = true
""" + DRAG  # fmt: skip


def fly() -> ReelSheet:
    return reel_sheet.read(FLY)


def fixed_spool() -> ReelSheet:
    return reel_sheet.read(FIXED)
