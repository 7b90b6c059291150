"""The pier reel of the demo workshop: its figures are invented, and recomputed by hand in the comments.

What was measured after the work must lie where it had been predicted before: an acceptance test of the
whole chain.
"""

from fractions import Fraction

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement import money
from spoolwright.judgement.cap import may_be_issued
from spoolwright.judgement.earned import earned, hourly_cost
from spoolwright.judgement.findings import Finding
from spoolwright.judgement.prediction import predict
from spoolwright.judgement.price import Charge, price
from spoolwright.judgement.proof import Promise, decide
from spoolwright.judgement.quote_options import three_options
from spoolwright.judgement.shop_rates import starting_rates
from spoolwright.judgement.star_turns import star_turn_for
from spoolwright.judgement.taken import Taken
from spoolwright.quantities import read
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")
KG = read("1 kg", "force")
RADIUS = {"radius": 0.0235, "line": "on"}
AS_FOUND = {
    "start_up_ratio": Taken("start_up_ratio", Measured(1.50, 0.03, "ratio"), RADIUS),
    "pull_run": Taken("pull_run", Measured(2.6 * KG, 0.05 * KG, "force"), {**RADIUS, "star_turns": 2.5}),
    "pull_full": Taken("pull_full", Measured(5.8 * KG, 0.1 * KG, "force"), RADIUS),
    "end_float": Taken("end_float", Measured(0.42e-3, 0.01e-3, "length")),
    "spin_time": Taken("spin_time", Measured(11.0, 0.5, "time"), {"line": "off", "brakes": "off"}),
}
PAWL = Finding("level-wind pawl", "F15", "pawl tip worn, catches at the right end")


def improve():
    return three_options(SHEET, AS_FOUND, [PAWL], starting_rates())[1]


def test_torque_is_pull_times_radius() -> None:
    # By hand: 2.6 kg x 9.80665 N/kg x 23.5 mm = 0.5992 N m; 6.9 kg gives 1.590 N m.
    assert 2.6 * KG * RADIUS["radius"] == pytest.approx(0.599, abs=0.0005)
    assert 6.9 * KG * RADIUS["radius"] == pytest.approx(1.590, abs=0.0005)


def test_the_sheet_says_what_the_bench_found() -> None:
    # Invented: 5.8 kg at a full spool on its own discs.
    pull = predict(SHEET, {}).values["pull_full_spool"]
    assert pull.low < 5.8 * KG < pull.high
    assert float(pull.conditions["radius"]) == pytest.approx(0.0235)


def test_the_estimate_that_was_sent() -> None:
    # Invented: 520 + pawl 95 + two spool bearings 170 + carbon set 190 + post 129 = 1,104 kr; planned 68
    # minutes.
    option = improve()
    assert option.total_minor == 110400
    assert option.minutes == 68
    assert sorted(line.gross_minor for line in option.lines) == [9500, 12900, 17000, 19000, 52000]


@pytest.mark.parametrize(
    ("kind", "measured"),
    [
        # Invented, after the work: 6.9 kg full; 2.9 over 2.7 = 1.07; spin 31 s; float 0.09 mm.
        ("pull_full_spool", 6.9 * KG),
        ("start_up_ratio", 2.9 / 2.7),
        ("spin_time", 31.0),
        ("end_float", 0.09e-3),
    ],
)
def test_what_was_measured_after_lies_where_it_was_predicted(kind: str, measured: float) -> None:
    predicted = improve().predicted[kind]
    assert predicted.low <= measured <= predicted.high


def test_one_of_the_five_star_turns_gives_the_pull_that_was_asked() -> None:
    # Invented: after the work the half setting runs at 2.7 kg; the star has five turns.
    advice = star_turn_for(improve().prediction, 2.7 * KG)
    assert advice.turns is not None
    assert 0 < advice.turns < 5
    assert advice.low <= 2.5 <= advice.high


def test_the_proof_shows_the_start_up_promise() -> None:
    # Invented: promised within 1.15 (release gate of the trade, judgement prior), measured 1.07 with u 0.02.
    assert decide(Promise(None, 1.15, "ratio"), Measured(1.07, 0.02, "ratio")).kind == "shown"


def scenario(*extra: Charge):
    charges = [
        Charge("tier", "Common tune", 52000),
        Charge("part", "Pawl", 9500),
        Charge("part", "Spool bearing", 8500, quantity=Fraction(2)),
        Charge("part", "Carbon disc set", 19000),
        Charge("post", "Post", 12900),
        *extra,
    ]
    return price(charges, starting_rates(), deposit_minor=20000)


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
    assert may_be_issued(116900, starting_rates(), quoted_minor=110400, cap_minor=120000).allowed
    assert not may_be_issued(130000, starting_rates(), quoted_minor=110400, cap_minor=120000).allowed


def test_the_customary_tune_does_not_carry_two_wages() -> None:
    # Demo workshop, invented sums: 980,000 over 46 weeks x 75 h x 62 % = 458 an hour; 416 ex tax is less than
    # the 473 of 62 minutes; at the demand that is there 573 an hour and 592 for the job.
    rate = hourly_cost(98_000_000, Fraction(46 * 75), Fraction("0.62"))
    assert round(rate / 100) == 458
    needed = hourly_cost(98_000_000, Fraction(36 * 46 * 62, 60))
    assert round(needed / 100) == 573
    tune = price([Charge("tier", "Common tune", 52000)], starting_rates())
    assert tune.net_minor == 41600
    for an_hour, the_job in ((rate, 473), (needed, 592)):
        told = earned(tune, 62, money.half_up(an_hour), starting_rates())
        assert round((told.left_minor + told.short_minor) / 100) == the_job
        assert told.short_minor > 0
