"""Which spins of the diaries count for the spin log, and as which kind of bearing."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.judgement.works import all_works
from spoolwright.shop.questions.spin_log import BEARINGS, own_spins
from tests.people import bench_hand
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_works_that_fit_other_bearings_are_known_to_it() -> None:
    change = {k for k, work in all_works().items() if any(e.on.startswith(BEARINGS) for e in work.effects)}
    assert {"new-spool-bearings", "hybrid-spool-bearings"} <= change


@pytest.mark.parametrize("given", [{"line": "on", "brakes": "off"}, {"line": "off", "brakes": "on"}])
def test_a_spin_with_line_or_brakes_on_does_not_count(given: dict[str, Any]) -> None:
    hand = bench_hand()
    visit = walk.agreed(hand)
    walk.worked(hand, visit)
    walk.read(hand, visit, "spin_time", 14.0, 0.3, "time", conditions={"temperature": 292.0, **given})
    assert own_spins() == ()
