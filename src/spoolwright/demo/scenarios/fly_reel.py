"""Scenario 5: Sigrun Tveit's fly reel for the Tysna, turned to the other hand before opening day."""

from __future__ import annotations

from datetime import date, timedelta

from spoolwright.demo import lots
from spoolwright.demo.offers import told_option
from spoolwright.demo.shop_hours import at, working_days
from spoolwright.demo.signals import KILOGRAM as KG
from spoolwright.demo.stay import Stay, arrive
from spoolwright.demo.timetable import Story
from spoolwright.demo.workshop import Workshop
from spoolwright.judgement.price import Charge
from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Counted, Envelope, Told
from spoolwright.shop.acts.record_answer import Said
from spoolwright.shop.acts.send_quote import OfferedPromise, OfferedWork
from spoolwright.shop.acts.write_work import Fitted

OPENING = timedelta(days=9)
CHARGES = (
    Charge("tier", "Basic clean", 250_00, minutes=38),
    Charge("other", "Check springs made here, two", 120_00),
)
WORKS = [
    OfferedWork("check-springs", "Two check springs made and fitted, the sliver out", 26),
    OfferedWork("turn-pawl", "Check pawl turned for left-hand wind", 12),
]
PROMISE = OfferedPromise(
    "click_pull", "force", 0.15 * KG, 0.50 * KG, reading_kind="click_pull", words="pull over the check"
)
OVER_CLICK = {"line": "on", "radius": 0.041}


def story(shop: Workshop, day: date) -> Story:
    """It stays on the post table: finished two days early, waiting to be fetched."""
    opening = day + OPENING
    yield at(day, "10:20")
    stay = _arrival(shop, opening)
    yield at(day, "10:31")
    stay.typed(
        {"click_pull": "60 g", "run_out": "0.12 mm"}, OVER_CLICK | {"place_measured": "rim of the spool"}
    )
    stay.found("check springs", "F63", "two of four broken; a sliver of spring lies in the frame")
    yield at(day, "10:50")
    quote = stay.asked([told_option(shop.rates, "basic", "Check and other hand", CHARGES, WORKS, [PROMISE])])
    stay.promised(
        working_days(day, 2), min(working_days(day, 4), opening - timedelta(days=1)), "The Tysna opens soon."
    )
    yield at(day, "12:15")
    stay.answered(
        quote, "basic", Said("Sigrun Tveit", "text message", "Yes! And left-hand wind please.", 370_00)
    )
    yield at(working_days(day, 1), "13:40")
    _work(stay, working_days(day, 1))
    yield at(working_days(day, 1), "14:05")
    stay.typed({"click_pull": "260 g"}, OVER_CLICK)
    stay.proved()
    yield at(working_days(day, 1), "14:20")
    stay.billed(CHARGES)
    stay.said("Told her: turn the check to minimum for storage, the springs thank you for it.")


def _arrival(shop: Workshop, opening: date) -> Stay:
    customer = NewCustomer("Sigrun Tveit", "Tysnaveien 3, Tysnosen", "sigrun@tveit.example", water="fresh")
    reel = ArrivingReel(
        NewReel("Brekkås 8/9", winding_hand="right", marks=(("engraving", "S. T. inside the spool"),)),
        [Counted("reel"), Counted("bag, case or box", words="leather")],
        Told("Silent on one side, and I want to wind with the left.", "fresh", last_opened="not known"),
        needed_by=opening,
    )
    return arrive(shop, customer, [reel], Envelope("walk-in"), "fly")[0]


def _work(stay: Stay, day: date) -> None:
    done = [(work.work, work.title) for work in WORKS]
    springs = Fitted("Check spring", 2, "own-made", "0.8 mm spring wire")
    stay.worked(
        done, 38, [springs], lots.usual("fly", day), "No one-way clutch in this one: the pawl is turned over."
    )
