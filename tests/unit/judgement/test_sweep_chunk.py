"""One chunk of a sweep, drawn from its own seed."""

from __future__ import annotations

import pickle

import numpy as np
import pytest

from spoolwright.judgement.sweep_chunk import INPUTS, MEASURES, Chunk, Option, Order, cast_chunk, chunks
from spoolwright.judgement.throw import Throw
from spoolwright.sheets import reel_sheet

ORDER = Order(
    reel_sheet.load("tarvak-58r"),
    (),
    Throw(0.150, 55.0, diameter=0.31e-3),
    (Option("today", (), (0.5,)), Option("hybrids", ("hybrid-spool-bearings",), (0.5, 0.6))),
)


def test_chunks_share_the_casts_and_have_seeds_of_their_own() -> None:
    made = chunks(12_345, 7, 1000)
    assert sum(one.samples for one in made) == 12_345
    assert max(one.samples for one in made) - min(one.samples for one in made) <= 1
    assert len({one.seed for one in made}) == len(made) == 12
    assert [one.number for one in made] == list(range(12))


def test_seeds_follow_from_the_first_alone() -> None:
    assert chunks(5000, 7, 1000) == chunks(5000, 7, 1000)
    assert {one.seed for one in chunks(5000, 7, 1000)}.isdisjoint(one.seed for one in chunks(5000, 8, 1000))


@pytest.mark.parametrize(("samples", "seed", "size"), [(99, 1, 1000), (1000, 1, 99), (1000, -1, 1000)])
def test_what_cannot_be_shared_out_is_refused(samples: int, seed: int, size: int) -> None:
    with pytest.raises(ValueError, match="accepted; got"):
        chunks(samples, seed, size)


def test_a_chunk_is_the_same_wherever_it_is_cast() -> None:
    chunk = Chunk(3, 150, 991)
    here = cast_chunk(ORDER, chunk)
    there = pickle.loads(pickle.dumps(cast_chunk(*pickle.loads(pickle.dumps((ORDER, chunk))))))
    assert here.number == there.number == 3
    for name in MEASURES:
        assert here.measures[name].shape == (3, 150)
        assert np.array_equal(here.measures[name], there.measures[name])


def test_options_share_the_draws_of_the_arm_and_the_day() -> None:
    found = cast_chunk(ORDER, Chunk(0, 150, 5)).measures["distance"]
    assert np.std(found[1] - found[0]) < 0.2 * np.std(found[0])


def test_the_sums_are_those_of_the_inputs_named() -> None:
    sums = cast_chunk(ORDER, Chunk(0, 150, 5)).sums
    assert set(sums) == set(INPUTS)
    assert sums["throw_factor"][0] == 150
    assert sums["throw_factor"][1] / 150 == pytest.approx(1.0, abs=0.01)
