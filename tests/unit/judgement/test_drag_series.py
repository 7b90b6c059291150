"""Which cause a series names: right, or that it cannot tell; hardly ever wrong."""

from collections import Counter
from dataclasses import replace

import numpy as np
import pytest

from spoolwright.bench import pull_series
from spoolwright.bench.pulls import OnePull
from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement import drag_curves, drag_faults, drag_series
from spoolwright.judgement.drag_series import Case
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import ReelSheet
from tests.unit.judgement import drag_truth

SHEETS = ("tarvak-54c", "lumvik-4000", "pellmar-30-2")
TRIALS = 2


def case(
    rng: np.random.Generator, sheet: ReelSheet, fault: str, *, before: bool = False, **more: object
) -> Case:
    sound = drag_truth.reel(rng, sheet)
    now = drag_truth.with_fault(rng, sound, fault, sheet)
    earlier = pull_series.fit(drag_truth.series(rng, sheet, sound)) if before else None
    series = pull_series.fit(drag_truth.series(rng, sheet, now))
    return Case(sheet, series, sheet.spool.full_radius, earlier=earlier, **more)  # type: ignore[arg-type]


def trials(sheet: ReelSheet, fault: str, seed: int, *, before: bool) -> Counter[str]:
    rng = np.random.default_rng(seed)
    said: Counter[str] = Counter()
    for _ in range(TRIALS):
        found = drag_series.weigh(case(rng, sheet, fault, before=before))
        right = found.verdict == fault
        said["right" if right else found.verdict] += 1
        said["among"] += fault in found.between
    return said


@pytest.mark.parametrize("slug", SHEETS)
def test_the_cause_is_named_or_left_open_and_seldom_wrong(slug: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(drag_curves, "SHAPES", 300)  # quicker, and no less sure here
    sheet = reel_sheet.load(slug)
    assert sheet.drag is not None
    faults = [f for f in drag_faults.KEYS if f != "misstacked" or slug != "pellmar-30-2"]
    total: Counter[str] = Counter()
    for number, fault in enumerate(faults):
        total += trials(sheet, fault, 100 + number, before=number % 2 == 1)
    wrong = sum(count for word, count in total.items() if word not in ("right", "cannot tell", "among"))
    assert wrong <= 1
    assert total["right"] >= 0.35 * TRIALS * len(faults)
    assert total["among"] >= 0.9 * TRIALS * len(faults)


def test_a_fact_from_the_bench_parts_what_the_scale_cannot() -> None:
    sheet = reel_sheet.load("lumvik-4000")
    open_ = case(np.random.default_rng(5), sheet, "weak", before=True)
    assert drag_series.weigh(open_).verdict == drag_series.CANNOT_TELL
    looked = Case(**(vars(open_) | {"ruled_out": frozenset({"oiled", "misstacked", "glazed", "worn"})}))
    assert drag_series.weigh(looked).verdict == "weak"


def test_a_measured_thickness_decides_on_wear_even_where_free_was_felt() -> None:
    sheet = reel_sheet.load("tarvak-54c")
    stopped = case(np.random.default_rng(2), sheet, "worn").series
    by_feel = [replace(p, at=max(p.at - stopped.onset.value + 0.25, 0.0)) for p in stopped.pulls]
    series = pull_series.fit([pull for pull in by_feel if pull.running > 0])
    blind = Case(sheet, series, sheet.spool.full_radius, felt=True)
    assert drag_series.weigh(blind).verdict != "worn"
    measured = Case(**(vars(blind) | {"lost": Measured(1.1e-3, 0.05e-3, "length")}))
    assert drag_series.weigh(measured).verdict == "worn"
    whole = Case(**(vars(blind) | {"lost": Measured(0.02e-3, 0.05e-3, "length")}))
    assert drag_series.weigh(whole).chances["worn"] < 0.01


def test_friction_and_clamp_are_known_far_less_than_their_product() -> None:
    found = drag_series.weigh(case(np.random.default_rng(3), reel_sheet.load("tarvak-54c"), "sound"))
    known = found.known
    share = [one.uncertainty / one.value for one in (known.friction, known.clamp, known.pull)]
    assert share[2] < 0.7 * min(share[:2])


def test_pulls_that_no_cause_gives_are_not_forced_on_one() -> None:
    sheet = reel_sheet.load("tarvak-54c")
    far = pull_series.fit([OnePull(t, 400.0 * t, 420.0 * t) for t in (1.0, 2.0, 3.0, 4.0)])
    found = drag_series.weigh(Case(sheet, far, sheet.spool.full_radius))
    assert found.verdict == drag_series.NONE_FITS
    assert not drag_series.is_sound(found)


def test_nothing_is_weighed_without_a_drag_or_without_a_cause() -> None:
    sheet = reel_sheet.load("tarvak-54c")
    series = pull_series.fit([OnePull(t, 10.0 * t) for t in (1.0, 2.0, 3.0)])
    with pytest.raises(ValueError, match="ruled_out"):
        drag_series.weigh(Case(sheet, series, 0.02, ruled_out=frozenset(drag_faults.KEYS)))
    bare = sheet.model_copy(update={"drag": None})
    with pytest.raises(ValueError, match="drag"):
        drag_series.weigh(Case(bare, series, 0.02))
