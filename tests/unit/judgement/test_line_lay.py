"""How a level wind lays its line."""

from __future__ import annotations

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.line_lay import line_lay, traverse, turns_on
from spoolwright.sheets import reel_sheet

PIER = reel_sheet.load("tarvak-58r")


def test_thick_line_lies_side_by_side_and_thin_line_crosses() -> None:
    thin, thick = (line_lay(PIER, {}, diameter=d) for d in (0.2e-3, 3e-3))
    assert "cross and hold" in thin.words
    assert "side by side" in thick.words
    assert thin.pitch == pytest.approx(thick.pitch) == pytest.approx(3.706e-3, abs=1e-6)


def test_a_counted_cycle_settles_whether_it_locks() -> None:
    def counted(turns: float) -> float:
        return line_lay(PIER, {"level_wind_turns": Measured(turns, 0.1, "count")}).locks

    assert counted(24.0) == 1.0
    assert counted(24.5) == 0.0
    locked = line_lay(PIER, {"level_wind_turns": Measured(24.0, 0.1, "count")})
    assert "ridges" in locked.words
    assert not locked.notes


def test_a_fixed_spool_reel_lays_by_its_worm() -> None:
    moved = traverse(reel_sheet.load("lumvik-4000"))
    assert moved is not None
    assert not moved.in_the_cast
    assert line_lay(reel_sheet.load("lumvik-4000"), {}).pitch == pytest.approx(moved.pitch)


@pytest.mark.parametrize("slug", ["brekkas-9-10", "pellmar-30-2"])
def test_without_a_worm_it_says_why_not(slug: str) -> None:
    found = line_lay(reel_sheet.load(slug), {})
    assert "no level wind" in found.why_not
    assert found.words == ""


def test_a_line_without_thickness_is_refused() -> None:
    with pytest.raises(ValueError, match="diameter"):
        line_lay(PIER, {}, diameter=0.0)


def test_units_of_the_reader() -> None:
    assert " in apart" in line_lay(PIER, {}, system="imperial").words
    assert turns_on(0.02) == pytest.approx(7.958, abs=1e-3)


def test_a_level_wind_that_is_taken_out_lays_nothing() -> None:
    assert line_lay(PIER, {}, ("remove-level-wind",)).why_not
