"""Looking up house oils and greases, viscosity grades and consistencies."""

from __future__ import annotations

import pytest

from spoolwright.sheets import lubricants
from spoolwright.sheets.lubricants import Grease, Oil

OILS, GREASES = ("O1", "O2", "O3", "OC"), ("G1", "G2", "G3", "AS")


@pytest.mark.parametrize("code", [*OILS, *GREASES])
def test_every_lubrication_class_has_one_on_the_shelf(code: str) -> None:
    found = lubricants.lubricant(code)
    assert isinstance(found, Oil if code in OILS else Grease)
    assert found.code == code
    assert lubricants.lubricant(found.name) == found


@pytest.mark.parametrize("name", lubricants.names())
def test_it_is_thinner_when_hot(name: str) -> None:
    found = lubricants.lubricant(name)
    assert found.viscosity_100.middle < found.viscosity_40.middle / 2
    assert 800 < found.density.low < 1100


def test_oils_grow_thicker_from_class_to_class() -> None:
    thick = [lubricants.oil(code).viscosity_40.middle for code in ("OC", "O1", "O2", "O3")]
    assert thick == sorted(thick)


def test_a_house_oil_lies_in_its_viscosity_grade() -> None:
    for name, grade in (("Tysna 10", 10), ("Tysna 32", 32), ("Tysna 100", 100), ("Tysna clutch", 7)):
        span = lubricants.iso_vg(grade)
        assert span.low <= lubricants.oil(name).viscosity_40.middle <= span.high


def test_what_is_not_on_the_shelf_is_named() -> None:
    with pytest.raises(KeyError, match="butter.*O1"):
        lubricants.oil("butter")
    with pytest.raises(KeyError, match="butter.*G2"):
        lubricants.lubricant("butter")
    with pytest.raises(KeyError, match="ISO VG grade “33”"):
        lubricants.iso_vg(33)
    with pytest.raises(KeyError, match="NLGI class"):
        lubricants.consistency("7")


def test_every_grease_has_a_known_consistency() -> None:
    for code in ("G1", "G2", "G3", "AS"):
        grease = lubricants.grease(code)
        assert lubricants.consistency(grease.nlgi).stiffest < lubricants.consistency(grease.nlgi).softest
