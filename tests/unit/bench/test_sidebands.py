"""Sidebands of the mesh stand at the turning of the wheel that makes them, however the speed drifts."""

import numpy as np
import pytest

from spoolwright.bench import sidebands
from spoolwright.bench.mesh_track import MeshTrack

WHEELS = {"main": 98, "pinion": 17}


@pytest.mark.parametrize(("wheel", "other"), [("main", "pinion"), ("pinion", "main")])
def test_the_wheel_that_swells_has_them(wheel: str, other: str) -> None:
    time = np.arange(64000) / 8000.0
    teeth = 200.0 * time + 3.0 * np.sin(2 * np.pi * 0.2 * time)
    hum = (1 + 0.5 * np.cos(2 * np.pi * teeth / WHEELS[wheel])) * np.cos(2 * np.pi * teeth)
    found = sidebands.ratios(hum, 8000.0, MeshTrack(time, teeth, 200.0, 0.0, 1.0), WHEELS)
    assert found[wheel] == pytest.approx(0.25 * 2**0.5, rel=0.15)  # two lines of a quarter: half of a half
    assert found[other] < 0.05
