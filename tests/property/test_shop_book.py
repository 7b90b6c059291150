"""Predictions by the book, end to end: an invented shop whose truth only nature knows, and its promises."""

from __future__ import annotations

from math import exp

import numpy as np
import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.book_evidence import of_reading
from spoolwright.judgement.book_kinds import friction_kinds
from spoolwright.judgement.book_lessons import Lessons
from spoolwright.judgement.expected_readings import expected
from spoolwright.judgement.monte_carlo import draw
from spoolwright.judgement.narrowing import inputs, know
from spoolwright.judgement.prediction import Predicted, predict
from spoolwright.judgement.reel_state import after, as_found
from spoolwright.judgement.shop_book import bind
from spoolwright.judgement.taken import Taken
from spoolwright.judgement.works import all_works
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")
WORKS = ("carbon-drag-set",)
STATE = after(as_found(SHEET), SHEET, [all_works()[name] for name in WORKS])
(KIND,) = friction_kinds(STATE).values()
WEIGHED = {"mass": Measured(0.286, 0.001, "mass")}
"""A reading that says nothing of the drag: the reel came in, so its springs may be tired."""
DAY, GAUGE = 0.03, 0.01


def pulls(factor: float, count: int, seed: int) -> np.ndarray:
    """What nature gives: springs, hand and faces as they fall, the shop's own friction, day and gauge."""
    draws = draw(inputs(STATE), samples=max(count, 100), seed=seed)
    held = {**draws, KIND.draws: np.full(max(count, 100), KIND.middle * factor)}
    asked = Taken("pull_full", Measured(1.0, 0.0, "force"), {"radius": SHEET.spool.full_radius})
    noise = np.random.default_rng(seed).normal(0.0, np.hypot(DAY, GAUGE), max(count, 100))
    return np.asarray(expected(SHEET, STATE, held, asked) * np.exp(noise))[:count]


def learned(factor: float, proofs: int, seed: int) -> Lessons:
    radius = {"radius": SHEET.spool.full_radius}
    taken = [
        Taken("pull_full", Measured(pull, GAUGE * pull, "force"), radius)
        for pull in pulls(factor, proofs, seed)
    ]
    return bind([of_reading(SHEET, WORKS, one) for one in taken]).lessons


def promised(lessons: Lessons) -> Predicted:
    known = know(SHEET, WEIGHED, samples=600, seed=1, learned=lessons)
    return predict(SHEET, WEIGHED, WORKS, known=known).values["pull_full_spool"]


@pytest.mark.parametrize("proofs", [4, 20])
def test_ninety_per_cent_of_new_proofs_fall_where_the_quote_says(proofs: int) -> None:
    generator, held, width = np.random.default_rng(proofs), 0, []
    shops, new = 8, 250
    plain = predict(SHEET, WEIGHED, WORKS, samples=600).values["pull_full_spool"]
    for shop in range(shops):
        factor = exp(generator.normal(0.0, KIND.spread))
        lessons = learned(factor, proofs, 10 * shop + proofs)
        pull = promised(lessons)
        found = pulls(factor, new, 1000 + shop)
        held += int(np.sum((pull.low <= found) & (found <= pull.high)))
        width.append((pull.high - pull.low) / pull.middle)
    assert 0.85 <= held / (shops * new) <= 0.95
    assert np.mean(width) < 0.9 * (plain.high - plain.low) / plain.middle


def test_more_proofs_make_a_narrower_promise() -> None:
    widths = []
    for proofs in (1, 5, 25):
        lessons = learned(1.1, proofs, 3)
        pull = promised(lessons)
        widths.append((pull.high - pull.low) / pull.middle)
    assert widths == sorted(widths, reverse=True)
