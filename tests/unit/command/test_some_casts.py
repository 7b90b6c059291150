"""Casts drawn for the speed table."""

from __future__ import annotations

import numpy as np

from spoolwright.command.some_casts import one, some_casts
from spoolwright.mechanics import cast


def test_the_same_seed_draws_the_same_casts_and_another_does_not() -> None:
    first, again, other = some_casts(5, 1), some_casts(5, 1), some_casts(5, 2)
    assert all(np.array_equal(first[name], again[name]) for name in first)
    assert not np.array_equal(first["wind"], other["wind"])


def test_one_of_them_is_the_same_cast_alone() -> None:
    drawn = some_casts(3, 1)
    alone = one(drawn, 1)
    assert cast.simulate(**alone).distance == cast.simulate(**drawn).distance[1]


def test_they_meet_slack_thumbs_and_jerks() -> None:
    flown = cast.simulate(**some_casts(200, 1))
    assert np.mean(flown.landed) > 0.9
    assert all(np.mean(flown[name] > 0) > 0.1 for name in ("peak_slack", "thumb_energy", "join_energy"))
