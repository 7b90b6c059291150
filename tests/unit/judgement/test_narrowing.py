"""Readings narrow what is not known of a reel, and only what they speak of."""

import numpy as np

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.narrowing import DISAGREE, know, then
from spoolwright.judgement.reel_state import after, as_built, as_found
from spoolwright.judgement.taken import Taken
from spoolwright.judgement.works import all_works
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")
FULL = Taken("pull_full", Measured(57.0, 1.0, "force"), {"radius": 0.0235})


def spread(sample) -> float:
    return float(np.std(sample))


def test_no_reading_means_a_sound_reel() -> None:
    assert know(SHEET, {}, samples=200, seed=1).state == as_built(SHEET)
    assert know(SHEET, {"pull_full": FULL}, samples=200, seed=1).state == as_found(SHEET)


def test_a_pull_narrows_the_drag_and_leaves_the_bearings_alone() -> None:
    blind = know(SHEET, {"mass": Measured(0.3, 0.001, "mass")}, samples=2000, seed=1)
    seen = know(SHEET, {"pull_full": FULL}, samples=2000, seed=1)
    product = [k.draws["drag_condition"] * k.draws["hard fibre, greased"] for k in (blind, seen)]
    assert spread(product[1]) < 0.6 * spread(product[0])
    ratio = spread(seen.draws["bearing_condition"]) / spread(blind.draws["bearing_condition"])
    assert 0.9 < ratio < 1.1


def test_the_same_seed_keeps_the_same_draws() -> None:
    first, again = (know(SHEET, {"pull_full": FULL}, samples=300, seed=5) for _ in range(2))
    assert all(np.array_equal(first.draws[name], again.draws[name]) for name in first.draws)


def test_a_reading_that_no_such_reel_gives_is_doubted_in_words() -> None:
    absurd = Taken("pull_full", Measured(400.0, 1.0, "force"), {"radius": 0.0235})
    assert DISAGREE in know(SHEET, {"pull_full": absurd}, samples=300, seed=1).notes
    assert know(SHEET, {"pull_full": FULL}, samples=300, seed=1).notes == ()


def test_a_reading_without_its_conditions_is_noted_and_not_used() -> None:
    known = know(SHEET, {"pull_run": Measured(25.0, 0.5, "force")}, samples=300, seed=1)
    assert known.used == ()
    assert "unknown radius or star" in known.notes[0]


def test_works_draw_anew_only_what_they_renew() -> None:
    known = know(SHEET, {"pull_full": FULL}, samples=300, seed=1)
    oiled = then(known, after(known.state, SHEET, [all_works()["oil-spool-bearings"]]))
    assert oiled["drag_condition"] is known.draws["drag_condition"]
    assert oiled["bearing_condition"] is not known.draws["bearing_condition"]


def test_new_discs_of_the_same_kind_are_another_lot() -> None:
    known = know(SHEET, {"pull_full": FULL}, samples=300, seed=1)
    renewed = then(known, after(known.state, SHEET, [all_works()["new-drag-discs"]]))
    assert renewed["hard fibre, greased"] is not known.draws["hard fibre, greased"]
    assert renewed["spring_force"] is known.draws["spring_force"]
