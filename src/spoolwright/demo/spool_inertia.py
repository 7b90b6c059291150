"""The bare spool's moment of inertia, taken two ways at the bench: falling weights, and two threads."""

from __future__ import annotations

from math import pi, sqrt
from typing import Any

from spoolwright.bench import inertia
from spoolwright.bench.inertia_pendulum import widened
from spoolwright.demo.stay import Stay
from spoolwright.judgement.free_spin import GRAVITY, bare_inertia
from spoolwright.judgement.sheet_inertia import of_sheet
from spoolwright.sheets import inertia_methods
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.take_inertia import take_inertia
from spoolwright.shop.questions.kept_inertia import kept_inertia

HEIGHT, LENGTH, SPACING, SWINGS, AMPLITUDE = 0.8, 0.5, 0.04, 20, 0.17
FRICTION = 2.5e-5
LIGHTER, HEAVIER = 0.002, 0.005
TRUE_SHARE = 1.02
"""The spool on the bench is a little more than its sheet says, as a real one would be: invented."""

WOBBLE = (-0.008, 0.005, 0.004)
"""Seconds by which three tries of a fall differ: invented."""


def taken_two_ways(stay: Stay, sheet: ReelSheet) -> tuple[Any, ...]:
    """Two entries, each with its own budget, beside what the sheet says."""
    turning = TRUE_SHARE * bare_inertia(sheet)
    mass = sheet.spool.mass or 0.03
    return tuple(
        _taken(stay, sheet, method, typed)
        for method, typed in (
            ("fall", _falls(turning, sheet.spool.arbor_radius)),
            ("threads", _swings(turning, mass)),
        )
    )


def _taken(stay: Stay, sheet: ReelSheet, method: str, typed: dict[str, str]) -> Any:
    given = {one.key: inertia.known(one, typed[one.key]) for one in inertia_methods.method(method).asks}
    kept = kept_inertia(method, inertia.read(method, given), None, of_sheet(sheet)[0])
    with clock.as_of(stay.next_moment(4)):
        return take_inertia(
            hand=stay.shop.ingjerd, visit=stay.visit, kept=kept, conditions={"line": "off"}
        ).entry


def _falls(turning: float, radius: float) -> dict[str, str]:
    def tries(mass: float) -> str:
        pull = mass * GRAVITY - FRICTION / radius
        lasts = sqrt(2 * HEIGHT * (mass + turning / radius**2) / pull)
        return "; ".join(f"{lasts + off:.2f} s" for off in WOBBLE)

    return {
        "mass_1": f"{1e3 * LIGHTER:.2f} g",
        "time_1": tries(LIGHTER),
        "mass_2": f"{1e3 * HEAVIER:.2f} g",
        "time_2": tries(HEAVIER),
        "height": f"{HEIGHT:.3f} m",
        "radius": f"{1e3 * radius:.1f} mm",
    }


def _swings(turning: float, mass: float) -> dict[str, str]:
    period = 2 * pi * sqrt(turning * LENGTH / (mass * GRAVITY * (SPACING / 2) ** 2)) * widened(AMPLITUDE)
    return {
        "mass": f"{1e3 * mass:.1f} g",
        "spacing": f"{1e3 * SPACING:.1f} mm",
        "length": f"{1e3 * LENGTH:.0f} mm",
        "swings": f"{SWINGS}",
        "time": f"{SWINGS * period:.1f} s",
        "amplitude": "10 deg",
    }
