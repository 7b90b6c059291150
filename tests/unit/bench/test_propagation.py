"""The law of propagation: squares add, what is correlated is one row, and a simulation agrees."""

import numpy as np
import pytest

from spoolwright.bench.budget import combined
from spoolwright.bench.propagation import Known, propagate
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable


def known(value: float, spread: float, words: str = "it") -> Known:
    return Known(words, Measured(value, spread, "length"))


def test_parts_of_an_input_have_their_own_rows() -> None:
    side = Known("side", Measured(2.0, 0.5, "length"), (("tries", "A", 0.3), ("scale", "B", 0.4)))
    _, rows = propagate("area", "ratio", lambda x: 3 * x["a"], {"a": side})
    assert [(row.source, row.way) for row in rows] == [("side: tries", "A"), ("side: scale", "B")]
    assert [row.uncertainty for row in rows] == pytest.approx([0.9, 1.2])


def test_an_exact_input_adds_nothing() -> None:
    found, _ = propagate("x", "ratio", lambda x: x["a"] * x["n"], {"a": known(2, 0.1), "n": known(7, 0.0)})
    assert found.uncertainty == pytest.approx(0.7)


def test_full_correlation_can_take_all_uncertainty_away() -> None:
    two = {"a": known(5, 0.1, "first"), "b": known(4, 0.1, "second")}
    found, rows = propagate("gap", "ratio", lambda x: x["a"] - x["b"], two, {("a", "b"): 1.0})
    assert found.uncertainty == pytest.approx(0.0, abs=1e-12)
    assert rows[0].source == "first with second, not independent"


def test_three_that_hang_together_by_pairs_are_one_row() -> None:
    three = {name: known(1, 0.1, name) for name in "abc"}
    _, rows = propagate("s", "ratio", lambda x: sum(x.values()), three, {("a", "b"): 0.5, ("b", "c"): 0.5})
    assert len(rows) == 1
    assert combined(rows) == pytest.approx(0.1 * np.sqrt(3 + 2 * (0.5 + 0.5)))


def test_a_simulation_of_correlated_inputs_agrees() -> None:
    """JCGM 101:2008, 6.4.8, from memory: draws from a multivariate normal, pushed through the formula."""
    two = {"a": known(5, 0.05), "b": known(4, 0.08)}
    found, _ = propagate("p", "ratio", lambda x: x["a"] ** 2 / x["b"], two, {("a", "b"): 0.6})
    shared = 0.6 * 0.05 * 0.08
    drawn = np.random.default_rng(1).multivariate_normal(
        [5, 4], [[0.05**2, shared], [shared, 0.08**2]], 20_000
    )
    assert found.uncertainty == pytest.approx(float(np.std(drawn[:, 0] ** 2 / drawn[:, 1])), rel=0.02)


@pytest.mark.parametrize("together", [{("a", "a"): 0.5}, {("a", "z"): 0.5}, {("a", "b"): 1.5}])
def test_correlations_that_cannot_be_are_refused(together: dict[tuple[str, str], float]) -> None:
    with pytest.raises(ValueError, match="correlation"):
        propagate("x", "ratio", lambda x: x["a"] + x["b"], {"a": known(1, 1), "b": known(1, 1)}, together)


def test_a_formula_without_a_number_is_refused() -> None:
    with pytest.raises(Unreadable, match="give no number"):
        propagate("x", "ratio", lambda x: 1 / x["a"], {"a": known(0, 0.1)})
    with pytest.raises(Unreadable, match="differ by more"):
        propagate("x", "ratio", lambda x: 1 / (x["a"] - 1), {"a": known(1.1, 0.1)})
