"""A small sheet that is in order, and the same with one thing changed: where the tests here start."""

from __future__ import annotations

import pytest

from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import Fault, SheetFault

SMALL = """
[reel]
maker = "Tarvak"
model = "9"
slug = "tarvak-9"
kind = "round multiplier"
winding_hand = "right"

[spool]
arbor_diameter = "20 mm"
flange_diameter = "48 mm"
width = "34 mm"
line_level = "2.0 mm"
material = "aluminium alloy"

[gears]
main_teeth = 50
pinion_teeth = 12
module = "0.6 mm"
face_width = "4.0 mm"
main_material = "brass"
pinion_material = "brass"

[drag]
acts_on = "main gear"
control = "star"
hand_torque = "1.0 N m"
turns_to_full = 3
room = "8 mm"

[[drag.stack]]
name = "main gear"
outer_diameter = "31.2 mm"
inner_diameter = "8.0 mm"
thickness = "2.5 mm"
material = "brass"
turns_with = "gear"
lubrication = "dry"

[[drag.stack]]
name = "friction disc"
outer_diameter = "23.0 mm"
inner_diameter = "10.0 mm"
thickness = "1.2 mm"
material = "felt"
turns_with = "neither"
lubrication = "greased"

[[drag.stack]]
name = "top keyed disc"
outer_diameter = "23.0 mm"
inner_diameter = "6.2 mm"
thickness = "1.2 mm"
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

[[bearings]]
place = "spool shaft, gear side"
size = "4 x 10 x 4 mm"
kind = "stainless"
shields = "shielded"
lubricant = "Tysna 10"

[shaft]
diameter = "4.0 mm"
span = "56 mm"
material = "stainless steel"
borne = "both ends"

[level_wind]
kind = "always driven"
cogs = [[18, 24], [24, 30]]
worm_lead = "7.0 mm"
travel = "33 mm"
worm_diameter = "5.0 mm"
pawl_material = "brass"
worm_material = "brass"

[anti_reverse]
ratchet_teeth = 8
dogs = 1
roller_clutch = false

[frame]
construction = "two plates on pillars"
material = "brass"
plate_thickness = "2.0 mm"
plate_spacing = "38 mm"

[[screws]]
place = "gear-side plate"
thread = "M3"
length = "20 mm"
count = 3
material = "brass"

[[parts]]
order = "1"
name = "handle nut"
quantity = 1
material = "plated brass"
lubricant = "AS"

[[parts]]
order = "1a"
name = "handle arm"
quantity = 1
material = "plated brass"
lubricant = "DRY"
"""


def changed(*pairs: tuple[str, str]) -> str:
    """The small sheet with each of these lines replaced; the old line has to be there."""
    text = SMALL
    for old, new in pairs:
        assert old in text, old
        text = text.replace(old, new, 1)
    return text


def faults_of(text: str) -> tuple[Fault, ...]:
    with pytest.raises(SheetFault) as caught:
        reel_sheet.read(text)
    return caught.value.faults


def only_fault(*pairs: tuple[str, str]) -> Fault:
    """The one fault that this change makes."""
    faults = faults_of(changed(*pairs))
    assert len(faults) == 1, [str(fault) for fault in faults]
    return faults[0]
