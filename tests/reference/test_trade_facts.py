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
