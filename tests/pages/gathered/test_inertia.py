"""A moment of inertia in words and as a picture."""

from __future__ import annotations

from types import SimpleNamespace

from spoolwright.bench.uncertainty import Measured
from spoolwright.pages.gathered import inertia
from spoolwright.shop.questions.measured_inertia import MeasuredInertia
from tests.shop.records.test_kept_inertia import FELL, KEPT

EARLIER = MeasuredInertia(Measured(9.6e-6, 2e-7, "inertia"), "fall", False, SimpleNamespace(), False)


def test_the_way_the_sheet_and_the_friction_are_said() -> None:
    said = inertia.in_words(KEPT, "metric")
    assert said[0] == "Found by swinging on a spring of known stiffness."
    assert "The reel’s sheet says 90\u00a0g cm² ± 10" in said[1]
    assert "40.0\u00a0μN\u00a0m ±\u00a02.0\u00a0μN\u00a0m of friction" in inertia.in_words(FELL, "metric")[1]


def test_what_was_measured_before_is_weighed_in() -> None:
    assert inertia.in_words(KEPT, "metric", [EARLIER])[-1].startswith("The 2 ways agree")
    chart = inertia.chart(KEPT, "metric", [EARLIER])
    assert [row[0] for row in chart.rows] == [
        "by swinging on a spring of known stiffness",
        "by two falling weights, an earlier visit",
        "by the reel’s sheet",
    ]


def test_what_went_in_and_where_most_comes_from() -> None:
    assert inertia.inputs(KEPT, "metric") == (
        ("Stiffness of the spring in twist", "2.400\u00a0mN\u00a0m/rad ±\u00a00.020\u00a0mN\u00a0m/rad"),
    )
    assert inertia.mostly(KEPT).endswith("stiffness: last digit, 100 %.")
    assert inertia.mostly(FELL) == ""


def test_a_way_that_is_no_longer_known_stands_as_it_is() -> None:
    assert inertia.way("rolling") == "rolling"
    assert inertia.swing_chart(FELL, "metric") is None
