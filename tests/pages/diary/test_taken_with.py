"""Spins, noises and inertias taken with one of the shop's own: offered, remembered, kept, read afterwards."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.bench import spin_clock
from spoolwright.shop.acts.add_instrument import Known, add_instrument
from spoolwright.shop.acts.retire_instrument import retire_instrument
from tests.pages.diary.at_the_desk import SPIN, arrived, file, form, last, send, text, way
from tests.pages.diary.test_gears import SENT, turned
from tests.pages.diary.test_inertia import asked, to
from tests.pages.diary.test_spin import recording
from tests.shop import walk

pytestmark = pytest.mark.django_db
WAYS = ("spin", "bearing", "gears", "inertia")


def phone(hand: Any, mark: str = "P1", share: float = 0.01) -> Any:
    known = Known("The bench phone", 0.001, share=share)
    return add_instrument(hand=hand, mark=mark, kind="phone", known=known, dimension="time")


def drawn(client: Client, visit: Any, **sent: Any) -> Any:
    return form(send(client, way(visit, "spin"), "look", signal=file(recording().to_csv()), **SPIN, **sent))


@pytest.mark.parametrize("what", WAYS)
def test_nothing_is_asked_where_none_fits(bench: Client, torbal: Any, what: str) -> None:
    visit = arrived(torbal)
    add_instrument(hand=torbal, mark="H1", kind="thermometer", known=Known("Thermometer", 0.1))
    at = to(visit, "sizes") if what == "inertia" else way(visit, what)
    assert "Taken with" not in text(bench.get(at))


@pytest.mark.parametrize("what", ["spin", "bearing", "gears"])
def test_what_records_sound_is_offered_and_a_caliper_is_not(bench: Client, torbal: Any, what: str) -> None:
    visit = arrived(torbal)
    walk.caliper(torbal)
    phone(torbal)
    page = bench.get(way(visit, what))
    assert "The bench phone (P1)" in text(page)
    assert "The long caliper" not in text(page)
    assert form(page)["instrument"].value() == ""


def test_a_spin_names_its_phone_whose_clock_is_in_the_uncertainty(bench: Client, torbal: Any) -> None:
    visit, tool = arrived(torbal), phone(torbal)
    plain, taken = drawn(bench, visit), drawn(bench, visit, instrument="P1")
    assert taken.spun.stop_time.uncertainty > plain.spun.stop_time.uncertainty
    assert any(row.source == spin_clock.WORDS for row in taken.drawn["budget"])
    send(bench, way(visit, "spin"), signal_kept=taken.file.last.pk, **SPIN, instrument="P1")
    entry = last(visit)
    assert entry.part.instrument == tool
    assert "With: phone P1." in text(bench.get(f"/diary/{visit.tag}/"))
    assert form(bench.get(way(visit, "spin"))).initial["instrument"] == "P1"


def test_it_stays_when_the_spin_is_written_again(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    phone(torbal), phone(torbal, "P2")
    kept = drawn(bench, visit).file.last.pk
    send(bench, way(visit, "spin"), signal_kept=kept, **SPIN, instrument="P2")
    again = f"{way(visit, 'spin')}?again={last(visit).entry.pk}"
    send(bench, way(visit, "spin"), signal_kept=kept, **SPIN, instrument="P1")
    assert form(bench.get(again))["instrument"].value() == "P2"
    retire_instrument(hand=torbal, instrument=last(visit).part.instrument, why="lost")
    assert form(bench.get(way(visit, "spin")))["instrument"].value() == ""


def test_gears_keep_it_too(bench: Client, torbal: Any) -> None:
    visit, tool = arrived(torbal), phone(torbal)
    heard = {"signal": file(turned(), "g.wav", "audio/wav"), "instrument": "P1", **SENT}
    kept = form(send(bench, way(visit, "gears"), "look", **heard)).file.last.pk
    send(bench, way(visit, "gears"), signal_kept=kept, instrument="P1", **SENT)
    assert last(visit).part.instrument == tool
    again = f"{way(visit, 'gears')}?again={last(visit).entry.pk}"
    assert form(bench.get(again))["instrument"].value() == "P1"


def test_an_inertia_by_sizes_rests_on_the_caliper(bench: Client, torbal: Any) -> None:
    visit, tool = arrived(torbal), walk.caliper(torbal)
    phone(torbal)
    assert "The bench phone" not in text(bench.get(to(visit, "sizes")))
    send(bench, to(visit, "sizes"), **asked("sizes"), instrument="C1")
    part = last(visit).part
    assert part.instrument == tool
    sources = [row[1] for row in part.analysis["budget"]]
    assert "Diameter of the flanges: its stated limit of error" in sources
    assert "Mass of the spool as it turns: last digit that was typed" in sources
    again = f"{way(visit, 'inertia')}?again={last(visit).entry.pk}"
    assert form(bench.get(again))["instrument"].value() == "C1"


def test_a_phone_is_offered_where_it_can_record_the_swing(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    phone(torbal)
    assert "The bench phone (P1)" in text(bench.get(to(visit, "threads")))


def test_one_that_is_not_on_offer_is_refused(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    phone(torbal)
    assert send(bench, to(visit, "sizes"), **asked("sizes"), instrument="P1").status_code == 302
    assert last(visit).part.instrument is None
    answer = send(bench, way(visit, "spin"), "look", **SPIN, instrument="X9")
    assert "instrument" in form(answer).errors
