"""Scenario 3: Jonna Fure's low-profile reel, dropped into the sea on a Saturday, brought in at once."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime
from fractions import Fraction

from spoolwright.demo import lots, measuring
from spoolwright.demo.nature import Nature
from spoolwright.demo.offers import by_hand, charges_of, offered
from spoolwright.demo.shop_hours import at, working_days
from spoolwright.demo.signals import KILOGRAM as KG
from spoolwright.demo.stay import Stay, arrive
from spoolwright.demo.timetable import Story
from spoolwright.demo.workshop import Workshop
from spoolwright.judgement.job_price import Before
from spoolwright.judgement.price import Charge
from spoolwright.judgement.quote_case import Around
from spoolwright.judgement.quote_options import Option
from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Counted, Envelope, Told
from spoolwright.shop.acts.record_answer import Said
from spoolwright.shop.acts.send_home import WayHome
from spoolwright.shop.acts.send_quote import OfferedPromise
from spoolwright.shop.acts.write_work import Fitted
from spoolwright.shop.questions.agreed import agreed

KIND = "low-profile multiplier"
USED = 1900_00
AROUND = Around(used_price_minor=USED, posted=False, kind=KIND)
WORKS = ("strip-and-wash", "regrease-gears", "set-and-prove", "dress-drag")
MORE = (
    Charge("labour", "Emergency: stripped at once", 300_00),
    Charge("part", "Bearings", 75_00, quantity=Fraction(4)),
)
AFTER = Nature(1.4 * KG, 1.08, 0.06, 4.6 * KG, 15.5e-3, 4.0, 190.0, 22.0, 0.08e-3, 0, 0.212)
PROMISE = OfferedPromise(
    "start_up_ratio",
    "ratio",
    high=1.15,
    reading_kind="start_up_ratio",
    words="start-up pull over running pull",
)
DO_NOT_TURN = "Do not turn the handle: salt water is in it, and every turn grinds it in. It is stripped now."


def story(shop: Workshop, day: date) -> Story:
    """`day` is a Saturday."""
    yield at(day, "15:05")
    stay = _arrival(shop, day)
    stay.said(DO_NOT_TURN)
    yield at(day, "15:20")
    first = by_hand(shop.rates, AROUND, WORKS, MORE)
    quote = stay.asked([offered(first, [PROMISE])], "Four bearings for certain; more when it is open.")
    yield at(day, "15:26")
    words = "Yes, all of it, but ask me before you pass 1,300."
    stay.answered(quote, first.key, Said("Jonna Fure", "in the shop", words, 1300_00), to="bath")
    yield from _seized(stay, day)
    extra = _extra(stay, first)
    yield at(day, "16:40")
    asked = stay.asked(
        [offered(extra)], "Freed on the second turn of heat and cold. It passes your 1,300: yes or no?"
    )
    yield at(day, "16:52")
    raised = Said("Jonna Fure", "telephone", "All right, up to 1,500. It was a present.", 1500_00)
    stay.answered(asked, extra.key, raised, to="mat")
    yield from _home(stay, day, [*charges_of(first.lines), *charges_of(extra.lines)])


def _arrival(shop: Workshop, day: date) -> Stay:
    customer = NewCustomer("Jonna Fure", "Kaikanten 11, Grånesvåg", telephone="00 41 27 05", water="salt")
    told = Told(
        complaint="Fell off the quay at ten past two, hauled up by the line at once.",
        water="salt",
        under_water_at=at(day, "14:10"),
        last_opened="never",
        old_parts_back=False,
        used_value_minor=USED,
    )
    reel = ArrivingReel(
        NewReel(sheet_version=shop.sheets["ostrell-s71"], winding_hand="left", serial="S71-1180"),
        [Counted("reel", mass_kg=0.212)],
        told,
    )
    return arrive(shop, customer, [reel], Envelope("walk-in"), KIND)[0]


def _seized(stay: Stay, day: date) -> Iterator[datetime]:
    yield at(day, "15:50")
    stay.moved("drying rack", "Stripped to the last part, rinsed twice, on the rack.")
    yield at(day, "16:18")
    stay.found(
        "palm-side spool bearing", "F04",
        "seized on the shaft by corrosion older than today; 42 minutes to be expected (10 quick, 75 usual, "
        "15 in a hundred long: judgement prior)",
        to="asked shelf",
    )  # fmt: skip


def _extra(stay: Stay, first: Option) -> Option:
    """What the seized bearing cost, weighed with all that was agreed before."""
    before = Before("common", tuple(work.id for work in first.works), agreed(stay.visit.pk).total_minor)
    around = Around(used_price_minor=USED, posted=False, kind=KIND, before=before)
    return by_hand(
        stay.shop.rates, around, ["free-seized-bearing"], minutes={"free-seized-bearing": 35}, key="extra"
    )


def _home(stay: Stay, day: date, charges: list[Charge]) -> Iterator[datetime]:
    monday = working_days(day, 0)
    yield at(monday, "10:10")
    done = [(name, name.replace("-", " ").capitalize()) for name in (*WORKS, "free-seized-bearing")]
    stay.worked(
        done, 118, [Fitted("Bearing", 4)], lots.usual(KIND, monday), "35 of them for the seized bearing."
    )
    yield at(monday, "10:40")
    stay.pulled(measuring.pull(AFTER, 401, "one column", "pull-half-after.csv"), AFTER, "cleaned and greased")
    stay.spun(measuring.spin(AFTER, 402, None, "spin-after.csv"))
    yield at(monday, "10:55")
    stay.proved()
    yield at(monday, "11:10")
    why = "The palm-side bearing was seized on its shaft: 35 minutes more, asked and answered on Saturday."
    invoice = stay.billed(charges, why)
    yield at(monday, "15:45")
    stay.paid(invoice.due_minor, "card", f"Invoice {invoice.number}.")
    stay.gone(WayHome("fetched", enclosed=["proof", "care card: rinse, dry, bring it within two days"]))
