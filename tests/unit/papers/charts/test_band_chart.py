"""A predicted band with readings on it."""

import json

import pytest

from spoolwright.papers import charts
from spoolwright.sheets.drag_setting import DragSetting
from tests.unit.papers import samples

TURNS = [0.0, 0.5, 1.0, 1.5]
BAND = [samples.promised(k * 0.9, k * 1.0, k * 1.1) for k in (0.2, 2.0, 4.0, 6.9)]
READINGS = [(0.5, samples.pull(1.9)), (1.0, samples.pull(4.2))]


def test_the_turns_of_the_star_name_their_radius() -> None:
    chart = charts.drag_by_turns(TURNS, BAND, READINGS, radius=0.0235)
    assert "23.5 mm" in chart.spec["layer"][0]["encoding"]["x"]["axis"]["title"]
    assert "23.5 mm" in chart.says


def test_pull_per_turn_is_the_rise_over_the_turns() -> None:
    """By hand: (6.9 - 0.2) kg over 1.5 turns is 4.47 kg a turn."""
    assert "about 4.47 kg" in charts.drag_by_turns(TURNS, BAND, radius=0.0235).says


def test_readings_stand_on_the_chart_with_their_uncertainty() -> None:
    layers = charts.drag_by_turns(TURNS, BAND, READINGS, radius=0.0235).spec["layer"]
    bars = next(it for it in layers if it["mark"]["type"] == "rule")["data"]["values"]
    assert bars[0]["y"] == pytest.approx(1.8)
    assert bars[0]["y2"] == pytest.approx(2.0)


def test_without_readings_nothing_is_called_measured() -> None:
    chart = charts.drag_by_turns(TURNS, BAND, radius=0.0235)
    assert '"measured"' not in json.dumps(chart.spec)
    assert {row[2] for row in chart.rows} == {"not measured"}


def test_a_reading_between_predictions_has_a_row_of_its_own() -> None:
    chart = charts.drag_by_turns(TURNS, BAND, [(0.7, samples.pull(3.0))], radius=0.0235)
    assert ("0.700", "not predicted", "3.00 kg ± 0.10 kg") in chart.rows


def test_the_pull_by_fill_tells_how_much_it_grows() -> None:
    """By hand: from 6.9 kg at a full spool to 13.8 kg near the end is 100 %."""
    band = [samples.promised(6.2, 6.9, 7.6), samples.promised(12.4, 13.8, 15.2)]
    chart = charts.pull_by_fill([240.0, 10.0], band)
    assert "grows by 100 %" in chart.says
    assert "10.0 m" in chart.says


def test_imperial_readers_get_yards_and_pounds() -> None:
    band = [samples.promised(6.2, 6.9, 7.6), samples.promised(12.4, 13.8, 15.2)]
    axes = charts.pull_by_fill([240.0, 10.0], band, system="imperial").spec["layer"][0]["encoding"]
    assert axes["x"]["axis"]["title"].endswith(", yd")
    assert axes["y"]["axis"]["title"] == "pull, lb"


def test_a_lever_is_drawn_by_its_way() -> None:
    lever = DragSetting("lever", whole=TURNS[-1])
    chart = charts.drag_by_turns(TURNS, BAND, radius=0.0235, setting=lever)
    assert "way of the lever" in chart.description
    assert "100 % of its way" in chart.description
    assert "the preset moves every place" in chart.says
    assert "star" not in chart.description + chart.says
