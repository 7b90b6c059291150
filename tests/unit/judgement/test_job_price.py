"""The cheapest tier that carries the works, with what stands outside it."""

from dataclasses import replace
from fractions import Fraction

import pytest

from spoolwright.judgement.job_price import Before, part_selling, price_of
from spoolwright.judgement.price import Charge
from spoolwright.judgement.shop_rates import starting_rates
from spoolwright.judgement.works import chosen

RATES = starting_rates()
KIND = "round multiplier"
TUNE = ["strip-and-wash", "regrease-gears", "set-and-prove"]


def job(*names: str, posted: bool = True, rates=RATES):
    return price_of(chosen(list(names), KIND), KIND, rates, posted=posted)


def test_a_tune_is_its_tier_and_the_post() -> None:
    told = job(*TUNE)
    assert (told.tier, told.minutes, told.priced.total_minor) == ("common", 55, 52000 + 12900)


@pytest.mark.parametrize(
    ("kind", "minutes"),
    [(KIND, 55), ("low-profile multiplier", 60), ("lever drag", 80), ("fixed spool", 65), ("fly", 30)],
)
def test_the_steps_of_a_tune_add_up_to_its_tier(kind: str, minutes: int) -> None:
    # Minutes of a common tune by kind of reel: judgement prior of the trade.
    assert price_of(chosen(TUNE, kind), kind, RATES).minutes == minutes
    assert RATES.tier("common").minutes[kind] == minutes


def test_parts_inside_the_tier_cost_no_labour() -> None:
    assert job(*TUNE, "new-pawl").priced.total_minor - job(*TUNE).priced.total_minor == 9500


def test_work_outside_every_tier_is_charged_by_the_minute() -> None:
    told = job(*TUNE, "free-seized-bearing")
    assert told.priced.total_minor - job(*TUNE).priced.total_minor == 42000


def test_a_work_alone_takes_longer_than_in_an_open_reel() -> None:
    assert job("respool-line").minutes == 15
    assert job("new-pawl").minutes > job(*TUNE, "new-pawl").minutes - job(*TUNE).minutes


def test_a_full_tune_is_taken_where_it_is_the_cheaper() -> None:
    dear = replace(RATES, hourly_minor=6 * RATES.hourly_minor)
    most = [
        *TUNE,
        "flat-lap-drag-metals",
        "polish-spool-shaft",
        "new-end-discs",
        "run-in",
        "brake-blocks-set",
    ]
    assert job(*most, rates=dear).tier == "full"
    assert job(*most).tier == "common"


def test_a_part_off_the_price_list_makes_a_range() -> None:
    told = job(*TUNE, "hybrid-spool-bearings")
    assert told.low_minor < told.priced.total_minor < told.high_minor
    assert job(*TUNE, "new-pawl").low_minor == job(*TUNE, "new-pawl").high_minor


def test_a_part_only_if_needed_is_told_and_not_charged() -> None:
    told = job(*TUNE, "set-end-float")
    assert told.priced.total_minor == job(*TUNE).priced.total_minor
    assert "only if needed" in told.only_if[0]


def test_each_line_says_how_sure_it_is() -> None:
    told = job(*TUNE, "new-pawl", "free-seized-bearing")
    assert len(told.sureness) == len(told.priced.lines)


def test_post_and_consumables_follow_the_shop() -> None:
    assert job(*TUNE, posted=False).priced.total_minor == 52000
    used = replace(RATES, consumables_minor=2500)
    assert job(*TUNE, rates=used).priced.total_minor == job(*TUNE).priced.total_minor + 2500


def test_no_work_is_no_tier() -> None:
    assert job().tier == ""


def test_a_line_added_by_hand_stands_after_the_parts_and_before_the_post() -> None:
    told = price_of(
        chosen([*TUNE, "new-pawl"], KIND), KIND, RATES, more=[Charge("other", "Line, 200 m", 18000)]
    )
    assert [line.kind for line in told.priced.lines] == ["tier", "part", "other", "post"]
    assert told.priced.total_minor == 52000 + 9500 + 18000 + 12900
    assert len(told.sureness) == 4


def test_an_extra_inside_a_tier_that_is_paid_for_costs_its_part() -> None:
    """Trade handbook, chapter 9, scenario 1: the idler cog is 65 kr more, and nothing else is."""
    before = Before("common", tuple(TUNE))
    used = replace(RATES, consumables_minor=2500)
    told = price_of(chosen(["new-idler-cog"], KIND), KIND, used, before=before)
    assert [(line.kind, line.gross_minor) for line in told.priced.lines] == [("part", 6500)]
    assert told.minutes == chosen(["new-idler-cog"], KIND)[0].minutes(KIND, reel_is_open=True)


def test_an_extra_outside_the_tier_is_charged_by_the_minutes_of_a_stripped_reel() -> None:
    told = price_of(chosen(["run-in"], KIND), KIND, RATES, before=Before("common", tuple(TUNE)))
    assert [(line.kind, line.gross_minor) for line in told.priced.lines] == [("labour", 8000)]


def test_a_small_work_alone_is_charged_by_its_minutes_where_that_is_the_cheaper() -> None:
    told = job("new-pawl", posted=False)
    alone = chosen(["new-pawl"], KIND)[0].minutes(KIND, reel_is_open=False)
    assert told.priced.total_minor == 9500 + alone * RATES.hourly_minor // 60 < 52000
    assert told.tier == ""


def test_an_extra_to_a_job_by_the_hour_brings_no_tier_and_no_post() -> None:
    before = Before("", ("free-seized-bearing",))
    told = price_of(chosen(["new-pawl"], KIND), KIND, RATES, before=before)
    assert [line.kind for line in told.priced.lines] == ["labour", "part"]


def test_a_part_is_sold_by_the_shops_list_else_from_what_it_usually_costs() -> None:
    (hybrid,) = chosen(["hybrid-spool-bearings"], KIND)[0].parts
    assert part_selling(hybrid, RATES, Fraction(0)) < part_selling(hybrid, RATES) == 28125
    listed = replace(RATES, own_prices={hybrid.name: 30000})
    assert part_selling(hybrid, listed) == 30000
