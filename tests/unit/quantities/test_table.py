"""The closed table as a whole."""

import pytest

from spoolwright.quantities import DIMENSIONS, read, read_typed
from spoolwright.quantities.units import Dimension

EVERY = list(DIMENSIONS.values())
CLOSED_LIST = {
    "length", "line_length", "mass", "force", "torque", "time", "angle", "temperature", "speed", "rotation",
    "viscosity", "dynamic_viscosity", "pressure", "density", "inertia", "frequency", "stiffness", "energy",
    "power", "ratio", "count", "score", "viscous_drag", "quadratic_drag", "deceleration", "line_per_turn",
    "conductivity", "specific_heat", "wear_rate", "tex", "twist_stiffness", "acceleration",
    "temperature_step",
}  # fmt: skip


def test_the_list_of_dimensions_is_closed() -> None:
    assert set(DIMENSIONS) == CLOSED_LIST
    with pytest.raises(TypeError):
        DIMENSIONS["luck"] = DIMENSIONS["length"]  # type: ignore[index]


@pytest.mark.parametrize("dimension", EVERY, ids=lambda d: d.key)
def test_its_own_examples_can_be_read(dimension: Dimension) -> None:
    assert all(read(example, dimension.key) is not None for example in dimension.examples)


@pytest.mark.parametrize("dimension", EVERY, ids=lambda d: d.key)
def test_every_spelling_leads_to_one_unit(dimension: Dimension) -> None:
    words = [word for unit in dimension.units for word in (unit.name, *unit.spellings)]
    assert len(words) == len(set(words))
    for unit in dimension.units:
        for word in (unit.name, *unit.spellings):
            assert read_typed(f"1 {word}".strip(), dimension.key).unit == unit.name


@pytest.mark.parametrize("dimension", EVERY, ids=lambda d: d.key)
def test_what_it_is_shown_in_is_in_the_table(dimension: Dimension) -> None:
    for name in (*dimension.metric, *dimension.imperial):
        assert dimension.unit(name).name == name


def test_kilograms_and_pounds_are_masses_or_pulls_by_what_was_asked() -> None:
    assert read("1 kg", "mass") == 1.0
    assert read("1 kg", "force") == 9.80665


def test_milli_and_mega_are_never_mixed_up() -> None:
    assert read("1 MPa", "pressure") == 1e6
    with pytest.raises(ValueError, match="not known here"):
        read("1 mPa", "pressure")
