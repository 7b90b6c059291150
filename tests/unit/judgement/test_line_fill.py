"""How much of another line goes on, and what it weighs."""

from math import pi

import pytest

from spoolwright.judgement.line_fill import filled_with
from spoolwright.judgement.prediction import Predicted, predict
from spoolwright.sheets import reel_sheet

FORTY = Predicted("line", 200.0, 180.0, 220.0, 12.0, "line_length", {"line_diameter": 0.40e-3}, ("sheet",))


@pytest.mark.parametrize("material", ["nylon", "fluorocarbon", "braided polyethylene", "dacron"])
def test_half_the_diameter_is_four_times_the_line(material: str) -> None:
    filled = filled_with(FORTY, 0.20e-3, material)
    assert (filled.length.low, filled.length.middle, filled.length.high) == pytest.approx((720, 800, 880))
    assert filled.length.conditions == {"line_diameter": 0.20e-3}
    assert filled.note


def test_the_mass_is_volume_times_density() -> None:
    """Nylon 1.14 g/cm3 (Morton and Hearle, Physical Properties of Textile Fibres; from memory)."""
    filled = filled_with(FORTY, 0.40e-3, "nylon")
    by_hand = 200.0 * pi * (0.20e-3) ** 2 * 1140.0
    assert filled.mass.middle == pytest.approx(by_hand, rel=0.01)
    assert filled.mass.low < filled.mass.middle < filled.mass.high
    assert filled.mass.dimension == "mass"


def test_it_agrees_with_a_prediction_made_for_that_line() -> None:
    from spoolwright.bench.uncertainty import Measured

    sheet = reel_sheet.load("tarvak-54c")
    plain = predict(sheet, {}).values["line_capacity"]
    own = predict(sheet, {"line_diameter": Measured(0.30e-3, 0.0, "length")}).values["line_capacity"]
    filled = filled_with(plain, 0.30e-3, "nylon").length
    assert filled.middle == pytest.approx(own.middle, rel=0.02)


def test_the_reason_names_the_line_that_was_typed() -> None:
    plain = predict(reel_sheet.load("tarvak-54c"), {}).values["line_capacity"]
    why = filled_with(plain, 0.35e-3, "dacron", "imperial").length.rests_on
    assert any("dacron" in words and "in" in words for words in why)
    assert not any("as an example" in words for words in why)


@pytest.mark.parametrize("diameter", [0.0, -1e-3, float("nan")])
def test_a_line_without_thickness_is_refused(diameter: float) -> None:
    with pytest.raises(ValueError, match="diameter"):
        filled_with(FORTY, diameter, "nylon")


def test_a_material_that_is_not_known_is_refused_with_those_that_are() -> None:
    with pytest.raises(KeyError, match="nylon"):
        filled_with(FORTY, 0.3e-3, "catgut")


def test_a_capacity_without_its_line_is_refused() -> None:
    with pytest.raises(ValueError, match="line_diameter"):
        filled_with(Predicted("line", 1.0, 1.0, 1.0, 0.0, "line_length"), 0.3e-3, "nylon")
