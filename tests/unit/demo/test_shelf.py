"""The instruments of the invented workshop: on the shelf, checked, one studied by both people."""

from __future__ import annotations

from random import Random
from typing import Any

import pytest

from spoolwright.demo import shelf
from spoolwright.shop.questions.instruments import every, marked


def test_every_instrument_stands_on_the_shelf(shop: Any) -> None:
    assert {one.row.mark for one in every()} == set(shelf.SHELF) == set(shop.instruments)
    checked = {one.row.mark for one in every() if one.checks}
    assert checked == set(shelf.CHECKS)


def test_the_study_finds_what_was_put_into_it(shop: Any) -> None:
    caliper = marked(shelf.CALIPER)
    assert caliper
    (study,) = caliper.studies
    assert len(study.tries.parts) == len(shelf.WASHERS)
    assert len(study.tries.persons) == 2
    assert 0.4 < study.read.spreads["repeatability"].deviation / shelf.EACH_TIME < 2.0


def test_the_same_seed_gives_the_same_study() -> None:
    first, again = ([*shelf._tries(("a", "b"), Random("1/shelf"))] for _ in range(2))
    assert first == again
    assert all(one.value == pytest.approx(round(one.value, 5), abs=1e-9) for one in first)
