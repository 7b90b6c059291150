"""The release asks for what the reel has, and leaves to the hand what has no number."""

from __future__ import annotations

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.release_gate import BY_HAND, GateRow, release_gate
from spoolwright.judgement.taken import Taken
from spoolwright.sheets import reading_kinds, reel_sheet

SHEET = reel_sheet.load("tarvak-58r")


def taken(kind: str, value: float, u: float = 0.0, **conditions: object) -> Taken:
    return Taken(kind, Measured(value, u, reading_kinds.kind(kind).dimension), conditions)  # type: ignore[arg-type]


def row(key: str, *after: Taken, **more: object) -> GateRow:
    return next(one for one in release_gate(SHEET, after, **more) if one.key == key)  # type: ignore[arg-type]


def test_at_first_everything_is_still_to_do() -> None:
    rows = release_gate(SHEET, [])
    assert {one.stand for one in rows} == {"to measure", "by hand"}
    assert {one.key for one in rows if one.stand == "by hand"} == set(BY_HAND)


@pytest.mark.parametrize(
    ("kind", "key", "good", "bad"),
    [
        ("start_up_ratio", "start_up", 1.15, 1.16),
        ("judder", "judder", 0.10, 0.11),
        ("anti_reverse_slips", "anti_reverse", 0.0, 1.0),
        ("clutch_engagement", "clutch", 1 / 3, 0.5),
    ],
)
def test_the_limits_of_the_release(kind: str, key: str, good: float, bad: float) -> None:
    """Trade handbook, 1.11 (judgement priors): 1.15, 10 %, 0 of 20, a third of a turn."""
    assert row(key, taken(kind, good)).stand == "met"
    assert row(key, taken(kind, bad)).stand == "not met"


def test_the_latest_reading_counts_and_is_shown_with_its_uncertainty() -> None:
    told = row("start_up", taken("start_up_ratio", 1.4), taken("start_up_ratio", 1.07, 0.02))
    assert (told.stand, told.found) == ("met", "Start-up ratio: 1.070 ± 0.040")


def test_a_row_without_a_limit_only_wants_to_be_measured() -> None:
    assert row("spin", taken("spin_time", 31.0)).stand == "met"


def test_cold_and_warm_are_two_rows_where_the_reel_is_fished_in_the_cold() -> None:
    warm = taken("anti_reverse_slips", 0.0, anti_reverse_cold=False)
    cold = taken("anti_reverse_slips", 7.0, anti_reverse_cold=True)
    assert row("anti_reverse", warm, cold, fished_cold=True).stand == "met"
    assert row("anti_reverse_cold", warm, cold, fished_cold=True).stand == "not met"
    assert "anti_reverse_cold" not in [one.key for one in release_gate(SHEET, [])]


@pytest.mark.parametrize(
    ("kind", "lacks"),
    [
        ("fly", {"level_wind", "clutch", "spin", "anti_reverse", "back_play", "handle_torque"}),
        ("fixed spool", {"level_wind", "clutch", "spin"}),
        ("low-profile multiplier", {"click", "click_pull"}),
        ("lever drag", {"level_wind", "clutch"}),
        ("", set()),
    ],
)
def test_what_a_reel_does_not_have_is_not_asked_for(kind: str, lacks: set[str]) -> None:
    keys = {one.key for one in release_gate(None, [], kind=kind)}
    assert not keys & lacks
    assert {"start_up", "run_in", "left_over", "tray"} <= keys


def test_unevenness_is_said_in_per_cent_and_a_bare_count_bare() -> None:
    assert row("judder", taken("judder", 0.0776, 0.003)).found == "Judder: 7.76 % ± 0.60 %"
    assert row("anti_reverse", taken("anti_reverse_slips", 0.0)).found == "Anti-reverse slips in 20 jabs: 0"
