"""The table of a crossed study, against sums done by hand and against a way round it."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench.crossed import table
from spoolwright.bench.unreadable import Unreadable

BY_HAND = np.array([[[10.0, 12.0], [14.0, 16.0]], [[20.0, 22.0], [24.0, 26.0]]])


def test_sums_of_squares_by_hand() -> None:
    """Means 13 and 23 of the parts, 16 and 20 of the hands, 18 of all; every cell is 1 either way."""
    found = table(BY_HAND)
    assert (found.parts.squares, found.persons.squares) == (200.0, 32.0)
    assert found.interaction.squares == pytest.approx(0.0, abs=1e-12)
    assert (found.repeatability.squares, found.repeatability.freedom) == (8.0, 5)
    assert [row.freedom for row in found.rows] == [1, 1, 1, 5]


def test_least_squares_gives_the_same_table() -> None:
    """Another way: how much the rest shrinks as each part of the model is let in."""
    rng = np.random.default_rng(4)
    values = rng.normal(size=(5, 3, 2)) + rng.normal(0, 3, size=(5, 1, 1)) + rng.normal(0, 4, size=(5, 3, 1))
    part, person, _ = (index.ravel() for index in np.indices(values.shape))
    ones = np.ones((values.size, 1))
    parts, persons = np.eye(5)[part], np.eye(3)[person]
    cells = np.eye(15)[part * 3 + person]

    def rest(*columns: np.ndarray) -> float:
        model = np.hstack(columns)
        return float(np.sum((values.ravel() - model @ np.linalg.lstsq(model, values.ravel())[0]) ** 2))

    steps = [rest(ones), rest(ones, parts), rest(ones, parts, persons), rest(cells)]
    found = table(values)
    assert not found.pooled
    squares = [found.parts.squares, found.persons.squares, found.interaction.squares]
    assert squares == pytest.approx([a - b for a, b in zip(steps, steps[1:], strict=False)])
    assert found.repeatability.squares == pytest.approx(steps[-1])
    assert found.parts.f == pytest.approx(found.parts.mean_square / found.interaction.mean_square)


def test_one_hand_alone_has_no_interaction() -> None:
    found = table(BY_HAND[:, :1, :])
    assert found.pooled
    assert [row.source for row in found.rows] == ["parts", "repeatability"]
    assert found.parts.f == pytest.approx(50.0)


def test_tries_that_never_differ() -> None:
    found = table(np.repeat(BY_HAND.mean(axis=2, keepdims=True), 2, axis=2))
    assert found.repeatability.squares == 0
    assert found.parts.p == 0.0


@pytest.mark.parametrize("shape", [(1, 2, 2), (2, 0, 2), (2, 2, 1)])
def test_too_few_are_refused(shape: tuple[int, int, int]) -> None:
    with pytest.raises(Unreadable, match="too few"):
        table(np.zeros(shape))


def test_what_is_no_number_is_refused() -> None:
    with pytest.raises(Unreadable, match="no number"):
        table(np.full((2, 2, 2), np.nan))
