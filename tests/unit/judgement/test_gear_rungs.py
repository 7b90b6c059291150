"""Teeth and flanks."""

from __future__ import annotations

from math import cos, pi

import numpy as np
import pytest

from spoolwright.judgement.gear_rungs import gear_rungs
from spoolwright.mechanics import gears as teeth
from spoolwright.sheets.materials import structural_material
from tests.unit.judgement.ladder_loads import changed, loads_of, middles

OLDER = middles(gear_rungs(loads_of("tarvak-52")))


def test_a_reel_with_gears_has_three_rungs_and_one_without_has_none() -> None:
    assert set(OLDER) == {"main gear", "pinion", "gear flanks"}
    assert gear_rungs(loads_of("brekkas-9-10")) == []


def test_bending_by_hand() -> None:
    """52: Ft = r / (m z / 2) = 22 / 3.6 = 6.11 a newton; Lewis with the least and the most that is drawn."""
    main = next(limit for limit in gear_rungs(loads_of("tarvak-52")) if limit.part == "main gear")
    stress = teeth.lewis_stress(22 / 3.6, 0.6e-3, 4e-3, teeth.form_factor(50))
    brass = structural_material("brass").yield_strength
    shared = teeth.contact_ratio(50, 12, 0.6e-3)
    assert main.pull.max() <= 1.5 * brass.high * shared * 1.02**2 / stress
    assert main.pull.min() >= 1.5 * brass.low * 0.98**2 / stress / 1.6
    assert 0.5 < np.median(main.pull) / (1.5 * brass.middle * (1 + shared) / 2 / stress) < 1.0


def test_harder_metal_wider_face_and_a_fuller_spool_hold_as_they_should() -> None:
    steel = middles(
        gear_rungs(loads_of(changed("tarvak-52", gears={"main_material": "hardened stainless steel"})))
    )
    assert steel["main gear"] > 3 * OLDER["main gear"]
    assert steel["pinion"] == pytest.approx(OLDER["pinion"], rel=0.2)
    half = middles(gear_rungs(loads_of("tarvak-52", fill=0.3)))
    radius = loads_of("tarvak-52").radius / loads_of("tarvak-52", fill=0.3).radius
    assert half["main gear"] / OLDER["main gear"] == pytest.approx(radius, rel=0.1)


def test_a_pinion_of_fewer_teeth_gives_sooner() -> None:
    fewer = middles(gear_rungs(loads_of(changed("tarvak-52", gears={"pinion_teeth": 10}))))
    assert fewer["pinion"] < OLDER["pinion"]
    assert fewer["main gear"] < OLDER["main gear"]


def test_flanks_by_hand() -> None:
    """Mean pressure pi/4 of the peak, at the hardness of the softer wheel: force goes with its square."""
    flanks = next(limit for limit in gear_rungs(loads_of("tarvak-52")) if limit.part == "gear flanks")
    brass, bronze = structural_material("brass"), structural_material("bronze")
    peak = teeth.pitch_point_stress(
        22 / 3.6, 0.6e-3, 50, 12, 4e-3, brass.youngs_modulus.middle, brass.poisson.middle,
        bronze.youngs_modulus.middle, bronze.poisson.middle,
    )  # fmt: skip
    alone = (brass.hardness.middle / (pi / 4 * peak)) ** 2
    assert 0.8 * alone < np.median(flanks.pull) < 1.3 * alone
    assert "brass" in flanks.what_gives


def test_teeth_bear_less_for_their_life_than_once() -> None:
    for limit in gear_rungs(loads_of("tarvak-54c")):
        if limit.lasts is not None:
            assert np.median(limit.lasts) < np.median(limit.pull)


def test_a_helix_turns_the_pitch_circle_wider() -> None:
    straight = middles(gear_rungs(loads_of(changed("tarvak-54c", gears={"helix_angle": 0.0}))))
    helical = middles(gear_rungs(loads_of("tarvak-54c")))
    assert helical["main gear"] > straight["main gear"] / cos(0.27)


def test_a_worm_gear_is_left_out() -> None:
    assert gear_rungs(loads_of(changed("lumvik-4000", gears={"form": "worm"}))) == []
