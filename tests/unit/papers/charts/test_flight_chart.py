"""The path of a cast and where it comes down."""

from __future__ import annotations

import pytest

from spoolwright.papers.charts import Flight, flights, to_svg
from spoolwright.papers.figures import Span

TODAY = Flight("today", [0.0, 60.0, 120.0], [2.0, 30.0, 0.0], Span(120.0, 108.0, 133.0, "line_length"))
OPTION = Flight("put right", [0.0, 62.0, 126.0], [2.0, 31.0, 0.0], Span(126.0, 115.0, 138.0, "line_length"))


def test_it_says_where_each_state_comes_down() -> None:
    chart = flights([TODAY, OPTION], "It goes as far as it goes.")
    assert chart.says == "It goes as far as it goes."
    assert chart.rows[0] == ("today", "120 m, 108 to 133 m", "30.0 m")
    assert chart.rows[1][0] == "put right"
    assert "120 m" in chart.description
    assert "126 m" in chart.description


def test_the_bar_of_a_state_is_as_wide_as_its_span_and_lies_under_the_water() -> None:
    chart = flights([TODAY], "")
    bars = [layer["data"]["values"][0] for layer in chart.spec["layer"] if "y2" not in str(layer["encoding"])]
    wide = [box for box in bars if box.get("x2") == 133.0]
    assert wide == [{"x": 108.0, "x2": 133.0, "y": wide[0]["y"]}]
    assert wide[0]["y"] < 0


def test_it_is_told_in_the_readers_units() -> None:
    assert "131 yd" in flights([TODAY], "", system="imperial").rows[0][1]


def test_it_can_be_drawn() -> None:
    svg = to_svg(flights([TODAY, OPTION], "").spec)
    assert "casts in 10 come down here" in svg


def test_a_chart_of_nothing_is_refused() -> None:
    with pytest.raises(ValueError, match="one or more"):
        flights([], "")
