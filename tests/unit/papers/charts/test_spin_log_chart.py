"""The picture of a spin log."""

from __future__ import annotations

from spoolwright.bench.spin_log import analyse
from spoolwright.papers.charts.spin_log_chart import spin_log
from tests.unit.bench.test_spin_log import one_each


def test_every_kind_has_its_row_and_every_spin_its_dot() -> None:
    spins = one_each(1, (0.0, 0.5, 2.0))
    chart = spin_log(analyse(spins), spins, "said")
    assert chart.says == "said"
    assert [row[0] for row in chart.rows][0] == "kind 2"
    assert len(chart.spec["layer"][0]["data"]["values"]) == len(spins)
    assert all(row[1].endswith(("s", "min")) for row in chart.rows)
    assert chart.spec["layer"][0]["encoding"]["x"]["scale"]["type"] == "log"
