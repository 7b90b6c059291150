"""What has to agree between the fields of a sheet."""

from __future__ import annotations

import pytest

from spoolwright.sheets import reel_sheet
from tests.unit.sheets.sheet_text import SMALL, changed, faults_of, only_fault


def test_the_small_sheet_is_in_order() -> None:
    assert reel_sheet.read(SMALL).reel.slug == "tarvak-9"


@pytest.mark.parametrize(
    ("old", "new", "where", "what"),
    [
        (
            'arbor_diameter = "20 mm"',
            'arbor_diameter = "50 mm"',
            "spool.arbor_diameter",
            "does not go inside its flange",
        ),
        ('line_level = "2.0 mm"', 'line_level = "14 mm"', "spool.line_level", "leaves no line"),
        ('material = "aluminium alloy"\n', "", "spool", "neither mass nor material nor inertia"),
        (
            'inner_diameter = "10.0 mm"',
            'inner_diameter = "23.0 mm"',
            "drag.stack[2].inner_diameter (friction disc)",
            "does not go inside",
        ),
        (
            'turns_with = "shaft"',
            'turns_with = "spool"',
            "drag.stack[3].turns_with (top keyed disc)",
            "does not fit a drag",
        ),
        (
            'inner_diameter = "7.2 mm"',
            'inner_diameter = "15 mm"',
            "drag.springs.inner_diameter",
            "does not go inside",
        ),
        ('room = "8 mm"', 'room = "4.8 mm"', "drag.stack", "the members add up to 4.90 mm"),
        (
            'outer_diameter = "23.0 mm"',
            'outer_diameter = "33 mm"',
            "drag.stack[2].outer_diameter (friction disc)",
            "is wider than the main gear",
        ),
        (
            'inner_diameter = "6.2 mm"',
            'inner_diameter = "5.0 mm"',
            "drag.stack[3].inner_diameter",
            "does not go over the star's thread",
        ),
        (
            'inner_diameter = "7.2 mm"',
            'inner_diameter = "5.5 mm"',
            "drag.springs.inner_diameter",
            "does not go over the star's thread",
        ),
        (
            'diameter = "4.0 mm"\nspan',
            'diameter = "21 mm"\nspan',
            "shaft.diameter",
            "does not go inside its arbor",
        ),
        (
            'plate_spacing = "38 mm"',
            'plate_spacing = "33.5 mm"',
            "spool.width",
            "does not fit between the plates",
        ),
        ('travel = "33 mm"', 'travel = "40 mm"', "level_wind.travel", "does not fit between the plates"),
        ('order = "1a"', 'order = "0"', "parts[2].order (handle arm)", "comes after “1”"),
        ("[drag]", "low_main_teeth = 40\n[drag]", "gears", "one half of its low pair"),
        ('control = "star"', 'control = "lever"', "drag.lever", "is missing"),
        (
            "[anti_reverse]\nratchet_teeth = 8\ndogs = 1\nroller_clutch = false\n",
            "",
            "anti_reverse",
            "is missing",
        ),
    ],
)
def test_what_does_not_agree_is_told_with_its_place(old: str, new: str, where: str, what: str) -> None:
    fault = only_fault((old, new))
    assert fault.where == where
    assert what in fault.what
    assert fault.accepted


def test_a_fly_reel_has_no_gears_and_needs_no_drag() -> None:
    text = changed(('kind = "round multiplier"', 'kind = "fly"'))
    assert [fault.where for fault in faults_of(text)] == ["gears"]
    start, end = text.index("[gears]"), text.index("[[bearings]]")
    assert reel_sheet.read(text[:start] + text[end:]).drag is None


def test_a_drag_on_the_gear_needs_a_gear() -> None:
    text = changed(('kind = "round multiplier"', 'kind = "fly"'))
    start, end = text.index("[gears]"), text.index("[drag]")
    assert [fault.where for fault in faults_of(text[:start] + text[end:])] == ["drag.acts_on"]


def test_a_low_profile_multiplier_is_described_like_a_round_one() -> None:
    text = changed(('kind = "round multiplier"', 'kind = "low-profile multiplier"'))
    assert reel_sheet.read(text).reel.kind == "low-profile multiplier"


def test_a_fixed_spool_reel_has_its_drag_on_the_spool_and_a_knob() -> None:
    text = changed(
        ('kind = "round multiplier"', 'kind = "fixed spool"'),
        ('acts_on = "main gear"', 'acts_on = "spool"'),
        ('control = "star"', 'control = "knob"'),
        ('turns_with = "gear"', 'turns_with = "spool"'),
        ('borne = "both ends"', 'borne = "one end"'),
    )
    sheet = reel_sheet.read(text)
    assert (sheet.drag_ratio, sheet.gear_ratio) == (1.0, pytest.approx(50 / 12))


@pytest.mark.parametrize("kind", ["round multiplier", "low-profile multiplier", "fixed spool", "lever drag"])
def test_every_kind_but_fly_is_asked_for_its_gears(kind: str) -> None:
    text = changed(('kind = "round multiplier"', f'kind = "{kind}"'))
    start, end = text.index("[gears]"), text.index("[drag]")
    assert "gears" in [fault.where for fault in faults_of(text[:start] + text[end:])]


def test_a_drag_on_the_spool_is_as_wide_as_its_flange() -> None:
    swapped = (
        ('acts_on = "main gear"', 'acts_on = "spool"'),
        ('turns_with = "gear"', 'turns_with = "spool"'),
    )
    assert reel_sheet.read(changed(*swapped)).drag_ratio == 1.0
    wide = ('outer_diameter = "23.0 mm"', 'outer_diameter = "50 mm"')
    assert "spool's flange" in only_fault(*swapped, wide).what


@pytest.mark.parametrize(
    ("slug", "old", "new", "where", "what"),
    [
        ("pellmar-30-2", 'strike_angle = "62 deg"', 'strike_angle = "89 deg"', "drag.lever.strike_angle",
         "lies beyond the lever's way"),
        ("pellmar-30-2", 'running_gap = "0.2 mm"', 'running_gap = "2.3 mm"', "drag.lever.running_gap",
         "uses up the cam's rise"),
        ("pellmar-30-2", 'pinion_bore = "8.4 mm"', 'pinion_bore = "12 mm"', "gears.pinion_bore",
         "does not go inside its teeth's root"),
        ("lumvik-4000", 'kind = "fixed spool"', 'kind = "lever drag"', "rotor",
         "does not belong to a lever drag"),
        ("brekkas-9-10", 'kind = "fly"', 'kind = "fixed spool"', "check", "does not belong to a fixed spool"),
        ("tarvak-58r", 'span = "64 mm"', 'span = "66 mm"', "shaft.steps", "less than the span"),
    ],
)  # fmt: skip
def test_what_another_kind_has_must_agree(slug: str, old: str, new: str, where: str, what: str) -> None:
    text = reel_sheet.shipped()[slug]
    assert text.count(old) == 1
    found = {fault.where: fault.what for fault in faults_of(text.replace(old, new))}
    assert what in found[where]
