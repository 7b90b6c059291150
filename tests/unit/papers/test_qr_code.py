"""The code on a tag is a picture with words, and says what it was given."""

import xml.etree.ElementTree as ET

import pytest
import segno

from spoolwright.papers import qr_code


def test_the_picture_has_words_and_is_well_formed() -> None:
    picture = qr_code.of("https://bench.example/p/17", "opens the passport")
    assert picture.alt == "opens the passport"
    assert ET.fromstring(picture.svg).tag.endswith("svg")


def test_the_size_is_that_of_the_code() -> None:
    """The matrix of the library itself: as many modules a side as the drawing is wide."""
    address = "https://bench.example/p/17"
    side = segno.make(address, error="m", micro=False).symbol_size(border=0)[0]
    assert float(ET.fromstring(qr_code.of(address, "x").svg).attrib["width"]) == side


@pytest.mark.parametrize("address", ["", "   "])
def test_no_address_is_refused(address: str) -> None:
    with pytest.raises(ValueError, match="needs an address"):
        qr_code.of(address, "x")
