"""The compiled kernel as such."""

from __future__ import annotations

import ast
import inspect
from concurrent.futures import ThreadPoolExecutor

import numpy as np

from spoolwright.command.some_casts import some_casts
from spoolwright.mechanics import cast, cast_kernel

FROM_OUTSIDE = {"sqrt", "max", "min", "abs", "range", "njit"}


def test_everything_that_is_called_stands_in_this_file() -> None:
    """The compiler's cache looks at this file alone: a change elsewhere would go unseen."""
    tree = ast.parse(inspect.getsource(cast_kernel))
    here = {node.name for node in tree.body if isinstance(node, ast.FunctionDef)}
    called = {n.func.id for n in ast.walk(tree) if isinstance(n, ast.Call) and isinstance(n.func, ast.Name)}
    assert called <= here | FROM_OUTSIDE
    brought = [n.module for n in tree.body if isinstance(n, ast.ImportFrom)]
    assert not [module for module in brought if module and module.startswith("spoolwright")]


def test_two_threads_give_the_numbers_of_one() -> None:
    """Each call has a work space of its own, so that the lock can be let go."""
    drawn = some_casts(400, 3)
    halves = [{name: values[part::2] for name, values in drawn.items()} for part in (0, 1)]
    with ThreadPoolExecutor(2) as pool:
        both = list(pool.map(lambda half: cast.simulate(**half).distance, halves))
    whole = cast.simulate(**drawn).distance
    assert np.array_equal(both[0], whole[0::2])
    assert np.array_equal(both[1], whole[1::2])


def test_two_times_the_same_casts_are_the_same_to_the_last_bit() -> None:
    drawn = some_casts(200, 4)
    first, again = cast.simulate(**drawn), cast.simulate(**drawn)
    assert all(np.array_equal(first[name], again[name]) for name in first)


def test_a_thumb_on_the_edge_of_its_limit_comes_to_an_end() -> None:
    """Slack that would tremble about the limit is held there, so that a cast ends in few steps."""
    drawn = some_casts(300, 6)
    for limit in (0.0, 1e-6, 0.01, 0.2):
        flown = cast.simulate(**{**drawn, "slack_limit": limit, "thumb_force": 3.0})
        assert np.all(np.isfinite(flown.distance))
