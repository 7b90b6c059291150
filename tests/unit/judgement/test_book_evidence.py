"""What one proof says: a truth that is put into a reading comes out again, or the reading says why not."""

from __future__ import annotations

from math import log

import numpy as np
import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.book_evidence import of_minutes, of_reading
from spoolwright.judgement.prediction import predict
from spoolwright.judgement.taken import Taken
from spoolwright.judgement.works import all_works
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")
CARBON, OILED = ("carbon-drag-set",), ("oil-spool-bearings",)


def pull(value: float) -> Taken:
    return Taken("pull_full", Measured(value, 0.005 * value, "force"), {"radius": 0.02})


def spin(seconds: float) -> Taken:
    return Taken("spin_time", Measured(seconds, 0.3, "time"), {"line": "off", "brakes": "off"})


def test_a_pull_a_tenth_higher_says_a_tenth_more_friction() -> None:
    low, high = (of_reading(SHEET, CARBON, pull(value)).seen for value in (60.0, 66.0))
    assert low is not None
    assert high is not None
    assert high.log - low.log == pytest.approx(log(1.1))
    assert high.gain == 1.0


def test_what_it_may_be_out_by_holds_springs_day_and_reading() -> None:
    seen = of_reading(SHEET, CARBON, pull(60.0)).seen
    assert seen is not None
    assert 0.03**2 + 0.005**2 < seen.variance < 0.12**2


@pytest.mark.parametrize("seconds", [15.0, 30.0, 50.0])
def test_a_longer_spin_says_less_drag(seconds: float) -> None:
    seen, longer = (of_reading(SHEET, OILED, spin(value)).seen for value in (seconds, 1.1 * seconds))
    assert seen is not None
    assert longer is not None
    assert longer.log < seen.log
    assert seen.gain < -0.9
    # The gain is the slope: a tenth more time moves the factor by so much.
    assert longer.log - seen.log == pytest.approx(seen.gain * log(1.1), rel=0.2)


def test_the_expected_spin_says_that_the_sheet_is_right() -> None:
    expected = predict(SHEET, {}, OILED, samples=1000).values["spin_time"]
    seen = of_reading(SHEET, OILED, spin(expected.middle)).seen
    assert seen is not None
    # Not nought: of a reel that came in, ends and level wind may drag more than of one as it was built.
    assert -0.3 < seen.log < 0.1


def test_a_spin_that_no_bearing_explains_teaches_nothing() -> None:
    told = of_reading(SHEET, OILED, spin(4000.0))
    assert told.seen is None
    assert "look for something else" in told.why_not


def test_a_start_up_ratio_is_its_own_coefficient() -> None:
    told = of_reading(SHEET, CARBON, Taken("start_up_ratio", Measured(1.09, 0.01, "ratio")))
    assert told.seen is not None
    assert told.seen.log == pytest.approx(0.0, abs=1e-9)


@pytest.mark.parametrize(
    ("taken", "words"),
    [
        (Taken("pull_run", Measured(30.0, 0.3, "force")), "unknown radius"),
        (Taken("pull_full", Measured(0.0, 0.3, "force")), "no logarithm"),
        (Taken("end_float", Measured(1e-4, 1e-5, "length")), "No coefficient"),
        (Taken("stop_time", Measured(9.0, 0.1, "time")), "start was not measured"),
    ],
)
def test_what_teaches_nothing_says_why(taken: Taken, words: str) -> None:
    assert words in of_reading(SHEET, OILED, taken).why_not


def test_a_spin_before_any_work_speaks_of_unknown_bearings() -> None:
    assert "Nothing was done" in of_reading(SHEET, (), spin(12.0)).why_not


def test_minutes_are_shared_by_what_is_listed() -> None:
    works = ["strip-and-wash", "regrease-gears", "new-pawl"]
    listed = [all_works()[name].minutes("round multiplier", reel_is_open=True) for name in works]
    told = of_minutes("round multiplier", works, 1.2 * sum(listed))
    assert told.seen is not None
    assert told.seen.log == pytest.approx(log(1.2))
    assert [share for _, share in told.seen.shares] == pytest.approx(np.array(listed) / sum(listed))


def test_work_that_is_not_on_the_list_cannot_be_shared_out() -> None:
    assert "raise spool" in of_minutes("fixed spool", ["raise spool"], 20.0).why_not
