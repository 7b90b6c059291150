"""Three ways to go on with a reel."""

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.findings import Finding
from spoolwright.judgement.load_ladder import load_ladder
from spoolwright.judgement.option_works import Way
from spoolwright.judgement.price import Charge
from spoolwright.judgement.quote_case import open_case
from spoolwright.judgement.quote_options import Around, Changes, offer, three_options
from spoolwright.judgement.shop_rates import starting_rates
from spoolwright.judgement.taken import Taken
from spoolwright.judgement.works import chosen
from spoolwright.sheets import reel_sheet

RATES = starting_rates()
SHEET = reel_sheet.load("tarvak-58r")
JERKS = {"start_up_ratio": Measured(1.5, 0.03, "ratio")}
PAWL = Finding("pawl", "F15")


def ids(option) -> set[str]:
    return {work.id for work in option.works}


@pytest.mark.parametrize("slug", reel_sheet.shipped())
def test_every_shipped_reel_gets_three_whole_options(slug: str) -> None:
    options = three_options(reel_sheet.load(slug), JERKS, [PAWL], RATES, samples=300)
    assert [option.key for option in options] == ["put right", "improve", "most"]
    for option in options:
        assert option.total_minor == sum(line.gross_minor for line in option.lines)
        assert option.minutes == sum(line.minutes for line in option.lines) > 0
        assert option.predicted
        assert option.rests_on
        assert option.cautions
        assert "no source" in option.compared_with_trade
        replaced = {name for work in option.works for name in work.instead_of}
        assert not replaced & ids(option)


def test_a_worn_pawl_is_answered_in_every_option() -> None:
    assert all(
        "new-pawl" in ids(option) for option in three_options(SHEET, JERKS, [PAWL], RATES, samples=300)
    )


def test_improving_puts_better_works_in_the_place_of_plain_ones() -> None:
    put_right, improve, _ = three_options(SHEET, JERKS, [PAWL], RATES, samples=300)
    assert "dress-drag" in ids(put_right)
    assert "carbon-drag-set" in ids(improve)
    assert any("carbon drag set" in words for words in put_right.left_undone)


def test_a_sound_reel_is_not_stripped_to_be_put_right() -> None:
    put_right = three_options(SHEET, {}, [], RATES, samples=300)[0]
    assert ids(put_right) == {"basic-clean"}
    assert "basic" in str(put_right.lines[0].title).lower()


def test_the_most_stops_where_this_house_stops() -> None:
    most = three_options(SHEET, JERKS, [PAWL], RATES, samples=1000)[2]
    assert "under-gear-disc" not in ids(most)
    ladder = load_ladder(SHEET, JERKS, ids(most), samples=1000)
    assert ladder.enough
    assert most.predicted["pull_full_spool"].middle <= ladder.most.middle
    assert any("the teeth of the main gear behind it would hold only" in words for words in most.left_undone)


def test_a_stack_with_a_disc_under_the_gear_is_not_offered_another() -> None:
    assert "under-gear-disc" not in ids(
        three_options(reel_sheet.load("tarvak-54c"), {}, [], RATES, samples=300)[2]
    )


def test_carbon_that_wears_out_is_renewed_with_carbon() -> None:
    weak = {"pull_full": Measured(30.0, 1.0, "force")}
    put_right = three_options(reel_sheet.load("tarvak-54c"), weak, [], RATES, samples=300)[0]
    assert "carbon-drag-set" in ids(put_right)
    felt = three_options(
        reel_sheet.load("tarvak-52"), {"pull_full": Measured(15.0, 1.0, "force")}, [], RATES, samples=300
    )
    assert "new-drag-discs" in ids(felt[0])


def test_only_a_finding_by_hand_brings_what_a_customer_must_ask_for() -> None:
    faint = {"click_pull": Taken("click_pull", Measured(0.7, 0.05, "force"))}
    by_reading = three_options(SHEET, faint, [], RATES, samples=300)[0]
    assert "click-set" not in ids(by_reading)
    assert "Not answered: click weak or silent." in by_reading.left_undone
    by_hand = three_options(SHEET, {}, [Finding("click", "F24")], RATES, samples=300)[0]
    assert "click-set" in ids(by_hand)


def test_what_no_work_answers_is_left_undone_in_words() -> None:
    options = three_options(SHEET, {}, [Finding("frame", "F31", "crack at the foot")], RATES, samples=300)
    assert all("Not answered: crack at the foot." in option.left_undone for option in options)


@pytest.mark.parametrize(
    ("worth", "word"), [(90000, "more than such a repair"), (110000, "Think it over"), (None, "")]
)
def test_a_repair_dear_for_the_reel_is_said(worth: int | None, word: str) -> None:
    option = three_options(SHEET, JERKS, [], RATES, around=Around(used_price_minor=worth), samples=300)[0]
    told = [words for words in option.warnings if "would fetch used" in words]
    assert bool(told) == bool(word)
    assert not told or word in told[0]


def test_a_line_too_strong_is_warned_of() -> None:
    option = three_options(SHEET, {}, [], RATES, around=Around(line_strength=60 * 9.80665), samples=300)[0]
    assert any("Nothing protects the reel" in words for words in option.warnings)


def test_a_pull_that_will_fall_is_said_beforehand() -> None:
    improve = three_options(reel_sheet.load("tarvak-52"), {}, [], RATES, samples=1000)[1]
    assert any("expected to fall" in words for words in improve.warnings)


def test_over_the_counter_there_is_no_post() -> None:
    posted, handed = (
        three_options(SHEET, {}, [], RATES, around=Around(posted=p), samples=300)[0] for p in (True, False)
    )
    assert posted.total_minor - handed.total_minor == RATES.post_minor


def test_what_a_hand_changes_the_price_and_the_prediction_follow() -> None:
    case = open_case(SHEET, JERKS, [PAWL], RATES, samples=300)
    kind = SHEET.reel.kind
    plain = offer(case, Way("put right", chosen(["strip-and-wash", "dress-drag", "new-pawl"], kind)))
    carbon = offer(case, Way("put right", chosen(["strip-and-wash", "carbon-drag-set", "new-pawl"], kind)))
    assert carbon.total_minor - plain.total_minor == RATES.own_prices["carbon disc set"]
    assert carbon.predicted["start_up_ratio"].middle < plain.predicted["start_up_ratio"].middle
    changed = Changes({"new-pawl": 30}, {"pawl": 8000}, [Charge("other", "Line, 200 m", 18000)])
    dearer = offer(case, Way("put right", plain.works), changed)
    assert dearer.total_minor == plain.total_minor - 1500 + 18000
    own = chosen(["new-pawl"], kind)[0].minutes(kind, reel_is_open=True)
    assert dearer.minutes == plain.minutes + 30 - own


def test_minutes_outside_the_tier_are_paid_for() -> None:
    case = open_case(SHEET, {}, [], RATES, samples=300)
    way = Way("most", chosen(["strip-and-wash", "polish-spool-shaft"], SHEET.reel.kind))
    longer = offer(case, way, Changes({"polish-spool-shaft": 22}))
    assert longer.total_minor - offer(case, way).total_minor == 10 * RATES.hourly_minor // 60
