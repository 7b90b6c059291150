"""Scenario 4: old Peder Lien waits in the shop while his fixed-spool reel gets a shim and a line roller."""

from __future__ import annotations

from datetime import date

from spoolwright.demo.offers import told_option
from spoolwright.demo.shop_hours import at
from spoolwright.demo.stay import Stay, arrive
from spoolwright.demo.timetable import Story
from spoolwright.demo.workshop import Workshop
from spoolwright.judgement.price import Charge
from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Counted, Envelope, Told
from spoolwright.shop.acts.record_answer import Said
from spoolwright.shop.acts.send_home import WayHome
from spoolwright.shop.acts.send_quote import OfferedWork
from spoolwright.shop.acts.write_work import Fitted, Lubricated

FRONT, REAR = "line lay after 30 turns of thread, front", "line lay after 30 turns of thread, rear"
CHARGES = (Charge("tier", "Quick fix", 150_00, minutes=22), Charge("part", "Line roller bearing", 110_00))
WORKS = [
    OfferedWork("raise spool", "Raise the spool by a shim of 0.3 mm", 12),
    OfferedWork("line roller", "New line roller bearing", 10),
]


def story(shop: Workshop, day: date) -> Story:
    yield at(day, "11:05")
    stay = _arrival(shop)
    yield at(day, "11:09")
    _lay(stay, "47.8 mm", "46.2 mm", "Heavy at the lip: raise the spool, one shim more under it.")
    yield at(day, "11:11")
    stay.found("line roller", "F48", "stuck; the line has cut a groove one can feel with the nail")
    quote = stay.asked([told_option(shop.rates, "quick", "Shim and line roller", CHARGES, WORKS)], to="mat")
    yield at(day, "11:12")
    stay.answered(
        quote, "quick", Said("Peder Lien", "in the shop", "Go on. I have my coffee here.", 260_00), to="mat"
    )
    yield at(day, "11:27")
    done = [(work.work, work.title) for work in WORKS]
    parts = [Fitted("Shim 0.3 mm"), Fitted("Line roller bearing")]
    stay.worked(done, 22, parts, [Lubricated("line roller", "Tysna 32", "2 drops")], to="mat")
    _lay(stay, "47.0 mm", "46.9 mm", "Before 47.8 and 46.2 mm, now 47.0 and 46.9 mm: level.")
    yield at(day, "11:30")
    invoice = stay.billed(CHARGES)
    stay.paid(invoice.due_minor, "cash")
    stay.gone(WayHome("fetched", enclosed=["old roller bearing"]))


def _arrival(shop: Workshop) -> Stay:
    customer = NewCustomer(
        "Peder Lien", "Kirkebakken 9, Grånesvåg", water="fresh", note="Wants no letter. Comes by."
    )
    reel = ArrivingReel(
        NewReel(sheet_version=shop.sheets["lumvik-4000"], winding_hand="left"),
        [Counted("reel", words="on the rod, line left on")],
        Told("Wind knots since the new line.", "fresh"),
        while_you_wait=True,
    )
    return arrive(shop, customer, [reel], Envelope("walk-in"), "fixed spool")[0]


def _lay(stay: Stay, front: str, rear: str, words: str) -> None:
    stay.typed({"caliper": front}, {"place_measured": FRONT})
    stay.typed({"caliper": rear}, {"place_measured": REAR}, words)
