"""Striking out by hand: with a reason, once, and readable for ever."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.shop.acts.write_finding import write_finding
from spoolwright.shop.questions.diary import diary
from tests.pages.diary.at_the_desk import arrived, send, text, way

pytestmark = pytest.mark.django_db


def finding(hand: Any, visit: Any) -> Any:
    return write_finding(hand=hand, visit=visit, part="pawl", fault="F15", evidence="tip worn left").entry


def test_struck_out_with_its_reason(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    entry = finding(torbal, visit)
    answer = bench.post(f"/diary/{visit.tag}/strike/{entry.pk}/", {"reason": "left and right mixed up"})
    assert answer.status_code == 302
    assert answer.headers["Location"] == f"/diary/{visit.tag}/#entry-{entry.pk}"
    assert diary(visit.pk).blocks[-1].strike.reason == "left and right mixed up"


@pytest.mark.parametrize("reason", ["", "   "])
def test_without_a_reason_nothing_is_struck(bench: Client, torbal: Any, reason: str) -> None:
    visit = arrived(torbal)
    entry = finding(torbal, visit)
    answer = bench.post(f"/diary/{visit.tag}/strike/{entry.pk}/", {"reason": reason})
    assert answer.status_code == 422
    assert "The reason is missing" in text(answer)
    assert not diary(visit.pk).blocks[-1].is_struck


def test_the_second_strike_is_told_of_the_first(bench: Client, post: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    entry = finding(torbal, visit)
    post.post(f"/diary/{visit.tag}/strike/{entry.pk}/", {"reason": "mixed up"})
    answer = bench.post(f"/diary/{visit.tag}/strike/{entry.pk}/", {"reason": "too"})
    assert answer.status_code == 422
    assert "Ingjerd Vannes has struck this" in text(answer)


def test_written_again_points_from_the_old_to_the_new(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    old = finding(torbal, visit)
    page = bench.get(f"{way(visit, 'finding')}?again={old.pk}")
    form = page.context["open"].form
    assert form["evidence"].value() == "tip worn left"
    assert form["fault"].value() == "F15"
    sent = {"part": "pawl", "fault": "F15", "evidence": "tip worn right", "again": old.pk}
    refused = send(bench, way(visit, "finding"), **sent)
    assert refused.status_code == 422
    assert not diary(visit.pk).blocks[-1].is_struck
    assert send(bench, way(visit, "finding"), **sent, reason="left and right mixed up").status_code == 302
    blocks = diary(visit.pk).blocks
    assert blocks[-2].strike.replaced_by == blocks[-1].entry
    page = bench.get(f"/diary/{visit.tag}/").content.decode()
    assert f'href="#entry-{blocks[-1].entry.pk}"' in page


def test_an_entry_of_another_diary_is_not_written_again_here(bench: Client, torbal: Any) -> None:
    visit, other = arrived(torbal), arrived(torbal, name="Aslak Rein", sheet="")
    old = finding(torbal, other)
    form = bench.get(f"{way(visit, 'finding')}?again={old.pk}").context["open"].form
    assert form.old is None
    assert not form["evidence"].value()


def test_a_struck_dispatch_opens_the_diary_again(bench: Client, torbal: Any) -> None:
    from tests.shop import walk

    visit = walk.agreed(torbal)
    gone = walk.gone(torbal, visit).entry
    assert "It went home" in text(bench.get(f"/diary/{visit.tag}/"))
    bench.post(f"/diary/{visit.tag}/strike/{gone.pk}/", {"reason": "the carrier did not come"})
    assert "It went home" not in text(bench.get(f"/diary/{visit.tag}/"))
    form = bench.get(f"{way(visit, 'dispatch')}?again={gone.pk}").context["open"].form
    assert form["carrier_number"].value() == "GV 17"
    assert not form.old_stands
