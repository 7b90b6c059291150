"""A spool whose inertia is known, and what each method would measure of it."""

from __future__ import annotations

from math import pi, sqrt

from spoolwright.bench.inertia_pendulum import widened
from spoolwright.bench.propagation import Known
from spoolwright.bench.uncertainty import Measured
from spoolwright.mechanics import spool

G = 9.80665
ARBOR, FLANGE, WIDTH, WALL, DENSITY = 0.0250, 0.0490, 0.0245, 0.0012, 2700.0
SIZES = (ARBOR / 2, FLANGE / 2, WIDTH, WALL, DENSITY)
MASS, INERTIA = float(spool.spool_mass(*SIZES)), float(spool.spool_inertia(*SIZES))
FRICTION = 4e-5
RING = {"ring_mass": 0.012, "ring_outer": 0.040, "ring_inner": 0.030}
RING_INERTIA = RING["ring_mass"] * (RING["ring_outer"] ** 2 + RING["ring_inner"] ** 2) / 8


def fall_time(mass: float, height: float, radius: float, inertia: float, friction: float) -> float:
    """From rest, the torque of friction constant: Newton's second law for weight and spool."""
    pull = mass * G - friction / radius
    return sqrt(2 * height * (mass + inertia / radius**2) / pull)


def truth(method: str) -> dict[str, float]:
    """Every input of the method as it truly is."""
    if method == "fall":
        rest = {"height": 0.8, "radius": 0.0126}
        falls = {
            f"time_{k}": fall_time(m, 0.8, 0.0126, INERTIA, FRICTION) for k, m in ((1, 0.002), (2, 0.005))
        }
        return {"mass_1": 0.002, "mass_2": 0.005, **falls, **rest}
    if method == "ring-fall":
        both = {
            name: fall_time(0.005, 0.8, 0.0126, inertia, FRICTION)
            for name, inertia in (("time_bare", INERTIA), ("time_ring", INERTIA + RING_INERTIA))
        }
        return {**RING, "mass": 0.005, "radius": 0.0126, **both}
    if method == "ring-swing":
        swings = [20 * 2 * pi * sqrt(inertia / 2.4e-3) for inertia in (INERTIA, INERTIA + RING_INERTIA)]
        return {**RING, "time_bare": swings[0], "time_ring": swings[1]}
    if method == "ring-coast":
        return {**RING, "time_bare": 2e6 * INERTIA, "time_ring": 2e6 * (INERTIA + RING_INERTIA)}
    if method == "pin":
        period = 2 * pi * sqrt((INERTIA + MASS * 0.011**2) / (MASS * G * 0.011)) * widened(0.17)
        return {"mass": MASS, "distance": 0.011, "period": period, "amplitude": 0.17}
    if method == "threads":
        period = 2 * pi * sqrt(INERTIA * 0.5 / (MASS * G * 0.02**2)) * widened(0.17)
        return {"mass": MASS, "spacing": 0.04, "length": 0.5, "period": period, "amplitude": 0.17}
    if method == "spring":
        return {"stiffness": 2.4e-3, "period": 2 * pi * sqrt(INERTIA / 2.4e-3)}
    return {"mass": MASS, "arbor": ARBOR, "flange": FLANGE, "width": WIDTH, "wall": WALL, "likeness": 1.0}


SPREADS = {
    "mass": 3e-5, "mass_1": 6e-6, "mass_2": 6e-6, "ring_mass": 3e-5, "height": 5e-4, "radius": 5e-5,
    "time_1": 0.008, "time_2": 0.005, "ring_outer": 2e-5, "ring_inner": 2e-5, "distance": 3e-5,
    "amplitude": 0.03, "spacing": 1e-4, "length": 5e-4, "stiffness": 2e-5, "arbor": 3e-5, "flange": 3e-5,
    "width": 3e-5, "wall": 2e-5, "likeness": 0.05, "gravity": 0.015,
}  # fmt: skip
TIMES = {"fall": 0.005, "ring-fall": 0.004, "ring-swing": 0.02, "ring-coast": 0.05, "period": 0.001}


def spread(method: str, key: str) -> float:
    """The standard uncertainty of an input, as a bench of this kind would have it."""
    if key in ("time_bare", "time_ring"):
        return TIMES[method]
    return TIMES["period"] if key == "period" else SPREADS[key]


def inputs(method: str, values: dict[str, float]) -> dict[str, Known]:
    """These values as somebody who knows the uncertainties would state them."""
    return {
        key: Known(key.replace("_", " "), Measured(value, spread(method, key), "length"))
        for key, value in values.items()
    }
