"""One reel's stay at the bench, told in short sentences. Every one of them is an act of the shop's own."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from functools import wraps
from typing import Any, TypeVar, cast

from spoolwright.bench import spin_reading
from spoolwright.bench.spin_clock import with_clock
from spoolwright.demo import measuring, shelf
from spoolwright.demo.measuring import Dropped
from spoolwright.demo.nature import WARM, Nature, known
from spoolwright.demo.signals import KILOGRAM
from spoolwright.demo.workshop import Workshop
from spoolwright.judgement.price import Charge
from spoolwright.judgement.release_gate import release_gate
from spoolwright.judgement.spin_verdict import spin_verdict
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.attach_file import attach_file
from spoolwright.shop.acts.issue_invoice import issue_invoice
from spoolwright.shop.acts.move_reel import move_reel
from spoolwright.shop.acts.open_diary import Attached, Beside
from spoolwright.shop.acts.promise_date import promise_date
from spoolwright.shop.acts.prove import ProofPair, TriedByHand, prove
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Envelope, receive_parcel
from spoolwright.shop.acts.record_answer import Said, record_answer
from spoolwright.shop.acts.send_home import WayHome, send_home
from spoolwright.shop.acts.send_quote import OfferedOption, send_quote
from spoolwright.shop.acts.sign_proof import sign_proof
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.acts.take_payment import take_payment
from spoolwright.shop.acts.take_pull import Pulled, take_pull
from spoolwright.shop.acts.take_reading import Signal, take_reading
from spoolwright.shop.acts.take_spin import take_spin
from spoolwright.shop.acts.write_finding import write_finding
from spoolwright.shop.acts.write_word import write_word
from spoolwright.shop.acts.write_work import Done, Fitted, Labour, Lubricated, write_work
from spoolwright.shop.questions import by_number, reel_sheets
from spoolwright.shop.questions.readings import to_prove

Sentence = TypeVar("Sentence", bound=Callable[..., Any])
BARE = {"line": "off", "brakes": "off", "temperature": WARM}
"""Conditions of a spool that is tried alone."""


def _minutes_on(minutes: int) -> Callable[[Sentence], Sentence]:
    """What is measured one after the other is not written in one minute, and nothing before what was last."""

    def told(sentence: Sentence) -> Sentence:
        @wraps(sentence)
        def written(stay: Stay, *words: Any, **more: Any) -> Any:
            with clock.as_of(stay.next_moment(minutes)):
                return sentence(stay, *words, **more)

        return cast(Sentence, written)

    return told


@dataclass
class Stay:
    """A visit and the two who look after it: Torbal measures and mends, Ingjerd asks, bills and sends."""

    shop: Workshop
    visit: Any
    kind: str = ""
    _last: datetime | None = None

    @property
    def tag(self) -> int:
        return int(self.visit.tag)

    @_minutes_on(1)
    def typed(
        self,
        readings: Mapping[str, str],
        conditions: Mapping[str, Any] | None = None,
        words: str = "",
        tool: str = "",
    ) -> Any:
        """Readings typed as one entry: kind of reading, what was typed for it, the mark of the instrument."""
        values = [v for kind, text in readings.items() for v in measuring.values_of_typed(kind, text)]
        given = BARE if conditions is None else conditions
        return take_reading(
            hand=self.shop.torbal,
            visit=self.visit,
            values=values,
            conditions=given,
            signal=Signal(instrument=self.shop.instruments.get(tool)),
            beside=Beside(words),
        ).entry

    @_minutes_on(1)
    def pulled(
        self,
        dropped: Dropped,
        nature: Nature,
        lubricant: str,
        words: str = "",
        more: Mapping[str, Any] | None = None,
    ) -> Any:
        """The last of three pulls, from its file; `more` are conditions that this reel has besides."""
        star = {"star_turns": nature.star_turns, **(more or {})}
        return take_pull(
            hand=self.shop.torbal,
            visit=self.visit,
            pulled=Pulled(dropped.trace, dropped.read),
            conditions=pull_conditions(nature.radius, lubricant) | star,
            attachment=self._attach(dropped),
            instrument=self.shop.instruments.get(shelf.CELL),
            beside=Beside(words),
        ).entry

    def pulled_full(self, nature: Nature, tries: str, lubricant: str, words: str = "") -> Any:
        """The star hard on, read off a hanging scale three times."""
        conditions = pull_conditions(nature.radius, lubricant)
        return self.typed({"pull_full": tries}, conditions, words, tool=shelf.SCALE)

    @_minutes_on(1)
    def spun(self, dropped: Dropped, words: str = "", conditions: Mapping[str, Any] = BARE) -> Any:
        """A spin from its recording or its list of ticks; spins are Ingjerd's."""
        spin = with_clock(dropped.read, shelf.CLOCK)
        version = self.visit.reel.sheet_version
        bare = conditions.get("line") == "off" and conditions.get("brakes") in ("off", "none")
        sheet = reel_sheets.read(version) if version else None
        return take_spin(
            hand=self.shop.ingjerd,
            visit=self.visit,
            spin=spin,
            verdict=spin_verdict(spin, spin_reading.steps(spin), sheet, bare=bare),
            conditions=conditions,
            heard=Signal(self._attach(dropped), instrument=self.shop.instruments.get(shelf.PHONE)),
            beside=Beside(words),
        ).entry

    def next_moment(self, minutes: int) -> datetime:
        """Now, or so many minutes after what was written last where that is later."""
        now, last = clock.now(), self._last
        self._last = now if last is None else max(now, last + timedelta(minutes=minutes))
        return self._last

    def _attach(self, dropped: Dropped) -> Any:
        name = f"{self.tag}-{dropped.name}"
        return attach_file(hand=self.shop.torbal, data=dropped.data, original_name=name)

    @_minutes_on(1)
    def found(
        self,
        part: str,
        fault: str,
        evidence: str,
        picture: tuple[str, bytes, str] | None = None,
        to: str = "",
    ) -> Any:
        """A finding; `picture` is a file's name, its bytes and the words under it."""
        attached = []
        if picture:
            name, data, caption = picture
            attached = [Attached(self._attach(Dropped(name, data, None)), caption)]
        beside = Beside(moved_to=to, attached=attached)
        return write_finding(
            hand=self.shop.torbal,
            visit=self.visit,
            part=part,
            fault=fault,
            evidence=evidence,
            beside=beside,
        ).entry

    @_minutes_on(0)
    def asked(
        self, options: Sequence[OfferedOption], words: str = "", deposit: int = 0, to: str = "asked shelf"
    ) -> Any:
        beside = Beside(words, to)
        return send_quote(
            hand=self.shop.ingjerd,
            visit=self.visit,
            options=options,
            deposit_asked_minor=deposit,
            beside=beside,
        ).entry.quote

    @_minutes_on(0)
    def answered(self, quote: Any, key: str, said: Said, to: str = "shelf") -> Any:
        """An answer to a quote; an empty key is a no."""
        option = next((o for o in quote.options.all() if o.key == key), None)
        return record_answer(
            hand=self.shop.ingjerd, quote=quote, option=option, said=said, beside=Beside(moved_to=to)
        ).entry

    @_minutes_on(0)
    def promised(self, likely: date, safe: date, words: str = "") -> None:
        version = by_number.visit(self.visit.pk).version
        promise_date(
            hand=self.shop.ingjerd, visit=self.visit, p50=likely, p90=safe, version=version, words=words
        )

    @_minutes_on(0)
    def moved(self, to: str, words: str = "", hand: Any = None) -> Any:
        version = by_number.visit(self.visit.pk).version
        by = hand or self.shop.torbal
        return move_reel(hand=by, visit=self.visit, to=to, version=version, words=words).entry

    @_minutes_on(0)
    def worked(
        self,
        done: Sequence[tuple[str, str]],
        minutes: int,
        parts: Sequence[Fitted] = (),
        lubricants: Sequence[Lubricated] = (),
        words: str = "",
        to: str = "jig",
    ) -> Any:
        labour = Labour([Done(key, title) for key, title in done], minutes, parts, lubricants)
        return write_work(
            hand=self.shop.torbal, visit=self.visit, labour=labour, beside=Beside(words, to)
        ).entry

    @_minutes_on(0)
    def proved(self, words: str = "", to: str = "") -> Any:
        """Every promise for which a reading was taken, what the release tries by hand, and a second name."""
        rows = [row for row in to_prove(self.visit.pk) if row.measured]
        pairs = [ProofPair(row.promise, row.measured, row.before) for row in rows]
        version = self.visit.reel.sheet_version
        gate = release_gate(known(version.sheet.slug) if version else None, [], kind=self.kind)
        proof = prove(
            hand=self.shop.torbal,
            visit=self.visit,
            pairs=pairs,
            tried=[TriedByHand(row.key, row.words) for row in gate if row.stand == "by hand"],
            beside=Beside(words, to),
        ).entry.proof
        if all(row.decision != "failed" for row in proof.rows.all()):
            sign_proof(hand=self.shop.ingjerd, proof=proof)
        return proof

    @_minutes_on(0)
    def billed(
        self, charges: Sequence[Charge], why_more: str = "", words: str = "", to: str = "post table"
    ) -> Any:
        beside = Beside(words, to)
        return issue_invoice(
            hand=self.shop.ingjerd, visit=self.visit, charges=charges, why_more=why_more, beside=beside
        ).entry.invoice

    @_minutes_on(0)
    def paid(self, minor: int, by: str = "transfer", words: str = "") -> Any:
        return take_payment(
            hand=self.shop.ingjerd, visit=self.visit, amount_minor=minor, paid_by=by, words=words
        ).entry

    @_minutes_on(0)
    def gone(self, way: WayHome, words: str = "") -> Any:
        return send_home(hand=self.shop.ingjerd, visit=self.visit, way=way, beside=Beside(words)).entry

    @_minutes_on(0)
    def said(self, words: str, hand: Any = None) -> Any:
        return write_word(hand=hand or self.shop.ingjerd, visit=self.visit, words=words).entry

    @_minutes_on(0)
    def struck(self, entry: Any, reason: str, instead: Any = None) -> None:
        strike_entry(hand=self.shop.torbal, entry=entry, reason=reason, replaced_by=instead)


def pull_conditions(radius: float, lubricant: str = "as found") -> dict[str, Any]:
    """The last of three pulls, the line leaving at this radius."""
    return {
        "line": "on",
        "radius": radius,
        "temperature": WARM,
        "pull_number": 3,
        "pulls_of": 3,
        "lubricant_state": lubricant,
    }


def arrive(
    shop: Workshop, customer: Any, reels: Sequence[ArrivingReel], envelope: Envelope, kind: str = ""
) -> list[Stay]:
    """One envelope opened: a stay for each reel in it; `kind` where no sheet says it."""
    received = receive_parcel(hand=shop.ingjerd, customer=customer, reels=reels, envelope=envelope)
    return [Stay(shop, written.entry.visit, kind) for written in received.written]


def kilograms(newtons: float) -> str:
    """As it stands on a hanging scale that shows 0.1 kg."""
    return f"{newtons / KILOGRAM:.1f} kg"


def three_tries(nature: Nature, wobble: Sequence[float] = (-0.006, 0.004, 0.003)) -> str:
    """The full pull read three times off the scale."""
    return "; ".join(kilograms(nature.full * (1 + w)) for w in wobble)
