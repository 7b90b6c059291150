"""The picture of a study: a block for each person, its mean, and the band of a single try."""

from __future__ import annotations

import numpy as np

from spoolwright.papers.charts import study_chart, to_svg
from spoolwright.papers.charts.study_chart import Studied

VALUES = np.array([[[1.00, 1.02], [1.04, 1.06]], [[2.00, 2.02], [2.04, 2.06]], [[3.0, 3.02], [3.04, 3.06]]])
STUDIED = Studied(("1", "2", "3"), ("Ada", "Ole"), VALUES * 1e-3, 2e-5, "length")


def points(spec: dict) -> list[dict]:
    return [p for layer in spec["layer"] if layer["mark"]["type"] == "point" for p in layer["data"]["values"]]


def test_every_try_lies_where_it_differs_from_its_part() -> None:
    spec = study_chart.study(STUDIED, "says").spec
    heights = [round(point["y"], 3) for point in points(spec)]
    assert heights == [-0.03, -0.01] * 3 + [0.01, 0.03] * 3
    assert len({point["x"] for point in points(spec)}) == 6


def test_people_are_named_over_their_blocks_and_their_means_drawn() -> None:
    spec = study_chart.study(STUDIED, "says").spec
    assert [x["mark"]["text"] for x in spec["layer"] if x["mark"]["type"] == "text"] == ["Ada", "Ole"]
    means = [x["data"]["values"][0]["y"] for x in spec["layer"] if x["mark"]["type"] == "rule"]
    assert means == [-0.02, 0.02]


def test_the_same_in_words_and_numbers() -> None:
    chart = study_chart.study(STUDIED, "says")
    assert "3 parts" in chart.description
    assert chart.head == ("part", "Ada", "Ole")
    assert chart.rows[0] == ("1", "1.00 mm; 1.02 mm", "1.04 mm; 1.06 mm")


def test_it_can_be_drawn_even_where_nothing_differs() -> None:
    flat = Studied(("1", "2"), ("Ada",), np.ones((2, 1, 2)), 0.0, "length")
    assert to_svg(study_chart.study(flat, "says", width=300).spec).startswith("<svg")
