"""A finding by hand: the part, touched or said; the row of the fault table; what the readings point at."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from tests.pages.diary.at_the_desk import arrived, form, last, send, text, typed_way, way

pytestmark = pytest.mark.django_db


def test_the_fault_table_is_that_of_this_kind_of_reel(bench: Client, torbal: Any) -> None:
    page = bench.get(way(arrived(torbal), "finding"))
    rows = {row.id for row in form(page).fault_rows}
    assert "F15" in rows
    assert "F60" not in rows
    said = text(page)
    assert "pawl tip worn 45 %" in said
    assert "judgement prior" in said
    assert "Check: pawl out: one-sided shine" in said


def test_a_touched_part_takes_its_name_into_the_form(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    page = bench.get(f"{way(visit, 'finding')}?touched=level-wind")
    assert form(page)["part"].value().startswith("Level wind")
    assert form(page)["touched"].value() == "level-wind"
    assert "?touched=pinion#next" in page.content.decode()
    assert form(bench.get(f"{way(visit, 'finding')}?touched=moon"))["part"].value() is None


def test_the_parts_of_the_sheet_are_offered(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    offered = form(bench.get(way(visit, "finding"))).fields["part"].widget.offered
    assert "Pinion, 10 teeth" in offered
    assert len(offered) > 50


def test_the_readings_point_at_what_may_be_wrong(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    assert not form(bench.get(way(visit, "finding"))).hints
    send(bench, typed_way(visit, "end_float"), values="0.42 mm")
    assert "spool end-float: spool knocks sideways" in text(bench.get(way(visit, "finding")))


def test_it_is_written_as_it_was_said(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    sent = {"part": "pawl", "fault": "F15", "evidence": "tip worn to a hook", "touched": "level-wind"}
    assert send(bench, way(visit, "finding"), **sent).status_code == 302
    finding = last(visit).part
    assert (finding.part, finding.fault, finding.touched) == ("pawl", "F15", "level-wind")
    said = text(bench.get(f"/diary/{visit.tag}/"))
    assert "Found on the pawl: tip worn to a hook (F15, level wind catches or stops at one end)" in said


def test_a_reel_without_a_sheet_takes_findings_too(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal, sheet="")
    page = bench.get(way(visit, "finding"))
    assert form(page).drawing == ""
    assert len(form(page).fault_rows) == 70
    assert send(bench, way(visit, "finding"), part="foot", evidence="bent").status_code == 302
