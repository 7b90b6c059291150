"""Scenario 10: Varg Holmen's beach caster, tuned for distance, sent insured, and not heard of since."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime, timedelta
from fractions import Fraction

from spoolwright.demo import lots, measuring
from spoolwright.demo.nature import Nature
from spoolwright.demo.offers import told_option
from spoolwright.demo.shop_hours import at, open_day, working_days
from spoolwright.demo.signals import KILOGRAM as KG
from spoolwright.demo.stay import Stay, arrive
from spoolwright.demo.timetable import Story
from spoolwright.demo.workshop import Workshop
from spoolwright.judgement.price import Charge
from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Counted, Envelope, Told
from spoolwright.shop.acts.record_answer import Said
from spoolwright.shop.acts.send_home import WayHome
from spoolwright.shop.acts.send_quote import OfferedPromise, OfferedWork
from spoolwright.shop.acts.write_work import Fitted, Lubricated

BEFORE = Nature(3.0 * KG, 1.18, 0.09, 7.4 * KG, 26e-3, 2.5, 260.0, 14.0, 0.30e-3, 1, 0.402)
AFTER = Nature(3.0 * KG, 1.08, 0.05, 7.4 * KG, 26e-3, 2.5, 260.0, 52.0, 0.08e-3, 0, 0.401)
CHARGES = (
    Charge("tier", "Full tune", 1150_00, minutes=100),
    Charge("part", "Hybrid spool bearings", 150_00, quantity=Fraction(2)),
    Charge("part", "Brake block set", 60_00),
    Charge("post", "Post, insured", 149_00),
)
WORKS = [
    OfferedWork("strip-and-wash", "Strip to the last part and wash", 30),
    OfferedWork("regrease-gears", "Lubricate every point, each with its own class", 16),
    OfferedWork("hybrid-spool-bearings", "Hybrid spool bearings", 4),
    OfferedWork("polish-spool-shaft", "Polish spool shaft and pinion bore", 12),
    OfferedWork("brake-blocks-set", "Brake blocks set to the casting", 3),
    OfferedWork("set-end-float", "Set the spool's end float", 5),
    OfferedWork("run-in", "Run it in", 8),
]
ALONE = {"line": "off", "brakes": "off"}
PROMISES = [
    OfferedPromise(
        "spin_time",
        "time",
        low=40.0,
        reading_kind="spin_time",
        words="free-spin time, brakes out",
        conditions=ALONE,
    ),
    OfferedPromise(
        "end_float", "length", high=0.12e-3, reading_kind="end_float", words="sideways play of the spool"
    ),
]
WARNED = ["The next thing to give is the spool's flange, under tight nylon 0.35 mm: re-wind it loosely."]
OPENS, CLOSES = timedelta(days=30), timedelta(days=90)


def story(shop: Workshop, day: date) -> Story:
    yield at(day, "09:25")
    stay = _arrival(shop)
    yield at(day, "10:05")
    stay.typed({"mass": "402 g", "end_float": "0.30 mm", "spin_time": "14 s; 14 s; 14 s", "feel": "1"})
    stay.spun(measuring.spin(BEFORE, 701, None, "spin.csv"))
    stay.found("spool bearings", "F19", "old oil like varnish; two brake blocks of two makes")
    yield at(day, "10:40")
    option = told_option(shop.rates, "full", "Full tune for the beach", CHARGES, WORKS, PROMISES, WARNED)
    quote = stay.asked([option], "Next limit told: the flange.", 400_00)
    yield at(day, "11:58")
    said = Said("Varg Holmen", "e-mail", "Yes. All of it. Brakes for 150 g of lead.", 1700_00)
    stay.answered(quote, "full", said)
    yield from _work(stay, day)
    yield from _lost(stay, working_days(day, 4))


def _arrival(shop: Workshop) -> Stay:
    customer = NewCustomer(
        "Varg Holmen", "Bryggeveien 30, Sørnesbukta", "varg@holmen.example", water="salt",
        note="Casts in competitions, tapes every cast himself.",
    )  # fmt: skip
    reel = ArrivingReel(
        NewReel("Tarvak 58X", winding_hand="left", serial="58X-0471"),
        [Counted("reel", mass_kg=0.402), Counted("papers", words="his list of casts")],
        Told("My taped mean is 118 m and it used to be more.", "salt", last_opened="a year ago, by myself",
             used_value_minor=3200_00),
    )  # fmt: skip
    return arrive(
        shop, customer, [reel], Envelope(carrier="Fjordbud", carrier_number="FB 77120", mass_kg=0.71)
    )[0]


def _work(stay: Stay, day: date) -> Iterator[datetime]:
    later = working_days(day, 3)
    yield at(working_days(day, 1), "09:00")
    stay.paid(400_00, words="Deposit.")
    yield at(later, "10:50")
    oil = [used for used in lots.usual("round multiplier", later) if used.point != "spool bearings"]
    oil.append(Lubricated("spool bearings", "Tysna 10", "half a needle drop each", lots.lot("O1", later)))
    parts = [Fitted("Hybrid spool bearing", 2), Fitted("Brake block set")]
    stay.worked([(w.work, w.title) for w in WORKS], 104, parts, oil)
    yield at(later, "11:30")
    stay.typed(
        {"mass": "401 g", "end_float": "0.08 mm", "spin_time": "52 s; 52 s; 52 s", "feel": "0"},
        words="Brakes out.",
    )
    stay.spun(measuring.spin(AFTER, 702, None, "spin-after.csv"))
    stay.proved()
    yield at(later, "16:20")
    stay.said(
        "Varg was in town and threw it off the mole: by his own tape a mean of 127 m, 118 before, 7.6 % "
        "more. His measurement, not ours. He goes on by bus, so it follows by post."
    )


def _lost(stay: Stay, day: date) -> Iterator[datetime]:
    yield at(day, "13:20")
    stay.billed(CHARGES)
    yield at(day, "15:10")
    way = WayHome(
        "post", "Fjordbud", "FB 78004", 0.735, 5000_00, enclosed=["proof", "invoice", "old bearings in a bag"]
    )
    stay.gone(way, "Label and scale photographed: 735 g.")
    opens, closes = day + OPENS, day + CLOSES
    yield at(open_day(day + timedelta(days=10)), "09:30")
    stay.said(
        "Not arrived, and no scan since the counter. Worth 3,200, work 1,150, parts 360, post 149: 4,859, "
        f"insured for 5,000. The carrier takes claims from {opens.day} {opens:%B} on, and none after "
        f"{closes.day} {closes:%B}."
    )
