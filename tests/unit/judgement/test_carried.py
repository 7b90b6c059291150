"""A ladder in a line: what the drag gives and what is weakest behind it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from spoolwright.judgement.carried import Carried, carried, in_words
from spoolwright.judgement.load_ladder import load_ladder
from spoolwright.judgement.prediction import Predicted
from spoolwright.sheets import reel_sheet

G = 9.80665
DRAG = Predicted("drag", 6.0 * G, 5.0 * G, 7.0 * G, 0.6 * G, "force")


def test_it_is_the_drag_and_the_weakest_of_the_ladder() -> None:
    ladder = load_ladder(reel_sheet.load("tarvak-58r"), samples=200)
    found = carried(ladder)
    assert found is not None
    assert ladder.drag is not None
    assert ladder.weakest is not None
    assert (found.drag, found.weakest) == (ladder.drag.limit, ladder.weakest.name)
    assert found.over == ladder.weakest.over.middle
    assert carried(replace(ladder, drag=None)) is None


@pytest.mark.parametrize(
    ("over", "words"),
    [
        (1.5, "gives 50 % above that"),
        (1.01, "gives at about the same pull"),
        (0.99, "gives at about the same pull"),
        (0.8, "gives 20 % below that, before the drag slips"),
    ],
)
def test_the_margin_is_said_in_plain_words(over: float, words: str) -> None:
    assert f"the spool shaft, {words}." in in_words(Carried(DRAG, "spool shaft", over, True, 7 * G))


def test_where_the_margin_is_not_there_it_says_how_far_to_go() -> None:
    said = in_words(Carried(DRAG, "spool shaft", 1.1, False, 5.28 * G))
    assert said.endswith("Keep the drag under about 5.28 kg.")
    assert "lb" in in_words(Carried(DRAG, "spool shaft", 1.1, False, 5.28 * G), "imperial")
