"""Works that change the reel itself: its sheet with other sizes, other bearings, a part less."""

from dataclasses import replace

import pytest

from spoolwright.judgement.changed_sheet import changed, changes_sheet
from spoolwright.judgement.free_spin import bare_inertia
from spoolwright.judgement.load_ladder import Ladder, load_ladder
from spoolwright.judgement.wear_life import wear_life
from spoolwright.judgement.works import Effect, all_works
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import ReelSheet

WORKS = all_works()
ON_THE_REEL = [work for work in WORKS.values() if any(map(changes_sheet, work.effects))]


@pytest.fixture(scope="module")
def sheet() -> ReelSheet:
    return reel_sheet.load("tarvak-58r")


@pytest.mark.parametrize("work", ON_THE_REEL, ids=lambda work: work.id)
@pytest.mark.parametrize("slug", reel_sheet.shipped())
def test_a_work_never_touches_the_sheet_that_it_is_given(work: object, slug: str) -> None:
    was = reel_sheet.load(slug)
    changed(was, [work])  # type: ignore[list-item]
    assert was == reel_sheet.load(slug)


def test_a_handle_grows_within_the_range_that_is_sold(sheet: ReelSheet) -> None:
    work = [WORKS["longer-handle"]]
    assert sheet.handle is not None
    arms = [now.handle.arm_length for share in (0, 0.5, 1) if (now := changed(sheet, work, share)).handle]
    assert arms == pytest.approx([sheet.handle.arm_length * by for by in (1.15, 1.30, 1.45)])


def test_blocks_are_counted_and_never_fewer_than_none(sheet: ReelSheet) -> None:
    assert sheet.brakes is not None
    assert sheet.brakes.blocks
    fewer, now = WORKS["one-block-fewer"], sheet
    for left in [*reversed(range(sheet.brakes.blocks)), 0]:
        now = changed(now, [fewer])
        assert now.brakes is not None
        assert now.brakes.blocks == left


def test_a_lighter_spool_loses_inertia_by_the_same_share(sheet: ReelSheet) -> None:
    light = changed(sheet, [WORKS["lighter-spool"]], 0)
    assert bare_inertia(light) / bare_inertia(sheet) == pytest.approx(0.70)


def test_springs_that_are_nested_lie_flat_in_half_the_travel(sheet: ReelSheet) -> None:
    nested = changed(sheet, [WORKS["springs-nested"]]).drag
    back = changed(sheet, [WORKS["springs-back-to-back"]]).drag
    assert nested is not None
    assert back is not None
    assert len(back.springs.nests) == 2 * len(nested.springs.nests)
    assert sum(back.springs.nests) == sum(nested.springs.nests)


def test_only_the_thickest_step_of_a_shaft_grows(sheet: ReelSheet) -> None:
    now = changed(sheet, [WORKS["stiffer-spool-shaft"]]).shaft
    assert now is not None
    assert sheet.shaft is not None
    grown = [a.diameter / b.diameter for a, b in zip(now.steps, sheet.shaft.steps, strict=True)]
    assert {round(by, 3) for by in grown} <= {1.0, 1.225}
    assert now.diameter > sheet.shaft.diameter
    assert now.material == "hardened stainless steel"


def test_a_click_is_fitted_where_there_is_none(sheet: ReelSheet) -> None:
    fitted = changed(sheet, [WORKS["fit-clicker"]]).check
    assert fitted is not None
    assert fitted.pull == pytest.approx(1.75)


def test_what_a_reel_does_not_have_cannot_be_changed() -> None:
    fly = reel_sheet.load("brekkas-9-10")
    assert changed(fly, [WORKS["one-block-more"], WORKS["remove-level-wind"]]) == fly


def test_what_no_sheet_has_is_refused(sheet: ReelSheet) -> None:
    gilt = replace(WORKS["longer-handle"], effects=(Effect("sheet.gilding", "becomes", "gold", "nobody"),))
    with pytest.raises(ValueError, match=r"sheet\.gilding.*sheet\.handle\.arm_length"):
        changed(sheet, [gilt])
    with pytest.raises(ValueError, match="share"):
        changed(sheet, [], 1.5)


def limits(ladder: Ladder) -> dict[str, float]:
    return {one.part: one.limit.middle for one in ladder.rungs}


def test_on_the_ladder_a_stiffer_shaft_stands_higher_and_ceramic_balls_lower(sheet: ReelSheet) -> None:
    """Statics; ISO 76 with stiffer balls: they press a smaller spot."""
    now = limits(load_ladder(sheet, samples=200))
    stiff = limits(load_ladder(sheet, works=["stiffer-spool-shaft"], samples=200))
    balls = limits(load_ladder(sheet, works=["hybrid-spool-bearings"], samples=200))
    assert stiff["spool shaft"] > 1.5 * now["spool shaft"]
    assert 0.6 * now["spool bearings"] < balls["spool bearings"] < 0.9 * now["spool bearings"]


def test_without_a_level_wind_no_pawl_wears(sheet: ReelSheet) -> None:
    keys = {part.key for part in wear_life(sheet, {}, ["remove-level-wind"], samples=200).parts}
    assert "pawl" not in keys
    assert "pawl" in {part.key for part in wear_life(sheet, {}, samples=200).parts}
