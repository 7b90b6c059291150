"""The day scale and the pull line: what is drawn where."""

from __future__ import annotations

import re
from datetime import date, timedelta

import pytest

from spoolwright.pages.templatetags import small_lines

TODAY = date(2025, 6, 3)  # a Tuesday


def after(days: int) -> date:
    return TODAY + timedelta(days=days)


def test_a_promise_lies_in_order_on_its_scale() -> None:
    drawn = small_lines.day_scale(after(4), after(11), TODAY)
    assert drawn["today"] < drawn["likely"] < drawn["late"]
    assert drawn["words"] == "7–14 June"
    assert not drawn["gone_by"]


def test_a_day_is_the_same_width_everywhere_on_one_scale() -> None:
    drawn = small_lines.day_scale(after(4), after(11), TODAY)
    day = (drawn["late"] - drawn["likely"]) / 7
    assert drawn["likely"] - drawn["today"] == pytest.approx(4 * day, abs=0.15)


@pytest.mark.parametrize("days", [-400, -10, 0, 3, 59, 400])
def test_nothing_is_drawn_off_the_scale(days: int) -> None:
    drawn = small_lines.day_scale(after(days - 2), after(days), TODAY)
    inside = [drawn[name] for name in ("today", "from", "likely", "late")] + [x for x, _ in drawn["ticks"]]
    assert all(0 <= x <= small_lines.SCALE_WIDTH for x in inside)
    assert len(drawn["ticks"]) <= small_lines.LONGEST_SCALE + 1


def test_a_promise_that_has_gone_by_says_so() -> None:
    assert small_lines.day_scale(after(-5), after(-1), TODAY)["gone_by"]


def test_no_promise_no_scale() -> None:
    assert small_lines.day_scale(None, None, TODAY) == {"promised": False}


def test_mondays_have_the_longer_tick() -> None:
    ticks = small_lines.day_scale(after(4), after(11), TODAY)["ticks"]
    long = [n for n, (_, foot) in enumerate(ticks) if foot > 11]
    assert {(TODAY + timedelta(days=n)).weekday() for n in long} == {0}


def heights(drawn: dict[str, object]) -> list[float]:
    return [float(point.split(",")[1]) for point in str(drawn["points"]).split()]


def test_the_highest_pull_is_the_highest_point_and_nothing_lies_on_the_ground() -> None:
    drawn = small_lines.pull_line([0, 1, 2, 3], [0.0, 39.0, 26.0, 0.0], "words", running=26.0)
    ys = heights(drawn)
    assert min(ys) == ys[1]
    assert ys[0] == ys[3] == drawn["ground"]
    assert drawn["rule"] == ys[2]


def test_a_peak_survives_the_thinning() -> None:
    forces = [10.0] * 5000
    forces[2345] = 90.0
    drawn = small_lines.pull_line([n / 100 for n in range(5000)], forces, "words")
    ys = heights(drawn)
    assert len(ys) <= 700
    assert min(ys) < sorted(ys)[1] - 20


@pytest.mark.parametrize(("times", "forces"), [([], []), ([1.0], [5.0]), ([1.0, 1.0], [5.0, 5.0])])
def test_a_trace_without_length_is_an_empty_line(times: list[float], forces: list[float]) -> None:
    assert small_lines.pull_line(times, forces, "words")["points"] == ""


def test_the_words_are_text() -> None:
    from django.template import Context, Template

    html = Template("{% load small_lines %}{% pull_line t f w %}").render(
        Context({"t": [0, 1], "f": [1, 2], "w": "<i>8 s</i>"})
    )
    assert "&lt;i&gt;8 s&lt;/i&gt;" in html
    assert re.search(r'points="[0-9., ]+"', html)
