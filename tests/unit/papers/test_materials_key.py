"""Every material of the sheets has its hatch, and each hatch is unlike the others."""

import xml.etree.ElementTree as ET

import pytest

from spoolwright.papers import materials_key
from spoolwright.sheets import materials


@pytest.mark.parametrize(
    ("material", "family"),
    [
        ("brass", "brass"),
        ("bronze", "brass"),
        ("hardened stainless steel", "steel"),
        ("bare metal", "steel"),
        ("cast aluminium alloy", "aluminium"),
        ("zinc alloy", "aluminium"),
        ("woven carbon", "carbon"),
        ("carbon-filled composite", "plastic"),
        ("carbon steel", "steel"),
        ("hard fibre", "fibre"),
        ("felt", "fibre"),
        ("POM", "plastic"),
        (None, "aluminium"),
    ],
)
def test_a_material_has_its_family(material: str | None, family: str) -> None:
    assert materials_key.family(material) == family


@pytest.mark.parametrize("material", materials.washer_names())
def test_no_material_of_a_washer_is_drawn_by_default(material: str) -> None:
    """What falls through to aluminium must be a light metal."""
    light = ("aluminium", "zinc", "titanium")
    if materials_key.family(material) == "aluminium":
        assert any(word in material for word in light)


@pytest.mark.parametrize("key", materials_key.HATCHES)
@pytest.mark.parametrize("crossed", [False, True])
@pytest.mark.parametrize("fine", [False, True])
def test_a_pattern_is_well_formed_and_carries_its_id(key: str, crossed: bool, fine: bool) -> None:
    pattern = ET.fromstring(materials_key.pattern("a", key, crossed=crossed, fine=fine))
    assert pattern.attrib["id"] == materials_key.pattern_id("a", key, crossed=crossed, fine=fine)
    assert len(list(pattern.iter("line"))) + len(list(pattern.iter("circle"))) >= 1


def test_hatches_differ_in_colour_and_in_marks() -> None:
    hatches = materials_key.HATCHES.values()
    assert len({hatch.colour for hatch in hatches}) == len(hatches)
    assert len({(hatch.lines, hatch.dots) for hatch in hatches}) == len(hatches)


def test_a_neighbour_leans_the_other_way() -> None:
    assert "rotate(45)" in materials_key.pattern("a", "steel")
    assert "rotate(-45)" in materials_key.pattern("a", "steel", crossed=True)
