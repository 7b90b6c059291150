"""The table of methods: known dimensions, examples that can be read, cautions where work can hurt."""

import pytest

from spoolwright.quantities import read_typed
from spoolwright.sheets import inertia_methods
from spoolwright.sheets.inertia_methods import Method


@pytest.mark.parametrize("method", inertia_methods.methods().values(), ids=lambda m: m.id)
def test_each_asks_for_what_can_be_typed(method: Method) -> None:
    assert len({one.key for one in method.asks}) == len(method.asks)
    for one in method.asks:
        assert all(read_typed(part, one.dimension).value > 0 for part in one.example.split(";"))
    assert method.says.endswith(".")
    assert "  " not in method.says


def test_falls_and_spinning_rings_carry_their_caution() -> None:
    careful = {key for key, method in inertia_methods.methods().items() if method.caution}
    assert careful == {"fall", "ring-fall", "ring-coast"}


def test_an_unknown_one_lists_the_others() -> None:
    with pytest.raises(KeyError, match="ring-coast"):
        inertia_methods.method("rolling")
