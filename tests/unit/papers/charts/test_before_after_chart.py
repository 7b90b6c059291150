"""One reading before and after, with the promise behind."""

import json

import pytest

from spoolwright.papers import charts
from tests.unit.papers import samples


def test_a_change_is_told_with_both_values() -> None:
    chart = charts.before_after("full drag", before=samples.pull(5.8), after=samples.pull(6.9))
    assert chart.says == "full drag: up from 5.80 kg ± 0.10 kg to 6.90 kg ± 0.10 kg."


@pytest.mark.parametrize("after", [5.8, 5.9, 5.7])
def test_a_change_within_the_gauges_is_none(after: float) -> None:
    """By hand: two intervals of 0.10 kg differ by at most 0.14 kg (root of the sum of squares)."""
    assert "no change" in charts.before_after("x", before=samples.pull(5.8), after=samples.pull(after)).says


def test_nothing_from_before_is_said_and_not_drawn() -> None:
    chart = charts.before_after("x", before=None, after=samples.pull(6.9))
    assert "nothing from before" in chart.says
    assert "before 6" not in json.dumps(chart.spec)
    assert [row[0] for row in chart.rows] == ["after"]


def test_the_promise_stands_behind() -> None:
    promise = samples.promised(6.2, 6.9, 7.6)
    chart = charts.before_after("x", before=samples.pull(5.8), after=samples.pull(6.9), promised=promise)
    box = chart.spec["layer"][0]["data"]["values"][0]
    assert (box["x"], box["x2"]) == (pytest.approx(6.2), pytest.approx(7.6))
    assert ("promised", "6.9 kg, 6.2 to 7.6 kg") in chart.rows
