"""Whose picture is drawn: a sheet as it is built, a reel as it is today, a visit with what was offered."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from django.http import Http404
from django.test import RequestFactory

from spoolwright.pages.gathered import subject
from spoolwright.shop.acts.send_quote import OfferedWork
from tests.pages import pier_reel
from tests.shop import walk


def asked(hand: Any, query: str = "") -> Any:
    request = RequestFactory().get(f"/{query}")
    request.user = hand
    return request


def offered(key: str, *works: str) -> Any:
    return replace(walk.option(key=key), works=[OfferedWork(work, work) for work in works])


@pytest.fixture
def mat(hand: Any) -> Any:
    """The pier reel on the mat, described by its sheet, its running pull read."""
    visit = pier_reel.on_the_mat(hand)
    pier_reel.read(hand, visit, "pull_full", 5.8 * walk.G, 0.5, "force", **pier_reel.HALF)
    return visit


def test_a_sheet_is_drawn_as_it_is_built(hand: Any, mat: Any) -> None:
    found = subject.of_sheet(asked(hand), "tarvak-58r")
    assert (found.door, found.key, found.title) == ("sheet", "tarvak-58r", "Tarvak 58R")
    assert [(state.key, state.words, state.works) for state in found.states] == [("as-built", "as built", ())]
    assert found.readings == {}
    assert found.back == "/sheets/tarvak-58r/"
    with pytest.raises(Http404, match="no reel sheet"):
        subject.of_sheet(asked(hand), "no-such-reel")


def test_a_reel_is_drawn_as_it_is_today(hand: Any, mat: Any) -> None:
    found = subject.of_reel(asked(hand), mat.reel_id)
    assert found.title == "Tarvak 58R of Ragna Solbu"
    assert [(state.words, state.works) for state in found.states] == [("today", ())]
    assert found.readings["pull_full"][0].measured.value == pytest.approx(5.8 * walk.G)
    assert f"number {mat.tag}" in found.rests_on


def test_what_was_done_since_the_readings_belongs_to_today(hand: Any, mat: Any) -> None:
    walk.answered(hand, walk.quoted(hand, mat, offered("most", "carbon-drag-set")))
    done = [walk.Done("carbon-drag-set", "Carbon set"), walk.Done("fit pawl", "Fit a pawl")]
    walk.write_work(hand=hand, visit=mat, labour=walk.Labour(done, 74))
    found = subject.of_reel(asked(hand), mat.reel_id)
    assert found.states[0].works == ("carbon-drag-set",)
    assert "with the works done since" in found.rests_on
    assert subject.of_visit(asked(hand), mat.tag).states[0].words == "as it came in"


def test_a_visit_has_today_and_each_option_that_stands(hand: Any, mat: Any) -> None:
    first = walk.quoted(hand, mat, offered("put right", "strip-and-wash"))
    walk.quoted(
        hand, mat, offered("improve", "carbon-drag-set", "not on our list"), offered("most", "new-pawl")
    )
    found = subject.of_visit(asked(hand), mat.tag)
    assert [(state.key, state.works) for state in found.states] == [
        ("today", ()),
        ("option-0", ("carbon-drag-set",)),
        ("option-1", ("new-pawl",)),
    ]
    assert found.state("option-1").words == "Most"
    assert found.state("no such state").key == "today"
    assert first.pk
    assert found.back == f"/diary/{mat.tag}/"


def test_an_extra_stands_on_what_was_agreed_before(hand: Any, mat: Any) -> None:
    walk.answered(hand, walk.quoted(hand, mat, offered("improve", "carbon-drag-set")))
    walk.quoted(hand, mat, offered("extra", "new-pawl"))
    states = subject.of_visit(asked(hand), mat.tag).states
    assert states[1].works == ("carbon-drag-set", "new-pawl")


def test_a_reel_that_no_sheet_describes_has_no_picture(hand: Any) -> None:
    visit = walk.arrived(hand)
    with pytest.raises(Http404, match="No sheet describes this reel"):
        subject.of_reel(asked(hand), visit.reel_id)
    with pytest.raises(Http404, match="carries this tag"):
        subject.of_visit(asked(hand), 10_000)


@pytest.mark.parametrize(
    ("typed", "share"), [("60 %", 0.6), ("60", 0.6), ("", 1.0), ("x", 1.0), ("120 %", 1.0), ("-5 %", 1.0)]
)
def test_a_fill_that_cannot_be_read_is_a_full_spool(typed: str, share: float) -> None:
    assert subject.fill_asked(typed) == pytest.approx(share)


def test_a_line_goes_along_only_where_it_is_one(hand: Any, mat: Any) -> None:
    found = subject.of_reel(asked(hand, "?line=nylon+0.40+mm&fill=60+%25"), mat.reel_id)
    assert (found.line, found.fill) == ("nylon 0.40 mm", pytest.approx(0.6))
    assert found.kept == "fill=60+%25&line=nylon+0.40+mm"
    assert subject.line_asked("hope") == ""
