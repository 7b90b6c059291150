"""A kept signal comes back as it was put away, and other data is not taken for one."""

from __future__ import annotations

import json

import pytest

from spoolwright.bench.budget import Contribution
from spoolwright.bench.uncertainty import Measured
from spoolwright.shop.records.signals import KeptPull, KeptSpin, pull_from, spin_from

PULL = KeptPull(
    times=(0.0, 0.1),
    forces=(0.0, 25.5),
    slip_start=0.05,
    slip_end=0.1,
    start_up=Measured(38.2, 0.2, "force"),
    running=Measured(25.5, 0.1, "force"),
    rate=10.0,
    number=1,
    pulls=1,
    notes=("The gauge's accuracy was not given.",),
    budget=(Contribution("running", "scatter while slipping", "A", 0.1),),
)
SPIN = KeptSpin(
    times=(0.1, 0.3),
    speeds=(95.0, 90.0),
    fitted=(94.9, 90.1),
    counted_in=(False, True),
    stop_time=Measured(11.0, 0.2, "time"),
    ticks_used=3,
    ticks_mended=1,
    relative_rms=0.002,
    before=((-0.2, 60.0), (-0.1, 80.0)),
    after=((0.4, 40.0),),
    verdict="gritty: speed falls in steps",
    evidence=("Four sudden losses.",),
)


def test_both_come_back_whole_from_the_column() -> None:
    assert pull_from(json.loads(json.dumps(PULL.as_data()))) == PULL
    assert spin_from(json.loads(json.dumps(SPIN.as_data()))) == SPIN


def test_a_spin_that_was_written_before_verdicts_were_kept_is_still_read() -> None:
    added = {"before", "after", "heard_as", "verdict", "evidence"}
    old = {key: value for key, value in SPIN.as_data().items() if key not in added}
    found = spin_from(json.loads(json.dumps(old)))
    assert found is not None
    assert (found.before, found.after, found.heard_as, found.verdict, found.evidence) == (
        (),
        (),
        "ticks",
        "",
        (),
    )
    assert found.stop_time == SPIN.stop_time


@pytest.mark.parametrize("data", [{}, {"signal": "song"}, {"times": [1]}])
def test_other_data_is_no_signal(data: dict[str, object]) -> None:
    assert pull_from(data) is None
    assert spin_from(data) is None


def test_one_is_not_taken_for_the_other() -> None:
    assert spin_from(PULL.as_data()) is None
    assert pull_from(SPIN.as_data()) is None
