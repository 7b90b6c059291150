"""Outlines and rounds in millimetres."""

import pytest

from spoolwright.papers.section.shapes import Round, box_of, halves, rectangle, ring, stroke


def test_a_ring_is_cut_above_and_below_its_axis() -> None:
    upper, lower = ring(1, 3, 2, 5, axis=10.0)
    assert box_of([upper]) == (1, 5, 3, 8)
    assert box_of([lower]) == (1, 12, 3, 15)


def test_the_halves_of_a_profile_mirror_each_other() -> None:
    upper, lower = halves(((0, 1), (2, 1), (2, 4)), axis=3.0)
    assert [(x, 6 - y) for x, y in upper.points] == list(lower.points)


def test_a_box_holds_rounds_and_lines() -> None:
    assert box_of([Round((0, 0), 2), stroke((5, 1), (7, -9))]) == (-2, -9, 7, 2)


def test_a_stroke_is_open_and_a_rectangle_closed() -> None:
    assert not stroke((0, 0), (1, 1)).closed
    assert rectangle(0, 0, 1, 1).closed


def test_nothing_has_no_box() -> None:
    with pytest.raises(ValueError, match="empty"):
        box_of([])
