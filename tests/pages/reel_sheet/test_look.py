"""What is asked of the drawing, read leniently where it can be and refused with words where it cannot."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.pages.reel_sheet.look import Look, LookForm, bare, level_at, look_of, settled, share_at
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-54c")
MM = 1e-3


def asked(system: str = "metric", **typed: str) -> tuple[LookForm, Look]:
    form = LookForm(typed or None, sheet=SHEET, system=system)
    form.is_valid()
    return form, look_of(form)


def test_nothing_asked_is_a_full_spool_with_names_pulled_apart() -> None:
    _, look = asked()
    assert (look.fill, look.sizes, look.apart, look.slid) == (1.0, False, True, False)
    assert look.level == pytest.approx(SHEET.spool.line_level)


@pytest.mark.parametrize("typed", ["6 mm", "6,0 mm", "0.6 cm", "0.23622 in"])
def test_a_level_is_read_in_any_unit(typed: str) -> None:
    """By hand: flange 50 mm, so radius 19 mm; arbor 11, full 23; (361 - 121) / (529 - 121)."""
    _, look = asked(level=typed)
    assert look.fill == pytest.approx((19**2 - 11**2) / (23**2 - 11**2), rel=1e-3)
    assert look.level == pytest.approx(6 * MM, rel=1e-3)


def test_the_unit_beside_the_number_counts_where_none_was_typed() -> None:
    assert asked(level="0.25", level_unit="in")[1].level == pytest.approx(6.35 * MM, rel=1e-3)


def test_the_slider_wins_when_it_was_moved_and_only_then() -> None:
    moved = asked(level="2 mm", fill="50", was="100")[1]
    assert moved.slid
    assert moved.fill == 0.5
    still = asked(level="6 mm", fill="59", was="59")[1]
    assert not still.slid
    assert still.level == pytest.approx(6 * MM, rel=1e-3)


@pytest.mark.parametrize("typed", ["1 mm", "-2 mm", "15 mm", "soft", "6", "2 kg", "9" * 80])
def test_a_level_off_the_spool_is_refused_and_the_drawing_stays_full(typed: str) -> None:
    form, look = asked(level=typed, level_unit="")
    assert form.errors["level"]
    assert "Accepted" in form.errors["level"][0]
    assert look.fill == 1.0
    assert settled(form, look) is form


def test_what_is_accepted_is_said_in_the_readers_units() -> None:
    form, _ = asked("imperial", level="1 in")
    assert "0.551 in (bare)" in form.errors["level"][0]  # the depth of the spool: (50 - 22) / 2 mm


@pytest.mark.parametrize(
    "typed", [{"fill": "101"}, {"fill": "-1"}, {"fill": "x"}, {"words": "loud"}, {"stack": "x"}]
)
def test_what_no_switch_offers_is_not_taken(typed: dict[str, str]) -> None:
    form, look = asked(**typed)
    assert form.errors
    assert look == asked()[1]


def test_a_look_that_was_drawn_can_be_asked_for_again() -> None:
    """What the fields show leads back to the same picture."""
    form, look = asked(level="2 mm", fill="37", was="100", words="sizes", stack="together")
    shown: dict[str, Any] = {
        name: str(settled(form, look).initial[name]) for name in ("fill", "was", "words", "stack")
    }
    field = settled(form, look)["level"]
    again = asked(level=field.field.prepare_value(look.level), **shown)[1]
    assert again.percent == look.percent == 37
    assert (again.sizes, again.apart) == (True, False)


def test_share_and_level_are_one_anothers_inverse() -> None:
    for share in (0.0, 0.1, 0.5, 0.9, 1.0):
        assert share_at(SHEET, level_at(SHEET, share)) == pytest.approx(share, abs=1e-6)
    assert level_at(SHEET, 0.0) == pytest.approx(bare(SHEET))
    assert share_at(SHEET, bare(SHEET)) == 0.0
