"""What an instrument leaves open: its study before what is stated, a check that found it off before both."""

from __future__ import annotations

from dataclasses import replace
from math import hypot, sqrt

import numpy as np
import pytest

from spoolwright.bench.budget import RECTANGLE, ROUNDING
from spoolwright.bench.instrument import ByCheck, ByStudy, Instrument

CALIPER = Instrument("caliper C1", "length", resolution=1e-5, limit=3e-5)
# Student's t at 95.45 % over 2, JCGM 100:2008, table G.2, from memory: 4.53, and 2.04 over 60 by scipy.stats.
OF_TWO, OF_SIXTY = 4.527 / 2, 2.0425 / 2
STUDY = ByStudy(repeatability=8e-6, between_hands=5e-6, freedom=60, words="study of 14 June 2025")


def rows(instrument: Instrument, *tries: float, step: float = 0.0) -> dict[str, float]:
    return {row.source: row.uncertainty for row in instrument.measured("caliper", tries, step).budget}


def test_what_is_stated_counts_while_there_is_no_study() -> None:
    taken = CALIPER.measured("caliper", [4.01e-3])
    assert CALIPER.rests_on == "stated"
    assert taken.measured.uncertainty == pytest.approx(hypot(1e-5 * ROUNDING, 3e-5 * RECTANGLE))
    assert taken.measured.dimension == "length"


def test_tries_that_differ_add_their_own_scatter() -> None:
    found = rows(CALIPER, 4.00e-3, 4.02e-3, 4.04e-3)
    scatter = found["scatter of 3 tries, widened for their number"]
    assert scatter == pytest.approx(OF_TWO * 2e-5 / sqrt(3), rel=1e-3)


def test_a_study_takes_the_place_of_step_and_scatter() -> None:
    studied = replace(CALIPER, study=STUDY)
    assert studied.rests_on == "study"
    found = rows(studied, 4.00e-3, 4.01e-3)
    assert found == {
        "one hand again, by the study of 14 June 2025, mean of 2 tries": pytest.approx(
            OF_SIXTY * 8e-6 / sqrt(2), rel=1e-3
        ),
        "between hands, by the study of 14 June 2025": 5e-6,
        "its stated limit of error": pytest.approx(3e-5 * RECTANGLE),
    }


def test_tries_that_scatter_far_more_than_the_study_are_believed() -> None:
    found = rows(replace(CALIPER, study=STUDY), 4.00e-3, 4.10e-3, 4.20e-3)
    scatter = found["scatter of 3 tries, more than the study allows"]
    assert scatter == pytest.approx(OF_TWO * 1e-4 / sqrt(3), rel=1e-3)


def test_a_study_cannot_see_below_the_display() -> None:
    blind = replace(CALIPER, study=replace(STUDY, repeatability=0.0))
    assert rows(blind, 4e-3)["one hand again, by the study of 14 June 2025"] == pytest.approx(1e-5 * ROUNDING)


def test_what_was_typed_more_coarsely_counts() -> None:
    assert rows(CALIPER, 4e-3, step=1e-4)["smallest step of the display"] == pytest.approx(1e-4 * ROUNDING)
    studied = rows(replace(CALIPER, study=STUDY), 4e-3, step=1e-4)
    assert studied["last digit that was typed"] == pytest.approx(1e-4 * ROUNDING)


def test_a_share_of_the_reading_grows_with_it() -> None:
    scale = Instrument("scale", "force", 0.1, limit=0.2, share=0.01)
    assert scale.stated_limit(-50.0) == pytest.approx(0.7)
    assert rows(scale, 50.0)["its stated limit of error"] == pytest.approx(0.7 * RECTANGLE)


def test_a_check_that_found_it_off_counts_more_than_its_maker() -> None:
    fine = replace(CALIPER, check=ByCheck(2e-5, 1e-6))
    assert not fine.is_off
    off = replace(CALIPER, check=ByCheck(-6e-5, 1e-6))
    assert off.is_off
    assert rows(off, 4e-3)["how far off the last check found it"] == pytest.approx(hypot(6e-5, 1e-6))


def test_a_check_is_held_against_what_is_stated_at_its_value() -> None:
    cell = Instrument("cell", "force", 0.01, limit=0.0, share=0.005)
    assert not replace(cell, check=ByCheck(0.2, 0.01, at=50.0)).is_off
    assert replace(cell, check=ByCheck(0.2, 0.01, at=20.0)).is_off


def test_with_nothing_stated_the_check_is_all_there_is() -> None:
    bare = Instrument("rule", "length", 5e-4)
    assert rows(bare, 0.1)["its limit of error is not stated"] == pytest.approx(5e-4 * RECTANGLE)
    checked = replace(bare, check=ByCheck(1e-4, 5e-5))
    assert "how far off the last check found it" in rows(checked, 0.1)


def test_truth_in_truth_out() -> None:
    """Hands that differ, an instrument within its limit: the interval holds the truth about as often."""
    rng = np.random.default_rng(8)
    studied = replace(CALIPER, study=STUDY)
    n = 4000
    off = rng.uniform(-3e-5, 3e-5, n) + rng.normal(0, 5e-6, n) + rng.normal(0, 8e-6, (2, n)).mean(axis=0)
    expanded = studied.measured("caliper", [0.0, 0.0]).measured.expanded
    assert 0.94 < float(np.mean(np.abs(off) <= expanded)) < 0.999


@pytest.mark.parametrize("tries", [2, 3])
@pytest.mark.parametrize("studied", [False, True])
def test_few_tries_hold_the_truth_as_often_as_they_say(tries: int, studied: bool) -> None:
    """Hands scatter far beyond the step; a small study (10 degrees of freedom) is drawn anew each time."""
    rng = np.random.default_rng(21)
    trials, again, freedom = 1500, 1e-4, 10
    seen = rng.normal(0.0, again, (trials, tries))
    known = again * np.sqrt(rng.chisquare(freedom, trials) / freedom)
    own = replace(CALIPER, limit=0.0)
    held = 0
    for row, spread in zip(seen, known, strict=True):
        tool = replace(own, study=ByStudy(float(spread), 0.0, freedom)) if studied else own
        taken = tool.measured("caliper", row.tolist()).measured
        held += abs(taken.value) <= taken.expanded
    # 1500 throws of 0.9545: three standard deviations are 0.016.
    assert held / trials == pytest.approx(0.9545, abs=0.016)


def test_a_pull_trace_takes_it_as_its_gauge() -> None:
    scale = Instrument("scale", "force", 0.1, limit=0.2, share=0.01)
    gauge = scale.as_gauge()
    assert gauge.resolution == 0.1
    assert gauge.gain == pytest.approx(0.01 * RECTANGLE)
    assert gauge.offset == pytest.approx(0.2 * RECTANGLE)
    studied = replace(scale, study=ByStudy(0.3, 0.4, 40)).as_gauge()
    assert studied.offset == pytest.approx(hypot(0.2 * RECTANGLE, 0.5))
    assert replace(scale, check=ByCheck(1.0, 0.1)).as_gauge().offset == pytest.approx(hypot(1.0, 0.1))
    bare = Instrument("scale", "force", 0.1).as_gauge()
    assert bare.offset == 0
    assert not bare.stated
    assert replace(scale, share=None).as_gauge().stated
