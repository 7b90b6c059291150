"""The three charts of a run, each with the sentence and the table that go with it."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from spoolwright.judgement.fish_run import FishRun
from spoolwright.judgement.narrowing import know
from spoolwright.judgement.run_test import RunTest, run_test
from spoolwright.pages.long_run import run_charts
from spoolwright.papers.charts import Chart
from spoolwright.sheets import reel_sheet

Named = list[tuple[str, RunTest]]


@pytest.fixture(scope="module")
def both() -> Named:
    sheet = reel_sheet.load("tarvak-52")
    known = know(sheet, {}, samples=100, seed=1)
    fish = FishRun(pull=18.0, distance=80.0)
    return [
        ("today", run_test(sheet, {}, (), fish=fish, known=known)),
        ("carbon", run_test(sheet, {}, ("carbon-drag-set",), fish=fish, known=known)),
    ]


def marks(chart: Chart, kind: str) -> list[dict[str, Any]]:
    return [layer for layer in chart.spec["layer"] if layer["mark"]["type"] == kind]


def test_heat_is_drawn_for_each_state_with_what_its_discs_stand(both: Named) -> None:
    chart = run_charts.heating(both, "metric")
    assert chart.head == ("time of the run", "today", "carbon")
    assert len(marks(chart, "rect")) == 2
    words = [layer["mark"]["text"] for layer in marks(chart, "text")]
    assert "felt, 140 °C" in words
    assert any(str(one).startswith("woven carbon, 2") for one in words)
    assert chart.says.startswith("The strip is what the discs stand.")
    assert "today, all" in chart.says
    assert chart.rows[0][1].startswith("20")


def test_an_imperial_reader_has_fahrenheit(both: Named) -> None:
    chart = run_charts.heating(both[:1], "imperial")
    assert "°F" in chart.rows[-1][1]
    assert "felt, 284 °F" in [layer["mark"]["text"] for layer in marks(chart, "text")]
    assert "above it: all" in chart.says


def test_cooling_goes_on_until_every_state_may_be_touched(both: Named) -> None:
    chart = run_charts.cooling(both, "metric")
    waits = [test.heat.wait_touch.high for _, test in both if test.heat]
    end = chart.spec["layer"][0]["encoding"]["x"]["scale"]["domain"][1]
    assert end >= max(waits)
    assert "48 °C" in [layer["mark"]["text"] for layer in marks(chart, "text")]
    assert "hand may hold" in chart.says


def test_the_line_comes_tight_lets_go_and_slips(both: Named) -> None:
    chart = run_charts.tightening(both, "metric")
    words = [layer["mark"]["text"] for layer in marks(chart, "text")]
    assert "lets go" in words
    assert "slips" in words
    assert "today: up to" in chart.description
    assert chart.rows[0][1].endswith(" g")
    assert chart.rows[-1][1].endswith(" kg")


@pytest.mark.parametrize("draw", [run_charts.heating, run_charts.cooling, run_charts.tightening])
def test_one_state_alone_is_drawn_too(both: Named, draw: Callable[..., Chart]) -> None:
    assert draw(both[:1], "metric").head[1:] == ("today",)
