"""The ladder of a whole reel."""

from __future__ import annotations

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.load_ladder import AT_LEAST, Ladder, load_ladder
from spoolwright.judgement.prediction import predict
from spoolwright.judgement.taken import Taken
from spoolwright.quantities import NotAQuantity
from spoolwright.sheets import reel_sheet
from tests.unit.judgement.ladder_loads import changed

LINES = {
    "brekkas-9-10": "dacron 0.5 mm",
    "lumvik-4000": "braid 0.20 mm",
    "ostrell-s71": "braid 0.22 mm",
    "pellmar-30-2": "nylon 0.60 mm",
    "pellmar-70": "nylon 0.50 mm",
    "tarvak-52": "nylon 0.35 mm",
    "tarvak-54c": "nylon 0.40 mm",
    "tarvak-58r": "nylon 0.40 mm",
}


def ladder(slug: str, works: list[str] | None = None, **more) -> Ladder:
    return load_ladder(reel_sheet.load(slug), {}, works or [], samples=400, **more)


@pytest.mark.parametrize("slug", reel_sheet.shipped())
def test_the_ladder_of_each_shipped_sheet_puts_the_drag_first(slug: str) -> None:
    found = ladder(slug)
    assert not found.why_not
    assert found.rungs[0].part == "drag"
    assert found.drag_first
    assert found.enough
    assert found.margin.middle >= found.needed >= AT_LEAST
    assert found.chance > 0.75
    assert found.words[0].startswith("The drag gives first, as it should")


@pytest.mark.parametrize("slug", reel_sheet.shipped())
def test_with_a_usual_line_the_drag_as_set_gives_first(slug: str) -> None:
    found = ladder(slug, line=LINES[slug])
    assert found.drag_first
    assert found.rungs[0].part in ("drag set", "arbor", "flanges")
    assert found.drag_set.limit.middle <= found.drag.limit.middle
    knot = next(one for one in found.rungs if one.part == "line")
    assert knot.over.low > 1.5


def test_rungs_are_sorted_and_each_says_where_it_is_from() -> None:
    found = ladder("tarvak-54c", line="nylon 0.40 mm")
    middles = [one.limit.middle for one in found.rungs]
    assert middles == sorted(middles)
    assert len({one.part for one in found.rungs}) == len(found.rungs)
    for one in found.rungs:
        assert one.source
        assert one.mark
        assert one.what_gives
        assert one.limit.low < one.limit.middle < one.limit.high


def test_the_drag_is_that_of_the_prediction() -> None:
    sheet = reel_sheet.load("tarvak-58r")
    pull = predict(sheet, {}, samples=400).values["pull_full_spool"]
    drag = ladder("tarvak-58r").drag.limit
    assert (drag.low, drag.middle, drag.high) == pytest.approx((pull.low, pull.middle, pull.high))


def test_an_upgrade_says_what_has_become_the_weakest_and_by_how_much() -> None:
    built, dry = ladder("tarvak-58r"), ladder("tarvak-58r", ["carbon-drag-set-dry"])
    assert dry.before == built
    assert dry.drag.limit.middle > 1.5 * built.drag.limit.middle
    assert not dry.enough
    assert dry.weakest.limit.middle == pytest.approx(built.weakest.limit.middle)
    assert "These works take the drag's greatest from about" in dry.words[-2]
    assert dry.weakest.name in dry.words[-1]
    assert "before these works it stood" in dry.words[-1]


def test_a_part_too_weak_for_its_drag_is_told() -> None:
    found = load_ladder(changed("tarvak-52", gears={"face_width": 1.5e-3}), samples=400)
    assert not found.drag_first
    assert found.rungs[0].part != "drag"
    assert "does not give first" in found.words[0]
    assert "made stronger" in found.words[2]
    assert found.most.middle < found.drag.limit.middle


def test_a_drag_that_starts_hard_is_asked_for_more() -> None:
    felt, carbon = ladder("tarvak-52"), ladder("tarvak-52", ["carbon-drag-set"])
    assert felt.needed == pytest.approx(1.4, abs=0.05)
    assert "starts so much harder" in felt.needed_words
    assert carbon.needed == AT_LEAST


def test_as_the_line_goes_the_drag_and_the_limits_rise_together() -> None:
    full, low = ladder("tarvak-58r"), ladder("tarvak-58r", fill=0.2)
    assert low.radius < full.radius
    assert low.drag.limit.middle * low.radius == pytest.approx(full.drag.limit.middle * full.radius)
    # The same drag pulls harder on a thin spool, so shaft and frame lean more: never better than full.
    assert 0.7 * full.margin.middle < low.margin.middle < full.margin.middle


def test_readings_narrow_the_drag() -> None:
    sheet = reel_sheet.load("tarvak-58r")
    weak = Taken("pull_full", Measured(30.0, 0.5, "force"), {"radius": 0.0235})
    found = load_ladder(sheet, {"pull_full": weak}, samples=400)
    assert found.drag.limit.middle == pytest.approx(30.0, abs=2.0)
    assert found.margin.middle > ladder("tarvak-58r").margin.middle


def test_same_seed_same_ladder_and_another_seed_nearly() -> None:
    assert ladder("ostrell-s71") == ladder("ostrell-s71")
    other = load_ladder(reel_sheet.load("ostrell-s71"), samples=400, seed=2)
    assert other.margin.middle == pytest.approx(ladder("ostrell-s71").margin.middle, rel=0.1)


def test_a_reel_without_a_drag_says_why_there_is_no_ladder() -> None:
    sheet = reel_sheet.load("brekkas-9-10").model_copy(update={"drag": None})
    found = load_ladder(sheet, line="dacron 0.5 mm", samples=400)
    assert "no drag of slipping discs" in found.why_not
    assert found.rungs == ()
    assert found.words == ()


def test_a_sheet_that_tells_no_part_has_only_its_drag() -> None:
    bare = reel_sheet.load("tarvak-52").model_copy(
        update={"gears": None, "shaft": None, "handle": None, "anti_reverse": None, "frame": None,
                "screws": (), "bearings": (), "parts": ()}
    )  # fmt: skip
    found = load_ladder(bare, samples=400)
    assert [one.part for one in found.rungs] == ["drag", "star thread"]
    assert found.enough


def test_what_cannot_be_asked_is_refused() -> None:
    sheet = reel_sheet.load("tarvak-52")
    with pytest.raises(ValueError, match="works"):
        load_ladder(sheet, {}, ["no-such-work"], samples=400)
    with pytest.raises(ValueError, match="share"):
        load_ladder(sheet, fill=1.2, samples=400)
    with pytest.raises(NotAQuantity):
        load_ladder(sheet, line="string", samples=400)
