"""A great many casts of every option."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import cache

import pytest

from spoolwright.judgement import sweep as sweeping
from spoolwright.judgement.brake_setting import BrakeSetting
from spoolwright.judgement.sweep import Sweep, cast_options, counted, in_threads, on_workers, sweep
from spoolwright.judgement.sweep_chunk import Cast, Chunk, Order, cast_chunk
from spoolwright.judgement.throw import Throw
from spoolwright.sheets import reel_sheet

THROW = Throw(0.150, 55.0, diameter=0.31e-3)
HYBRIDS = {"hybrids": ("hybrid-spool-bearings",)}


def backwards(order: Order, wanted: Sequence[Chunk]) -> Iterator[Cast]:
    return (cast_chunk(order, one) for one in reversed(wanted))


@cache
def swept() -> Sweep:
    return sweep(reel_sheet.load("tarvak-58r"), None, HYBRIDS, throw=THROW, samples=600)


def values(found: Sweep) -> list[tuple[float, float]]:
    return [(row.values["distance"].low, row.values["distance"].high) for row in found.rows]


def test_today_comes_first_and_each_option_is_set_beside_it() -> None:
    today, hybrids = swept().rows
    assert (today.name, today.gain) == ("today", None)
    assert hybrids.works == ("hybrid-spool-bearings",)
    assert hybrids.gain is not None
    assert hybrids.gain_again is not None
    assert abs(hybrids.gain_again.middle) < 0.005 * today.values["distance"].middle
    assert hybrids.over_runs > today.over_runs


def test_the_same_numbers_whoever_casts_and_in_whatever_order(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sweeping, "CHUNK", 200)
    sheet = reel_sheet.load("tarvak-58r")
    one = sweep(sheet, None, HYBRIDS, throw=THROW, samples=600)
    other = sweep(sheet, None, HYBRIDS, throw=THROW, samples=600, cast_with=backwards)
    alone = sweep(
        sheet, None, HYBRIDS, throw=THROW, samples=600, cast_with=lambda *them: in_threads(*them, workers=1)
    )
    assert one.chunks == 3
    assert values(one) == values(other) == values(alone)
    assert one.weights == other.weights == alone.weights


def test_another_seed_gives_other_numbers() -> None:
    other = sweep(reel_sheet.load("tarvak-58r"), None, {}, throw=THROW, samples=600, seed=2)
    assert values(other)[0] != values(swept())[0]


def test_the_arm_decides_more_than_the_bearings() -> None:
    share = {weight.name: weight.share for weight in swept().weights}
    assert share["throw_factor"] > 0.3
    assert share["bearing_condition"] < 0.05
    assert all(0.0 <= one <= 1.0 for one in share.values())
    assert list(share.values()) == sorted(share.values(), reverse=True)


def test_progress_is_told_from_none_to_all() -> None:
    told: list[tuple[int, int]] = []
    cast_with = counted(backwards, lambda done, of: told.append((done, of)))
    sweep(reel_sheet.load("tarvak-58r"), None, {}, throw=THROW, samples=200, cast_with=cast_with)
    assert told == [(0, 1), (1, 1)]


def test_a_reel_that_is_not_cast_says_why() -> None:
    found = sweep(reel_sheet.load("brekkas-9-10"), None, {}, throw=THROW, samples=200)
    assert found.why_not
    assert found.rows == ()


@pytest.mark.parametrize("slug", ["pellmar-30-2", "lumvik-4000"])
def test_a_reel_without_a_brake_has_nothing_to_set_again(slug: str) -> None:
    found = sweep(reel_sheet.load(slug), None, {"washed": ("strip-and-wash",)}, throw=THROW, samples=200)
    assert found.share is None
    assert found.rows[1].gain_again is None


def test_a_measured_brake_stays_what_it_is() -> None:
    measured = replace(THROW, brake=BrakeSetting(constant=4e-6))
    found = sweep(reel_sheet.load("tarvak-58r"), None, HYBRIDS, throw=measured, samples=200)
    assert found.rows[1].share_again is None


def test_the_options_are_the_works_that_touch_a_cast() -> None:
    named = {work for works in cast_options("round multiplier").values() for work in works}
    assert {"oil-spool-bearings", "hybrid-spool-bearings"} <= named
    assert "carbon-drag-set" not in named


def test_too_few_casts_are_refused() -> None:
    with pytest.raises(ValueError, match="100 or more"):
        sweep(reel_sheet.load("tarvak-58r"), None, {}, throw=THROW, samples=50)


def test_a_cluster_is_only_asked_when_the_chunks_are_cast() -> None:
    assert callable(on_workers("tcp://nobody:1"))
    assert swept().lip_slack > 0
