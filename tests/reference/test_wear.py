"""Archard's law in the units of its tables."""

from __future__ import annotations

import pytest

from spoolwright.mechanics import wear
from tests.reference.published import Published, each

CUBIC_MM_PER_NEWTON_METRE = 1e-9

CHECKS = [
    Published(
        "polymer washer, mm",
        lambda: wear.archard_depth(1e-7 * CUBIC_MM_PER_NEWTON_METRE, 5e6, 10_000.0) * 1e3,
        0.005,
        1e-9,
        "Archard's law: 1e-7 mm3/(N m), 5 N/mm2, 10 km",
        "from memory; arithmetic of the collection of references",
    ),
    Published(
        "hardness form: K/H of 1e-6 and 1200 N/mm2 as mm3/(N m)",
        lambda: wear.archard_depth(1e-6 / 1200e6, 1.0, 1.0) / CUBIC_MM_PER_NEWTON_METRE,
        8.3333e-7,
        1e-10,
        "definition of the specific wear rate",
        "from memory; arithmetic of the collection of references",
    ),
]


@each(CHECKS)
def test_printed(check: Published) -> None:
    check.agrees()


def test_volume_is_rate_times_load_times_distance() -> None:
    """V = k F s whatever the area (J. F. Archard 1953, from memory)."""
    for area in (1e-5, 3e-4):
        depth = wear.archard_depth(2e-15, 300.0 / area, 500.0)
        assert depth * area == pytest.approx(2e-15 * 300.0 * 500.0, rel=1e-12)
