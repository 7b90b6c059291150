"""The standard run against every reel that comes along."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench.run_record import RunRecord
from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.fish_run import FishRun
from spoolwright.judgement.narrowing import know
from spoolwright.judgement.run_test import NO_DRAG, RunTest, run_test
from spoolwright.judgement.run_words import heat_words, judder_words
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import ReelSheet

SHEET = reel_sheet.load("tarvak-58r")
KNOWN = know(SHEET, {}, samples=200, seed=1)


def run(works: tuple[str, ...] = (), **fish: object) -> RunTest:
    return run_test(SHEET, {}, works, fish=FishRun(**fish), known=KNOWN)  # type: ignore[arg-type]


@pytest.fixture(scope="module")
def plain() -> RunTest:
    return run()


@pytest.mark.parametrize("slug", reel_sheet.shipped())
def test_every_shipped_reel_answers_or_says_why_not(slug: str) -> None:
    test = run_test(reel_sheet.load(slug), samples=100, fish=FishRun(distance=30.0))
    if test.why_not:
        assert test.heat is None
        assert heat_words(test) == judder_words(test) == (test.why_not,)
        return
    assert test.heat is not None
    assert test.judder is not None
    assert 293 < test.heat.after_run.low <= test.heat.after_run.high < 900
    assert test.judder.start_up_peak.middle >= test.judder.running.middle


def test_a_click_reel_says_why_not() -> None:
    bare = SHEET.model_copy(update={"drag": None})
    test = run_test(bare, samples=100)
    assert test.why_not == NO_DRAG
    assert test.heat is None


def test_half_of_the_greatest_pull_is_meant_unless_something_else_is_said(plain: RunTest) -> None:
    assert plain.pull is not None
    assert plain.greatest is not None
    assert plain.pull.middle == pytest.approx(plain.greatest.middle / 2, rel=0.02)
    assert run(pull=20.0).pull.middle == pytest.approx(20.0, rel=0.02)  # type: ignore[union-attr]
    by_star = run(turns=3.0)
    assert by_star.pull is not None
    assert 0 < by_star.pull.middle < plain.greatest.middle
    assert by_star.pull.high / by_star.pull.low > plain.pull.high / plain.pull.low


def test_heat_is_pull_times_way_less_what_fades(plain: RunTest) -> None:
    gentle = run(pull=3.0, distance=20.0)
    assert gentle.heat is not None
    assert gentle.heat.energy.middle == pytest.approx(3.0 * 20.0 * 1.01, rel=0.05)
    assert plain.heat is not None
    assert plain.heat.energy.middle < plain.pull.middle * 100.0 * 1.3  # type: ignore[union-attr]


def test_harder_faster_and_farther_is_hotter(plain: RunTest) -> None:
    base = plain.heat.after_run.middle  # type: ignore[union-attr]
    half = plain.pull.middle / 2  # type: ignore[union-attr]
    for change in ({"pull": half}, {"distance": 40.0}, {"speed": 1.0}):
        assert run(**change).heat.after_run.middle < base  # type: ignore[union-attr]


def test_a_carbon_set_at_the_same_pull_fades_less_and_starts_softer(plain: RunTest) -> None:
    """The trade's own reason for the work: friction steady with heat, start-up close to running."""
    pull = plain.pull.middle  # type: ignore[union-attr]
    fibre, carbon = run(pull=pull), run(("carbon-drag-set",), pull=pull)
    assert carbon.heat is not None
    assert fibre.heat is not None
    assert carbon.heat.pull_lost.high < fibre.heat.pull_lost.low
    assert carbon.heat.chance < fibre.heat.chance
    assert carbon.judder.static.middle < fibre.judder.static.middle  # type: ignore[union-attr]


def test_more_than_the_drag_gives_is_said() -> None:
    assert any("more than the drag can be set to" in note for note in run(pull=500.0, distance=5.0).notes)
    assert any("bare spool" in note for note in run(line="nylon 0.80 mm", distance=300.0).notes)


def test_a_recorded_run_is_taken_as_it_was() -> None:
    time = np.linspace(0.0, 20.0, 41)
    record = RunRecord(time, np.full(41, 2.0), np.full(41, 25.0))
    test = run(recorded=record)
    assert test.way == pytest.approx(40.0)
    assert test.heat.energy.high <= 1000.0 * 1.001  # type: ignore[union-attr]
    assert "of line in 20 s against 2.55 kg" in heat_words(test)[0]


def test_a_drag_on_the_main_gear_and_one_on_the_spool_make_the_same_heat() -> None:
    """Power is pull times speed whatever the ratio: the gear turns slower and holds more."""
    on_spool = ReelSheet.model_validate(SHEET).model_copy(
        update={"drag": SHEET.drag.model_copy(update={"acts_on": "spool"})}  # type: ignore[union-attr]
    )
    fish = FishRun(pull=10.0, distance=30.0)
    one, other = (run_test(sheet, samples=200, fish=fish) for sheet in (SHEET, on_spool))
    assert one.heat.energy.middle == pytest.approx(other.heat.energy.middle, rel=1e-6)  # type: ignore[union-attr]


def test_readings_narrow_it_and_the_same_seed_gives_the_same() -> None:
    readings = {"start_up_ratio": Measured(1.5, 0.02, "ratio")}
    one, other = (run_test(SHEET, readings, samples=200, fish=FishRun(distance=20.0)) for _ in (1, 2))
    assert one.judder is not None
    assert one.judder.static.middle / one.judder.running.middle == pytest.approx(1.5, abs=0.06)
    assert one.heat.after_run == other.heat.after_run  # type: ignore[union-attr]
