"""Scenario 1: Ragna Solbu's pier reel with a catching level wind, posted. Its sums are told to the krone."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime
from typing import Any

from spoolwright.demo import by_hand, lots, measuring, pictures, spool_inertia
from spoolwright.demo.nature import Nature, flick_speed, known
from spoolwright.demo.offers import charges_of, offered, told_option
from spoolwright.demo.shop_hours import at, working_days
from spoolwright.demo.signals import KILOGRAM as KG
from spoolwright.demo.stay import Stay, arrive
from spoolwright.demo.timetable import Story
from spoolwright.demo.workshop import Workshop
from spoolwright.judgement.findings import Finding
from spoolwright.judgement.free_spin import bare_inertia
from spoolwright.judgement.price import Charge
from spoolwright.judgement.quote_options import Option, three_options
from spoolwright.judgement.star_turns import star_turn_for
from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Counted, Envelope, Told
from spoolwright.shop.acts.record_answer import Said
from spoolwright.shop.acts.send_home import WayHome
from spoolwright.shop.acts.send_quote import OfferedWork
from spoolwright.shop.acts.write_work import Fitted
from spoolwright.shop.questions.readings import taken_as_found

SHEET = "tarvak-58r"
RADIUS = 23.5e-3
HALF = 2.5
FLICK = flick_speed(known(SHEET))
BEFORE = Nature(2.6 * KG, 3.9 / 2.6, 0.19, 5.8 * KG, RADIUS, HALF, FLICK, 11.0, 0.42e-3, 3, 0.286)
AFTER = Nature(2.7 * KG, 2.9 / 2.7, 0.06, 6.9 * KG, RADIUS, HALF, FLICK, 31.0, 0.09e-3, 0, 0.286)
PAWL = Finding("level-wind pawl", "F15", "pawl tip worn, catches at the right end")
COG = Charge("part", "Idler cog", 65_00)
WHY_MORE = (
    "The idler cog of the level wind was split, seen when the reel was open and shown to you by picture: "
    "65.00 kr more than the estimate, inside your cap of 1,200.00 kr."
)


def story(shop: Workshop, day: date) -> Story:
    yield at(day, "09:12")
    stay = _arrival(shop)
    yield from _readings_before(stay, day)
    yield at(day, "10:05")
    ways = _three(stay)
    words = "The second of the three is what we would do."
    quote = stay.asked([offered(way) for way in ways], words, 200_00)
    stay.promised(working_days(day, 4), working_days(day, 9))
    yield at(day, "13:22")
    stay.answered(quote, "improve", Said("Ragna Solbu", "telephone", "yes, up to 1,200", 1200_00))
    yield from _work(stay, day, ways[1])
    yield from _home(stay, day, ways[1])


def _arrival(shop: Workshop) -> Stay:
    customer = NewCustomer(
        "Ragna Solbu",
        "Moloveien 3, Langværet",
        "ragna@solbu.example",
        water="salt",
        note="Fishes from the pier.",
    )
    reel = ArrivingReel(
        reel=NewReel(sheet_version=shop.sheets[SHEET], winding_hand="right", serial="58R-20417"),
        contents=[
            Counted("reel", mass_kg=0.338, words="with the line on"),
            Counted("line", mass_kg=0.052, words="nylon 0.40 mm"),
            Counted("customer's letter"),
        ],
        told=Told(
            complaint="The level wind catches at the right end. Fished from the salt pier, never opened.",
            water="salt",
            last_opened="never",
            line_wish="keep",
            old_parts_back=True,
        ),
        words="No damage outside. Nothing in it that belongs to nobody.",
    )
    envelope = Envelope(carrier="Havnepost", carrier_number="HP 4417 0093", mass_kg=0.742)
    return arrive(shop, customer, [reel], envelope)[0]


def _readings_before(stay: Stay, day: date) -> Iterator[datetime]:
    yield at(day, "09:20")
    stay.typed({"mass": "338 g"}, {"line": "on"}, "Line on it 52 g, weighed apart.")
    yield at(day, "09:36")
    stay.pulled(measuring.pull_that_reads(BEFORE, 101, name="pull-half.csv"), BEFORE, "as found")
    stay.pulled_full(BEFORE, "5.8 kg; 5.8 kg; 5.8 kg", "as found")
    yield at(day, "09:48")
    stay.typed(
        {"mass": "286 g", "end_float": "0.42 mm", "feel": "3", "spin_time": "11 s; 11 s; 11 s"},
        words="Rough all the way round, clutch in or out.",
    )
    stay.typed({"click_pull": "70 g"}, {"line": "on", "radius": RADIUS})
    spool_inertia.taken_two_ways(stay, known(SHEET))
    stay.spun(measuring.spin(BEFORE, 102, bare_inertia(known(SHEET)), "spin.csv"))
    yield at(day, "09:58")
    picture = ("pawl.png", pictures.pawl(worn=True), "the tip, drawn for the demonstration")
    stay.found(
        PAWL.part, PAWL.fault, "tip worn to a hook, catches at the right end; the worm is sound", picture
    )


def _three(stay: Stay) -> tuple[Option, ...]:
    readings = taken_as_found(stay.visit.pk)
    return three_options(known(SHEET), readings, [PAWL], stay.shop.rates, samples=1000, seed=1)


def _work(stay: Stay, day: date, option: Option) -> Iterator[datetime]:
    first, second = working_days(day, 1), working_days(day, 2)
    yield at(first, "08:40")
    stay.paid(200_00, words="Deposit.")
    yield at(first, "08:50")
    stay.moved("bath", "Stripped, photographed in order.")
    yield at(first, "10:30")
    stay.moved("drying rack")
    yield at(first, "11:05")
    picture = (
        "idler-cog.png",
        pictures.cog(24, 0.7),
        "split through at the bore, drawn for the demonstration",
    )
    stay.found("idler cog", "F16", "split through at the bore, seen when it was washed", picture)
    by_hand.measured(stay, known(SHEET), "disc-thickness", "0.66 mm; 0.65 mm; 0.65 mm")
    yield at(first, "11:12")
    works = [OfferedWork("new-idler-cog", "New level-wind cog", 3)]
    extra = told_option(stay.shop.rates, "idler cog", "New level-wind cog", [COG], works)
    stay.asked(
        [extra], "Told by picture: 65 more, the whole 1,169, inside the cap of 1,200.", to="drying rack"
    )
    yield at(second, "08:35")
    stay.moved("mat")
    yield at(second, "09:50")
    done = [(work.id, work.title) for work in option.works] + [("new-idler-cog", "New level-wind cog")]
    parts = [Fitted("Pawl"), Fitted("Spool bearing", 2), Fitted("Carbon disc set"), Fitted("Idler cog")]
    stay.worked(
        done, 74, parts, lots.usual("round multiplier", second), "68 minutes were planned; the cog took 6."
    )


def _home(stay: Stay, day: date, option: Option) -> Iterator[datetime]:
    second, third = working_days(day, 2), working_days(day, 3)
    yield at(second, "10:20")
    stay.pulled(measuring.pull_that_reads(AFTER, 103, name="pull-half-after.csv"), AFTER, "carbon, greased")
    stay.pulled_full(AFTER, "6.9 kg; 6.9 kg; 6.9 kg", "carbon, greased")
    stay.typed({"end_float": "0.09 mm", "feel": "0", "spin_time": "31 s; 31 s; 31 s"})
    stay.spun(measuring.spin(AFTER, 104, bare_inertia(known(SHEET)), "spin-after.wav"))
    yield at(second, "10:40")
    stay.proved("The float is where we want it; the dial cannot tell it from the edge of the promise.")
    stay.said(star_turn_for(option.prediction, AFTER.running).words, stay.shop.torbal)
    yield at(second, "13:10")
    invoice = stay.billed([*charges_of(option.lines), COG], WHY_MORE)
    yield at(third, "15:20")
    enclosed = ["proof", "old parts in a bag", "invoice"]
    stay.gone(WayHome(carrier="Havnepost", carrier_number="HP 4418 2210", mass_kg=0.745, enclosed=enclosed))
    yield at(working_days(day, 8), "09:00")
    _pay(stay, invoice)


def _pay(stay: Stay, invoice: Any) -> None:
    stay.paid(invoice.due_minor, words=f"Invoice {invoice.number}.")
