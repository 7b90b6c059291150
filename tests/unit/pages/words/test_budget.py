"""The rows of a budget in words: each result known, per inertia where none was known."""

import pytest

from spoolwright.bench.budget import Contribution
from spoolwright.pages.words.budget import budget_rows


def test_a_row_says_of_what_from_what_how_and_how_much() -> None:
    (row,) = budget_rows([Contribution("spool_inertia", "height of the fall", "B", 2e-8)], "metric")
    assert (row.result, row.source, row.way) == (
        "moment of inertia",
        "height of the fall",
        "from what is known",
    )
    assert row.amount == "0.200\u00a0g\u00a0cm²"


def test_what_weighs_nothing_is_left_out() -> None:
    assert budget_rows([Contribution("running", "gauge", "B", 0.0)], "metric") == []


def test_a_drag_without_an_inertia_is_per_inertia() -> None:
    rows = [Contribution("constant", "scatter of the ticks", "A", 0.1)]
    assert "rad/s²" in budget_rows(rows, "metric", per_inertia=True)[0].amount
    assert "N" in budget_rows(rows, "metric")[0].amount


def test_a_result_may_be_called_like_its_kind() -> None:
    (row,) = budget_rows([Contribution("end_float", "dial", "B", 1e-5)], "metric")
    assert row.result == "spool end-float"


def test_a_result_nobody_knows_is_a_fault_of_the_program() -> None:
    with pytest.raises(KeyError, match="song"):
        budget_rows([Contribution("song", "ear", "B", 1.0)], "metric")
