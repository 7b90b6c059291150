"""Money rules against published figures, and the invented sums of the demo pier reel."""

from dataclasses import replace
from fractions import Fraction

import pytest

from spoolwright.judgement import money
from spoolwright.judgement.cap import may_be_issued
from spoolwright.judgement.earned import earned, hourly_cost, working_hours
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


# --- the demo pier reel: invented sums, recomputed by hand ---


def scenario(*extra: Charge):
    charges = [
        Charge("tier", "Common tune", 52000),
        Charge("part", "Pawl", 9500),
        Charge("part", "Spool bearing", 8500, quantity=Fraction(2)),
        Charge("part", "Carbon disc set", 19000),
        Charge("post", "Post", 12900),
        *extra,
    ]
    return price(charges, RATES, deposit_minor=20000)


def test_the_estimate_and_its_legal_ceiling() -> None:
    # Demo pier reel, invented sums: 520 + 95 + 170 + 190 + 129 = 1,104; plus 15 % = 1,269.60.
    assert scenario().total_minor == 110400
    assert scenario().ceiling_minor == 126960


def test_the_bill_with_the_split_cog() -> None:
    # Demo pier reel, invented sums: + 65 = 1,169.00, of which tax 233.80; deposit 200, due 969.00.
    bill = scenario(Charge("part", "Idler cog", 6500))
    assert (bill.total_minor, bill.tax_minor, bill.due_minor) == (116900, 23380, 96900)
    assert sum(line.tax_minor for line in bill.lines) == 23380
    assert sum(line.net_minor for line in bill.lines) == 116900 - 23380


def test_the_cap_lets_the_bill_through_and_refuses_1300() -> None:
    # Demo pier reel, invented sums: "yes, up to 1,200"; must refuse a 1,300 invoice.
    assert may_be_issued(116900, RATES, quoted_minor=110400, cap_minor=120000).allowed
    assert not may_be_issued(130000, RATES, quoted_minor=110400, cap_minor=120000).allowed


def test_the_customary_tune_does_not_carry_two_wages() -> None:
    # Demo workshop, invented sums: 980,000 over 46 weeks x 75 h x 62 % = 458 an hour; 416 ex tax is less than
    # the 473 of 62 minutes; at the demand that is there 573 an hour and 592 for the job.
    rate = hourly_cost(98_000_000, Fraction(46 * 75), Fraction("0.62"))
    assert round(rate / 100) == 458
    needed = hourly_cost(98_000_000, Fraction(36 * 46 * 62, 60))
    assert round(needed / 100) == 573
    tune = price([Charge("tier", "Common tune", 52000)], RATES)
    assert tune.net_minor == 41600
    for an_hour, the_job in ((rate, 473), (needed, 592)):
        told = earned(tune, 62, money.half_up(an_hour), RATES)
        assert round((told.left_minor + told.short_minor) / 100) == the_job
        assert told.short_minor > 0
