"""Whatever is charged, the lines add back to the total to the last minor unit."""

from dataclasses import replace
from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from spoolwright.judgement import money
from spoolwright.judgement.cap import may_be_issued
from spoolwright.judgement.price import Charge, part_price, price
from spoolwright.judgement.shop_rates import starting_rates

amounts = st.integers(-10_000_000, 10_000_000)
charges = st.lists(
    st.builds(
        Charge,
        kind=st.just("other"),
        title=st.just("Anything"),
        unit_minor=amounts,
        quantity=st.fractions(0, 50, max_denominator=12),
    ),
    max_size=12,
)
rates = st.builds(
    lambda rate, included, basis: replace(
        starting_rates(), tax_rate=rate, prices_include_tax=included, tax_basis=basis
    ),
    st.fractions(0, Fraction(99, 100), max_denominator=400),
    st.booleans(),
    st.sampled_from(["document", "line"]),
)


@given(charges, rates)
def test_lines_add_back_without_a_residue(charged, rate) -> None:
    priced = price(charged, rate)
    assert sum(line.net_minor for line in priced.lines) == priced.net_minor
    assert sum(line.tax_minor for line in priced.lines) == priced.tax_minor
    assert sum(line.gross_minor for line in priced.lines) == priced.total_minor
    assert priced.net_minor + priced.tax_minor == priced.total_minor


@given(charges, rates)
def test_document_tax_is_within_half_a_unit_of_the_exact_one(charged, rate) -> None:
    priced = price(charged, replace(rate, tax_basis="document"))
    assert abs(priced.tax_minor - priced.net_minor * rate.tax_rate) <= 1


@given(charges, rates)
def test_a_credit_mirrors_its_bill(charged, rate) -> None:
    back = [replace(charge, unit_minor=-charge.unit_minor) for charge in charged]
    assert price(back, rate).total_minor == -price(charged, rate).total_minor


@given(charges, st.integers(0, 100_000), rates)
def test_one_more_charge_never_makes_it_cheaper(charged, more, rate) -> None:
    dearer = price([*charged, Charge("part", "One more", more)], rate)
    assert dearer.total_minor >= price(charged, rate).total_minor


@given(st.integers(0, 1_000_000), rates)
def test_a_part_is_never_sold_below_its_cost(cost, rate) -> None:
    assert part_price(cost, rate) >= cost


@given(st.integers(-(10**9), 10**9), st.lists(st.integers(-(10**6), 10**6), min_size=1, max_size=20))
def test_shares_add_back(total, weights) -> None:
    assert sum(money.shared_out(total, weights)) == total


@given(st.integers(0, 10**7), st.integers(0, 10**7), st.none() | st.integers(0, 10**7))
def test_nothing_is_issued_above_its_limit(total, quoted, cap) -> None:
    ruling = may_be_issued(total, starting_rates(), quoted_minor=quoted, cap_minor=cap)
    assert ruling.allowed == (total <= ruling.limit_minor)
    assert ruling.allowed or ruling.over_by_minor > 0
