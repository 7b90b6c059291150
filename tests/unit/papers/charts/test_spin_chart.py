"""The spin-down: mended ticks look different, residuals have their strip."""

import json

import pytest

from spoolwright.papers import charts
from spoolwright.papers.charts import spin_chart
from tests.unit.papers import samples


def test_mended_ticks_have_a_mark_of_their_own_and_are_counted() -> None:
    text = json.dumps(charts.spin_down(samples.spin(3)).spec)
    assert spin_chart.CROSS in text
    assert "3 of 90 ticks mended" in text


def test_no_mended_tick_no_mark() -> None:
    text = json.dumps(charts.spin_down(samples.spin(0)).spec)
    assert spin_chart.CROSS not in text
    assert "mended" not in json.loads(text)["layer"][0]["layer"][-1]["mark"].get("text", "")


def test_the_strip_shows_what_the_fit_leaves_over() -> None:
    chart = charts.spin_down(samples.spin())
    sticks = chart.spec["layer"][1]["layer"][1]["data"]["values"]
    spin = samples.spin()
    rpm = 60 / (2 * 3.141592653589793)
    assert sticks[0]["y"] == pytest.approx((spin.speeds[0] - spin.fitted[0]) * rpm, abs=1e-3)
    assert all(stick["y2"] == 0 for stick in sticks)


def test_the_strip_lies_below_the_curve() -> None:
    """In shares of the height: the strip's top end stays under the level of no speed."""
    chart = charts.spin_down(samples.spin())
    low, high = chart.spec["layer"][0]["layer"][0]["encoding"]["y"]["scale"]["domain"]
    left, right = chart.spec["layer"][1]["layer"][0]["encoding"]["y"]["scale"]["domain"]
    reach = max(abs(s["y"]) for s in chart.spec["layer"][1]["layer"][1]["data"]["values"])
    assert (reach - left) / (right - left) < (0 - low) / (high - low)


def test_a_spin_time_is_not_sold_as_quality() -> None:
    chart = charts.spin_down(samples.spin())
    assert "no measure of one reel against another" in chart.says
    assert "31.0 s ± 1.2 s" in chart.says


def test_the_table_says_which_ticks_were_heard() -> None:
    assert {row[3] for row in charts.spin_down(samples.spin()).rows} <= {"heard", "mended"}


def test_what_was_cut_off_is_drawn_and_named() -> None:
    from dataclasses import replace

    from spoolwright.bench.uncertainty import Measured
    from spoolwright.papers.charts.spin_chart import Spin, spin_down

    plain = Spin((0.0, 1.0), (90.0, 80.0), (90.0, 80.0), (False, False), Measured(9.0, 0.1, "time"))
    cut = replace(plain, before=((-0.5, 60.0),), after=((1.5, 30.0),))
    said = str(spin_down(cut).spec)
    assert "'text': 'hand'" in said
    assert "'text': 'left out'" in said
    assert cut.ends[0] == -0.5
    assert "left out'" not in str(spin_down(plain).spec)
