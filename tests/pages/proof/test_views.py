"""Promised beside measured, written by one hand and signed by another.

Readings of the whole way: the trade handbook, chapter 9, scenario 1: after the work start over run 2.9 to
2.7 kg, full 6.9 kg, float 0.09 mm, spin 31 s.
"""

from __future__ import annotations

import re
from typing import Any

import pytest
from django.test import Client

from spoolwright.shop.questions import by_number
from spoolwright.shop.questions.diary import diary
from spoolwright.shop.records.proof import Proof
from tests.pages import pier_reel
from tests.pages.sent import as_shown, fields
from tests.people import owner
from tests.shop import walk

pytestmark = pytest.mark.django_db


def address(visit: Any) -> str:
    return f"/visits/{visit.tag}/proof/"


def text(response: Any) -> str:
    bare = re.sub(r"<[^>]+>", " ", response.content.decode()).replace("\u00a0", " ")
    return " ".join(bare.split())


def full(hand: Any, visit: Any, kg: float, **where: Any) -> Any:
    return walk.read(hand, visit, "pull_full", kg * walk.G, 0.05 * walk.G, "force", **where).entry


def ratio(hand: Any, visit: Any, value: float) -> Any:
    return walk.read(hand, visit, "start_up_ratio", value, 0.02, "ratio").entry


def test_the_whole_way_from_the_page_that_promised_to_the_page_that_proves(
    hand: Any, desk_client: Client
) -> None:
    visit = pier_reel.ready_to_prove(hand, desk_client)
    shown = desk_client.get(address(visit))
    said = text(shown)
    assert "6.90 kg ± 0.10 kg" in said
    assert "Before the work: 5.80 kg ± 0.10 kg" in said
    assert said.count("Shown.") == 5
    assert "Chance that this is wrong: less than 0.1 %" in said
    assert "Guard band of 2 standard uncertainties" in said
    assert "Handle torque, again" in said, "what the release still asks for"
    sent = as_shown(desk_client, address(visit), "pairs")
    sent |= {"tried": ["level_wind", "tray"], "words": ["Runs like new."], "moved_to": ["post table"]}
    assert desk_client.post(address(visit), sent).status_code == 302
    proof = Proof.objects.get()
    assert [row.decision for row in proof.rows.all()] == ["shown"] * 5
    assert [check.key for check in proof.checks.all()] == ["level_wind", "tray"]
    assert by_number.visit(visit.pk).place == "post table"
    after = text(desk_client.get(address(visit)))
    assert "Whoever wrote it does not sign it" in after
    second = pier_reel.signed_in(owner())
    signing = as_shown(second, address(visit), "seen")
    assert second.post(f"{address(visit)}{proof.pk}/sign/", signing).status_code == 302
    assert "A second person winds it blind and signs: Ingjerd Vannes" in text(second.get(address(visit)))
    assert diary(visit.pk).next.act == "invoice"


def test_before_the_work_nothing_can_be_proved(hand: Any, desk_client: Client) -> None:
    visit = walk.agreed(hand)
    full(hand, visit, 6.9)
    page = desk_client.get(address(visit))
    assert "No work is written in the diary yet" in text(page)
    assert "Write the proof" not in page.content.decode()


def test_without_a_promise_there_is_nothing_to_prove(hand: Any, desk_client: Client) -> None:
    assert "Nothing was promised" in text(desk_client.get(address(walk.arrived(hand))))


def test_the_latest_comparable_reading_is_taken(hand: Any, desk_client: Client, visit: Any) -> None:
    full(hand, visit, 5.0)
    struck = full(hand, visit, 9.0)
    full(hand, visit, 6.9)
    last = full(hand, visit, 3.0)
    walk.strike_entry(hand=hand, entry=struck, reason="scale not at zero")
    walk.strike_entry(hand=hand, entry=last, reason="wrong reel")
    said = text(desk_client.get(address(visit)))
    assert "6.90 kg ± 0.10 kg" in said
    assert "9.00 kg" not in said
    assert "3.00 kg" not in said


def test_other_conditions_are_named_and_not_compared(hand: Any, desk_client: Client) -> None:
    visit = pier_reel.on_the_mat(hand)
    promise = pier_reel.walk.OfferedPromise(
        "spin_time", "time", low=20.0, reading_kind="spin_time", conditions={"line": "off", "brakes": "off"}
    )
    walk.answered(hand, walk.quoted(hand, visit, walk.option(promises=(promise,))))
    walk.worked(hand, visit)
    where = {"line": "on", "brakes": "off", "temperature": 291.15}
    pier_reel.read(hand, visit, "spin_time", 31.0, 0.8, "time", **where)
    page = desk_client.get(address(visit))
    assert "Not compared." in text(page)
    assert "One with the line off, the other with the line on." in text(page)
    assert f'href="/diary/{visit.tag}/' in page.content.decode()
    assert "Write the proof" not in page.content.decode()


