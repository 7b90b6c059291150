"""Results under each other: every interval inside the picture, the first in the accent."""

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.papers import charts

ROWS = (
    ("by two falling weights", Measured(8.1e-6, 0.3e-6, "inertia")),
    ("by the reel’s sheet", Measured(8.9e-6, 0.5e-6, "inertia")),
)


def test_every_interval_is_inside_and_named() -> None:
    chart = charts.side_by_side("moment of inertia", ROWS, "They agree.")
    low, high = chart.spec["layer"][0]["encoding"]["x"]["scale"]["domain"]
    bars = [layer["data"]["values"][0] for layer in chart.spec["layer"] if layer["mark"]["type"] == "rule"]
    assert all(low < bar["x"] < bar["x2"] < high for bar in bars)
    assert bars[0]["x"] == pytest.approx(75.0)
    assert chart.spec["layer"][0]["mark"]["color"] == charts.ACCENT
    assert chart.rows[1] == ("by the reel’s sheet", "89 g cm² ± 10 g cm²")


def test_it_says_what_it_is_told_and_can_be_drawn() -> None:
    chart = charts.side_by_side("moment of inertia", ROWS, "They agree.")
    assert chart.says == "They agree."
    assert "by two falling weights" in chart.description
    assert charts.to_svg(chart.spec).startswith("<svg")


def test_nothing_is_no_picture() -> None:
    with pytest.raises(ValueError, match="one or more"):
        charts.side_by_side("moment of inertia", (), "")
