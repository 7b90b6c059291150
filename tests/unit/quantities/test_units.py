"""What a unit and a dimension know about themselves."""

from fractions import Fraction

import pytest

from spoolwright.quantities.units import Dimension, Unit, tidy_unit

CUBIT = Dimension(
    "arm", "an arm", "m", (Unit("cubit", Fraction(1, 2), ("Cubits",), any_case=True), Unit("m", Fraction(1))),
    ("m",), ("cubit",), ("2 cubit",),
)  # fmt: skip


@pytest.mark.parametrize("word", ["mm²/s", "mm^2/s", "mm2/s", " mm2/s "])
def test_powers_are_one_word_however_they_are_written(word: str) -> None:
    assert tidy_unit(word) == "mm2/s"


@pytest.mark.parametrize("word", ["N m", "N·m", "N⋅m", "N*m", "N  m", "N · m"])
def test_products_are_one_word_however_they_are_written(word: str) -> None:
    assert tidy_unit(word) == "N m"


def test_a_mark_that_stands_alone_is_not_forgotten() -> None:
    assert tidy_unit("^ m") == "^ m"
    assert tidy_unit("* m") == "* m"


def test_both_micro_signs_are_the_same() -> None:
    assert tidy_unit("\u00b5m") == tidy_unit("\u03bcm")


def test_si_is_factor_times_number_plus_offset() -> None:
    assert (
        Unit("°F", Fraction(5, 9), offset=Fraction("459.67") * Fraction(5, 9)).to_si(Fraction(32)) == 273.15
    )


def test_a_unit_is_found_by_any_spelling_and_a_strange_one_is_named() -> None:
    assert CUBIT.unit("CUBIT").name == "cubit"
    assert CUBIT.unit("Cubits").name == "cubit"
    with pytest.raises(KeyError, match="M.* is not a unit of arm"):
        CUBIT.unit("M")


def test_what_is_accepted_is_a_sentence_part_with_examples_and_units() -> None:
    assert CUBIT.accepted == 'an arm such as "2 cubit" (units: cubit, m)'
