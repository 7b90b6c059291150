"""Outliers are named and kept with less weight; the last step of how it moved is what is believed now."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.judgement.book_chapter import before, how_it_moved, next_proof, now, read, usual_scatter
from spoolwright.judgement.book_fit import Seen
from spoolwright.judgement.book_kinds import Kind

KIND = Kind("k", "friction", "k", 0.155, 0.0938, 0.12, 0.19)
OTHER = Kind("o", "friction", "o", 0.18, 0.0938, 0.14, 0.22)


def proof(log: float, key: str = "k") -> Seen:
    return Seen(((key, 1.0),), log, 0.003)


GOOD = [proof(log) for log in np.random.default_rng(2).normal(0.05, 0.05, 12)]


def test_an_outlier_is_named_kept_and_weighs_less() -> None:
    chapter = read((KIND,), [*GOOD, proof(0.6)])
    (odd,) = chapter.outliers
    assert odd.seen.log == 0.6
    assert 0 < odd.weight < 1
    assert odd.out > 2.58
    assert len(chapter.weighed) == 13
    clean, with_it = now(read((KIND,), GOOD), KIND), now(chapter, KIND)
    assert clean.middle < with_it.middle < 1.05 * clean.middle


def test_several_that_agree_are_no_outliers_but_news() -> None:
    chapter = read((KIND,), [proof(log) for log in (0.3, 0.32, 0.29, 0.31, 0.3, 0.28)])
    assert not chapter.outliers
    assert now(chapter, KIND).middle > 1.2 * KIND.middle


def test_proofs_that_agree_overrule_a_sheet_whose_range_cannot_hold_them() -> None:
    far = [proof(log) for log in (0.5, 0.55, 0.45, 0.52, 0.48)]
    chapter = read((KIND, OTHER), far)
    assert chapter.overruled == ("k",)
    assert now(chapter, KIND).low < KIND.middle * np.exp(0.5) < now(chapter, KIND).high
    assert before(KIND).middle == KIND.middle
    assert how_it_moved(chapter, KIND)[-1].middle == pytest.approx(now(chapter, KIND).middle, rel=1e-9)
    assert read((KIND,), far[:3]).overruled == ()
    assert read((KIND,), GOOD).overruled == ()


def test_how_it_moved_ends_where_it_stands() -> None:
    chapter = read((KIND, OTHER), [GOOD[0], proof(0.1, "o"), *GOOD[1:]])
    steps = how_it_moved(chapter, KIND)
    assert len(steps) == 1 + len(GOOD)
    assert steps[0] == before(KIND)
    assert steps[-1].middle == pytest.approx(now(chapter, KIND).middle, rel=1e-9)
    assert steps[-1].deviation < steps[3].deviation < steps[0].deviation


def test_the_next_proof_scatters_more_than_the_coefficient() -> None:
    chapter = read((KIND,), GOOD)
    low, high = next_proof(chapter, {"k": 1.0}, 0.003)
    mean, deviation = chapter.held.believed("k")
    assert low < mean - 1.645 * deviation
    assert high > mean + 1.645 * deviation


def test_usual_scatter_is_of_its_own_proofs() -> None:
    chapter = read((KIND, OTHER), GOOD)
    assert usual_scatter(chapter, "k") == pytest.approx(0.003**0.5)
    assert usual_scatter(chapter, "o") == 0.0
