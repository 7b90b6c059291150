"""One reel after some works, reckoned for one throw."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.cast_reckoned import reckoned
from spoolwright.judgement.narrowing import know
from spoolwright.judgement.throw import Throw
from spoolwright.sheets import reel_sheet
from tests.unit.judgement.casting import SURF, known


def test_works_that_touch_the_bearings_change_nothing_else() -> None:
    now, hybrid = (reckoned(known("tarvak-58r"), works, SURF) for works in ((), ("hybrid-spool-bearings",)))
    assert np.median(hybrid.inputs.drag.bearing_viscous) < np.median(now.inputs.drag.bearing_viscous)
    for name in ("payload_drag_area", "line_drag", "packing", "release_speed"):
        assert np.array_equal(now.inputs.plain[name], hybrid.inputs.plain[name])


def test_the_measured_line_is_taken_where_the_throw_names_none() -> None:
    sheet = reel_sheet.load("tarvak-58r")
    read = know(sheet, {"line_diameter": Measured(0.35e-3, 0.01e-3, "length")}, samples=100, seed=1)
    assert reckoned(read, (), Throw(0.1, 40.0)).diameter == 0.35e-3


def test_a_work_of_another_kind_of_reel_is_refused() -> None:
    with pytest.raises(ValueError, match="works: "):
        reckoned(known("tarvak-58r"), ("no-such-work",), SURF)