def test_a_failed_promise_says_so_and_may_be_written(hand: Any, desk_client: Client, visit: Any) -> None:
    full(hand, visit, 5.0)
    assert "Failed. The reading lies outside by more than its uncertainty." in text(
        desk_client.get(address(visit))
    )
    sent = as_shown(desk_client, address(visit), "pairs")
    assert desk_client.post(address(visit), sent).status_code == 302
    assert Proof.objects.get().rows.get().decision == "failed"
    assert diary(visit.pk).next.act == "work"


def test_what_is_not_measured_is_left_out_and_said(hand: Any, desk_client: Client, visit: Any) -> None:
    full(hand, visit, 6.9)
    assert "A proof written now leaves it out" in text(desk_client.get(address(visit)))


def test_a_reading_taken_meanwhile_is_looked_at_before_it_proves_anything(
    hand: Any, desk_client: Client, visit: Any
) -> None:
    full(hand, visit, 6.9)
    sent = as_shown(desk_client, address(visit), "pairs") | {"words": ["Runs like new."]}
    full(hand, visit, 5.0)
    response = desk_client.post(address(visit), sent)
    page = response.content.decode()
    assert response.status_code == 422
    assert "Readings were taken or struck since you last looked" in page
    assert "Runs like new." in page
    assert not Proof.objects.exists()
    again = fields(page, "pairs")
    assert desk_client.post(address(visit), again).status_code == 302


def test_somebody_elses_word_in_between_is_mentioned(hand: Any, desk_client: Client, visit: Any) -> None:
    full(hand, visit, 6.9)
    sent = as_shown(desk_client, address(visit), "pairs")
    walk.write_word(hand=owner(), visit=visit, words="old parts bagged")
    response = desk_client.post(address(visit), sent, follow=True)
    assert "Meanwhile Ingjerd Vannes wrote in this diary too." in text(response)


@pytest.mark.parametrize(("field", "typed"), [("tried", "luck"), ("moved_to", "attic"), ("seen", "x")])
def test_what_is_not_offered_is_refused(
    hand: Any, desk_client: Client, visit: Any, field: str, typed: str
) -> None:
    full(hand, visit, 6.9)
    sent = as_shown(desk_client, address(visit), "pairs") | {field: [typed]}
    response = desk_client.post(address(visit), sent)
    assert response.status_code == 422
    assert not Proof.objects.exists()


def test_what_lay_left_over_is_not_forgotten(hand: Any, desk_client: Client, visit: Any) -> None:
    labour = walk.Labour([walk.Done("service", "Strip")], 5, left_over="one E-clip <2 mm>")
    walk.write_work(hand=hand, visit=visit, labour=labour)
    assert "one E-clip &lt;2 mm&gt;" in desk_client.get(address(visit)).content.decode()


def test_who_wrote_it_does_not_sign_it_and_nobody_signs_twice(
    hand: Any, desk_client: Client, visit: Any
) -> None:
    full(hand, visit, 6.9)
    desk_client.post(address(visit), as_shown(desk_client, address(visit), "pairs"))
    signing = f"{address(visit)}{Proof.objects.get().pk}/sign/"
    own = desk_client.post(signing, {"words": "mine"})
    assert own.status_code == 422
    assert "a second person winds the reel blind" in text(own)
    second = pier_reel.signed_in(owner())
    assert second.post(signing, {"words": "smooth", "seen": "3"}).status_code == 302
    assert second.post(signing, {}).status_code == 422
    assert "smooth" in diary(visit.pk).blocks[-1].entry.words


def test_a_proof_of_another_reel_is_not_signed_here(hand: Any, desk_client: Client, visit: Any) -> None:
    other = walk.arrived(hand, name="Jonna Fure", reel="Ostrell S71")
    entry = visit.entries.first()
    assert desk_client.post(f"{address(other)}{entry.pk}/sign/").status_code == 404
    assert desk_client.post(f"{address(visit)}{entry.pk}/sign/").status_code == 404
    assert desk_client.get("/visits/999/proof/").status_code == 404


def test_in_the_readers_units(hand: Any, visit: Any) -> None:
    from spoolwright.shop.acts.change_person import change_person

    full(hand, visit, 6.9)
    change_person(hand=hand, person=hand, units="imperial")
    said = text(pier_reel.signed_in(hand).get(address(visit)))
    assert "15.21 lb" in said
    assert "promised 13.2 to 17.6 lb" in said
