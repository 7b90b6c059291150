"""What anglers and benches know of such reels: common practice, no source.

The sheets are invented; the facts are the trade's. A prediction is held against them with its middle; its
interval says how far one reel of the kind may lie from it.
"""

import pytest

from spoolwright import quantities
from spoolwright.judgement.prediction import predict
from spoolwright.judgement.shop_rates import starting_rates
from spoolwright.sheets import reel_sheet

POUND = quantities.read("1 lb", "force")


def full_pull_in_pounds(slug: str) -> tuple[float, float, float]:
    pull = predict(reel_sheet.load(slug), {}).values["pull_full_spool"]
    return pull.low / POUND, pull.middle / POUND, pull.high / POUND


@pytest.mark.parametrize(
    ("slug", "least", "most"),
    [
        # Common practice, no source: the older generation gives 8 to 10 lb and no more.
        ("tarvak-52", 8.0, 10.0),
        # Common practice, no source: its newer sister gives 18 to 20 lb.
        ("tarvak-54c", 18.0, 20.0),
        # Common practice, no source: the large one gives close to 30 lb.
        ("pellmar-70", 28.0, 32.0),
    ],
)
def test_the_greatest_pull_at_a_full_spool(slug: str, least: float, most: float) -> None:
    low, middle, high = full_pull_in_pounds(slug)
    assert least <= middle <= most
    assert low < middle < high


# General knowledge of such reels, from memory: what a sound reel of the kind and size commonly gives hard on,
# winds in with one turn, and weighs. A real reel may lie outside; our invented ones were drawn to lie inside.
OF_A_KIND = {
    "ostrell-s71": ((3.0, 11.0), (0.55, 1.05), (0.150, 0.260)),
    "pellmar-30-2": ((8.0, 45.0), (0.40, 1.10), (1.0, 1.4)),
    "lumvik-4000": ((6.0, 12.0), (0.75, 1.05), (0.240, 0.340)),
    "brekkas-9-10": ((1.0, 8.0), (0.12, 0.33), (0.170, 0.330)),
}


@pytest.mark.parametrize("slug", OF_A_KIND)
def test_a_reel_of_another_kind_gives_what_its_kind_commonly_gives(slug: str) -> None:
    kilograms, per_turn, mass = OF_A_KIND[slug]
    sheet = reel_sheet.load(slug)
    values = predict(sheet, {}).values
    one = quantities.read("1 kg", "force")
    assert kilograms[0] <= values["pull_full_spool"].middle / one <= kilograms[1]
    assert per_turn[0] <= values["line_per_turn"].middle <= per_turn[1]
    assert sheet.reel.mass is not None
    assert mass[0] <= sheet.reel.mass <= mass[1]


def test_a_low_profile_reel_sold_for_5_kg_gives_about_that() -> None:
    # Common practice, no source: a maker's rating is the pull hard on at a full spool, within a kilogram.
    pull = predict(reel_sheet.load("ostrell-s71"), {}).values["pull_full_spool"]
    assert pull.middle / quantities.read("1 kg", "force") == pytest.approx(5.0, abs=1.0)


def test_a_lever_at_full_gives_1_2_to_1_6_times_its_strike() -> None:
    # Judgement prior of the trade: full over strike 1.2 to 1.6 with one preset.
    values = predict(reel_sheet.load("pellmar-30-2"), {}).values
    assert 1.2 <= values["pull_full_spool"].middle / values["pull_at_strike"].middle <= 1.6


def test_a_lever_drag_of_the_30_lb_class_goes_to_a_quarter_and_a_third_of_its_line() -> None:
    # Common practice, no source: strike at 25 to 33 % of 30 lb, 3.40 to 4.49 kg; the lever passes both.
    rows = predict(reel_sheet.load("pellmar-30-2"), {}).star_turns
    one = quantities.read("1 kg", "force")
    assert rows[1].pull.middle / one < 3.40
    assert rows[-1].pull.middle / one > 4.49


def test_the_drag_on_the_spool_does_not_pass_the_gears() -> None:
    # Statics; a magazine, opened, says of lever drags that they act on the spool 1:1: pull is torque over
    # radius.
    for slug in ("pellmar-30-2", "lumvik-4000", "brekkas-9-10"):
        sheet = reel_sheet.load(slug)
        assert sheet.drag_ratio == 1.0
        values = predict(sheet, {}, samples=200).values
        pull, torque = values["pull_full_spool"].middle, values["drag_torque"].middle
        assert pull * sheet.spool.full_radius == pytest.approx(torque)


def test_a_fixed_spool_lies_at_47_mm_when_full() -> None:
    # Common practice, no source: a 4000 size measures 46 to 48 mm over its line. Ratio 5.1 to 6.3:
    # magazine, opened.
    sheet = reel_sheet.load("lumvik-4000")
    assert 0.046 <= 2 * sheet.spool.full_radius <= 0.048
    assert 5.1 <= sheet.gear_ratio <= 6.3


def test_the_generations_do_not_overlap() -> None:
    # Common practice, no source: nobody takes the older drag for the newer one, nor that for the large one.
    older, newer, large = (full_pull_in_pounds(slug) for slug in ("tarvak-52", "tarvak-54c", "pellmar-70"))
    assert older[2] < newer[0]
    assert newer[2] < large[1]


def test_a_nearly_empty_spool_pulls_harder() -> None:
    # Common practice, no source: pull doubles when the working diameter halves (statics: pull times radius
    # stays).
    for slug in reel_sheet.shipped():
        values = predict(reel_sheet.load(slug), {}).values
        full, empty = values["pull_full_spool"], values["pull_near_empty"]
        # A fly reel's arbor is more than half as wide as its full spool: no source, from the shape of them.
        assert empty.middle > (1.5 if "multiplier" in reel_sheet.load(slug).reel.kind else 1.4) * full.middle
        ratio = float(full.conditions["radius"]) / float(empty.conditions["radius"])
        assert empty.middle / full.middle == pytest.approx(ratio, rel=1e-9)


def test_felt_starts_harder_than_greased_carbon() -> None:
    # Common practice, no source: start-up over running 1.3 to 1.6 on felt, 1.05 to 1.15 on greased carbon.
    felt = predict(reel_sheet.load("tarvak-52"), {}).values["start_up_ratio"]
    carbon = predict(reel_sheet.load("tarvak-54c"), {}).values["start_up_ratio"]
    assert 1.3 <= felt.middle <= 1.6
    assert 1.05 <= carbon.middle <= 1.15


def test_light_oil_spins_20_to_40_seconds_on_a_mid_size_reel() -> None:
    # Common practice, no source: 20 to 40 s cleaned and lightly oiled, 40 to 90 s open and lightly oiled.
    for slug in ("tarvak-52", "tarvak-58r"):
        assert 20 <= predict(reel_sheet.load(slug), {}).values["spin_time"].middle <= 40


@pytest.mark.parametrize(
    ("tier", "usd", "said"),
    [
        # Common practice, no source: what benches commonly ask, without parts.
        ("basic", 15, "about 15 USD for a basic clean"),
        ("common", 50, "about 50 USD for a common tune"),
        ("full", 110, "up to about 110 USD for a full tune with six to eight bearings"),
    ],
)
def test_what_the_trade_commonly_asks(tier: str, usd: int, said: str) -> None:
    held = starting_rates().tier(tier)
    assert held.customary_usd == (usd, usd)
    assert said in held.customary_words
