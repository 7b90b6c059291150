"""A typed input: scatter of its tries, step of its last digit, what else is said of it."""

import pytest

from spoolwright.bench import typed_quantity
from spoolwright.bench.unreadable import Unreadable
from spoolwright.quantities import NotAQuantity


def test_one_value_has_the_step_of_its_last_digit() -> None:
    one = typed_quantity.read("mass", "12.0 g", "mass")
    assert one.measured.value == pytest.approx(0.012)
    assert one.measured.uncertainty == pytest.approx(1e-4 / 12**0.5)


def test_a_nought_at_the_end_counts() -> None:
    coarse, fine = (
        typed_quantity.read("m", text, "mass").measured.uncertainty for text in ("12 g", "12.0 g")
    )
    assert coarse == pytest.approx(10 * fine)


def test_tries_scatter_and_what_else_is_known_joins_them() -> None:
    """JCGM 100:2008, 4.2.3 and table G.2, from memory: s over root n; t(2) at 95.45 % is 4.53."""
    three = typed_quantity.read("time", "1.0 s; 1.2 s; 1.4 s", "time", also=("thumb", 0.1))
    assert [way for _, way, _ in three.parts] == ["A", "B", "B"]
    assert three.parts[0][2] == pytest.approx(2.264 * 0.2 / 3**0.5, rel=1e-3)
    assert three.measured.uncertainty == pytest.approx(
        (2.264**2 * 0.04 / 3 + 0.01 / 12 + 0.01) ** 0.5, rel=1e-3
    )


@pytest.mark.parametrize("text", ["", " ; ", "0 g", "-3 g", "; ".join(["1 g"] * 21)])
def test_what_is_no_input_is_refused(text: str) -> None:
    with pytest.raises(Unreadable, match="Accepted"):
        typed_quantity.read("mass", text, "mass")


def test_a_missing_unit_is_refused() -> None:
    with pytest.raises(NotAQuantity, match="Accepted"):
        typed_quantity.read("mass", "12", "mass")
