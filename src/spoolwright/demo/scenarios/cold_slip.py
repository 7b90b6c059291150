"""Scenario 6: six fixed-spool reels of one week and one tub of grease; two of them slip in the cold."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime, timedelta
from typing import Any

from spoolwright.demo import lots, measuring
from spoolwright.demo.cast import Cast
from spoolwright.demo.nature import Nature
from spoolwright.demo.offers import by_hand, charges_of, offered
from spoolwright.demo.shop_hours import at, open_day, working_days
from spoolwright.demo.signals import KILOGRAM as KG
from spoolwright.demo.stay import Stay, arrive
from spoolwright.demo.timetable import Story
from spoolwright.demo.workshop import Workshop
from spoolwright.judgement.quote_case import Around
from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Counted, Envelope, Told
from spoolwright.shop.acts.record_answer import Said
from spoolwright.shop.acts.send_home import WayHome
from spoolwright.shop.acts.send_quote import OfferedPromise
from spoolwright.shop.acts.write_work import Lubricated
from spoolwright.shop.questions import by_number

KIND = "fixed spool"
REELS = ("Lumvik 2500", "Lumvik 4000", "Lumvik 4000", "Ostrell F30", "Lumvik 2500", "Ostrell F40")
SHEETS = {"Lumvik 4000": "lumvik-4000"}
BACK_AFTER = timedelta(days=19)
WORKS = ("strip-and-wash", "regrease-gears", "set-and-prove", "dress-drag")
COLD, WARM_TRY = {"anti_reverse_cold": True}, {"anti_reverse_cold": False}
OUR_COST = (
    "Cost to us: 35 minutes, 350, and post there and back, 258: 608 kr. "
    "Cause: lubricant choice, our assembly."
)
PROMISE = OfferedPromise(
    "start_up_ratio",
    "ratio",
    high=1.15,
    reading_kind="start_up_ratio",
    words="start-up pull over running pull",
)


def stories(shop: Workshop, week: date, cast: Cast) -> list[Story]:
    """Mikkel Dahl's reel and five siblings of one week; his comes back, and so does one of theirs."""
    mikkel = NewCustomer(
        "Mikkel Dahl", "Rorbuveien 8, Nedre Fjølvatn", "mikkel@dahl.example", water="fresh",
        note="Fishes through the ice.",
    )  # fmt: skip
    people = [mikkel, *(cast.customer() for _ in REELS[1:])]
    days = [working_days(week, n) for n in (0, 0, 1, 2, 3, 3)]
    return [_sibling(shop, n, person, day) for n, (person, day) in enumerate(zip(people, days, strict=True))]


def _sibling(shop: Workshop, number: int, person: NewCustomer, day: date) -> Story:
    """Numbers 0 and 3 come back."""
    yield at(day, f"{9 + number % 3:02d}:15")
    stay = _arrival(shop, person, number)
    yield from _service(stay, number, day)
    if number == 0:
        yield from _back(
            stay, BACK_AFTER, 7, "Tried it in the freezer at home, as you told me once: it slips."
        )
    elif number == 3:
        yield from _back(stay, timedelta(days=33), 3, "You rang about the cold: yes, it does slip.")


def _nature(number: int, after: bool) -> Nature:
    full = (3.9, 6.1, 5.6, 7.0, 4.2, 8.1)[number] * KG
    ratio, judder = (1.07, 0.05) if after else (1.34, 0.14)
    return Nature(0.42 * full, ratio, judder, full, 23e-3, 2.0, feel=0 if after else 2, mass=0.29)


def _arrival(shop: Workshop, person: NewCustomer, number: int) -> Stay:
    name = REELS[number]
    sheet = shop.sheets[SHEETS[name]] if name in SHEETS else None
    reel = ArrivingReel(
        NewReel("" if sheet else name, sheet, winding_hand="left"),
        [Counted("reel", mass_kg=0.29), Counted("spare spool")]
        if number % 2
        else [Counted("reel", mass_kg=0.29)],
        Told("A service, please. I fish through the ice with it.", "fresh", last_opened="two years ago"),
    )
    envelope = Envelope(carrier="Fjordbud", carrier_number=f"FB 80{number}41", mass_kg=0.52)
    return arrive(shop, person, [reel], envelope, KIND)[0]


