"""Millimetres to drawing units, and lettering of a known width."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spoolwright.papers.section.pen import Pen, View, lettering, text_width, wrapped
from spoolwright.papers.section.shapes import Outline, Round, rectangle


def test_a_view_scales_shifts_and_mirrors() -> None:
    assert View(2.0, 10.0, 5.0).point((3.0, 4.0)) == (16.0, 13.0)
    assert View(2.0, 10.0, 5.0, hand=-1).point((3.0, 4.0)) == (4.0, 13.0)
    assert View(2.0, 10.0, 5.0, hand=-1).box((0.0, 0.0, 3.0, 4.0)) == (4.0, 5.0, 10.0, 13.0)


def test_a_cut_part_takes_its_hatch_and_a_thin_one_the_fine_hatch() -> None:
    pen = Pen(View(1.0, 0.0, 0.0), "p")
    assert "url(#p-steel)" in pen.draw(rectangle(0, 0, 20, 20, cut="steel"))
    assert "url(#p-steel-f)" in pen.draw(rectangle(0, 0, 2, 20, cut="steel"))
    assert "url(#p-steel-x)" in pen.draw(rectangle(0, 0, 20, 20, cut="steel", crossed=True))


def test_holes_are_cut_out_of_the_same_path() -> None:
    drawn = Pen(View(1.0, 0.0, 0.0), "p").draw(
        Outline(((0, 0), (9, 0), (9, 9)), cut="steel", holes=(((1, 1), (2, 1), (2, 2)),))
    )
    assert drawn.count("Z") == 2
    assert 'fill-rule="evenodd"' in drawn


def test_a_round_keeps_its_radius() -> None:
    assert 'r="6.00"' in Pen(View(3.0, 0.0, 0.0), "p").draw(Round((0, 0), 2.0))


def test_lettering_is_escaped() -> None:
    assert "&lt;b&gt; &amp;" in lettering((0, 0), "<b> &", 12)


@given(st.text("abc defghij", min_size=1, max_size=200), st.floats(40, 300))
def test_wrapped_lines_keep_to_the_width(text: str, width: float) -> None:
    lines = wrapped(text, 12.0, width)
    assert 1 <= len(lines) <= 4
    assert all(text_width(line, 12.0) <= width for line in lines)


def test_what_is_cut_short_says_so() -> None:
    assert wrapped("word " * 50, 12.0, 60.0)[-1].endswith("…")
    assert wrapped("w" * 90, 12.0, 60.0)[0].endswith("…")
    assert wrapped("two words", 12.0, 600.0) == ("two words",)


def test_width_grows_with_the_size() -> None:
    assert text_width("spool", 24) == pytest.approx(2 * text_width("spool", 12))
