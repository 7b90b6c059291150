"""What is typed of the invented spool: both ways find it again, and each other."""

import pytest

from spoolwright.bench import inertia
from spoolwright.demo import spool_inertia
from spoolwright.demo.nature import known
from spoolwright.judgement import agreement
from spoolwright.judgement.free_spin import bare_inertia
from spoolwright.sheets import inertia_methods


@pytest.mark.parametrize("slug", ["tarvak-58r", "tarvak-52"])
def test_both_ways_find_the_spool_and_each_other(slug: str) -> None:
    sheet = known(slug)
    turning = spool_inertia.TRUE_SHARE * bare_inertia(sheet)
    typed = {
        "fall": spool_inertia._falls(turning, sheet.spool.arbor_radius),
        "threads": spool_inertia._swings(turning, sheet.spool.mass or 0.03),
    }
    found = {
        method: inertia.read(
            method,
            {one.key: inertia.known(one, texts[one.key]) for one in inertia_methods.method(method).asks},
        ).inertia
        for method, texts in typed.items()
    }
    assert all(abs(one.value - turning) <= 1.5 * one.expanded for one in found.values())
    assert agreement.agrees(found["fall"], found["threads"])
