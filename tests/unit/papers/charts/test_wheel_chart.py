"""Loudness round a wheel: the tooth that knocks stands in the accent, else none does."""

import json

from spoolwright.papers import charts
from spoolwright.papers.charts import Wheel
from spoolwright.papers.ink import ACCENT


def wheel(found: bool = True, at: int = 7) -> Wheel:
    loudness = [1.0 + 0.1 * (k % 3) for k in range(34)]
    loudness[at] = 4.2
    places = [k / 2 for k in range(34)]
    return Wheel("pinion", 17, places, loudness, 2400.0, 4100.0, "pinion" if found else "cannot tell", found)


def test_the_tooth_that_knocks_is_named_in_the_accent() -> None:
    text = json.dumps(charts.round_the_wheel(wheel()).spec)
    assert ACCENT in text
    assert "this tooth knocks" in text
    assert ACCENT not in json.dumps(charts.round_the_wheel(wheel(found=False)).spec)


def test_the_words_stay_inside_where_it_is_near_the_end() -> None:
    layers = charts.round_the_wheel(wheel(at=31)).spec["layer"]
    assert layers[-1]["mark"]["align"] == "right"


def test_sentence_table_and_description_say_the_same() -> None:
    chart = charts.round_the_wheel(wheel())
    assert "One tooth of the pinion" in chart.says
    assert ("3.5", "4.2 times") in chart.rows
    assert "4.2 times the middle one" in chart.description
    assert "enough to be named" in charts.round_the_wheel(wheel(found=False)).says
    assert charts.to_svg(chart.spec).startswith("<svg")
