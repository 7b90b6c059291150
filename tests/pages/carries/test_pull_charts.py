"""Pull as the line goes and as the drag is turned."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spoolwright.judgement import drag_train
from spoolwright.pages.carries import pull_charts
from spoolwright.pages.gathered.subject import State, Subject

TODAY, MOST = State("today", "today"), State("option-0", "Most", ("carbon-drag-set",))


def number(text: str) -> float:
    return float(text.split()[0])


def test_the_pull_grows_as_the_radius_falls(subject_of: Callable[..., Subject]) -> None:
    """By hand: torque stays, so pull times radius stays: ends of the table against radii of the spool."""
    subject = subject_of()
    chart = pull_charts.emptying(subject, 1.0)
    assert chart is not None
    full, last = subject.sheet.spool.full_radius, drag_train.radius_at_fill(subject.sheet, 0.05)
    assert number(chart.rows[0][1]) / number(chart.rows[-1][1]) == pytest.approx(full / last, rel=0.02)


def test_every_state_has_its_column_and_the_fill_its_mark(subject_of: Callable[..., Subject]) -> None:
    chart = pull_charts.emptying(subject_of("tarvak-58r", TODAY, MOST), 0.6)
    assert chart is not None
    assert chart.head[1:] == ("today", "Most")
    assert any(layer["mark"].get("text") == "60 %" for layer in chart.spec["layer"])
    assert "At 60 % of the line" in chart.says


def test_the_pull_of_a_setting_is_read_between_its_rows(subject_of: Callable[..., Subject]) -> None:
    subject = subject_of()
    rows = pull_charts.predicted(subject, TODAY).star_turns
    radius = subject.sheet.spool.full_radius
    below, above = rows[-2], rows[-1]
    found = pull_charts.at_turns(subject, TODAY, (below.turns + above.turns) / 2, radius)
    assert found is not None
    assert found.middle == pytest.approx((below.pull.middle + above.pull.middle) / 2)
    nearer = pull_charts.at_turns(subject, TODAY, above.turns, radius / 2)
    assert nearer is not None
    assert nearer.middle == pytest.approx(2 * above.pull.middle)


def test_a_levers_way_is_counted_in_shares(subject_of: Callable[..., Subject]) -> None:
    subject = subject_of("pellmar-30-2")
    chart = pull_charts.turning(subject, None, subject.sheet.spool.full_radius)
    assert chart is not None
    assert "lever" in chart.says
    assert chart.spec["layer"][0]["encoding"]["x"]["scale"]["domain"][1] == pytest.approx(1.0)
    half = pull_charts.at_turns(subject, TODAY, subject.setting.whole / 2, subject.sheet.spool.full_radius)
    whole = pull_charts.at_turns(subject, TODAY, subject.setting.whole, subject.sheet.spool.full_radius)
    assert half is not None
    assert whole is not None
    assert half.middle < whole.middle
