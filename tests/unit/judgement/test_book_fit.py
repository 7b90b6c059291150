"""The book's arithmetic: conjugate given scatter and likeness, shrunk between kinds, wide at first."""

from __future__ import annotations

from math import erfc, sqrt

import numpy as np
import pytest

from spoolwright.judgement.book_fit import Seen, add_up, left_out, nothing_seen, posterior
from spoolwright.judgement.book_kinds import Kind

KINDS = tuple(Kind(f"k{n}", "friction", f"k{n}", 0.15, s, 0.1, 0.2) for n, s in enumerate((0.09, 0.1, 0.2)))


def proofs(key: str, *logs: float, variance: float = 0.003) -> list[Seen]:
    return [Seen(((key, 1.0),), log, variance) for log in logs]


@pytest.mark.parametrize("kind", KINDS)
def test_before_any_proof_each_has_the_spread_of_its_sheet(kind: Kind) -> None:
    mean, deviation = posterior(KINDS, nothing_seen(3)).believed(kind.key)
    assert (mean, deviation) == (pytest.approx(0.0, abs=1e-12), pytest.approx(kind.spread))


def test_proofs_added_one_by_one_come_to_the_same() -> None:
    seen = [*proofs("k0", 0.1, -0.05), *proofs("k2", 0.2), Seen((("k0", 0.3), ("k1", 0.7)), 0.04, 0.01)]
    at_once, one_by_one = add_up(KINDS, seen), nothing_seen(3)
    for one in seen:
        row = np.array([dict(one.shares).get(kind.key, 0.0) for kind in KINDS])
        one_by_one = one_by_one.plus(row, one.log, one.variance)
    assert posterior(KINDS, one_by_one).believed("k1") == pytest.approx(
        posterior(KINDS, at_once).believed("k1")
    )


def test_few_proofs_lean_on_the_sheet_and_many_stand_alone() -> None:
    few, many = (
        posterior(KINDS, add_up(KINDS, proofs("k0", *[0.12] * count))).believed("k0") for count in (1, 60)
    )
    assert 0.03 < few[0] < 0.11
    assert many[0] == pytest.approx(0.12, abs=0.01)
    assert many[1] < few[1] / 3


def test_a_kind_that_nobody_proved_moves_with_its_family_and_less() -> None:
    held = posterior(KINDS, add_up(KINDS, [*proofs("k0", *[0.1] * 8), *proofs("k1", *[0.11] * 8)]))
    moved, deviation = held.believed("k2")
    assert 0.02 < moved < 0.2
    assert deviation < 0.2


def test_kinds_that_disagree_are_taken_to_be_less_alike() -> None:
    same = add_up(KINDS, [*proofs("k0", *[0.1] * 8), *proofs("k1", *[0.11] * 8)])
    apart = add_up(KINDS, [*proofs("k0", *[0.1] * 8), *proofs("k1", *[-0.11] * 8)])
    assert posterior(KINDS, apart).alike < posterior(KINDS, same).alike


@pytest.mark.parametrize("factor", [0.6, 1.0, 2.0])
def test_the_scatter_is_learned(factor: float) -> None:
    logs = np.random.default_rng(3).normal(0.0, factor * 0.055, 80)
    held = posterior(KINDS, add_up(KINDS, proofs("k0", *logs)))
    assert held.scatter == pytest.approx(factor, rel=0.2)


def test_left_out_agrees_with_leaving_out() -> None:
    seen = proofs("k0", 0.02, 0.0, 0.05, -0.04, 0.25)
    quick = left_out(posterior(KINDS, add_up(KINDS, seen)), KINDS, seen)
    rest = posterior(KINDS, add_up(KINDS, seen[:-1]))
    middles, spreads = rest.nodes(rest.row({"k0": 1.0}), 0.003)
    tails = [erfc(abs(0.25 - m) / sqrt(2 * v)) for m, v in zip(middles, spreads, strict=True)]
    assert quick[-1] == pytest.approx(float(rest.weights @ np.array(tails)), rel=1e-6)
    assert min(quick[:-1]) > 0.05
