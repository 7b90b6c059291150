"""Money rules against published figures."""

from dataclasses import replace
from fractions import Fraction

import pytest

from spoolwright.judgement import money
from spoolwright.judgement.earned import hourly_cost, working_hours
from spoolwright.judgement.price import Charge, part_price, price
from spoolwright.judgement.shop_rates import starting_rates

RATES = starting_rates()


# --- rate of an hour ------------------------------------------------------------------------------


def test_paid_hours_of_a_year() -> None:
    # Professional-practice note on charge-out rates, opened: 1657.5 h.
    assert working_hours([104, 20, 10, 10], Fraction("7.5")) == Fraction("1657.5")


def test_pay_cost_of_an_hour() -> None:
    # Same note, opened: 48.25 printed, cut off; tolerance 0.02 covers the source's cut.
    assert float(hourly_cost(80_000, Fraction("1657.5"))) == pytest.approx(48.25, abs=0.02)


def test_chargeable_hours_of_a_year() -> None:
    # Accountancy firm's article, opened: 7.5 h x (260 - 30) days x 0.90, printed as 1,553 h.
    assert float(working_hours([30], Fraction("7.5"), days=260) * Fraction("0.9")) == pytest.approx(
        1553, abs=0.6
    )


def test_salary_rate() -> None:
    # Same article, opened: 32,977 over 1,200 chargeable hours, 27.48.
    assert float(hourly_cost(32_977, Fraction(1200))) == pytest.approx(27.48, abs=0.005)


# --- prices ---------------------------------------------------------------------------------------


def test_a_mark_up_of_a_quarter_is_a_margin_of_a_fifth() -> None:
    # University accounting notes, opened: cost 100, price 125.
    rates = replace(RATES, prices_include_tax=False, parts_margin=Fraction(1, 5))
    assert part_price(10000, rates) == 12500


def test_price_from_margin_is_not_cost_times_one_plus_margin() -> None:
    # Identity: cost 100 at a margin of 25 % sells at 133.33.
    rates = replace(RATES, prices_include_tax=False, parts_margin=Fraction(1, 4))
    assert part_price(10000, rates) == 13333


def test_mark_up_on_cost() -> None:
    # Managerial economics, ch. 12, opened: cost 2.30 marked up 30 % is 2.99; margin 3/13 says the same.
    rates = replace(RATES, prices_include_tax=False, parts_margin=Fraction(3, 13))
    assert part_price(230, rates) == 299


# --- tax ------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("basis", "tax"), [("line", 21), ("document", 20)])
def test_three_small_lines_show_where_tax_is_rounded(basis: str, tax: int) -> None:
    # Identity: 3 lines of 0.33 at 20 %: 0.21 by line, 0.20 by document.
    rates = replace(RATES, prices_include_tax=False, tax_rate=Fraction(1, 5), tax_basis=basis)
    priced = price([Charge("other", "Small", 33)] * 3, rates)
    assert priced.tax_minor == tax
    assert priced.total_minor == 99 + tax


def test_document_totals_follow_the_order_of_en_16931() -> None:
    # EN 16931 BR-CO-10, -17, opened: sum of line nets, tax = base x rate to 2 decimals, exact totals.
    rates = replace(RATES, prices_include_tax=False, tax_rate=Fraction(1, 5))
    priced = price([Charge("other", "Small", amount) for amount in (33, 1999, 7)], rates)
    assert priced.net_minor == sum(line.net_minor for line in priced.lines) == 2039
    assert abs(priced.tax_minor - Fraction(2039, 5)) <= 1
    assert priced.net_minor + priced.tax_minor == priced.total_minor


def test_half_up_where_a_float_would_go_down() -> None:
    # Python documentation's note on round(), from memory: round(2.675, 2) is 2.67; half up is 2.68.
    # Half-even (IEEE 754, from memory) would leave 2.5 at 2.
    assert money.half_up(Fraction("267.5")) == 268
    assert money.half_up(Fraction("2.5")) == 3
