"""What an argument must be, and the words in which it is refused."""

from __future__ import annotations

import math

import numpy as np
import pytest

from spoolwright.mechanics import arguments


@pytest.mark.parametrize("bad", [0.0, -1.0, math.nan, math.inf, -math.inf])
def test_positive_refuses_what_is_not_above_zero_and_finite(bad: float) -> None:
    with pytest.raises(ValueError, match="clamp_force must be above zero and finite; came"):
        arguments.positive(clamp_force=bad)


@pytest.mark.parametrize("bad", [-1e-300, math.nan, math.inf])
def test_not_negative_lets_zero_through_and_nothing_below(bad: float) -> None:
    arguments.not_negative(load=0.0)
    with pytest.raises(ValueError, match="load must be zero or more and finite; came"):
        arguments.not_negative(load=bad)


def test_an_array_is_refused_by_its_first_bad_element() -> None:
    with pytest.raises(ValueError, match=r"radius must be above zero and finite; came -2 at element 1, 0"):
        arguments.positive(radius=np.array([[1.0, 2.0], [-2.0, 3.0]]))


def test_every_named_value_is_looked_at() -> None:
    with pytest.raises(ValueError, match="second must be"):
        arguments.positive(first=1.0, second=-1.0)


@pytest.mark.parametrize("bad", ["3", None, [1.0, 2.0], 1 + 2j])
def test_what_is_not_a_number_is_called_so(bad: object) -> None:
    with pytest.raises(ValueError, match="torque must be a number or an array of numbers; came"):
        arguments.positive(torque=bad)  # type: ignore[arg-type]


def test_whole_numbers() -> None:
    arguments.whole(1, faces=np.array([1, 2, 3]))
    arguments.whole(1, faces=4.0)
    for bad in (0, 1.5, -2, math.nan):
        with pytest.raises(ValueError, match="faces must be a whole number of 1 or more"):
            arguments.whole(1, faces=bad)


def test_ranges_with_their_ends() -> None:
    arguments.between(0.0, 0.5, poisson=0.5)
    arguments.above_up_to(0.0, 1.0, packing=1.0)
    arguments.from_up_to_below(0.0, 1.0, angle=0.0)
    with pytest.raises(ValueError, match=r"poisson must be between 0 and 0.5; came 0.6"):
        arguments.between(0.0, 0.5, poisson=0.6)
    with pytest.raises(ValueError, match="packing must be above 0 and at most 1; came 0"):
        arguments.above_up_to(0.0, 1.0, packing=0.0)
    with pytest.raises(ValueError, match="angle must be 0 or more and below 1; came 1"):
        arguments.from_up_to_below(0.0, 1.0, angle=1.0)


def test_from_a_value_up() -> None:
    arguments.from_up(0.1, kappa=0.1)
    with pytest.raises(ValueError, match="kappa must be 0.1 or more and finite; came nan"):
        arguments.from_up(0.1, kappa=math.nan)


def test_two_values_against_each_other_name_both() -> None:
    with pytest.raises(ValueError, match=r"inner must be less than outer; came 3 with outer 2 at element 1"):
        arguments.less("inner", np.array([1.0, 3.0]), "outer", 2.0)
    with pytest.raises(ValueError, match="fill must be arbor or more; came 1 with arbor 2"):
        arguments.at_least("fill", 1.0, "arbor", 2.0)
    with pytest.raises(ValueError, match="press must be at most cone; came nan with cone 2"):
        arguments.at_most("press", math.nan, "cone", 2.0)


def test_a_limit_reached_by_arithmetic_counts_as_reached() -> None:
    arguments.at_most("press", 0.1 + 0.2, "cone", 0.3)


def test_infinity_only_where_it_means_something() -> None:
    arguments.positive_or_infinite(radius=math.inf)
    with pytest.raises(ValueError, match="radius must be above zero"):
        arguments.positive_or_infinite(radius=math.nan)
    with pytest.raises(ValueError, match="speed must be a finite number"):
        arguments.finite(speed=math.inf)


def test_words_are_held_to_their_list() -> None:
    with pytest.raises(ValueError, match='model must be "a" or "b"; came \'c\''):
        arguments.one_of(("a", "b"), model="c")


def test_plain_gives_a_python_float_or_the_array() -> None:
    assert type(arguments.plain(np.float64(2.0))) is float
    assert type(arguments.plain(np.array(2.0))) is float
    assert isinstance(arguments.plain(np.array([2.0])), np.ndarray)
