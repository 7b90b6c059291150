"""One row of a series: bare numbers in the chosen unit, others in their own."""

from __future__ import annotations

import pytest

from spoolwright.bench.pulls import OnePull
from spoolwright.bench.unreadable import Unreadable
from spoolwright.pages.diary.ask import pull_rows
from spoolwright.pages.diary.ask.pull_rows import PullRow

KG = 9.80665


def row(**cells: str) -> PullRow:
    made = PullRow({f"pull-0-{name}": text for name, text in cells.items()}, prefix="pull-0")
    assert made.is_valid()
    return made


def test_bare_numbers_take_the_unit_of_all_rows_and_others_keep_their_own() -> None:
    pull = row(point="1 1/2", start="2.5", run="20 N").pull("turns", "kg")
    assert pull.at == 1.5
    assert pull.start_up == pytest.approx(2.5 * KG)
    assert pull.running == pytest.approx(20.0)
    assert pull.step == pytest.approx(1.0)


def test_numbers_count_themselves_and_speeds_are_in_metres_a_second() -> None:
    assert row(run="3").pull("number", "kg").at == 1.0
    fast = row(point="0.4", run="3", judder="12").pull("speed", "kg")
    assert (fast.at, fast.judder) == (0.4, pytest.approx(0.12))
    assert row(point="40 mm/s", run="3").pull("speed", "kg").at == pytest.approx(0.04)


@pytest.mark.parametrize(
    ("cells", "words"),
    [
        ({"point": "1", "run": "lots"}, "Pull 1, running"),
        ({"point": "1", "start": "3"}, "the running pull is missing"),
        ({"run": "3"}, "what was set is missing"),
        ({"point": "one", "run": "3"}, "Pull 1, set to"),
    ],
)
def test_the_cell_that_is_wrong_is_named(cells: dict[str, str], words: str) -> None:
    with pytest.raises(Unreadable, match=words):
        row(**cells).pull("turns", "kg")


def test_what_was_written_comes_back_with_its_units() -> None:
    [cells] = pull_rows.started((OnePull(1.5, 2 * KG, None, 0.1, 0.08),), "turns", "metric")
    assert cells == {"point": "1.5", "start": "", "run": "2.00 kg", "judder": "8"}
