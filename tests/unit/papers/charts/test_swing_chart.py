"""A swing's picture: record and fit on one scale, the sentence in words."""

import numpy as np
import pytest

from spoolwright.bench import swing
from spoolwright.papers import charts


@pytest.fixture
def chart() -> charts.Chart:
    t = np.arange(0, 4, 0.02)
    found = swing.fit(t, 3 * np.exp(-0.23 * t) * np.cos(15 * t))
    return charts.swing(charts.Swung(found.time, found.signal, found.fitted, found.period, found.decay))


def test_record_and_fit_are_shares_of_the_greatest(chart: charts.Chart) -> None:
    record, fit = (layer["data"]["values"] for layer in chart.spec["layer"][:2])
    assert max(abs(point["y"]) for point in record) == pytest.approx(1.0)
    assert len(record) == len(fit)
    assert all(abs(a["y"] - b["y"]) < 1e-3 for a, b in zip(record, fit, strict=True))


def test_it_says_how_long_and_how_much_is_left(chart: charts.Chart) -> None:
    assert chart.says.startswith("One swing there and back takes 0.418879 s")
    assert "after ten 38 % of it is left" in chart.says
    assert "A swing of" in chart.description


def test_it_can_be_drawn(chart: charts.Chart) -> None:
    assert charts.to_svg(chart.spec).startswith("<svg")
