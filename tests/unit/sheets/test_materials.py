"""Looking up friction and structural materials."""

from __future__ import annotations

import pytest

from spoolwright.sheets import materials


def test_dry_and_greased_are_two_ranges() -> None:
    carbon = materials.friction_material("woven carbon")
    assert carbon.friction("dry") is carbon.dry
    assert carbon.friction("greased") is carbon.greased
    assert carbon.start_ratio("dry") is carbon.start_ratio_dry
    assert carbon.start_ratio("greased") is carbon.start_ratio_greased


@pytest.mark.parametrize("name", materials.friction_names())
def test_a_friction_material_is_a_range_that_makes_sense(name: str) -> None:
    entry = materials.friction_material(name)
    assert 0 < entry.greased.low < entry.greased.high < 1
    assert entry.greased.middle <= entry.dry.middle
    assert 1.0 <= entry.start_ratio_greased.low < entry.start_ratio_greased.high < 2
    assert entry.pressure_limit.low > 1e4
    assert 330 < entry.temperature_limit.low < 800
    assert 0.03 < entry.conductivity.low <= entry.conductivity.high < 150
    assert 100 < entry.density.low <= entry.density.high < 9000
    assert 300 < entry.specific_heat.low <= entry.specific_heat.high < 2500
    assert 0 <= entry.fade.low < entry.fade.high < 0.6
    assert entry.title


@pytest.mark.parametrize("name", materials.structural_names())
def test_a_structural_material_is_a_range_that_makes_sense(name: str) -> None:
    entry = materials.structural_material(name)
    assert 900 < entry.density.low <= entry.density.high < 9000
    assert 1e9 < entry.youngs_modulus.low <= entry.youngs_modulus.high < 3e11
    assert 0.25 < entry.poisson.low <= entry.poisson.high < 0.5
    assert entry.yield_strength.low < entry.youngs_modulus.low / 10
    assert 0.1 < entry.conductivity.low < 400
    assert 300 < entry.specific_heat.low < 2000
    assert entry.allowable_bending.low < entry.allowable_bending.high < 1.5 * entry.yield_strength.high
    assert entry.allowable_contact.low < entry.allowable_contact.high
    assert entry.allowable_contact.high < entry.youngs_modulus.high / 25
    assert entry.endurance.low < entry.endurance.high < entry.yield_strength.high


def test_the_usual_linings_and_metals_are_there() -> None:
    linings = {"felt", "woven carbon", "hard fibre", "leather", "cork", "PTFE", "POM"}
    metals = {"brass", "stainless steel", "aluminium alloy", "carbon steel", "POM", "carbon-filled composite"}
    assert linings <= set(materials.friction_names())
    assert metals <= set(materials.structural_names())


def test_an_unknown_name_lists_the_known_ones() -> None:
    with pytest.raises(KeyError, match="moss.*woven carbon"):
        materials.friction_material("moss")
    with pytest.raises(KeyError, match="cheese.*brass"):
        materials.structural_material("cheese")


def test_a_washer_is_of_any_material_but_never_of_the_bare_face_between_two() -> None:
    names = materials.washer_names()
    assert "felt" in names
    assert "brass" in names
    assert materials.BARE_METAL not in names
    assert len(names) == len(set(names))
