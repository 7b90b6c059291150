"""A reel comes in tired and goes out as promised, or with one promise near its edge or broken."""

from __future__ import annotations

from random import Random

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.demo.nature import DRAWS, Nature, flick_speed, known, mended, sound, worn
from spoolwright.judgement.findings import Finding
from spoolwright.judgement.proof import Promise, decide
from spoolwright.judgement.quote_options import Option, three_options
from spoolwright.judgement.shop_rates import starting_rates
from spoolwright.sheets import reading_kinds, reel_sheet

SLUG = "tarvak-58r"
FIELDS = {
    "pull_full": "full",
    "start_up_ratio": "ratio",
    "judder": "judder",
    "spin_time": "spins",
    "end_float": "end_float",
}


@pytest.fixture(scope="module")
def option() -> Option:
    found = [Finding("drag discs", "F08"), Finding("spool bearings", "F19"), Finding("cast cap", "F21")]
    return three_options(known(SLUG), {}, found, starting_rates(), samples=DRAWS)[1]


OF_A_TRACE = {"start_up_ratio": 0.008, "judder": 0.005}
"""What a pull trace of the demonstration leaves open; everything else is read with the usual tools."""


def decided(option: Option, after: Nature) -> dict[str, str]:
    """What a proof would decide of each promise."""
    found = {}
    for promise in option.promises:
        value = getattr(after, FIELDS[promise.reading_kind])
        tool = reading_kinds.kind(promise.reading_kind).standard_uncertainty(value)
        u = OF_A_TRACE.get(promise.reading_kind, tool)
        dimension = promise.predicted.dimension
        read = Measured(value, u, dimension)
        found[promise.reading_kind] = decide(Promise(promise.low, promise.high, dimension), read).kind
    return found


@pytest.mark.parametrize("slug", sorted(reel_sheet.shipped()))
@pytest.mark.parametrize("seed", range(5))
def test_a_worn_reel_gives_less_than_a_sound_one(slug: str, seed: int) -> None:
    reel, built = worn(slug, Random(seed)), sound(slug).values
    assert reel.full < built["pull_full_spool"].middle
    assert 0 < reel.running < reel.full
    spin = built.get("spin_time")
    assert reel.spins < spin.middle if spin else reel.spins == 0.0
    assert reel.ratio > 1.1


@pytest.mark.parametrize("seed", range(8))
def test_most_reels_go_out_as_promised(option: Option, seed: int) -> None:
    after = mended(worn(SLUG, Random(seed)), option, Random(seed))
    assert set(decided(option, after).values()) == {"shown"}


@pytest.mark.parametrize("kind", ["pull_full", "spin_time"])
def test_a_promise_can_be_broken(option: Option, kind: str) -> None:
    after = mended(worn(SLUG, Random(1)), option, Random(1), "failed", kind)
    said = decided(option, after)
    assert said.pop(kind) == "failed"
    assert set(said.values()) == {"shown"}


def test_a_promise_can_lie_too_near_its_edge_to_tell(option: Option) -> None:
    after = mended(worn(SLUG, Random(1)), option, Random(1), "not shown", "start_up_ratio")
    assert decided(option, after)["start_up_ratio"] == "not shown"


def test_the_falling_weight_gives_each_spool_its_speed() -> None:
    assert 100 < flick_speed(known("pellmar-70")) < flick_speed(known("tarvak-52")) < 400
