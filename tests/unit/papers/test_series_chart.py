"""The chart of a series: its dots, its line, the sheet's band."""

import json

import pytest

from spoolwright.bench.pulls import OnePull
from spoolwright.papers.charts.series_chart import Series, pull_series
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.drag_setting import setting_of

PULLS = tuple(OnePull(t, 20.0 * t, 22.0 * t) for t in (1.0, 2.0, 3.0))
BAND = ((0.0, 0.0, 5.0), (2.0, 30.0, 50.0), (4.0, 60.0, 90.0))


def drawn(along: str = "turns", **more: object) -> Series:
    held = {"fitted": ((0.0, 0.0), (3.0, 60.0)), "band": BAND if along == "turns" else (), "says": "Sound."}
    return Series(along, PULLS, **(held | more))  # type: ignore[arg-type]


def test_dots_line_band_and_their_names_are_there() -> None:
    chart = pull_series(drawn())
    marks = [layer["mark"]["type"] for layer in chart.spec["layer"]]
    assert marks.count("area") == 1
    assert marks.count("line") == 1
    assert marks.count("point") == 2
    words = json.dumps(chart.spec)
    for name in ("start-up", "running", "sound, by the sheet"):
        assert name in words
    assert chart.says == "Sound."
    assert chart.rows[0] == ("1 turn", "2.24 kg", "2.04 kg")
    assert "grey band" in chart.description


@pytest.mark.parametrize(("along", "title"), [("number", "number of the pull"), ("speed", "line speed, m/s")])
def test_fade_and_speed_have_their_own_axis_and_no_band(along: str, title: str) -> None:
    chart = pull_series(drawn(along, fitted=()))
    assert chart.spec["layer"][0]["encoding"]["x"]["axis"]["title"] == title
    assert "band" not in chart.description


def test_a_lever_counts_its_way_and_a_scale_without_start_up_says_so() -> None:
    bare = tuple(OnePull(t, 40.0 * t) for t in (0.25, 0.5, 1.0))
    chart = pull_series(
        Series("turns", bare, (), (), ""), setting=setting_of(reel_sheet.load("pellmar-30-2"))
    )
    assert chart.rows[1][:2] == ("50 % of its way", "not taken")
    assert "way of the lever" in chart.spec["layer"][0]["encoding"]["x"]["axis"]["title"]


def test_a_reader_of_pounds_has_pounds() -> None:
    assert " lb" in pull_series(drawn(), system="imperial").rows[0][1]
