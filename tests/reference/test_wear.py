"""Archard's law in the units of its tables, and a bush whose life a textbook works out."""

from __future__ import annotations

from math import pi

import numpy as np
import pytest

from spoolwright.mechanics import wear
from tests.reference.published import Published, each

CUBIC_MM_PER_NEWTON_METRE = 1e-9

INCH, FOOT, POUND = 0.0254, 0.3048, 4.4482216152605
ENGLISH = 1e-10 * INCH**3 / (FOOT * POUND) / 60
"""One unit of English wear factors, 1e-10 in3 min / (ft lbf h), in m2/N."""


def bush_hours() -> float:
    """A bush of 1 in by 1 in, 700 lbf, 33 ft/min, limit 0.005 in, K 0.6e-10, motion factor 1.3."""
    pressure = 4 / pi * 700 * POUND / INCH**2
    an_hour = 33 * FOOT * 60
    return float(wear.life(0.005 * INCH, 1.3 * 0.6 * ENGLISH, pressure, an_hour))


CHECKS = [
    Published(
        "life of a plain bush, hours",
        bush_hours,
        2180,
        10,
        "Shigley's Mechanical Engineering Design, ex. 12-6 (wear of an oilless bushing)",
        "from memory",
    ),
    Published(
        "turns of the same bush, millions",
        lambda: bush_hours() * 33 * 60 / (pi / 12) / 1e6,
        16.5,
        0.1,
        "Shigley's Mechanical Engineering Design, ex. 12-6",
        "from memory",
    ),
    Published(
        "mild steel pair from its coefficient, mm3/(N m)",
        lambda: wear.specific_rate(7e-3, 120 * 9.8e6) / CUBIC_MM_PER_NEWTON_METRE,
        0.001984,
        1e-6,
        "encyclopedia article on the wear coefficient, table 1: K 7e-3, Brinell 120, V = K F s / (3 H)",
        "opened: en.wikipedia.org/wiki/Wear_coefficient; conversion of the collection of references",
    ),
    Published(
        "polyacetal, 1e-8 mm3/(N m) from English units",
        lambda: 13 * ENGLISH / CUBIC_MM_PER_NEWTON_METRE * 1e8,
        26,
        1,  # both tables are rounded to whole numbers
        "compound maker's thrust-washer data (ASTM D3702), metric and English tables of one compound",
        "opened: rtpcompany.com",
    ),
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


def test_a_quarter_of_the_books_convention_is_not_taken_for_the_whole() -> None:
    """V = K F s / (3 H) and V = K F s / H differ by three; both stand in published tables (see above)."""
    assert wear.specific_rate(1e-4, 1e9, 1.0) == pytest.approx(3 * wear.specific_rate(1e-4, 1e9))


def test_a_track_and_its_slider_share_one_volume() -> None:
    """V = k F s on either face; depth is volume over worn area (J. F. Archard 1953, from memory)."""
    rate, load, way = 3e-15, 2.0, 5e4
    track = wear.track_depth(rate, load, way, 0.7e-3, 0.2)
    slider = wear.archard_depth(rate, load / (0.7e-3 * 2e-3), way)
    assert track * 0.7e-3 * 0.2 == pytest.approx(slider * 0.7e-3 * 2e-3, rel=1e-12)


def test_rivals_closed_band_and_drawn_lives() -> None:
    """Quantiles of a life whose rate is even in its logarithm, against a sample (JCGM 101:2008, 6.4.2)."""
    share = (np.arange(40000) + 0.5) / 40000
    drawn = wear.life(2e-4, 1e-16 * 100**share, 1e6, 300.0)
    band = wear.life_band(2e-4, 1e-16, 1e-14, 1e6, 300.0)
    for part, quantile in (("low", 0.05), ("middle", 0.5), ("high", 0.95)):
        assert band[part] == pytest.approx(np.quantile(drawn, quantile), rel=1e-3)  # type: ignore[literal-required]
