"""Scenario 2: twelve lever drags of the charter boat MS Havskjær, three at a time, each to 3.4 kg."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date, datetime
from random import Random
from typing import Any

from spoolwright.demo import lots, measuring
from spoolwright.demo.nature import Nature
from spoolwright.demo.offers import told_option
from spoolwright.demo.shop_hours import at, onwards, working_days
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
from spoolwright.shop.acts.send_quote import OfferedOption, OfferedPromise, OfferedWork
from spoolwright.shop.acts.write_work import Fitted
from spoolwright.shop.questions.customers import customers

REEL = "Pellmar 30-2"
KIND = "lever drag"
LINE = 13.61 * KG
TARGET, LIMIT = 0.25 * LINE, 0.33 * LINE
RADIUS = 34e-3
BATCH, BETWEEN = 3, 8
STRIKES = (3.1, 2.6, 3.9, 4.2, 2.9, 3.6, 5.1, 3.3, 2.8, 4.0, 3.7, 3.0)
RATIOS = (1.22, 1.61, 1.18, 1.24, 1.35, 1.55, 1.20, 1.28, 1.17, 1.31, 1.58, 1.19)
"""As found, number by number; three of the twelve start with more than half as much again."""

AFTER = (3.4, 3.3, 3.5, 3.4, 3.4, 3.3, 3.5, 3.4, 3.3, 3.4, 3.5, 3.4)
PINION_BEARING, DRAG_PLATE = (2, 6, 7, 11), (6, 10)
"""Numbers that need one: four pinion bearings, 440 together, two drag plates, 960."""

TUNE = (
    Charge("tier", "Full tune", 1150_00, minutes=130),
    Charge("discount", "Ten per cent for the fleet", -115_00),
)
WORKS = [
    OfferedWork("strip-and-wash", "Strip to the last part and wash", 46),
    OfferedWork("regrease-gears", "Lubricate every point, each with its own class", 22),
    OfferedWork("dress-drag", "Dress the drag and grease it", 20),
    OfferedWork("set-and-prove", "Set to 3.4 kg at strike, test and prove", 22),
]
STRIKE = {"place_measured": "lever at the strike stop"}
YES = Said("Aslak Rein", "in the shop", "Yes, all twelve. Three at a time, I need eight aboard.")
WORDS = "Lever at the strike stop; the preset is counted as turns of a star."


def stories(shop: Workshop, day: date) -> list[Story]:
    """One for each batch of three; the skipper is written down with the first."""
    batches = [range(first, first + BATCH) for first in range(1, len(STRIKES), BATCH)]
    return [_batch(shop, working_days(day, n * BETWEEN), numbers) for n, numbers in enumerate(batches)]


def _batch(shop: Workshop, day: date, numbers: Sequence[int]) -> Story:
    yield at(day, "08:40")
    stays = dict(zip(numbers, _arrival(shop, numbers), strict=True))
    moment, quotes = at(day, "09:30"), []
    for number, stay in stays.items():
        moment = onwards(moment, 18)
        yield moment
        quotes.append((stay, _read_and_ask(stay, number)))
    yield onwards(moment, 60)
    for stay, quote in quotes:
        stay.answered(quote, "full tune", YES)
    for turn, (number, stay) in enumerate(stays.items(), 1):
        yield from _tune(stay, number, working_days(day, turn))
    yield from _back_aboard(stays, working_days(day, BATCH + 2))


def _arrival(shop: Workshop, numbers: Sequence[int]) -> list[Stay]:
    known = customers("Aslak Rein")
    customer = known[0] if known else NewCustomer(
        "Aslak Rein", "MS Havskjær, Kaikanten 2, Grånesvåg", "skipper@havskjaer.example", "berth 2",
        water="salt", note="Twelve reels, all alike. The boat keeps eight aboard, always.",
    )  # fmt: skip
    told = Told(
        "Once a year, all twelve, each to the same pull at strike.", "salt", last_opened="a year ago, by us"
    )
    reels = [
        ArrivingReel(
            NewReel(
                REEL,
                twin_mark=f"number {n} in white paint under the foot",
                marks=(("engraving", f"Havskjær {n}"),),
            ),
            [Counted("reel", words="30-lb line on it")],
            told,
        )
        for n in numbers
    ]
    return arrive(shop, customer, reels, Envelope("collected"), KIND)


def _nature(number: int, chance: Random, after: bool = False) -> Nature:
    strike = (AFTER if after else STRIKES)[number - 1] * KG
    ratio = chance.uniform(1.04, 1.09) if after else RATIOS[number - 1]
    judder = 0.04 if after else 0.10 + 0.1 * (ratio - 1.1)
    return Nature(strike, ratio, judder, 1.4 * strike, RADIUS, 1.0, feel=0 if after else 2, mass=1.12)


def _read_and_ask(stay: Stay, number: int) -> Any:
    nature = _nature(number, stay.shop.chance(f"fleet {number}"))
    _pull(stay, nature, 200 + number, "pull-strike.csv", "as found")
    if number == 7:
        stay.found(
            "preset", "F40",
            "set to 5.1 kg at strike: over 4.49 kg, a third of what the line holds. Warned: the line or the "
            "gears go first. Set back.",
        )  # fmt: skip
    if number in PINION_BEARING:
        stay.found("pinion bearing", "F42", "rough under side load")
    if number in DRAG_PLATE:
        stay.found("drag plate", "F41", "surges once a turn, not flat on the glass")
    return stay.asked([_offer(stay, _charges(number))], "One of the twelve of MS Havskjær.")


def _pull(stay: Stay, nature: Nature, seed: int, name: str, lubricant: str) -> None:
    exact = nature.running in (min(STRIKES) * KG, max(STRIKES) * KG)
    made = measuring.pull_that_reads if exact else measuring.pull
    dropped = made(nature, seed, "plain", name)
    stay.pulled(dropped, nature, lubricant, WORDS, STRIKE)


def _offer(stay: Stay, charges: Sequence[Charge]) -> OfferedOption:
    promises = [
        OfferedPromise(
            "pull_at_strike", "force", 3.2 * KG, 3.6 * KG, TARGET, "pull_run",
            "running pull at strike, a quarter of what the line holds", {"radius": RADIUS, "line": "on"},
            "the same twelve reels, year after year",
        ),
        OfferedPromise("start_up_ratio", "ratio", high=1.15, reading_kind="start_up_ratio",
                       words="start-up pull over running pull"),
    ]  # fmt: skip
    warned = ["Strike stays under 4.49 kg, a third of what the line holds (common practice, no source)."]
    return told_option(
        stay.shop.rates, "full tune", "Full tune, one of twelve", charges, WORKS, promises, warned
    )


def _tune(stay: Stay, number: int, day: date) -> Iterator[datetime]:
    yield at(day, "08:35")
    stay.moved("bath")
    yield at(day, "11:00")
    parts = [Fitted("Pinion bearing")] * (number in PINION_BEARING) + [Fitted("Drag plate")] * (
        number in DRAG_PLATE
    )
    done = [(work.work, work.title) for work in WORKS]
    stay.worked(done, 112 + number % 4 * 5, parts, lots.usual(KIND, day))
    yield at(day, "13:05")
    nature = _nature(number, stay.shop.chance(f"fleet {number} after"), after=True)
    _pull(stay, nature, 300 + number, "pull-strike-after.csv", "cleaned and greased")
    yield at(day, "13:20")
    stay.proved(to="shelf")


def _back_aboard(stays: dict[int, Stay], day: date) -> Iterator[datetime]:
    yield at(day, "14:10")
    bills = [
        (stay, stay.billed(_charges(number), words="One of twelve: 13,820 kr together."))
        for number, stay in stays.items()
    ]
    yield at(day, "15:30")
    for stay in stays.values():
        stay.gone(WayHome("delivered", sent_to="MS Havskjær, Kaikanten 2", enclosed=["sheet of the reel"]))
    yield at(working_days(day, 7), "10:15")
    _pay(bills)


def _charges(number: int) -> list[Charge]:
    charges = list(TUNE)
    if number in PINION_BEARING:
        charges.append(Charge("part", "Pinion bearing", 110_00))
    if number in DRAG_PLATE:
        charges.append(Charge("part", "Drag plate", 480_00))
    return charges


def _pay(bills: Sequence[tuple[Stay, Any]]) -> None:
    for stay, invoice in bills:
        stay.paid(invoice.due_minor, words=f"Invoice {invoice.number}.")
