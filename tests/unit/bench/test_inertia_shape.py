"""From sizes and mass: the drawing scaled to the scale, and never surer than the drawing."""

import pytest

from spoolwright.bench import inertia_shape
from tests.unit.bench import spools


def test_a_heavier_spool_of_the_same_shape_has_more_in_proportion() -> None:
    true = spools.truth("sizes")
    once, twice = (
        inertia_shape.read(spools.inputs("sizes", {**true, "mass": mass})).inertia.value
        for mass in (spools.MASS, 2 * spools.MASS)
    )
    assert twice == pytest.approx(2 * once)


def test_without_a_word_of_its_likeness_it_is_known_to_five_in_a_hundred() -> None:
    seen = {k: v for k, v in spools.truth("sizes").items() if k != "likeness"}
    found = inertia_shape.read(spools.inputs("sizes", seen)).inertia
    assert 0.05 < found.uncertainty / found.value < 0.06
