"""The tag: one small page with its number, its owner and a code."""

import pytest

from spoolwright.papers import bag_tag
from tests.unit.papers import pdf, samples

POINTS_PER_MM = 72 / 25.4


def test_it_is_one_page_of_100_by_60_mm() -> None:
    pages = pdf.reader(bag_tag.render(samples.tag())).pages
    assert len(pages) == 1
    assert float(pages[0].mediabox.width) == pytest.approx(100 * POINTS_PER_MM, abs=0.1)
    assert float(pages[0].mediabox.height) == pytest.approx(60 * POINTS_PER_MM, abs=0.1)


def test_it_says_whose_it_is_and_what_came_with_it() -> None:
    words = pdf.text(bag_tag.render(samples.tag()))
    for part in ("58R-017", "Tarvak 58R", "Ragna Solbu", "12 March 2026", "338 g with line", "envelope 117"):
        assert part in words


def test_the_code_says_where_it_leads() -> None:
    assert any("passport/58r-017" in alt for alt in pdf.alternatives(bag_tag.render(samples.tag())))


def test_a_caution_is_printed() -> None:
    paper = bag_tag.render(samples.tag(caution="Do not turn the handle"))
    assert "Do not turn the handle" in pdf.text(paper)


def test_much_text_stays_on_one_tag() -> None:
    paper = bag_tag.render(
        samples.tag(owner=samples.NASTY, marks=(samples.NASTY,) * 9, belongs=samples.NASTY * 3)
    )
    assert len(pdf.reader(paper).pages) == 1
