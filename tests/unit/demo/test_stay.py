"""A stay told in short sentences: each is written by the right hand, through the shop's own acts."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.demo import measuring
from spoolwright.demo.nature import Nature
from spoolwright.demo.offers import told_option
from spoolwright.demo.pictures import cog
from spoolwright.demo.shop_hours import at
from spoolwright.demo.signals import KILOGRAM as KG
from spoolwright.demo.stay import Stay, arrive, kilograms, pull_conditions, three_tries
from spoolwright.judgement.price import Charge
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Envelope
from spoolwright.shop.acts.record_answer import Said
from spoolwright.shop.acts.send_home import WayHome
from spoolwright.shop.acts.send_quote import OfferedPromise, OfferedWork
from spoolwright.shop.questions.diary import diary
from tests.unit.demo.conftest import TUESDAY

REEL = Nature(2.6 * KG, 1.5, 0.18, 5.8 * KG, 23.5e-3, 2.5, 200.0, 11.0, 0.42e-3, 3, 0.286)
CHARGES = [Charge("tier", "Quick fix", 150_00)]
PROMISE = OfferedPromise("spin_time", "time", low=8.0, reading_kind="spin_time")


@pytest.fixture
def stay(shop: Any) -> Stay:
    with clock.as_of(at(TUESDAY, "09:00")):
        reel = ArrivingReel(NewReel("Tarvak 58R"))
        return arrive(shop, NewCustomer("Somebody"), [reel], Envelope("walk-in"), "round multiplier")[0]


def kinds(stay: Stay) -> list[tuple[str, str]]:
    read = diary(stay.visit.pk)
    assert read
    return [(block.kind, block.entry.author.username) for block in read.blocks]


def test_torbal_measures_and_ingjerd_spins_asks_and_bills(stay: Stay) -> None:
    stay.pulled(measuring.pull(REEL, 1), REEL, "as found")
    stay.pulled_full(REEL, three_tries(REEL), "as found")
    stay.spun(measuring.spin(REEL, 1, None, "spin.csv"))
    work = OfferedWork("x", "X", 5)
    quote = stay.asked([told_option(stay.shop.rates, "a", "A", CHARGES, [work], [PROMISE])])
    stay.answered(quote, "a", Said("Somebody", "telephone", "yes"))
    stay.worked([("x", "X")], 5)
    stay.typed({"spin_time": "20 s"})
    stay.proved()
    stay.billed(CHARGES)
    stay.gone(WayHome("fetched"))
    assert kinds(stay) == [
        ("arrival", "ingjerd"),
        ("reading", "torbal"),
        ("reading", "torbal"),
        ("reading", "ingjerd"),
        ("quote", "ingjerd"),
        ("answer", "ingjerd"),
        ("work", "torbal"),
        ("reading", "torbal"),
        ("proof", "torbal"),
        ("word", "ingjerd"),
        ("invoice", "ingjerd"),
        ("dispatch", "ingjerd"),
    ]


def test_what_is_measured_in_a_row_is_not_written_in_one_minute(stay: Stay) -> None:
    with clock.as_of(at(TUESDAY, "10:00")):
        for _ in range(3):
            stay.typed({"feel": "2"}, {})
        stay.found("pawl", "F15", "worn")
    read = diary(stay.visit.pk)
    assert read
    said = [block.entry.written_at for block in read.blocks[1:]]
    assert [(moment - at(TUESDAY, "10:00")).seconds // 60 for moment in said] == [0, 1, 2, 3]


def test_a_pull_keeps_its_file_and_its_conditions(stay: Stay) -> None:
    dropped = measuring.pull(REEL, 1, name="pull.csv")
    reading = stay.pulled(dropped, REEL, "as found", "third of three").reading
    assert reading.attachment.original_name == f"{stay.tag}-pull.csv"
    assert reading.conditions["star_turns"] == 2.5
    assert reading.conditions["radius"] == pytest.approx(23.5e-3)
    assert reading.analysis["signal"] == "pull"


def test_a_finding_may_have_a_picture(stay: Stay) -> None:
    entry = stay.found("idler cog", "F16", "split", ("cog.png", cog(24, 0.7), "drawn"), to="drying rack")
    (attached,) = entry.attached.all()
    assert attached.attachment.is_photo
    assert attached.caption == "drawn"
    assert entry.moved_to == "drying rack"


def test_an_answer_without_a_key_is_a_no(stay: Stay) -> None:
    quote = stay.asked([told_option(stay.shop.rates, "a", "A", CHARGES)])
    assert not stay.answered(quote, "", Said("Somebody", "telephone", "no")).answer.is_yes


def test_struck_and_written_again(stay: Stay) -> None:
    wrong, right = stay.typed({"end_float": "4.2 mm"}, {}), stay.typed({"end_float": "0.42 mm"}, {})
    stay.struck(wrong, "decimal slipped", right)
    wrong.refresh_from_db()
    assert wrong.strike.replaced_by == right


def test_words_for_the_scale() -> None:
    assert kilograms(5.8 * KG) == "5.8 kg"
    assert three_tries(REEL).count(";") == 2
    assert pull_conditions(0.0235)["pulls_of"] == 3
