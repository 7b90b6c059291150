"""Results of a cast by name and by key."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics import cast_kernel
from spoolwright.mechanics.cast_result import Casts, Trace


def numbered() -> Casts:
    rows = np.arange(2.0 * cast_kernel.RESULTS).reshape(2, -1)
    rows[:, cast_kernel.STATUS] = [cast_kernel.LANDED, cast_kernel.HUNG]
    return Casts.of(rows, (2,), cast_kernel)


def test_each_field_is_its_own_column() -> None:
    casts = numbered()
    columns = [casts[name][0] for name in casts if name != "landed"]
    assert len(set(columns)) == len(columns) == cast_kernel.RESULTS - 1
    assert list(casts.landed) == [True, False]


def test_a_field_that_is_not_there_is_told_with_those_that_are() -> None:
    with pytest.raises(KeyError, match="colour: there is distance, flight_time"):
        numbered()["colour"]
    assert "distance" in numbered()
    assert len(numbered()) == len(list(numbered()))


def test_a_trace_works_speeds_and_radius_out_of_what_was_noted() -> None:
    case = np.zeros(cast_kernel.COLUMNS)
    case[cast_kernel.TOP], case[cast_kernel.FALL] = 0.02**2, 1e-6
    line = np.array([[0.5, 3.0, 4.0, 30.0, 40.0, 5.0, 2000.0, 1.0, 0.2]])
    trace = Trace.of(line, case, numbered(), cast_kernel)
    assert (trace.speed[0], trace.line_out[0], trace.tension[0]) == (50.0, 6.0, 0.2)
    assert trace.radius[0] == pytest.approx(np.sqrt(4e-4 - 6e-6))
    assert trace.line_speed[0] == pytest.approx(2000.0 * trace.radius[0])
