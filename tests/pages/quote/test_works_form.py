"""Works in or out, minutes, prices, lines: what is read of them, and what counts as changed."""

from __future__ import annotations

from typing import Any

import pytest
from django.http import QueryDict
from django.test import Client

from spoolwright.pages.quote.works_form import MOST_LINES, WorksForm
from spoolwright.sheets import reel_sheet
from tests.pages.sent import as_shown

pytestmark = pytest.mark.django_db


@pytest.fixture
def read(desk_client: Client, visit: Any, sit_down: Any) -> Any:
    """`read(works_1=[...])`: the form as it is read with these changes."""
    sent = as_shown(desk_client, f"/visits/{visit.tag}/quote/", "moved_to")

    def make(**changes: list[str]) -> WorksForm:
        data = QueryDict(mutable=True)
        for name, values in (sent | changes).items():
            data.setlist(name, values)
        return WorksForm(data, sit_down(visit))

    return make


def test_sent_back_as_shown_nothing_counts_as_changed(read: Any) -> None:
    form = read()
    assert form.is_valid()
    for number in range(3):
        changes = form.changes(number)
        assert (changes.minutes, changes.part_prices, changes.more) == ({}, {}, ())
        assert form.chosen(number) == form.desk.ways[number].works


def test_only_what_was_typed_otherwise_counts(read: Any) -> None:
    form = read(
        **{"minutes_new-pawl": ["20"], "price_new-pawl_0": ["80"], "price_carbon-drag-set_0": ["150"]}
    )
    assert form.changes(1).minutes == {"new-pawl": 20}
    assert form.changes(1).part_prices == {"pawl": 80_00, "carbon disc set": 150_00}
    assert form.changes(0).part_prices == {"pawl": 80_00}, "the carbon set is not in the first"


def test_a_discount_is_taken_off(read: Any) -> None:
    form = read(
        line_0_what=["For the third reel"], line_0_sum=["100"], line_0_kind=["discount"], line_0_in=["0", "2"]
    )
    assert [charge.unit_minor for charge in form.changes(0).more] == [-100_00]
    assert form.changes(1).more == ()


def test_there_is_always_one_empty_line_and_never_too_many(read: Any) -> None:
    assert len(read().line_rows) == 1
    assert len(read(line_0_what=["a"], line_1_what=["b"]).line_rows) == 3
    many = {f"line_{n}_what": ["x"] for n in range(MOST_LINES + 3)}
    assert len(read(**many).line_rows) == MOST_LINES


def test_what_cannot_be_read_leaves_the_proposal_standing_and_is_said(read: Any) -> None:
    form = read(**{"price_new-pawl_0": ["dear"], "radius": ["0 mm"]})
    assert not form.is_valid()
    assert set(form.errors) == {"price_new-pawl_0", "radius"}
    assert form.told("price_new-pawl_0") == 95_00
    assert form.told("radius") == pytest.approx(0.0235)
    assert form.changes(0).part_prices == {}


def test_the_setting_is_that_of_the_readings(read: Any) -> None:
    form = read()
    assert form.told("radius") == pytest.approx(0.0235)
    assert form.told("star_turns") == 2.5


def test_a_reel_without_a_reading_is_promised_at_its_full_spool_and_half_its_star(
    hand: Any, sit_down: Any
) -> None:
    from tests.pages import pier_reel

    form = WorksForm(None, sit_down(pier_reel.on_the_mat(hand)))
    sheet = reel_sheet.load("tarvak-58r")
    assert form.told("radius") == pytest.approx(sheet.spool.full_radius)
    assert form.told("star_turns") == sheet.drag.turns_to_full / 2


def test_works_that_somebody_ticked_move_up_to_the_proposed_ones(read: Any) -> None:
    plain = {row.work.id for row in read().proposed_rows}
    assert "tape-arbor" not in plain
    ticked = read(works_2=["tape-arbor"])
    assert "tape-arbor" in {row.work.id for row in ticked.proposed_rows}
    shown = {row.work.id for row in (*ticked.proposed_rows, *ticked.other_rows)}
    assert shown == {work.id for work in ticked.works}
