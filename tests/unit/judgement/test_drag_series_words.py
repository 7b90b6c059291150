"""What a series says, in words that claim no more than the numbers."""

import numpy as np
import pytest

from spoolwright.bench import pull_series
from spoolwright.bench.pulls import OnePull
from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement import drag_series, drag_series_words
from spoolwright.judgement.drag_series import Case
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.drag_setting import setting_of
from tests.unit.judgement import drag_truth

SHEET = reel_sheet.load("tarvak-54c")
LEVER = reel_sheet.load("pellmar-30-2")


def found_for(fault: str, seed: int = 3, **more: object) -> drag_series.SeriesVerdict:
    rng = np.random.default_rng(seed)
    truth = drag_truth.with_fault(rng, drag_truth.reel(rng, SHEET), fault, SHEET)
    series = pull_series.fit(drag_truth.series(rng, SHEET, truth))
    return drag_series.weigh(Case(SHEET, series, SHEET.spool.full_radius, **more))  # type: ignore[arg-type]


def test_a_named_cause_comes_with_its_chance_and_its_reasons() -> None:
    found = found_for("glazed")
    assert "glazed washers (" in drag_series_words.verdict_words(found)
    told = " ".join(drag_series_words.evidence(found, "metric"))
    assert "above what these discs give" in told
    assert "only their product pulls" in told
    assert "judgement prior" in told


def test_what_cannot_be_told_is_said_with_what_would_tell() -> None:
    found = found_for("misstacked")
    assert found.verdict == drag_series.CANNOT_TELL
    said = drag_series_words.verdict_words(found)
    assert said.startswith("The pulls cannot tell between ")
    assert " and " in said
    told = " ".join(drag_series_words.evidence(found))
    assert "What would tell: " in told
    assert drag_series_words.PRODUCT in told


def test_what_was_known_beside_the_pulls_is_said() -> None:
    earlier = found_for("sound").case.series
    found = found_for(
        "worn", felt=True, earlier=earlier, lost=Measured(1e-3, 5e-5, "length"), ruled_out=frozenset({"weak"})
    )
    told = " ".join(drag_series_words.evidence(found))
    for words in ("found by feel", "earlier series", "1.00 mm", "not found: a weak spring"):
        assert words in told


def test_without_start_up_pulls_the_ratio_is_missed() -> None:
    series = pull_series.fit([OnePull(t, 18.0 * (t - 0.6)) for t in (1.5, 2.5, 3.5)])
    found = drag_series.weigh(Case(SHEET, series, SHEET.spool.full_radius))
    assert any("No start-up pull" in line for line in drag_series_words.evidence(found))


@pytest.mark.parametrize("system", ["metric", "imperial"])
def test_the_readings_have_units_and_a_lever_has_a_way(system: str) -> None:
    series = pull_series.fit(
        [OnePull(t, 100 * min(t, 0.7), 108 * min(t, 0.7)) for t in (0.2, 0.4, 0.7, 0.8, 1)]
    )
    said = drag_series_words.read_out(series, system, setting_of(LEVER))
    assert said[0].startswith("The whole way of the lever adds ")
    assert (" kg" if system == "metric" else " lb") in said[0]
    assert "% of the lever’s way" in said[1]
    assert any("grows no more" in line for line in said)
    star = drag_series_words.read_out(series, system, setting_of(SHEET))
    assert "turns from where the star was counted" in star[1]
