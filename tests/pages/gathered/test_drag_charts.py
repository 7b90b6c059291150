"""What the drag would do, drawn from what was kept with the quote."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from spoolwright.judgement.prediction import predict
from spoolwright.pages.gathered import drag_charts
from spoolwright.sheets import reel_sheet
from spoolwright.shop.questions.predictions import KeptPrediction, prediction_of
from tests.shop import walk

SHEET = reel_sheet.load("tarvak-58r")


@pytest.fixture
def kept() -> KeptPrediction:
    expected = walk.expected()
    return KeptPrediction(expected.values, expected.star_turns, expected.limited_by)


def test_pull_grows_as_the_spool_empties_by_the_inverse_of_the_radius(kept: KeptPrediction) -> None:
    chart = drag_charts.by_fill(kept, SHEET, "metric")
    assert chart is not None
    full, empty = chart.rows[-1][1], chart.rows[0][1]
    assert float(empty.split()[0]) > 1.5 * float(full.split()[0])
    assert "grows by" in chart.says


def test_the_star_turns_are_those_of_the_quote(kept: KeptPrediction) -> None:
    chart = drag_charts.by_turns(kept, "imperial")
    assert chart is not None
    assert "lb" in chart.rows[-1][1]
    assert drag_charts.by_turns(replace(kept, star_turns=()), "metric") is None
    assert drag_charts.by_fill(replace(kept, values={}), SHEET, "metric") is None


def test_options_that_pull_alike_share_a_chart(hand: Any) -> None:
    felt = predict(SHEET, {}, [], samples=100)
    options = [
        replace(walk.option(), key=key, title=key, prediction=prediction)
        for key, prediction in (("a", felt), ("b", walk.expected()), ("c", walk.expected()), ("d", None))
    ]
    quote = walk.quoted(hand, walk.arrived(hand), *options)
    drawn = drag_charts.worth_drawing(quote.options.all())
    assert [option.key for option, _ in drawn] == ["a", "b"]
    assert prediction_of(quote.options.last()) is None
