"""How a coefficient moved, as a picture: the sheet's band, a step a proof, outliers ringed twice."""

from __future__ import annotations

import pytest

from spoolwright.papers.charts import Step, coefficient_moves, to_svg

STEPS = [
    Step("the sheet", 0.155, 0.133, 0.181),
    Step("14 April, number 3", 0.158, 0.145, 0.172, 0.166),
    Step("15 April, number 4", 0.159, 0.15, 0.168, 0.24, odd=True),
]


def test_it_says_how_much_narrower_it_became() -> None:
    chart = coefficient_moves("Friction of felt", STEPS)
    assert "62 % narrower" in chart.says
    assert "1 outlier ringed twice" in chart.says
    assert chart.description.endswith("after 2 proofs.")
    assert chart.rows[1] == ("14 April, number 3", "0.166", "0.158 (0.145 to 0.172)")


def test_without_a_proof_it_says_so() -> None:
    assert "No proof yet" in coefficient_moves("Friction of felt", STEPS[:1]).says


def test_it_can_be_drawn() -> None:
    assert to_svg(coefficient_moves("Minutes", STEPS, unit="min", width=400).spec).startswith("<svg")


def test_nothing_at_all_is_refused() -> None:
    with pytest.raises(ValueError, match="what the sheet says"):
        coefficient_moves("Friction of felt", [])