def _service(stay: Stay, number: int, day: date) -> Iterator[datetime]:
    worn = _nature(number, after=False)
    yield at(day, f"{12 + number % 3:02d}:05")
    stay.pulled(measuring.pull(worn, 500 + number, "clock", "pull-half.csv"), worn, "as found")
    stay.typed({"anti_reverse_slips": "0"}, WARM_TRY)
    stay.found("old grease inside", "F33", "dry, whines when it is wound fast")
    option = by_hand(stay.shop.rates, Around(kind=KIND), WORKS)
    quote = stay.asked([offered(option, [PROMISE])])
    yield at(day, "15:40")
    stay.answered(quote, option.key, Said(stay.visit.reel.customer.name, "text message", "Yes, go ahead."))
    done = [(work.id, work.title) for work in option.works]
    work_day = working_days(day, 1)
    yield at(work_day, f"{9 + number % 4:02d}:30")
    stay.worked(done, 63 + number, [], _greased_clutch(work_day), to="jig")
    mended = _nature(number, after=True)
    yield at(work_day, f"{13 + number % 2:02d}:25")
    stay.pulled(
        measuring.pull(mended, 520 + number, "clock", "pull-half-after.csv"), mended, "cleaned and greased"
    )
    stay.typed({"anti_reverse_slips": "0"}, WARM_TRY, "Tried warm only.")
    stay.proved()
    yield at(working_days(day, 2), "14:30")
    invoice = stay.billed(charges_of(option.lines))
    stay.gone(
        WayHome(carrier="Fjordbud", carrier_number=f"FB 81{number}07", mass_kg=0.53, enclosed=["proof"])
    )
    yield at(working_days(day, 7), "09:20")
    stay.paid(invoice.due_minor, words=f"Invoice {invoice.number}.")


def _greased_clutch(day: date) -> list[Lubricated]:
    usual = [used for used in lots.usual(KIND, day) if used.point not in ("gear teeth", "roller clutch")]
    return [
        Lubricated("gear teeth", "Fjølvatn 2", "0.3 g, brushed on", lots.BAD_LOT),
        Lubricated("roller clutch", "Fjølvatn 2", "a film", lots.BAD_LOT),
        *usual,
    ]


def _back(first: Stay, after: timedelta, slips: int, complaint: str) -> Iterator[datetime]:
    home = by_number.visit(first.visit.pk)
    day = open_day(home.sent_home_at.date() + after)
    yield at(day, "09:50")
    stay = _return(first.shop, home, complaint)
    yield at(day, "10:00")
    stay.typed({"anti_reverse_slips": "0"}, WARM_TRY)
    yield at(day, "10:45")
    stay.typed({"anti_reverse_slips": str(slips)}, COLD, "After 40 minutes in the freezer, in a bag.")
    stay.found(
        "roller clutch", "F12", f"{slips} slips of 20 in the cold: grease in the clutch, put there by us"
    )
    yield at(day, "13:30")
    oil = [Lubricated("roller clutch", "Tysna clutch", "1 needle drop, wiped", lots.lot("OC", day))]
    done = [("clean-roller-clutch", "Clean the roller anti-reverse")]
    stay.worked(done, 35, [], oil, "Rinsed until it ran clear, thin oil, no grease.", to="jig")
    yield at(day, "14:40")
    stay.typed({"anti_reverse_slips": "0"}, COLD, "0 of 20, cold and warm.")
    stay.typed({"anti_reverse_slips": "0"}, WARM_TRY)
    stay.said(f"{OUR_COST} Same week, same tub {lots.BAD_LOT}: six reels; all six customers rung.")
    yield at(day, "15:40")
    stay.gone(
        WayHome(
            carrier="Fjordbud", carrier_number="FB 82" + str(stay.tag), mass_kg=0.53, enclosed=["a letter"]
        )
    )


def _return(shop: Workshop, home: Any, complaint: str) -> Stay:
    told = Told(complaint, "fresh", last_opened="by us, three weeks ago")
    reel = ArrivingReel(home.reel, [Counted("reel", mass_kg=0.29)], told, return_of=home)
    envelope = Envelope(carrier="Fjordbud", mass_kg=0.5)
    return arrive(shop, home.reel.customer, [reel], envelope, KIND)[0]
