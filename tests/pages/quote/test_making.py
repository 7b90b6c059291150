"""A quote in the making: what each option earns, what it may come to, what stands in its way."""

from __future__ import annotations

from typing import Any

import pytest
from django.http import QueryDict
from django.test import Client

from spoolwright.pages.quote.making import Making
from tests.pages import pier_reel
from tests.pages.sent import as_shown
from tests.shop import walk

pytestmark = pytest.mark.django_db


def made(desk: Any, sent: dict[str, list[str]] | None = None) -> Making:
    if sent is None:
        return Making(desk, None)
    data = QueryDict(mutable=True)
    for name, values in sent.items():
        data.setlist(name, values)
    return Making(desk, data)


def test_an_improved_reel_earns_more_an_hour_than_one_put_right(visit: Any, sit_down: Any) -> None:
    put_right, improve, most = made(sit_down(visit)).options
    assert improve.earned.per_hour_minor > put_right.earned.per_hour_minor
    assert improve.earned.minutes == improve.option.minutes + 25, "office and post of a posted job"
    assert [now.ceiling_minor for now in (put_right, improve)] == [855_60, 1269_60]
    assert most.whole_minor == most.option.total_minor


def test_besides_lists_everything_expected_that_is_not_promised(visit: Any, sit_down: Any) -> None:
    now = made(sit_down(visit)).options[1]
    said = [value.quantity for value in now.besides]
    assert any("tenth of its line" in words for words in said)
    assert not any("start-up pull over running" in words.lower() for words in said)
    assert "the weakest part behind it" in now.carried


def test_two_works_for_one_place_are_pointed_out(desk_client: Client, visit: Any, sit_down: Any) -> None:
    sent = as_shown(desk_client, f"/visits/{visit.tag}/quote/", "moved_to")
    sent["works_1"] = [*sent["works_1"], "hybrid-spool-bearings"]
    notes = made(sit_down(visit), sent).options[1].notes
    assert any("leave one of them out" in words for words in notes)


def test_an_extra_above_the_cap_is_a_question_that_has_to_wait(
    hand: Any, desk_client: Client, visit: Any, sit_down: Any
) -> None:
    pier_reel.answered(hand, pier_reel.quoted(desk_client, visit), cap=1110_00)
    walk.write_finding(hand=hand, visit=visit, part="idler cog", fault="F16", evidence="split")
    making = made(sit_down(visit))
    assert not making.is_inside_cap
    assert making.send["moved_to"].value() == "asked shelf"
    assert "over the cap of 1,110.00 kr" in making.options[0].ruling


def test_the_place_of_an_extra_inside_the_cap_does_not_change(
    hand: Any, desk_client: Client, visit: Any, sit_down: Any
) -> None:
    pier_reel.answered(hand, pier_reel.quoted(desk_client, visit, moved_to=["mat"]))
    walk.write_finding(hand=hand, visit=visit, part="idler cog", fault="F16", evidence="split")
    making = made(sit_down(visit))
    assert making.is_inside_cap
    assert making.send["moved_to"].value() == "mat"


def test_faults_of_an_option_that_is_not_offered_stand_in_nobodys_way(
    desk_client: Client, visit: Any, sit_down: Any
) -> None:
    sent = as_shown(desk_client, f"/visits/{visit.tag}/quote/", "moved_to") | {"do": ["ask"]}
    sent |= {"promise_2-pull_full_low": ["ninety stone"]}
    assert not made(sit_down(visit), sent).may_be_sent()
    del sent["offer_2"]
    assert made(sit_down(visit), sent).may_be_sent()


def test_the_words_of_an_extra_say_what_it_holds(
    hand: Any, desk_client: Client, visit: Any, sit_down: Any
) -> None:
    pier_reel.answered(hand, pier_reel.quoted(desk_client, visit))
    walk.write_finding(hand=hand, visit=visit, part="idler cog", fault="F16", evidence="split")
    sent = as_shown(desk_client, f"/visits/{visit.tag}/quote/", "moved_to") | {"do": ["ask"]}
    making = made(sit_down(visit), sent)
    assert making.may_be_sent()
    (option,) = making.offered()["options"]
    assert option.title == "Found since: new level-wind cog"
