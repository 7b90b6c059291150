"""The longer lists of units: each starts from SI exactly, and no spelling means two of them."""

from fractions import Fraction

import pytest

from spoolwright.quantities import unit_sets
from spoolwright.quantities.units import Unit

SETS = {name: value for name, value in vars(unit_sets).items() if isinstance(value, tuple)}


@pytest.mark.parametrize("units", SETS.values(), ids=SETS)
def test_no_spelling_means_two_units(units: tuple[Unit, ...]) -> None:
    words = [word for unit in units for word in (unit.name, *unit.spellings)]
    assert len(words) == len(set(words))


@pytest.mark.parametrize("units", SETS.values(), ids=SETS)
def test_one_of_them_is_si_itself(units: tuple[Unit, ...]) -> None:
    assert any(unit.factor == 1 for unit in units)


def test_a_factor_is_exact() -> None:
    """International yard and pound agreement of 1959: the inch is 25.4 mm."""
    assert unit_sets.unit("in", unit_sets.INCH).factor == Fraction(254, 10000)
