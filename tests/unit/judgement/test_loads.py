"""Draws of strengths and sizes."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.judgement.loads import SIZE, material_words, part_material
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.materials import structural_material
from tests.unit.judgement.ladder_loads import loads_of

LOADS = loads_of("tarvak-52")


def test_the_same_name_draws_the_same_and_another_name_another() -> None:
    once, again, other = LOADS.between("a", 1, 2), LOADS.between("a", 1, 2), LOADS.between("b", 1, 2)
    assert np.array_equal(once, again)
    assert not np.array_equal(once, other)
    assert once.min() >= 1
    assert once.max() <= 2


def test_two_parts_of_one_metal_are_not_of_one_bar() -> None:
    main, pinion = LOADS.yields_at("main gear", "brass"), LOADS.yields_at("pinion", "brass")
    assert abs(np.corrcoef(main, pinion)[0, 1]) < 0.3
    brass = structural_material("brass").yield_strength
    assert brass.low <= main.min() < main.max() <= brass.high


def test_a_size_that_is_stated_is_true_within_its_tolerance_and_a_guess_is_wide() -> None:
    stated = LOADS.stated_or_guessed("arm", 8e-3, 1e-3, 20e-3)
    guessed = LOADS.stated_or_guessed("arm", None, 1e-3, 20e-3)
    assert np.all(np.abs(stated / 8e-3 - 1) <= SIZE + 1e-12)
    assert np.std(guessed) > 10 * np.std(stated)


def test_a_value_known_exactly_is_not_spread() -> None:
    assert np.ptp(LOADS.between("exact", 3.0, 3.0)) == 0.0
    assert np.ptp(LOADS.evenly("even", 0.0, 1.0)) > 0.9


def test_handle_torque_is_pull_times_radius_times_ratio() -> None:
    assert LOADS.handle_torque == pytest.approx(LOADS.radius * 50 / 12)


def test_plating_carries_no_load_and_the_longest_name_is_meant() -> None:
    sheet = reel_sheet.load("tarvak-54c")
    assert part_material(sheet, "handle nut", "carbon steel") == "brass"
    assert part_material(sheet, "drive shaft", "brass") == "precipitation-hardened stainless steel"
    assert part_material(sheet, "no such part", "brass") == "brass"


def test_a_material_is_told_with_its_source_and_mark() -> None:
    held = structural_material("brass").yield_strength
    assert material_words("brass", held).endswith(f"({held.how})")
