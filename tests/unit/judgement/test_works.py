"""The list of works is whole: nothing points at nothing."""

import pytest

from spoolwright.judgement import works
from spoolwright.judgement.changed_sheet import changed, changes_sheet
from spoolwright.judgement.reel_state import after, as_found
from spoolwright.sheets import faults, reading_kinds, reel_sheet
from spoolwright.sheets.reel_sheet import ReelSheet

KINDS = {"round multiplier", "low-profile multiplier", "lever drag", "fixed spool", "fly"}
ALL = list(works.all_works().values())


@pytest.fixture(scope="module")
def sheet() -> ReelSheet:
    return reel_sheet.load("tarvak-58r")


@pytest.mark.parametrize("work", ALL, ids=lambda work: work.id)
def test_a_work_points_at_what_there_is(work: works.Work) -> None:
    assert set(work.answers) | set(work.betters) <= set(works.finding_words())
    assert set(work.readings) <= set(reading_kinds.kinds())
    assert set(work.instead_of) < set(works.all_works())
    assert work.id not in work.instead_of
    assert set(work.within) <= {"quick", "basic", "common", "full"}
    assert set(work.kinds) <= KINDS


@pytest.mark.parametrize("work", ALL, ids=lambda work: work.id)
def test_a_work_has_minutes_for_each_of_its_kinds(work: works.Work) -> None:
    for kind in work.kinds:
        assert 0 <= work.minutes(kind, reel_is_open=True) <= work.minutes(kind, reel_is_open=False)


@pytest.mark.parametrize("work", ALL, ids=lambda work: work.id)
def test_every_effect_changes_a_state_and_says_where_it_comes_from(
    work: works.Work, sheet: ReelSheet
) -> None:
    assert all(effect.mark for effect in work.effects)
    on_sheet = [effect for effect in work.effects if changes_sheet(effect)]
    left = after(as_found(sheet), sheet, [work])
    assert (left != as_found(sheet)) == (len(on_sheet) < len(work.effects))
    assert changed(sheet, [work]) == sheet or on_sheet


@pytest.mark.parametrize("work", ALL, ids=lambda work: work.id)
def test_prices_of_parts_run_from_low_to_high(work: works.Work) -> None:
    for part in work.parts:
        assert 0 < part.sells_usd[0] <= part.sells_usd[1]
        assert part.count >= 1
        assert part.sure in ("sure", "likely", "only if")


def test_every_row_of_the_fault_table_is_answered_on_each_of_its_kinds() -> None:
    """A kind is named in a fault's row; what it comes to there is put right by a work of that kind."""
    for fault in faults.faults().values():
        for kind in fault.kinds:
            finding = works.finding_of("something else", fault.id)
            assert not finding or any(finding in w.answers for w in ALL if kind in w.kinds), (
                fault.id,
                kind,
                finding,
            )


def test_every_finding_is_answered_by_some_work() -> None:
    answered = {answer for work in ALL for answer in work.answers}
    assert set(works.finding_words()) == answered


def test_work_that_can_hurt_carries_a_caution() -> None:
    """Solvents, springs, line under load, dust, rotating tools: only works with none of these go without."""
    harmless = {"new-pawl", "new-idler-cog", "new-worm", "set-end-float", "new-end-discs", "tape-arbor",
                "new-latch-ring", "line-roller-set", "shim-spool", "slider-parts", "new-main-shaft",
                "drag-knob-parts", "new-seals", "dress-cork", "new-spindle-bush", "tighten-foot",
                "free-knob"}  # fmt: skip
    assert {work.id for work in ALL if not work.caution} == harmless


@pytest.mark.parametrize(
    ("part", "fault", "found"),
    [
        ("level-wind pawl", "F15", "pawl-worn"),
        ("Worm", "F15", "worm-notched"),
        ("guide", "F15", "level-wind-catches"),
        ("anything", "pawl-worn", "pawl-worn"),
        ("frame", "F31", ""),
        ("frame", "", ""),
        ("drag plate", "F41", "drag-plate-bad"),
        ("friction disc", "F41", "drag-discs-glazed"),
        ("preset", "F39", "preset-wrong"),
        ("bail spring", "F46", "bail-weak"),
        ("line roller", "F48", "line-roller-stuck"),
        ("cork", "F62", "cork-dry"),
        ("thumb bar", "F35", "thumb-bar-stuck"),
    ],
)
def test_a_row_of_the_fault_table_comes_to_a_finding(part: str, fault: str, found: str) -> None:
    assert works.finding_of(part, fault) == found


def test_readings_out_of_range_come_to_findings_that_there_are() -> None:
    for kind, bands in works.band_findings().items():
        assert kind in reading_kinds.kinds()
        assert set(bands) <= {"look", "act"}
        assert set(bands.values()) <= set(works.finding_words())


def test_chosen_works_come_in_the_order_of_the_list_and_once() -> None:
    found = works.chosen(["new-pawl", "strip-and-wash", "new-pawl"], "round multiplier")
    assert [work.id for work in found] == ["strip-and-wash", "new-pawl"]


@pytest.mark.parametrize(("name", "kind"), [("gild-it", "fly"), ("new-pawl", "fly")])
def test_a_work_that_is_not_done_is_refused(name: str, kind: str) -> None:
    with pytest.raises(ValueError, match=name):
        works.chosen([name], kind)
