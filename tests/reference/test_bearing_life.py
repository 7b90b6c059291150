"""Bearing life after ISO 281: worked examples of three handbooks, and the joints of the standard's curves."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics import rolling
from tests.reference.published import Published, each

BALL_ROLLER = "ball and roller bearing handbook, cat. no. 2203/E"
GENERAL = "rolling bearings, general catalogue, English edition of 281 pages"
LARGE = "general catalogue, edition of 1129 pages"
TECHNICAL = "general technical catalogue of rolling bearings no. 011"
OPENED = "opened as a text copy"


def hours(rating: float, load: float, rpm: float) -> float:
    return float(rolling.rating_life(rating, load)) * 1e6 / (60 * rpm)


def thrust_factor(axial: float, static_rating: float, f0: float) -> float:
    """Y as the formula carries it: a radial load far below the axial one."""
    return float((rolling.equivalent_load(1.0, axial, static_rating, f0) - 0.56) / axial)


CHECKS = [
    Published(
        "6309 at 10 kN, million turns",
        lambda: rolling.rating_life(55.3e3, 10e3),
        169.0,
        0.5,
        f"{LARGE}, example 1a",
        OPENED,
    ),
    Published(
        "6208 at 3.2 kN, hours",
        lambda: hours(32.5e3, 3.2e3, 650),
        27000,
        270,
        f"{BALL_ROLLER}, 4.5, example 1",
        OPENED,
    ),
    Published(
        "6208 at 2.5 kN, hours",
        lambda: hours(29100, 2500, 900),
        29000,
        435,
        f"{GENERAL}, 5.7, example 1",
        OPENED,
    ),
    Published(
        "6208 at 3.07 kN, hours",
        lambda: hours(29100, 3070, 900),
        15800,
        158,
        f"{GENERAL}, 5.7, example 3",
        OPENED,
    ),
    Published(
        "equivalent load, kN",
        lambda: rolling.equivalent_load(3.2e3, 1.8e3, 17.8e3, 14.0) / 1e3,
        4.38,
        0.02,
        f"{BALL_ROLLER}, 4.5, example 2",
        OPENED,
    ),
    Published(
        "axial factor Y",
        lambda: thrust_factor(1000.0, 17900.0, 14.0),
        1.67,
        0.01,
        f"{GENERAL}, 5.7, example 3",
        OPENED,
    ),
    Published(
        "oil for 6212 at 3500 rpm, mm2/s",
        lambda: rolling.reference_viscosity(3500.0, 0.085) * 1e6,
        8.0,
        0.4,  # read off the handbook's chart
        f"{TECHNICAL}, example p. 22",
        OPENED,
    ),
    Published(
        "equivalent load by the book's own table, lbf",
        lambda: rolling.equivalent_load(500.0, 400.0, 4450.0),
        891,
        9,
        "Shigley's Mechanical Engineering Design, ex. 11-4",
        "from memory",
    ),
]


CHECKS += [
    Published(
        "hours at 1725 rpm of a bearing rated 14.3 kN under 1.78 kN",
        lambda: hours(3211, 400, 1725),
        5000,
        3,
        "Shigley's Mechanical Engineering Design, ex. 11-1: 400 lbf, 5000 h, 3211 lbf",
        "from memory",
    ),
    Published(
        "relative axial load of 6208",
        lambda: 14.0 * 1.8e3 / 17.8e3,
        1.42,
        0.01,
        f"{BALL_ROLLER}, 4.5, example 2 (arithmetic that the next one rests on)",
        OPENED,
    ),
    Published(
        "two bearings together, hours",
        lambda: rolling.system_life([1900.0, 7550.0], 9 / 8),
        1600,
        48,
        f"{BALL_ROLLER}, 4.5, example 4, eq. 3.3",
        OPENED,
    ),
    Published(
        "mean load of five steps, kN",
        lambda: rolling.mean_load(
            np.array([18.3, 31.3, 48.3, 57.4, 78.2]),
            np.array([1200, 1000, 800, 600, 400.0]),
            np.array([5, 10, 60, 15, 10.0]),
            10 / 3,
        ),
        50.0,
        0.2,
        f"{BALL_ROLLER}, 4.5, example 5, eq. 4.23",
        OPENED,
    ),
    *(
        Published(
            f"a1 at {survival}",
            lambda survival=survival: rolling.reliability_factor(survival),
            printed,
            0.006,
            f"{BALL_ROLLER}, table 3.2 (values of ISO 281:2007)",
            OPENED,
        )
        for survival, printed in ((0.95, 0.64), (0.97, 0.47), (0.98, 0.37), (0.999, 0.093))
    ),
    Published(
        "life factor fh of 6208",
        lambda: (hours(32.5e3, 3.2e3, 650) / 500) ** (1 / 3),
        3.76,
        0.03,  # the handbook rounds its speed factor to 0.37 first
        f"{BALL_ROLLER}, 4.5, example 1",
        OPENED,
    ),
]


@each(CHECKS)
def test_printed(check: Published) -> None:
    check.agrees()


TABLE = [
    (0.172, 0.19, 2.30),
    (0.345, 0.22, 1.99),
    (0.689, 0.26, 1.71),
    (1.03, 0.28, 1.55),
    (1.38, 0.30, 1.45),
    (2.07, 0.34, 1.31),
    (3.45, 0.38, 1.15),
    (5.17, 0.42, 1.04),
    (6.89, 0.44, 1.00),
]


@pytest.mark.parametrize(("place", "limit", "factor"), TABLE)
def test_table_three_of_the_standard_row_by_row(place: float, limit: float, factor: float) -> None:
    """ISO 281 table 3, normal clearance (opened in two handbooks: GENERAL, BALL_ROLLER)."""
    assert thrust_factor(place * 1e3, 1e3, 1.0) == pytest.approx(factor, abs=0.005)
    axial = place * 1000.0
    ample, scant = axial / (limit * 0.99), axial / (limit * 1.06)
    assert rolling.equivalent_load(ample, axial, 1000.0, 1.0) == ample
    assert rolling.equivalent_load(scant, axial, 1000.0, 1.0) > scant


def test_one_handbooks_chart_lies_below_the_equation_and_is_not_followed() -> None:
    """LARGE, example 1b, reads 8.15 mm2/s for 72.5 mm at 3000 rpm (opened); the equation is 18 % above."""
    assert rolling.reference_viscosity(3000.0, 0.0725) * 1e6 > 8.15 * 1.12


def test_the_two_speed_branches_of_the_reference_viscosity_meet() -> None:
    """45000 n^-0.83 and 4500 n^-0.5 at 1000 rpm: within 2.5 % (ISO 281, equation opened)."""
    below, above = rolling.reference_viscosity(np.array([999.999, 1000.0]), 0.015)  # type: ignore[misc]
    assert below == pytest.approx(above, rel=0.025)


def test_branches_of_the_life_factor_meet_only_with_the_right_digits() -> None:
    """0.054381, and not the 0.053481 of a public program (opened), joins the branches at kappa 0.4."""
    for dirt in (0.1, 0.5, 1.0):
        below, above = rolling.life_factor_iso(np.array([0.4 - 1e-9, 0.4 + 1e-9]), dirt, 10.0, 100.0)  # type: ignore[misc]
        assert below == pytest.approx(above, rel=5e-4)
        below, above = rolling.life_factor_iso(np.array([1 - 1e-9, 1 + 1e-9]), dirt, 10.0, 100.0)  # type: ignore[misc]
        assert below == pytest.approx(above, rel=1e-6)
    middling = 1.9987 / 0.4**0.19087
    assert abs(2.2649 / 0.4**0.054381 / middling - 1) < 2e-4
    assert abs(2.2649 / 0.4**0.053481 / middling - 1) > 5e-4


def test_the_life_factor_stays_below_a_makers_chart_for_its_premium_steel() -> None:
    """LARGE, example 1b (opened): the chart reads 8 at kappa 2.45 and eC Cu / P 0.107; ISO stays below."""
    assert rolling.life_factor_iso(2.45, 1.0, 0.107, 1.0) <= 8


def test_life_factor_limits_and_direction_over_the_whole_range() -> None:
    """0.1 for filth, 50 at most, kappa counts to 4 (ISO 281; caps opened in BALL_ROLLER)."""
    kappa = np.geomspace(0.1, 4, 60)
    for dirt in (0.01, 0.1, 0.5):
        factor = np.asarray(rolling.life_factor_iso(kappa, dirt, 10.0, 100.0))
        assert np.all(np.diff(factor) >= -1e-3 * factor[1:])
        assert factor.min() >= 0.1
    assert rolling.life_factor_iso(1.0, 0.0, 10.0, 100.0) == pytest.approx(0.1)
    assert rolling.life_factor_iso(4.0, 1.0, 100.0, 100.0) == 50.0
    assert rolling.life_factor_iso(9.0, 0.3, 10.0, 100.0) == rolling.life_factor_iso(4.0, 0.3, 10.0, 100.0)


def test_the_table_of_1990_fell_faster() -> None:
    """95 to 99 %: 0.62 0.53 0.44 0.33 0.21 (catalogue HR 1, p. 35, opened); ISO 281:2007 lies above them."""
    older = {0.95: 0.62, 0.96: 0.53, 0.97: 0.44, 0.98: 0.33, 0.99: 0.21}
    assert all(rolling.reliability_factor(share) > printed for share, printed in older.items())


def test_contamination_falls_from_word_to_word_and_lies_in_a_catalogues_bands() -> None:
    """Factor eC for a mean diameter below 100 mm (catalogue HR 1, p. 41, opened): 0.8-0.6 high, 0.6-0.5
    standard, 0.5-0.3 slight, 0.3-0.1 typical. ISO's own for grease at a full film and 60 mm keeps the order
    and lies at or below them, since small bearings suffer more."""
    words = ("high", "normal", "slight to typical", "severe", "very severe")
    factors = [float(rolling.contamination_factor(1.0, 0.060, word)) for word in words]
    assert factors == sorted(factors, reverse=True)
    assert 0.5 <= factors[0] <= 0.8
    assert factors[1] <= 0.6
    assert factors[-1] <= 0.1
    assert rolling.contamination_factor(1.0, 0.007, "severe") == 0.0


@pytest.mark.parametrize(
    ("balls", "ball", "pitch", "dynamic", "static", "within"),
    [
        (9, 11.906, 60.0, 29100, 17900, 0.005),  # 6208, GENERAL section 5.7, opened
        (7, 3.969, 15.0, 3300, 1370, 0.005),  # 608, GENERAL p. B36, opened
        (7, 1.588, 6.3, 640, 225, 0.012),  # 684, GENERAL p. B34, opened
    ],
)
def test_ratings_follow_from_the_balls(
    balls: int, ball: float, pitch: float, dynamic: float, static: float, within: float
) -> None:
    """C = 1.3 fc Z^(2/3) Dw^1.8 and C0 = f0 Z Dw^2 with the standards' tables (from memory)."""
    size = (balls, ball * 1e-3, pitch * 1e-3)
    assert rolling.dynamic_rating(*size) == pytest.approx(dynamic, rel=within)
    assert rolling.static_rating(*size) == pytest.approx(static, rel=within)


def test_static_equivalent_load_has_its_floor() -> None:
    """P0 = max(Fr, 0.6 Fr + 0.5 Fa) (GENERAL p. B24, opened)."""
    assert rolling.static_load(100.0, 50.0) == 100.0
    assert rolling.static_safety(1370.0, 100.0, 50.0) == pytest.approx(13.7)
