"""The scale's bar and the key of materials."""

import xml.etree.ElementTree as ET

import pytest

from spoolwright.papers import materials_key
from spoolwright.papers.section import legend
from tests.unit.papers.section import reading_svg


@pytest.mark.parametrize(("system", "length"), [("metric", 10.0), ("imperial", 12.7)])
def test_the_bar_is_as_long_as_it_says(system: str, length: float) -> None:
    """Half an inch is 12.7 mm exactly (international inch, from memory)."""
    bar = ET.fromstring(legend.scale_bar((10.0, 20.0), 3.0, 12.0, system))
    path = bar.find("path")
    assert path is not None
    left, right = (float(part.split()[0]) for part in path.attrib["d"].split("M")[1:3])
    assert right - left == pytest.approx(3.0 * length, abs=0.1)


def test_the_key_keeps_to_its_width_and_tells_its_height() -> None:
    every = list(materials_key.HATCHES)
    one_row, low = legend.key(every, (0.0, 0.0), 2000.0, 12.0, "p")
    many, high = legend.key(every, (0.0, 0.0), 200.0, 12.0, "p")
    assert high > low
    for svg, width in ((one_row, 2000.0), (many, 200.0)):
        for text in ET.fromstring(svg).iter("text"):
            assert reading_svg.box(text).right <= width


def test_only_what_is_used_stands_in_the_key() -> None:
    svg, _ = legend.key(["steel"], (0.0, 0.0), 300.0, 12.0, "p")
    assert [text.text for text in ET.fromstring(svg).iter("text")] == ["steel"]
