"""The diary read from top to bottom: every kind of entry, the struck ones, the head, the open block."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.shop.acts.write_word import write_word
from tests.pages.diary.at_the_desk import HTMX, arrived, pull_csv, send, text, typed_way, way
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_a_whole_visit_is_read_in_the_order_it_happened(bench: Client, torbal: Any) -> None:
    visit = walk.everything(torbal)
    said = text(bench.get(f"/diary/{visit.tag}/"))
    in_order = (
        "the parcel 742 g",
        "Found on the pawl: tip worn",
        "5.800 kg",
        "1,104.00 kr",
        "“yes, up to 1,200”",
        "Paid: 200.00 kr",
        "2 × check spring, own-made from 0.8 mm wire",
        "6.900 kg",
        "Invoice 1",
        "told by picture",
        "weighed 745 g",
    )
    places = [said.find(words) for words in in_order]
    assert -1 not in places, in_order[places.index(-1)]
    assert places == sorted(places)


def test_a_struck_entry_stays_readable_with_its_reason(bench: Client, torbal: Any) -> None:
    visit = walk.everything(torbal)
    page = bench.get(f"/diary/{visit.tag}/")
    assert "<del>" in page.content.decode()
    assert "written in the wrong diary" in text(page)


def test_the_margin_has_day_hour_hand_and_place_apart(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    said = text(bench.get(f"/diary/{visit.tag}/"))
    assert f"{torbal.shown} mat" in said


def test_the_torque_stands_beside_the_pull(bench: Client, torbal: Any) -> None:
    # Handbook scenario 1 (invented sums): 2.6 kg at 23.5 mm is 0.599 N m.
    visit = arrived(torbal)
    walk.read(torbal, visit, "pull_run", 2.6 * walk.G, 0.0, "force")
    assert "0.599 N m" in text(bench.get(f"/diary/{visit.tag}/"))


def test_a_dunked_reel_says_that_it_must_not_be_turned(bench: Client, torbal: Any) -> None:
    from django.utils import timezone

    wet = arrived(torbal, under_water_at=timezone.now())
    assert "Do not turn the handle" in text(bench.get(f"/diary/{wet.tag}/"))
    dry = arrived(torbal, name="Aslak Rein")
    assert "Do not turn the handle" not in text(bench.get(f"/diary/{dry.tag}/"))


def test_units_are_the_readers_own(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    walk.read(torbal, visit, "pull_run", 2.6 * walk.G, 0.05, "force")
    torbal.units = "imperial"
    torbal.save()
    said = text(bench.get(f"/diary/{visit.tag}/"))
    assert "5.732 lb" in said
    assert "2.60 kg" not in said


def test_the_piece_alone_is_the_open_block(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    piece = bench.get(way(visit, "finding"), headers=HTMX).content.decode()
    assert piece.strip().startswith('<li class="leaf entry open-block" id="next"')
    assert "<h1>" not in piece


def test_a_page_without_scripts_shows_the_chosen_form_in_the_whole_diary(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    page = bench.get(way(visit, "finding"))
    assert "the parcel 742 g" in text(page)
    assert page.context["open"].form.what == "finding"


@pytest.mark.parametrize("address", ["write/song/", "reading/song/", "trace/99/", "strike/99/"])
def test_what_there_is_not_is_not_found(bench: Client, torbal: Any, address: str) -> None:
    visit = arrived(torbal)
    assert bench.get(f"/diary/{visit.tag}/{address}").status_code == 404


def test_a_diary_of_another_visit_does_not_show_this_ones_entries(bench: Client, torbal: Any) -> None:
    visit, other = arrived(torbal), arrived(torbal, name="Aslak Rein", sheet="")
    entry = write_word(hand=torbal, visit=visit, words="mine").entry
    assert bench.get(f"/diary/{other.tag}/strike/{entry.pk}/").status_code == 404
    assert bench.get(f"/diary/{other.tag}/trace/{entry.pk}/").status_code == 404
    assert bench.get("/diary/404404/").status_code == 404


def test_a_trace_leads_to_its_chart_with_its_numbers_and_its_budget(bench: Client, torbal: Any) -> None:
    from tests.pages.diary.at_the_desk import PULL, file, form

    visit = arrived(torbal)
    looked = send(bench, way(visit, "pull"), "look", signal=file(pull_csv()), **PULL)
    kept = form(looked).file.last.pk
    send(bench, way(visit, "pull"), signal_kept=kept, **PULL)
    entry = visit.entries.latest("seq")
    page = bench.get(f"/diary/{visit.tag}/trace/{entry.pk}/")
    assert page.status_code == 200
    said = text(page)
    assert "scatter while slipping" in said
    assert "the same in numbers" in said
    assert (
        f'href="/diary/{visit.tag}/trace/{entry.pk}/"' in bench.get(f"/diary/{visit.tag}/").content.decode()
    )


def test_the_reading_that_comes_next_stands_open_when_it_is_asked_for(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    assert bench.get(way(visit, "reading")).context["open"].form.kind.id == "mass"
    send(bench, typed_way(visit, "mass"), values="338 g", line="on")
    assert bench.get(way(visit, "reading")).context["open"].form.what == "reading"
