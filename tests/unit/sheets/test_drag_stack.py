"""Slipping pairs from the order of a stack, and the words for a stack that is wrong."""

from __future__ import annotations

import pytest

from spoolwright.sheets.drag_stack import slipping_pairs
from spoolwright.sheets.sheet_tables import Washer


def washer(
    name: str,
    turns_with: str,
    material: str = "stainless steel",
    outer: float = 26,
    inner: float = 10,
    wet: str = "greased",
) -> Washer:
    return Washer.model_validate(
        {
            "name": name,
            "outer_diameter": f"{outer} mm",
            "inner_diameter": f"{inner} mm",
            "thickness": "1 mm",
            "material": material,
            "turns_with": turns_with,
            "lubrication": wet,
        }
    )


GEAR = washer("main gear", "gear", "brass", outer=32, inner=8)
KEYED = washer("keyed disc", "shaft")
EARED = washer("eared disc", "gear")
CARBON = washer("carbon disc", "neither", "woven carbon")
FELT = washer("felt disc", "neither", "felt")


def test_a_pair_knows_its_faces_and_their_friction() -> None:
    (pair,) = slipping_pairs([GEAR, CARBON, KEYED]).pairs
    assert (pair.lower, pair.upper) == ("main gear", "carbon disc")
    assert (pair.face_material, pair.lubrication) == ("woven carbon", "greased")
    assert (pair.outer_radius, pair.inner_radius) == (0.013, 0.005)
    assert pair.effective_radius == pytest.approx(0.009)
    assert pair.friction.low == 0.12
    assert pair.start_ratio.high == 1.15


def test_the_face_is_where_both_discs_are() -> None:
    narrow = washer("narrow disc", "shaft", outer=22, inner=12)
    (pair,) = slipping_pairs([GEAR, CARBON, narrow]).pairs
    assert pair.upper == "narrow disc"
    assert (pair.outer_radius, pair.inner_radius) == (0.011, 0.006)
    small = washer("small disc", "shaft", outer=20, inner=6)
    (pair,) = slipping_pairs([GEAR, CARBON, small]).pairs
    assert pair.upper == "small disc"
    assert pair.outer_radius == 0.010


def test_of_two_loose_discs_in_a_row_the_weaker_face_slips() -> None:
    for order in ([GEAR, FELT, CARBON, KEYED], [GEAR, CARBON, FELT, KEYED]):
        (pair,) = slipping_pairs(order).pairs
        assert pair.face_material == "woven carbon"


def test_a_dry_disc_and_a_greased_one_are_two_different_faces() -> None:
    dry = washer("dry disc", "neither", "woven carbon", wet="dry")
    (pair,) = slipping_pairs([GEAR, dry, KEYED]).pairs
    assert pair.lubrication == "dry"
    (pair,) = slipping_pairs([GEAR, dry, CARBON, KEYED]).pairs
    assert pair.lubrication == "greased"


def test_an_eared_friction_disc_turns_with_the_gear_and_shows_one_working_face() -> None:
    eared = washer("eared carbon", "gear", "woven carbon")
    reading = slipping_pairs([GEAR, eared, KEYED])
    assert len(reading.pairs) == 1
    assert reading.pairs[0].lower == "eared carbon"
    assert reading.warnings == ()


def test_metal_on_metal_slips_but_is_told() -> None:
    reading = slipping_pairs([GEAR, KEYED])
    assert reading.pairs[0].face_material == "bare metal"
    assert "metal on metal with no friction disc between" in reading.warnings[0]


def test_two_keyed_discs_that_touch_are_nothing_then_locked() -> None:
    second = washer("second keyed disc", "shaft")
    reading = slipping_pairs([GEAR, CARBON, KEYED, second])
    assert len(reading.pairs) == 1
    assert reading.warnings == (
        "“keyed disc” and “second keyed disc” both turn with the shaft and touch with no friction disc "
        "between: they give no pair, and the drag goes from nothing to locked.",
    )


def test_a_friction_disc_between_two_that_turn_alike_is_idle() -> None:
    reading = slipping_pairs([GEAR, FELT, EARED, CARBON, KEYED])
    assert len(reading.pairs) == 1
    assert "“felt disc” between them cannot slip and one pair is lost" in reading.warnings[0]


def test_discs_that_do_not_meet_give_no_pair() -> None:
    ring = washer("wide ring", "neither", "felt", outer=30, inner=28)
    reading = slipping_pairs([GEAR, ring, KEYED])
    assert reading.pairs == ()
    assert "do not meet" in reading.warnings[0]
    assert "nothing, then locked" in reading.warnings[-1]


def test_a_friction_disc_at_the_end_has_nothing_to_slip_on() -> None:
    reading = slipping_pairs([CARBON, GEAR, FELT, KEYED])
    assert len(reading.pairs) == 1
    assert "“carbon disc” lies outside the last fixed disc" in reading.warnings[0]


def test_the_last_disc_has_to_turn_with_the_springs() -> None:
    reading = slipping_pairs([KEYED, CARBON, GEAR])
    assert len(reading.pairs) == 1
    assert "they rub on it" in reading.warnings[0]


def test_a_stack_of_loose_discs_is_no_drag() -> None:
    reading = slipping_pairs([CARBON, FELT])
    assert reading.pairs == ()
    assert reading.warnings[0] == "No member of this stack turns with anything."
