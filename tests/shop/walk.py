"""Walk one reel along the bench as far as a test needs it. The reel and its sums are those of scenario 1."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import replace
from typing import Any

from spoolwright.bench.budget import Contribution
from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.carried import Carried, carried
from spoolwright.judgement.guard_band import Limits, call
from spoolwright.judgement.load_ladder import load_ladder
from spoolwright.judgement.prediction import Prediction, predict
from spoolwright.judgement.price import Charge, price
from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.acts.add_instrument import Known, add_instrument
from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from spoolwright.shop.acts.attach_file import attach_file
from spoolwright.shop.acts.check_instrument import HeldAgainst, check_instrument
from spoolwright.shop.acts.issue_invoice import issue_invoice
from spoolwright.shop.acts.open_diary import Attached, Beside, Written
from spoolwright.shop.acts.prove import ProofPair, TriedByHand, prove
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Counted, Envelope, Told, receive_parcel
from spoolwright.shop.acts.record_answer import Said, record_answer
from spoolwright.shop.acts.send_home import WayHome, send_home
from spoolwright.shop.acts.send_quote import OfferedOption, OfferedPromise, OfferedWork, send_quote
from spoolwright.shop.acts.set_aside import set_aside
from spoolwright.shop.acts.sign_proof import sign_proof
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.acts.take_back import take_back
from spoolwright.shop.acts.take_by_hand import ByHand
from spoolwright.shop.acts.take_payment import take_payment
from spoolwright.shop.acts.take_reading import Value, take_reading
from spoolwright.shop.acts.write_finding import write_finding
from spoolwright.shop.acts.write_gauge_study import Studied, Try, write_gauge_study
from spoolwright.shop.acts.write_word import write_word
from spoolwright.shop.acts.write_work import Done, Fitted, Labour, Lubricated, write_work
from spoolwright.shop.questions.shop_settings import rates
from spoolwright.shop.records.instrument import Instrument
from spoolwright.shop.records.kept_by_hand import KeptByHand
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.quote import QuotePromise
from spoolwright.shop.records.reading import ReadingValue
from spoolwright.shop.records.visit import Visit
from tests import people

G = 9.80665
CHARGES = (
    Charge("tier", "Common tune", 520_00),
    Charge("part", "Pawl", 95_00),
    Charge("part", "Spool bearings, two", 170_00),
    Charge("part", "Carbon set", 190_00),
    Charge("post", "Post", 129_00),
)
COG = Charge("part", "Idler cog", 65_00)
HALF_DRAG = {"line": "on", "radius": 0.0235, "brakes": "none", "temperature": 291.15, "star_turns": 1.0}
PULLS = {**HALF_DRAG, "pull_number": 1, "pulls_of": 3, "lubricant_state": "as found"}


def arrived(hand: Person, name: str = "Ragna Solbu", reel: str = "Tarvak 58R", **told: Any) -> Visit:
    """A reel that has just been counted out onto the mat."""
    received = receive_parcel(
        hand=hand,
        customer=NewCustomer(name=name, address="Moloveien 3, Grånesvåg"),
        envelope=Envelope(carrier="Havnepost", mass_kg=0.742),
        reels=[
            ArrivingReel(
                reel=NewReel(described=reel, serial="5801"),
                contents=[Counted("reel", mass_kg=0.338), Counted("line", words="nylon 0.40 mm")],
                told=Told(complaint="level wind catches at the right end", water="salt", **told),
            )
        ],
    )
    return received.written[0].entry.visit


def read(
    hand: Person, visit: Visit, kind: str, value: float, u: float, dimension: str, **more: Any
) -> Written:
    """One typed reading under the usual conditions."""
    return take_reading(
        hand=hand,
        visit=visit,
        values=[Value(kind, value, dimension, u)],
        conditions={**PULLS, **more.pop("conditions", {})},
        **more,
    )


def option(
    *charges: Charge, key: str = "put right", promises: tuple[OfferedPromise, ...] = ()
) -> OfferedOption:
    return OfferedOption(
        key=key,
        title=key.capitalize(),
        lines=price(charges or CHARGES, rates()).lines,
        works=[
            OfferedWork("service", "Strip, wash, regrease", 55),
            OfferedWork("fit pawl", "Fit a pawl", 13),
        ],
        minutes=68,
        promises=promises
        or (
            OfferedPromise("start_up_ratio", "ratio", high=1.15, reading_kind="start_up_ratio"),
            OfferedPromise("pull_full", "force", low=6.0 * G, high=8.0 * G, reading_kind="pull_full"),
        ),
    )


def quoted(hand: Person, visit: Visit, *options: OfferedOption) -> Any:
    return send_quote(hand=hand, visit=visit, options=options or (option(),)).entry.quote


def answered(hand: Person, quote: Any, cap: int | None = 1200_00, **more: Any) -> Written:
    return record_answer(
        hand=hand,
        quote=quote,
        option=quote.options.first(),
        said=Said("Ragna Solbu", "telephone", "yes, up to 1,200", cap),
        **more,
    )


def agreed(hand: Person, **told: Any) -> Visit:
    """A reel with a yes up to 1,200."""
    visit = arrived(hand, **told)
    answered(hand, quoted(hand, visit))
    return visit


def worked(hand: Person, visit: Visit, **more: Any) -> Written:
    done = [Done("service", "Strip, wash, regrease"), Done("fit pawl", "Fit a pawl")]
    return write_work(hand=hand, visit=visit, labour=Labour(done, 74, **more))


def billed(hand: Person, visit: Visit, *charges: Charge, **more: Any) -> Any:
    return issue_invoice(hand=hand, visit=visit, charges=charges or CHARGES, **more).entry.invoice


def gone(hand: Person, visit: Visit) -> Written:
    return send_home(
        hand=hand, visit=visit, way=WayHome(carrier="Havnepost", carrier_number="GV 17", mass_kg=0.745)
    )


def caliper(hand: Person, mark: str = "C1") -> Instrument:
    """The caliper of the house, which shows a hundredth of a millimetre."""
    known = Known("The long caliper", resolution=1e-5, limit=3e-5, low=0.0, high=0.15)
    return add_instrument(hand=hand, mark=mark, kind="caliper", known=known)


def studied(values: tuple[float, ...] = (4.00, 4.01, 4.10, 4.09, 4.01, 4.02, 4.11, 4.09)) -> Studied:
    """Two people measure two washers twice [mm]; no more than the fewest that a study takes."""
    cells = [(part, person, trial) for person in ("Ada", "Ole") for part in ("1", "2") for trial in (1, 2)]
    tries = [Try(*cell, value * 1e-3) for cell, value in zip(cells, values, strict=True)]
    return Studied("washers, thickness", "length", tries)


def measured_with(hand: Person) -> Instrument:
    """An instrument with a check and a study."""
    instrument = caliper(hand)
    held = HeldAgainst("gauge block", nominal=0.01, found=0.01001, uncertainty=1e-6)
    check_instrument(hand=hand, instrument=instrument, held=held)
    write_gauge_study(hand=hand, instrument=instrument, studied=studied())
    return instrument


def by_hand() -> ByHand:
    """A disc measured by hand that is near its limit."""
    size, limits = Measured(0.70e-3, 0.02e-3, "length"), Limits(low=0.64e-3)
    kept = KeptByHand(
        guide="disc-thickness",
        part="first friction disc",
        title="first friction disc, hard fibre",
        source="the house's list of reject limits: 80% of new (judgement prior)",
        instrument="The long caliper (C1)",
        new=0.8e-3,
        new_source="new, by the sheet",
        limits=limits,
        call=call(size, limits),
        budget=(Contribution("disc_thickness", "its stated limit of error", "B", 0.02e-3),),
    )
    return ByHand([Value("disc_thickness", size.value, "length", size.uncertainty, "0.70 mm")], kept)


PHOTO = b"\xff\xd8\xff\xe0" + b"0" * 400


def expected() -> Prediction:
    """What a carbon set would give the pier reel; few draws, because only the keeping of it is tried."""
    return predict(reel_sheet.load("tarvak-58r"), {}, ["carbon-drag-set"], samples=100)


def carries() -> Carried | None:
    """What would carry its pull then."""
    return carried(load_ladder(reel_sheet.load("tarvak-58r"), {}, ["carbon-drag-set"], samples=100))


def everything(hand: Person, without: Collection[str] = ()) -> Visit:
    """A visit with a row in every table that is written in ink.

    `without`: kinds of entry that an earlier state of the tables does not know; so far there is none.
    """
    assert not set(without), f"the walk cannot leave out {sorted(without)}"
    add_sheet_version(hand=hand, toml=reel_sheet.shipped()["tarvak-58r"])
    measured_with(hand)
    visit = arrived(hand)
    photo = attach_file(hand=hand, data=PHOTO, original_name="slate.jpg")
    write_finding(
        hand=hand,
        visit=visit,
        part="pawl",
        fault="F15",
        evidence="tip worn",
        beside=Beside(attached=[Attached(photo, "the tip")]),
    )
    before = read(hand, visit, "pull_full", 5.8 * G, 0.05, "force")
    answered(hand, quoted(hand, visit, replace(option(), prediction=expected(), carried=carries())))
    take_payment(hand=hand, visit=visit, amount_minor=200_00)
    worked(
        hand,
        visit,
        parts=[Fitted("pawl"), Fitted("check spring", 2, "own-made", "0.8 mm wire")],
        lubricants=[Lubricated("spool bearings", "O1", "1 drop", "G2-07")],
    )
    after = read(hand, visit, "pull_full", 6.9 * G, 0.05, "force")
    pair = ProofPair(promise_of("pull_full"), result(after), result(before))
    proof = prove(hand=hand, visit=visit, pairs=[pair], tried=[TriedByHand("tray", "The tray is empty")])
    sign_proof(hand=people.owner(), proof=proof.entry.proof)
    aside = set_aside(hand=hand, entry=after.entry, reason="the gauge was not at zero")
    take_back(hand=people.owner(), set_aside=aside, words="it was, looked again")
    billed(hand, visit, *CHARGES, COG, why_more="the idler cog was split")
    word = write_word(hand=hand, visit=visit, words="told by picture").entry
    strike_entry(hand=hand, entry=word, reason="written in the wrong diary")
    gone(hand, visit)
    return visit


def result(written: Written) -> ReadingValue:
    return written.entry.reading.values.get(repeat=0)


def promise_of(kind: str) -> QuotePromise:
    return QuotePromise.objects.filter(kind=kind).latest("id")
