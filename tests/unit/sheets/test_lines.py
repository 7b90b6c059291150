"""Looking up line materials."""

from __future__ import annotations

import pytest

from spoolwright.sheets.lines import line_material, line_names


def test_the_four_usual_ones_are_there() -> None:
    assert line_names() == ("nylon", "fluorocarbon", "braided polyethylene", "dacron")


@pytest.mark.parametrize("name", line_names())
def test_a_line_material_is_a_range_that_makes_sense(name: str) -> None:
    entry = line_material(name)
    assert 900 < entry.density.low <= entry.density.high < 1900
    assert 1e9 < entry.modulus.low < entry.modulus.high < 2e11
    assert 0.01 < entry.elongation.low < entry.elongation.high < 0.6
    assert entry.title
    assert entry.note


def test_braid_floats_and_hardly_stretches_and_fluorocarbon_sinks() -> None:
    assert line_material("braided polyethylene").density.high < 1000
    assert line_material("fluorocarbon").density.low > 1000
    assert line_material("braided polyethylene").elongation.high < line_material("nylon").elongation.low


def test_an_unknown_line_lists_the_known_ones() -> None:
    with pytest.raises(KeyError, match="silk.*nylon"):
        line_material("silk")
