"""Money as typed at the counter. ISO 4217: NOK two decimals, JPY none (from memory)."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spoolwright.pages.words import money


@pytest.mark.parametrize(
    ("typed", "minor"),
    [
        ("1,200 kr", 120_000),
        ("1200", 120_000),
        ("1 200,50 NOK", 120_050),
        ("1,269.60 kr", 126_960),
        ("kr 95", 9_500),
        ("95.5", 9_550),
        ("0", 0),
    ],
)
def test_what_a_person_types_is_read(typed: str, minor: int) -> None:
    assert money.read(typed, "kr", "NOK", 2) == minor


@pytest.mark.parametrize(
    "typed", ["", "about 100", "-5 kr", "12,34,5", "1.234 kr", "12 USD", "9" * 30, "1e5", "٣"]
)
def test_what_is_not_an_amount_is_refused_with_what_is_accepted(typed: str) -> None:
    with pytest.raises(money.NotAnAmount, match="Accepted: 1,200 kr"):
        money.read(typed, "kr", "NOK", 2)


def test_a_currency_without_decimals_takes_none() -> None:
    assert money.read("1,200", "¥", "JPY", 0) == 1200
    with pytest.raises(money.NotAnAmount, match="more decimals"):
        money.read("1200.5", "¥", "JPY", 0)


def test_a_sum_not_known_is_a_dash() -> None:
    assert money.show(None, "kr", 2) == "–"


@given(st.integers(0, 10**11), st.integers(0, 3))
def test_what_is_shown_can_be_typed_again(minor: int, digits: int) -> None:
    assert money.read(money.show(minor, "kr", digits), "kr", "NOK", digits) == minor
