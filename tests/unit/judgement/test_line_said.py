"""Lines as people say them."""

from __future__ import annotations

from math import pi

import pytest

from spoolwright.judgement.line_said import read_line
from spoolwright.quantities import NotAQuantity

KG = 9.80665


@pytest.mark.parametrize(
    ("said", "material", "diameter"),
    [
        ("nylon 0.40 mm", "nylon", 0.40e-3),
        ("Mono 0.35mm", "nylon", 0.35e-3),
        ("braid 0.25 mm", "braided polyethylene", 0.25e-3),
        ("braided polyethylene, 0,2 mm", "braided polyethylene", 0.2e-3),
        ("fluorocarbon 0.5 mm", "fluorocarbon", 0.5e-3),
        ("dacron 0.016 in", "dacron", 0.016 * 25.4e-3),
    ],
)
def test_material_and_diameter(said: str, material: str, diameter: float) -> None:
    line = read_line(said)
    assert line.material.name == material
    assert line.diameter == pytest.approx(diameter)
    assert material in line.words


def test_strength_is_that_of_the_material_over_the_round() -> None:
    line = read_line("nylon 0.40 mm")
    area = pi * 0.4e-3**2 / 4
    assert line.strength.low == pytest.approx(line.material.strength.low * area)
    assert line.strength.high == pytest.approx(line.material.strength.high * area)


def test_a_stated_breaking_pull_is_taken_as_it_stands() -> None:
    line = read_line("braid 0.25 mm 20 kg")
    assert line.strength.middle == pytest.approx(20 * KG)
    assert (line.strength.high - line.strength.low) / line.strength.middle == pytest.approx(0.10)
    assert line.strength.how == "as stated"


@pytest.mark.parametrize(
    "said", ["silk 0.3 mm", "nylon", "nylon mm", "nylon 4 mm", "nylon 0.3 mm strong", ""]
)
def test_what_is_no_line_is_refused_with_what_is_accepted(said: str) -> None:
    with pytest.raises(NotAQuantity):
        read_line(said)
