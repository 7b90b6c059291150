"""The passport: one reel's whole life on one page, and its marks and sheet written into it."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import connection
from django.test import Client
from django.test.utils import CaptureQueriesContext

from spoolwright.shop.questions import by_number
from tests.pages.coming import came
from tests.people import bench_hand
from tests.shop import walk

pytestmark = pytest.mark.django_db


def read(desk: Client, reel: int) -> str:
    response = desk.get(f"/reels/{reel}/")
    assert response.status_code == 200
    return response.content.decode()


def test_it_tells_whose_it_is_how_it_is_known_and_what_became_of_it(desk: Client, visit: Any) -> None:
    page = read(desk, visit.reel_id)
    for said in (
        "Tarvak 58R, of",
        "Ragna Solbu",
        "Known by serial 5801.",
        "At home since",
        "“level wind catches at the right end”",
        "Weighed 338\u00a0g.",
        "Found: pawl, tip worn",
        "Done: Strip, wash, regrease; Fit a pawl.",
        "Check spring, 2 pieces, own-made from 0.8 mm wire",
        "Next service between",
    ):
        assert said in page, said


def test_a_reading_taken_twice_is_a_chart_with_its_numbers(desk: Client, visit: Any) -> None:
    page = read(desk, visit.reel_id)
    assert 'data-chart="chart-pull-full"' in page
    assert "Last read as 6.900 kg ± 0.010 kg" in page  # what walk.everything reads after the work
    assert page.count("the same in numbers") == 1


def test_what_was_struck_out_is_left_to_the_diary(desk: Client, visit: Any) -> None:
    assert "told by picture" not in read(desk, visit.reel_id)


def test_a_sheet_is_said_and_its_section_is_drawn(desk: Client, visit: Any) -> None:
    assert "<svg" not in read(desk, visit.reel_id).split("what it is made of")[1].split("readings</h2>")[0]
    sent = {"sheet": "tarvak-58r", "version": visit.reel.version}
    assert desk.post(f"/reels/{visit.reel_id}/sheet/", sent).status_code == 302
    page = read(desk, visit.reel_id)
    assert 'class="section-drawing narrow"' in page
    assert 'href="/sheets/tarvak-58r/?version=1"' in page


def test_the_second_of_two_who_say_its_sheet_is_told(desk: Client, visit: Any) -> None:
    sent = {"sheet": "tarvak-58r", "version": visit.reel.version}
    desk.post(f"/reels/{visit.reel_id}/sheet/", sent)
    second = desk.post(f"/reels/{visit.reel_id}/sheet/", sent)
    assert second.status_code == 422
    assert "changed by somebody else" in second.content.decode()


def test_a_mark_is_added_and_none_is_changed(desk: Client, visit: Any) -> None:
    sent = {"kind": "engraving", "words": "R.S. <1962>"}
    assert desk.post(f"/reels/{visit.reel_id}/mark/", sent).status_code == 302
    page = read(desk, visit.reel_id)
    assert "Engraving: R.S. &lt;1962&gt;" in page
    assert [mark.words for mark in by_number.reel(visit.reel_id).marks.order_by("id")] == [
        "5801",
        "R.S. <1962>",
    ]


@pytest.mark.parametrize("sent", [{"kind": "engraving", "words": ""}, {"kind": "smell", "words": "old oil"}])
def test_a_mark_that_cannot_be_written_is_kept_beside_its_fault(
    desk: Client, visit: Any, sent: dict[str, str]
) -> None:
    response = desk.post(f"/reels/{visit.reel_id}/mark/", sent)
    page = response.content.decode()
    assert response.status_code == 422
    assert "Nothing was written" in page
    assert f'value="{sent["words"]}"' in page or not sent["words"]


def test_a_reel_that_is_here_says_where_and_has_no_next_service(desk: Client) -> None:
    visit = came()
    page = read(desk, visit.reel_id)
    assert f'On the mat as <a href="/diary/{visit.tag}/">number {visit.tag}</a>' in page
    assert "Next service" not in page
    assert "Nothing has been read yet." in page


def test_no_reel_no_passport(desk: Client) -> None:
    for address in ("/reels/999/", "/reels/999/mark/", "/reels/999/sheet/"):
        answer = desk.get(address) if address.endswith("999/") else desk.post(address)
        assert answer.status_code == 404


def test_more_visits_cost_no_more_queries(desk: Client, visit: Any) -> None:
    def count() -> int:
        with CaptureQueriesContext(connection) as counted:
            desk.get(f"/reels/{visit.reel_id}/")
        return len(counted)

    once = count()
    from spoolwright.shop.acts.receive_parcel import ArrivingReel, receive_parcel

    reel = by_number.reel(visit.reel_id)
    again = receive_parcel(hand=bench_hand(), customer=reel.customer, reels=[ArrivingReel(reel)])
    walk.read(bench_hand(), again.written[0].entry.visit, "pull_full", 57.0, 0.5, "force")
    assert count() <= once + 1  # the one mark of findings on the drawing that an open visit asks for
