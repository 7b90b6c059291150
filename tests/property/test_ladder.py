"""What must hold of a load ladder whatever the reel: order, scaling, stronger never worse."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from spoolwright.judgement.load_ladder import Ladder, load_ladder
from spoolwright.judgement.narrowing import know
from spoolwright.sheets import reel_sheet
from tests.unit.judgement.ladder_loads import changed

FEW = settings(max_examples=4, deadline=None)
SLUGS = sorted(reel_sheet.shipped())
KNOWN = {slug: know(reel_sheet.load(slug), {}, samples=100, seed=1) for slug in SLUGS}
LINES = st.sampled_from(["", "nylon 0.40 mm", "braid 0.20 mm", "dacron 0.5 mm 20 kg"])


def ladder(sheet, **more) -> Ladder:
    return load_ladder(sheet, samples=100, **more)


@FEW
@given(slug=st.sampled_from(SLUGS), fill=st.floats(0.02, 1.0), line=LINES)
def test_sorted_finite_and_the_margin_is_the_weakest_over_the_drag(slug: str, fill: float, line: str) -> None:
    found = load_ladder(reel_sheet.load(slug), line=line, fill=fill, known=KNOWN[slug])
    pulls = [one.limit.middle for one in found.rungs]
    assert pulls == sorted(pulls)
    assert all(0 < one.limit.low <= one.limit.middle <= one.limit.high < 1e6 for one in found.rungs)
    of_reel = [one for one in found.rungs if one.borne == "reel"]
    assert found.weakest == min(of_reel, key=lambda one: one.limit.middle)
    assert found.most.middle == pytest.approx(found.weakest.limit.middle / found.needed)
    assert found.enough == (found.margin.middle >= found.needed)
    assert 0 <= found.chance <= 1


@FEW
@given(more=st.floats(1.05, 2.0))
def test_a_wider_face_and_a_thicker_shaft_never_lower_their_rungs(more: float) -> None:
    def pulls(sheet) -> dict[str, float]:
        return {one.part: one.limit.middle for one in ladder(sheet).rungs}

    built = pulls(reel_sheet.load("tarvak-54c"))
    wider = pulls(changed("tarvak-54c", gears={"face_width": 4.5e-3 * more}))
    thicker = pulls(changed("tarvak-54c", shaft={"diameter": 3e-3 * more, "steps": ()}))
    assert wider["main gear"] > built["main gear"]
    assert wider["gear flanks"] > built["gear flanks"]
    assert thicker["spool shaft"] > built["spool shaft"]
    for part in ("anti-reverse", "drive shaft", "handle", "foot screws"):
        assert wider[part] == built[part]


@FEW
@given(scale=st.floats(0.5, 2.0))
def test_teeth_of_a_reel_twice_as_large_carry_four_times(scale: float) -> None:
    """Stress is force over area: at the same shape and metal, pulls go with the square of the size."""
    sheet = reel_sheet.load("tarvak-54c")
    gears, spool = sheet.gears, sheet.spool
    larger = changed(
        "tarvak-54c",
        gears={"module": gears.module * scale, "face_width": gears.face_width * scale},
        spool={
            name: getattr(spool, name) * scale
            for name in ("arbor_diameter", "flange_diameter", "width", "line_level")
        },
    )
    for part in ("main gear", "pinion", "gear flanks"):
        built, grown = (
            next(one.limit.middle for one in ladder(s).rungs if one.part == part) for s in (sheet, larger)
        )
        assert grown == pytest.approx(scale**2 * built, rel=1e-6)
