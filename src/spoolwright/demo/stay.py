"""One reel's stay at the bench, told in short sentences. Every one of them is an act of the shop's own."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import Any

from spoolwright.demo import measuring
from spoolwright.demo.measuring import Dropped
from spoolwright.demo.nature import WARM, Nature
from spoolwright.demo.signals import KILOGRAM
from spoolwright.demo.workshop import Workshop
from spoolwright.judgement.price import Charge
from spoolwright.shop.acts.attach_file import attach_file
from spoolwright.shop.acts.issue_invoice import issue_invoice
from spoolwright.shop.acts.move_reel import move_reel
from spoolwright.shop.acts.open_diary import Attached, Beside
from spoolwright.shop.acts.promise_date import promise_date
from spoolwright.shop.acts.prove import ProofPair, prove
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Envelope, receive_parcel
from spoolwright.shop.acts.record_answer import Said, record_answer
from spoolwright.shop.acts.send_home import WayHome, send_home
from spoolwright.shop.acts.send_quote import OfferedOption, send_quote
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.acts.take_payment import take_payment
from spoolwright.shop.acts.take_reading import Signal, take_reading
from spoolwright.shop.acts.write_finding import write_finding
from spoolwright.shop.acts.write_word import write_word
from spoolwright.shop.acts.write_work import Done, Fitted, Labour, Lubricated, write_work
from spoolwright.shop.questions import by_number
from spoolwright.shop.questions.readings import to_prove
from spoolwright.shop.questions.signals import kept_pull, kept_spin

BARE = {"line": "off", "brakes": "off", "temperature": WARM}
"""Conditions of a spool that is tried alone."""


@dataclass
class Stay:
    """A visit and the two who look after it: Torbal measures and mends, Ingjerd asks, bills and sends."""

    shop: Workshop
    visit: Any

    @property
    def tag(self) -> int:
        return int(self.visit.tag)

    def typed(
        self, readings: Mapping[str, str], conditions: Mapping[str, Any] | None = None, words: str = ""
    ) -> Any:
        """Readings typed as one entry: kind of reading, and what was typed for it."""
        values = [v for kind, text in readings.items() for v in measuring.values_of_typed(kind, text)]
        given = BARE if conditions is None else conditions
        return self._read(values, given, beside=Beside(words))

    def pulled(self, dropped: Dropped, nature: Nature, lubricant: str, words: str = "") -> Any:
        """The last of three pulls, from its file."""
        attachment = self._attach(dropped)
        kept = kept_pull(dropped.trace, dropped.read).as_data()
        values = measuring.values_of_pull(dropped.read, nature.radius)
        conditions = self.pull_conditions(nature, lubricant) | {"star_turns": nature.star_turns}
        signal = Signal(attachment, kept)
        return self._read(values, conditions, "pull trace", signal, Beside(words))

    def pulled_full(self, nature: Nature, tries: str, lubricant: str, words: str = "") -> Any:
        """The star hard on, read off a hanging scale three times."""
        values = measuring.values_of_typed("pull_full", tries)
        return self._read(values, self.pull_conditions(nature, lubricant), beside=Beside(words))

    def spun(self, dropped: Dropped, words: str = "", conditions: Mapping[str, Any] = BARE) -> Any:
        """A spin from its recording or its list of ticks."""
        signal = Signal(self._attach(dropped), kept_spin(dropped.read).as_data())
        values = measuring.values_of_spin(dropped.read)
        return self._read(values, conditions, "spin-down", signal, Beside(words))

    @staticmethod
    def pull_conditions(nature: Nature, lubricant: str) -> dict[str, Any]:
        return {
            "line": "on",
            "radius": nature.radius,
            "temperature": WARM,
            "pull_number": 3,
            "pulls_of": 3,
            "lubricant_state": lubricant,
        }

    def _read(
        self,
        values: Sequence[Any],
        conditions: Mapping[str, Any],
        way: str = "typed",
        signal: Signal | None = None,
        beside: Beside = Beside(),
    ) -> Any:
        hand = self.shop.ingjerd if way == "spin-down" else self.shop.torbal
        return take_reading(
            hand=hand,
            visit=self.visit,
            values=values,
            conditions=conditions,
            way=way,
            signal=signal,
            beside=beside,
        ).entry

    def _attach(self, dropped: Dropped) -> Any:
        name = f"{self.tag}-{dropped.name}"
        return attach_file(hand=self.shop.torbal, data=dropped.data, original_name=name)

    def found(
        self, part: str, fault: str, evidence: str, picture: tuple[str, bytes, str] | None = None, to: str = ""
    ) -> Any:
        """A finding; `picture` is a file's name, its bytes and the words under it."""
        attached = []
        if picture:
            name, data, caption = picture
            attached = [Attached(self._attach(Dropped(name, data, None)), caption)]
        beside = Beside(moved_to=to, attached=attached)
        return write_finding(
            hand=self.shop.torbal, visit=self.visit, part=part, fault=fault, evidence=evidence, beside=beside
        ).entry

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

    def answered(self, quote: Any, key: str, said: Said, to: str = "shelf") -> Any:
        """An answer to a quote; an empty key is a no."""
        option = next((o for o in quote.options.all() if o.key == key), None)
        return record_answer(
            hand=self.shop.ingjerd, quote=quote, option=option, said=said, beside=Beside(moved_to=to)
        ).entry

    def promised(self, likely: date, safe: date, words: str = "") -> None:
        version = by_number.visit(self.visit.pk).version
        promise_date(
            hand=self.shop.ingjerd, visit=self.visit, p50=likely, p90=safe, version=version, words=words
        )

    def moved(self, to: str, words: str = "", hand: Any = None) -> Any:
        version = by_number.visit(self.visit.pk).version
        by = hand or self.shop.torbal
        return move_reel(hand=by, visit=self.visit, to=to, version=version, words=words).entry

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

    def proved(self, words: str = "", to: str = "") -> Any:
        """The proof of every promise for which a reading has been taken."""
        rows = [row for row in to_prove(self.visit.pk) if row.measured]
        pairs = [ProofPair(row.promise, row.measured, row.before) for row in rows]
        return prove(
            hand=self.shop.torbal, visit=self.visit, pairs=pairs, beside=Beside(words, to)
        ).entry.proof

    def billed(
        self, charges: Sequence[Charge], why_more: str = "", words: str = "", to: str = "post table"
    ) -> Any:
        beside = Beside(words, to)
        return issue_invoice(
            hand=self.shop.ingjerd, visit=self.visit, charges=charges, why_more=why_more, beside=beside
        ).entry.invoice

    def paid(self, minor: int, by: str = "transfer", words: str = "") -> Any:
        return take_payment(
            hand=self.shop.ingjerd, visit=self.visit, amount_minor=minor, paid_by=by, words=words
        ).entry

    def gone(self, way: WayHome, words: str = "") -> Any:
        return send_home(
            hand=self.shop.ingjerd, visit=self.visit, way=way, beside=Beside(words)
        ).entry

    def said(self, words: str, hand: Any = None) -> Any:
        return write_word(hand=hand or self.shop.ingjerd, visit=self.visit, words=words).entry

    def struck(self, entry: Any, reason: str, instead: Any = None) -> None:
        strike_entry(hand=self.shop.torbal, entry=entry, reason=reason, replaced_by=instead)


def arrive(shop: Workshop, customer: Any, reels: Sequence[ArrivingReel], envelope: Envelope) -> list[Stay]:
    """One envelope opened: a stay for each reel in it."""
    received = receive_parcel(hand=shop.ingjerd, customer=customer, reels=reels, envelope=envelope)
    return [Stay(shop, written.entry.visit) for written in received.written]


def kilograms(newtons: float) -> str:
    """As it stands on a hanging scale that shows 0.1 kg."""
    return f"{newtons / KILOGRAM:.1f} kg"


def three_tries(nature: Nature, wobble: Sequence[float] = (-0.006, 0.004, 0.003)) -> str:
    """The full pull read three times off the scale."""
    return "; ".join(kilograms(nature.full * (1 + w)) for w in wobble)


def again(nature: Nature, **changes: Any) -> Nature:
    """The same reel with something changed in it."""
    return replace(nature, **changes)
