"""Dimensions: what the sheet gives, in the reader's units, between the right ends."""

import xml.etree.ElementTree as ET

import pytest

from spoolwright.papers.section import dimension_lines
from spoolwright.papers.section.measures import measure
from spoolwright.papers.section.pen import View
from tests.unit.papers.section import reels


def words(system: str = "metric") -> list[str]:
    return [it.words for it in dimension_lines.dimensions(measure(reels.shipped("tarvak-58r")), system)]


def test_the_sizes_of_the_sheet_are_there() -> None:
    """From its sheet: width, flanges, arbor, plates and bearings apart, and the arm of the handle."""
    assert {"44.0 mm", "Ø 50.0 mm", "Ø 22.0 mm", "48.0 mm", "bearings 64.0 mm", "42.0 mm"} <= set(words())


def test_imperial_readers_get_inches() -> None:
    assert all(text.endswith(" in") for text in words("imperial"))


@pytest.mark.parametrize("slug", reels.SLUGS)
def test_a_dimension_spans_what_it_says(slug: str) -> None:
    m = measure(reels.shipped(slug))
    for it in dimension_lines.dimensions(m, "metric"):
        said = float(it.words.split()[-2])
        assert abs(it.end - it.start) == pytest.approx(said, abs=0.06)


def test_no_two_dimensions_lie_in_one_row() -> None:
    found = dimension_lines.dimensions(measure(reels.shipped()), "metric")
    places = [(it.along, it.side, it.row) for it in found if it.along == "x" or it.side < 0]
    assert len(places) == len(set(places))


def test_it_is_well_formed() -> None:
    for it in dimension_lines.dimensions(measure(reels.shipped()), "metric"):
        ET.fromstring(f"<g>{dimension_lines.draw(it, View(4.0, 200.0, 200.0), 12.0)}</g>")


def test_a_fly_reel_has_what_its_sheet_gives() -> None:
    found = dimension_lines.dimensions(measure(reels.fly()), "metric")
    assert not [it for it in found if it.side > 0 and it.along == "y"]
