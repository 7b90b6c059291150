"""A ring of known inertia: three movements, one answer."""

import numpy as np
import pytest
from scipy.integrate import quad

from spoolwright.bench import inertia_ring
from tests.unit.bench import spools


def test_a_ring_is_the_integral_of_its_mass() -> None:
    """Source: the definition, the integral of r^2 dm over an even ring."""
    inner, outer = 0.015, 0.020
    density = 0.012 / (np.pi * (outer**2 - inner**2))
    whole, _ = quad(lambda r: density * 2 * np.pi * r**3, inner, outer)
    assert inertia_ring.ring_inertia(spools.RING) == pytest.approx(whole, rel=1e-9)


def test_falls_do_not_feel_a_constant_friction() -> None:
    true = spools.truth("ring-fall")
    for friction in (0.0, 1e-4):
        times = {
            name: spools.fall_time(0.005, 0.8, 0.0126, inertia, friction)
            for name, inertia in (
                ("time_bare", spools.INERTIA),
                ("time_ring", spools.INERTIA + spools.RING_INERTIA),
            )
        }
        found = inertia_ring.read(inertia_ring.FALLS, spools.inputs("ring-fall", {**true, **times}))
        assert found.inertia.value == pytest.approx(spools.INERTIA, rel=1e-9)


def test_coasting_times_go_with_inertia_whatever_slows() -> None:
    """J dw/dt = -M(w): the time between two speeds is J times an integral that knows no J."""
    lasts, _ = quad(lambda w: 1 / (2e-5 + 3e-8 * w + 1e-9 * w**2), 40.0, 200.0)
    times = {"time_bare": spools.INERTIA * lasts, "time_ring": (spools.INERTIA + spools.RING_INERTIA) * lasts}
    found = inertia_ring.read(inertia_ring.COASTS, spools.inputs("ring-coast", {**spools.RING, **times}))
    assert found.inertia.value == pytest.approx(spools.INERTIA, rel=1e-9)
    assert "% of the spool's inertia" in found.notes[0]


def test_a_method_that_is_none_is_refused() -> None:
    with pytest.raises(ValueError, match="accepted"):
        inertia_ring.read("rolling", {})
