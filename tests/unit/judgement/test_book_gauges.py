"""A biased gauge is found by its proofs, with its interval; sound ones are seldom blamed."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.judgement.book_chapter import read
from spoolwright.judgement.book_fit import Seen
from spoolwright.judgement.book_gauges import leanings
from spoolwright.judgement.book_kinds import Kind

KINDS = tuple(Kind(f"k{n}", "friction", f"k{n}", 0.15, 0.09, 0.1, 0.2) for n in range(4))
GAUGES = ("scale 1", "scale 2", "scale 3", "force gauge")


def proofs(seed: int, bias: float = 0.0, count: int = 100, biased: str = "scale 2") -> list[Seen]:
    rng = np.random.default_rng(seed)
    truth = 0.09 * rng.normal(size=len(KINDS))
    found = []
    for n in range(count):
        kind, gauge = rng.integers(len(KINDS)), GAUGES[n % len(GAUGES)]
        log = truth[kind] + rng.normal(0, 0.05) + (np.log1p(bias) if gauge == biased else 0.0)
        found.append(Seen(((f"k{kind}", 1.0),), float(log), 0.0025, instrument=gauge))
    return found


def test_four_per_cent_high_is_found_and_said_with_its_interval() -> None:
    found = leanings(read(KINDS, proofs(1, bias=0.04)))
    assert [one.instrument for one in found if one.named] == ["scale 2"]
    assert found[0].low < 0.04 < found[0].high
    assert "scale 2 reads about" in found[0].words
    assert " high (+" in found[0].words
    assert found[0].mean_residual > 0.5


def test_low_is_called_low() -> None:
    (worst, *_) = leanings(read(KINDS, proofs(2, bias=-0.06)))
    assert worst.named
    assert "low" in worst.words


def test_of_many_sound_shops_few_blame_a_gauge() -> None:
    # 5 % over all four instruments by Bonferroni; 60 shops, so 3 expected and more than 8 improbable (0.3 %).
    blamed = sum(any(one.named for one in leanings(read(KINDS, proofs(seed)))) for seed in range(100, 160))
    assert blamed <= 8


def test_the_interval_covers() -> None:
    # At 95 % of each, fewer than 33 of 40 shops come once in 1,400 (binomial).
    held = 0
    for seed in range(40):
        found = {one.instrument: one for one in leanings(read(KINDS, proofs(seed, bias=0.04)))}
        held += found["scale 2"].low <= 0.04 <= found["scale 2"].high
    assert held >= 33


def test_one_gauge_alone_cannot_be_told_from_the_coefficient() -> None:
    seen = [one for one in proofs(1, bias=0.2) if one.instrument == "scale 2"]
    (only,) = leanings(read(KINDS, seen))
    assert not only.named
    assert "cannot be told" in only.words


@pytest.mark.parametrize("count", [0, 2])
def test_too_few_say_nothing(count: int) -> None:
    assert leanings(read(KINDS, proofs(1, count=count))) == ()
