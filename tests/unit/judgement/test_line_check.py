"""A line too strong for the reel is said before it breaks something."""

import pytest

from spoolwright.judgement.line_check import line_warning
from spoolwright.judgement.prediction import Predicted

KG = 9.80665
FIVE = Predicted("full pull", 5.0 * KG, 4.6 * KG, 5.4 * KG, 0.2 * KG, "force")


def test_a_line_of_23_kg_asks_a_5_kg_reel_for_too_much() -> None:
    # 25 to 33 % of 23 kg is 5.75 to 7.59 kg (arithmetic; the rule is common practice, no source).
    told = line_warning(23 * KG, FIVE)
    assert "5.75 kg to 7.59 kg" in told


@pytest.mark.parametrize("strength", [10, 15, 20])
def test_a_line_of_15_to_20_kg_is_its_limit(strength: float) -> None:
    # 5 / 0.33 = 15 kg and 5 / 0.25 = 20 kg.
    assert line_warning(strength * KG, FIVE) == ""


def test_a_line_that_breaks_at_nothing_is_refused() -> None:
    with pytest.raises(ValueError, match="line_strength"):
        line_warning(0.0, FIVE)
