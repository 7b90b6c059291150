"""Scenario 9: a summer guest's reel, finished, billed, written to, and still on the post table."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime, timedelta

from spoolwright.demo import lots
from spoolwright.demo.offers import told_option
from spoolwright.demo.shop_hours import at, open_day, working_days
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

REMINDED, LETTER = (timedelta(days=28), timedelta(days=56)), timedelta(days=84)
MONTHS_AFTER = 3
CHARGES = (
    Charge("tier", "Common tune", 520_00, minutes=55),
    Charge("part", "Spool bearings, two", 170_00),
    Charge("part", "Pawl", 95_00),
    Charge("other", "Braid 0.23 mm, 180 m, wound on", 405_00),
)
WORKS = [
    OfferedWork("strip-and-wash", "Strip to the last part and wash", 30),
    OfferedWork("regrease-gears", "Lubricate every point, each with its own class", 16),
    OfferedWork("new-spool-bearings", "New spool bearings", 4),
    OfferedWork("new-pawl", "New level-wind pawl", 3),
    OfferedWork("respool-line", "Put new line on", 15),
]
PROMISE = OfferedPromise("spin_time", "time", low=18.0, reading_kind="spin_time", words="free-spin time",
                         conditions={"line": "off", "brakes": "off"})  # fmt: skip


def story(shop: Workshop, done: date) -> Story:
    """`done` is the day on which the work was finished."""
    came = working_days(done, -6)
    yield at(came, "16:05")
    stay = _arrival(shop)
    yield at(working_days(came, 1), "09:40")
    stay.typed({"spin_time": "9 s; 9 s; 10 s", "feel": "3", "end_float": "0.18 mm"})
    stay.found("level-wind pawl", "F15", "worn to a hook")
    quote = stay.asked(
        [told_option(shop.rates, "common", "Common tune and new line", CHARGES, WORKS, [PROMISE])]
    )
    yield at(working_days(came, 1), "12:20")
    words = "Yes. We stay until the end of the month."
    stay.answered(quote, "common", Said("Embla Hegrevik", "in the shop", words))
    yield at(done, "10:30")
    stay.worked([(w.work, w.title) for w in WORKS], 71, [Fitted("Spool bearing", 2), Fitted("Pawl")],
                lots.usual("round multiplier", done))  # fmt: skip
    yield at(done, "11:10")
    stay.typed({"spin_time": "24 s; 25 s; 24 s", "feel": "1", "end_float": "0.08 mm"})
    stay.proved(to="line winder")
    yield at(done, "12:00")
    stay.billed(CHARGES)
    yield from _silence(stay, done)


def _arrival(shop: Workshop) -> Stay:
    customer = NewCustomer(
        "Embla Hegrevik", "guest at Fyrveien 2; at home: not told", telephone="00 62 18 44"
    )
    reel = ArrivingReel(
        NewReel(sheet_version=shop.sheets["tarvak-52"], winding_hand="right"),
        [Counted("reel", mass_kg=0.301)],
        Told(
            "We are guests here for three weeks. New line please, and whatever it needs.",
            "salt",
            line_wish="strip and respool",
        ),
    )
    return arrive(shop, customer, [reel], Envelope("walk-in"))[0]


def _silence(stay: Stay, done: date) -> Iterator[datetime]:
    for number, after in enumerate(REMINDED, 1):
        yield at(open_day(done + after), "09:15")
        stay.said(f"Reminder {number}, by telephone: nobody answers.")
    day = open_day(done + LETTER)
    yield at(day, "10:40")
    sale = months_later(day, MONTHS_AFTER)
    stay.said(
        "Registered letter RR 4471 0925, to the address of the guest house: 1,190.00 kr are due, and the "
        "reel will be sold if it is not redeemed. Work done, bill due, letter sent: by the profile we keep, "
        f"not before {sale.day} {sale:%B %Y} (an example of one country's law; ask before selling)."
    )


def months_later(day: date, months: int) -> date:
    """The same day so many months later, or the last of that month."""
    year, month = divmod(day.year * 12 + day.month - 1 + months, 12)
    last = (date(year + (month == 11), (month + 1) % 12 + 1, 1) - timedelta(days=1)).day
    return date(year, month + 1, min(day.day, last))
