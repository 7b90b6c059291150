"""What the ladder says."""

from __future__ import annotations

from dataclasses import replace

from spoolwright.judgement.ladder_words import changed, told
from spoolwright.judgement.load_ladder import load_ladder
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")
BUILT = load_ladder(SHEET, samples=500)
LINED = load_ladder(SHEET, {}, ["carbon-drag-set"], line="nylon 0.40 mm", samples=500)


def test_units_are_the_reader_s() -> None:
    assert all(" kg" not in words for words in told(BUILT, "imperial"))
    assert any(" lb" in words for words in told(BUILT, "imperial"))


def test_a_line_is_told_with_the_drag_that_suits_it() -> None:
    said = " ".join(LINED.words)
    assert "one sets the drag at" in said
    assert "First of what hangs on the line" in said
    assert "wind it on no tighter than usual" in said
    assert not any("hangs on the line" in words for words in BUILT.words)


def test_a_change_of_the_weakest_part_names_both() -> None:
    weak = replace(BUILT.rungs[2], over=replace(BUILT.rungs[2].over, middle=1.1))
    now = replace(BUILT, weakest=weak, rungs=(BUILT.rungs[0], weak))
    said = changed(now, BUILT)[1]
    assert BUILT.weakest.name in said
    assert f"it is now the {weak.name}, 10 % above it" in said


def test_below_the_drag_it_is_the_weakest_of_all() -> None:
    weak = replace(BUILT.weakest, over=replace(BUILT.weakest.over, middle=0.9))
    said = changed(replace(BUILT, weakest=weak), BUILT)[1]
    assert said.startswith(f"The weakest part of the whole reel is then the {weak.name}, 10 % below the drag")


def test_what_tires_day_after_day_is_told_once() -> None:
    said = [words for words in BUILT.words if "Day after day" in words]
    assert len(said) == 1
    assert "the teeth of the main gear" in said[0]


def test_nothing_to_compare_says_nothing() -> None:
    assert told(replace(BUILT, weakest=None)) == ()
    assert changed(replace(BUILT, weakest=None), BUILT) == ()
