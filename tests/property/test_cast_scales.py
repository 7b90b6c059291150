"""A cast for any reel: to another scale it flies alike, and nothing that brakes makes it go farther."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics import cast
from tests.property.test_dimensions import powers, units_of

CASES = 60
RESULTS = {
    "distance": "m",
    "flight_time": "s",
    "arc": "m",
    "line_out": "m",
    "peak_spool_speed": "rad/s",
    "peak_slack": "m",
    "brake_energy": "J",
    "bearing_energy": "J",
    "windage_energy": "J",
    "thumb_energy": "J",
    "payload_air_energy": "J",
    "line_air_energy": "J",
}
RESISTANCES = ("payload_drag_area", "line_drag", "bearing_constant", "brake_magnetic", "level_wind_torque")


def some_casts(seed: int) -> dict[str, np.ndarray]:
    """Casts of 5 to 200 g from small and large reels, slack and tight, with and without wind."""
    rng = np.random.default_rng(seed)

    def between(low: float, high: float) -> np.ndarray:
        return np.exp(rng.uniform(np.log(low), np.log(high), CASES))

    radius = between(0.014, 0.03)
    return {
        "payload_mass": between(0.005, 0.2),
        "payload_drag_area": between(2e-5, 3e-4),
        "release_speed": between(15, 70),
        "release_angle": rng.uniform(0.1, 1.2, CASES),
        "release_height": between(1.0, 3.0),
        "wind": rng.uniform(-8, 8, CASES),
        "air_density": between(1.0, 1.3),
        "spool_inertia": between(1e-6, 3e-5),
        "full_radius": radius,
        "arbor_radius": 0.6 * radius,
        "spool_width": between(0.03, 0.06),
        "packing": rng.uniform(0.6, 0.8, CASES),
        "line_diameter": between(0.15e-3, 0.4e-3),
        "line_density": between(970, 1400),
        "line_length": between(150, 400),
        "line_drag": between(2e-3, 8e-3),
        "bearing_constant": between(5e-5, 1e-3),
        "bearing_viscous": between(1e-9, 1e-7),
        "windage": between(1e-10, 3e-9),
        "brake_magnetic": between(1e-7, 4e-6),
        "brake_centrifugal": between(1e-11, 3e-10),
        "brake_engages": between(100, 800),
        "level_wind_torque": between(1e-5, 5e-4),
    }


def thumbed(**casts: np.ndarray) -> cast.Casts:
    """A perfect thumb: what brakes then only takes work off it, and slack plays no part."""
    return cast.simulate(**casts, variant="ideal thumb", rtol=1e-9)


def test_a_model_to_another_scale_flies_alike() -> None:
    """Froude's law (any text on models): lengths by k, times by its root; masses by any factor."""
    units, _ = units_of(cast.simulate)
    other = np.array([1.7, 0.6, 1.7**0.5, 1.0, 1.0])
    here = some_casts(3)
    there = {name: values * float(np.prod(other ** powers(units[name]))) for name, values in here.items()}
    small, large = cast.simulate(**here, rtol=1e-10), cast.simulate(**there, rtol=1e-10)
    for name, unit in RESULTS.items():
        expected = small[name] * float(np.prod(other ** powers(unit)))
        assert large[name] == pytest.approx(expected, rel=2e-5, abs=1e-6 * float(np.max(expected))), name
    assert np.array_equal(small.landed, large.landed)


@pytest.mark.parametrize("resistance", RESISTANCES)
def test_no_resistance_makes_a_cast_go_farther(resistance: str) -> None:
    """In still air, thumbed perfectly, from the same release: less energy never carries farther."""
    still = some_casts(5) | {"wind": np.zeros(CASES), "line_length": np.full(CASES, 1e4)}
    still["release_angle"] = np.minimum(still["release_angle"], 0.6)
    still["arbor_radius"] = np.full(CASES, 1e-4)
    more = still | {resistance: 1.5 * still[resistance]}
    assert np.all(thumbed(**more).distance <= thumbed(**still).distance * (1 + 1e-7))


def test_no_cast_in_still_air_goes_as_far_as_without_air_and_reel() -> None:
    """Range without air, v cos a (v sin a + sqrt(v^2 sin^2 a + 2 g h)) / g (any mechanics text)."""
    still = some_casts(7) | {"wind": np.zeros(CASES)}
    v, a, h = still["release_speed"], still["release_angle"], still["release_height"]
    up = v * np.sin(a)
    ceiling = v * np.cos(a) * (up + np.sqrt(up**2 + 2 * 9.80665 * h)) / 9.80665
    assert np.all(cast.simulate(**still).distance < ceiling)


def test_slack_grows_as_the_brake_is_let_off() -> None:
    """The trade's rule: a spool that is braked less runs ahead more (common practice, no source)."""
    casts = some_casts(9) | {"brake_centrifugal": np.zeros(CASES)}
    off = cast.simulate(**(casts | {"brake_magnetic": 0.5 * casts["brake_magnetic"]}))
    on = cast.simulate(**casts)
    assert np.all(off.peak_slack >= on.peak_slack - 1e-6)
