"""Money rounds one way and adds back."""

from fractions import Fraction

import pytest

from spoolwright.judgement import money


def test_halves_go_up_and_a_credit_mirrors_its_bill() -> None:
    assert [money.half_up(Fraction(n, 2)) for n in (1, 3, 5)] == [1, 2, 3]
    assert money.half_up(Fraction(-5, 2)) == -3


def test_the_odd_unit_goes_to_the_largest_remainder_first_line_first() -> None:
    assert money.shared_out(20, [33, 33, 33]) == (7, 7, 6)
    assert money.shared_out(-20, [33, 33, 33]) == (-7, -7, -6)


def test_a_discount_line_takes_its_share_of_the_tax_away() -> None:
    shares = money.shared_out(80, [500, -100])
    assert sum(shares) == 80
    assert shares[1] < 0


def test_nothing_to_share_is_nothing() -> None:
    assert money.shared_out(0, []) == ()
    assert money.shared_out(3, [0, 0]) == (2, 1)


def test_an_amount_without_a_line_is_refused() -> None:
    with pytest.raises(ValueError, match="at least one line"):
        money.shared_out(5, [])


@pytest.mark.parametrize(
    ("minor", "mark", "per", "said"),
    [(116900, "kr", 100, "1,169.00 kr"), (-5, "kr", 100, "-0.05 kr"), (1234, "JPY", 1, "1,234 JPY")],
)
def test_money_is_shown_with_its_decimals(minor: int, mark: str, per: int, said: str) -> None:
    assert money.show(minor, mark, per) == said
