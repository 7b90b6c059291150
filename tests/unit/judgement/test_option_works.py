"""Which works go into which option; the options themselves are tested in test_quote_options."""

from __future__ import annotations

import pytest

from spoolwright.judgement.findings import Finding
from spoolwright.judgement.job_price import Before
from spoolwright.judgement.option_works import (
    extra_way,
    fitting,
    past_guard,
    three_ways,
    without_replaced,
)
from spoolwright.judgement.quote_case import Around, Case, open_case
from spoolwright.judgement.shop_rates import starting_rates
from spoolwright.judgement.works import all_works, chosen
from spoolwright.sheets import reel_sheet

RATES = starting_rates()
KINDS = ("round multiplier", "low-profile multiplier", "lever drag", "fixed spool", "fly")


def bare(kind: str, *findings: Finding, before: Before | None = None) -> Case:
    around = Around(kind=kind, before=before) if before else Around(kind=kind)
    return open_case(None, {}, list(findings), RATES, around=around)


@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_of_reel_has_its_works_without_a_sheet(kind: str) -> None:
    case = bare(kind)
    assert all(kind in work.kinds for work in fitting(case))
    for way in three_ways(case):
        assert way.works
        assert {work.id for work in way.works} <= {work.id for work in fitting(case)}
        assert way.works == without_replaced(way.works)


def test_a_finding_is_answered_without_a_sheet_too() -> None:
    ways = three_ways(bare("round multiplier", Finding("pawl", "F15")))
    assert all("new-pawl" in [work.id for work in way.works] for way in ways)
    assert "strip-and-wash" in [work.id for work in ways[0].works]


def test_what_was_found_after_the_yes_is_asked_for_alone() -> None:
    """Trade handbook, chapter 9, scenario 1: pawl agreed, the split cog found at the strip-down."""
    before = Before("common", ("strip-and-wash", "regrease-gears", "set-and-prove", "new-pawl"))
    case = bare("round multiplier", Finding("pawl", "F15"), Finding("idler cog", "F16"), before=before)
    assert [work.id for work in extra_way(case).works] == ["new-idler-cog"]
    assert extra_way(bare("round multiplier", Finding("pawl", "F15"), before=before)).works == ()


def test_past_the_guard_it_is_said() -> None:
    case = open_case(reel_sheet.load("tarvak-52"), {}, [], RATES, samples=500)
    most = chosen(["carbon-drag-set-dry", "under-gear-disc"], "round multiplier")
    assert "the teeth of the main gear behind it would hold only" in past_guard(case, most)
    assert past_guard(case, []) == past_guard(bare("fly"), []) == ""


@pytest.mark.parametrize(
    ("slug", "part", "fault", "work"),
    [
        ("pellmar-30-2", "drag plate", "F41", "new-drag-plate"),
        ("pellmar-30-2", "preset", "F39", "set-preset"),
        ("lumvik-4000", "line roller", "F48", "line-roller-set"),
        ("lumvik-4000", "spool", "F49", "shim-spool"),
        ("brekkas-9-10", "clutch", "F61", "turn-one-way-clutch"),
        ("ostrell-s71", "thumb bar", "F35", "free-thumb-bar"),
    ],
)
def test_what_is_found_on_another_kind_is_put_right(slug: str, part: str, fault: str, work: str) -> None:
    case = open_case(reel_sheet.load(slug), {}, [Finding(part, fault)], RATES, samples=200)
    for way in three_ways(case)[:2]:
        assert work in [one.id for one in way.works]


def test_cork_is_dressed_where_there_is_cork() -> None:
    fly = reel_sheet.load("brekkas-9-10")
    assert fly.drag is not None
    cork = [w.model_copy(update={"material": "cork"}) if "friction" in w.name else w for w in fly.drag.stack]
    with_cork = fly.model_copy(update={"drag": fly.drag.model_copy(update={"stack": tuple(cork)})})
    found = [Finding("cork", "F62")]
    ways = [open_case(sheet, {}, found, RATES, samples=200) for sheet in (fly, with_cork)]
    offered = [{work.id for work in three_ways(case)[0].works} for case in ways]
    assert "dress-cork" not in offered[0]
    assert "dress-cork" in offered[1]


def test_nothing_is_done_twice() -> None:
    works = [*all_works().values(), *all_works().values()]
    left = without_replaced(works)
    assert len(left) == len({work.id for work in left})
