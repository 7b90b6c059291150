"""What is said beside an option."""

from __future__ import annotations

from dataclasses import replace

from spoolwright.judgement.findings import Finding
from spoolwright.judgement.job_price import Before, price_of
from spoolwright.judgement.option_words import beside_the_trade, left_undone, rests_on, warnings
from spoolwright.judgement.option_works import Way, three_ways
from spoolwright.judgement.quote_case import Around, open_case
from spoolwright.judgement.shop_rates import starting_rates
from spoolwright.judgement.works import chosen
from spoolwright.sheets import reel_sheet

RATES = starting_rates()
KIND = "round multiplier"
SHEET = reel_sheet.load("tarvak-58r")


def test_what_the_wider_option_would_do_is_named_and_of_the_strip_only_its_first_step() -> None:
    case = open_case(
        None, {}, [Finding("frame", "F31", "crack at the foot")], RATES, around=Around(kind=KIND)
    )
    said = left_undone(case, three_ways(case)[0])
    assert said[0] == "Not answered: crack at the foot."
    assert "Not in this: strip to the last part and wash." in said
    assert not any("lubricate every point" in words for words in said)


def test_what_was_agreed_before_counts_as_answered() -> None:
    around = Around(kind=KIND, before=Before("common", ("new-pawl",)))
    found = [Finding("pawl", "F15"), Finding("idler cog", "F16")]
    case = open_case(None, {}, found, RATES, around=around)
    assert left_undone(case, Way("extra", chosen(["new-idler-cog"], KIND))) == ()


def test_a_dry_stack_chosen_by_hand_is_warned_of() -> None:
    case = open_case(reel_sheet.load("tarvak-52"), {}, [], RATES, samples=300)
    works = chosen(["carbon-drag-set-dry", "under-gear-disc"], KIND)
    said = warnings(case, Way("most", works), price_of(works, KIND, RATES), case.predict(works))
    assert any("no further than" in words for words in said)


def test_each_reason_is_given_once() -> None:
    case = open_case(SHEET, {}, [], RATES, samples=200)
    reasons = rests_on(case.predict([]))
    assert any(why.startswith("start-up ratio from ") for why in reasons)
    assert len(reasons) == len(set(reasons))


def test_the_measure_is_the_tier_that_the_works_come_nearest_to() -> None:
    """A common tune with one small work of a full one is still a common tune."""
    case = open_case(None, {}, [], RATES, around=Around(kind=KIND))
    base = ["strip-and-wash", "regrease-gears", "set-and-prove"]
    small = chosen([*base, "dress-drag", "new-idler-cog", "knob-bearings"], KIND)
    assert "50 USD for a common tune" in beside_the_trade(case, small, price_of(small, KIND, RATES))
    large = chosen([*base, "carbon-drag-set", "polish-spool-shaft", "new-end-discs", "run-in"], KIND)
    assert "up to about 110 USD for a full tune" in beside_the_trade(
        case, large, price_of(large, KIND, RATES)
    )


def test_an_extra_is_measured_against_nothing() -> None:
    case = open_case(None, {}, [], RATES, around=Around(kind=KIND))
    cog = chosen(["new-idler-cog"], KIND)
    assert beside_the_trade(case, cog, price_of(cog, KIND, RATES, before=Before("common"))) == ""


def test_an_extra_is_weighed_against_the_used_price_with_all_that_was_agreed_before() -> None:
    # Trade handbook, scenario 3 (invented sums): 1,120 agreed and 350 more are 1,470, 77 % of 1,900.
    around = Around(
        kind="low-profile multiplier", used_price_minor=1900_00, before=Before("common", (), 1120_00)
    )
    case = open_case(None, {}, [], RATES, around=around)
    works = [replace(chosen(["free-seized-bearing"], around.kind)[0], minutes_open={"all": 35})]
    job = price_of(works, around.kind, RATES, before=Before("common", ("strip-and-wash",), 1120_00))
    said = warnings(case, Way("extra", tuple(works)), job, None)
    assert said == (
        "With what was agreed before this comes to 1,470.00 kr, 77% of the 1,900.00 kr that the reel would "
        "fetch used. That is more than such a repair is usually worth.",
    )


def test_an_extra_does_not_warn_again_of_what_was_agreed_before() -> None:
    around = Around(before=Before("common", ("strip-and-wash", "carbon-drag-set")))
    case = open_case(SHEET, {}, [], RATES, around=around, samples=200)
    pressed = []
    for name in ("new-idler-cog", "under-gear-disc"):
        works = chosen([name], KIND)
        said = warnings(case, Way("extra", works), price_of(works, KIND, RATES), case.predict(works))
        pressed.append(any("is pressed with" in words for words in said))
    assert pressed == [False, True]
