"""A tune on a reel that its sheet describes: read, offered in three ways, worked on, and proved."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from spoolwright.demo import lots, measuring, words_said
from spoolwright.demo.nature import Nature, known, mended, worn
from spoolwright.demo.offers import charges_of, offered, told_option
from spoolwright.demo.planned import Book, Planned
from spoolwright.demo.signals import PULL_STYLES
from spoolwright.demo.stay import three_tries
from spoolwright.demo.usual_stay import Job
from spoolwright.demo.workshop import Workshop
from spoolwright.judgement.findings import Finding
from spoolwright.judgement.free_spin import bare_inertia
from spoolwright.judgement.price import Charge
from spoolwright.judgement.quote_case import Around
from spoolwright.judgement.quote_options import Option, three_options
from spoolwright.judgement.waiting import promised_spread
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.record_answer import Said
from spoolwright.shop.acts.send_quote import OfferedWork
from spoolwright.shop.acts.write_work import Fitted
from spoolwright.shop.questions.readings import taken_as_found

DRAWS = 250
DEPOSIT = 300_00
LONG_SPIN = 16.0
"""Seconds; a spool that runs on longer is timed with the stopwatch only."""

DOUBTED = ("start_up_ratio", "spin_time", "pull_full")
"""Which promise is near its edge or broken, where one is: the first of these that was made."""


class Tune(Job):
    option: Option
    quote: Any
    extra: dict[str, Any] | None = None

    def __init__(self, shop: Workshop, book: Book, plan: Planned) -> None:
        super().__init__(shop, book, plan)
        self.before = worn(plan.reel.slug, self.chance)
        self.mass = self.before.mass
        self.faults: list[Finding] = []
        self.records = self.chance.random() < 0.4 and self.before.spins < LONG_SPIN
        self.style = self.chance.choice(PULL_STYLES)

    def steps(self) -> Mapping[str, Callable[[], None]]:
        return {
            **super().steps(),
            "read": self.is_read,
            "find": self.is_looked_into,
            "ask": self.is_asked_about,
            "answer": self.is_answered,
            "order": self.waits_for_a_part,
            "bath": lambda: self._to("bath", "Stripped, photographed in order."),
            "rack": lambda: self._to("drying rack"),
            "mat": self.is_on_the_mat,
            "work": self.is_worked_on,
            "try": self.is_tried,
            "prove": lambda: self.stay.proved() and None,
            "mend": self.is_mended_again,
            "wind": lambda: self._to("line winder", "The customer's own line back on, under a wet cloth."),
            "bill": self.is_billed,
        }

    def _to(self, place: str, words: str = "") -> None:
        self.stay.moved(place, words)

    def is_read(self) -> None:
        slipped = "struck" in self.plan.turns
        wrong = self.stay.typed({"end_float": f"{1e4 * self.before.end_float:.1f} mm"}) if slipped else None
        right = self._typed(self.before)
        if wrong:
            self.stay.struck(wrong, "decimal slipped: ten times too much", right)
        self._pulled(self.before, "as found", "")
        self._spun(self.before, "")

    def _typed(self, nature: Nature) -> Any:
        readings = {
            "mass": f"{1000 * nature.mass:.0f} g",
            "end_float": f"{1000 * nature.end_float:.2f} mm",
            "feel": str(nature.feel),
            "spin_time": "; ".join(f"{nature.spins * part:.0f} s" for part in (0.98, 1.0, 1.03)),
        }
        return self.stay.typed(readings)

    def _pulled(self, nature: Nature, lubricant: str, when: str) -> None:
        dropped = measuring.pull(nature, self.chance.randrange(10**6), self.style, f"pull-half{when}.csv")
        self.stay.pulled(dropped, nature, lubricant)
        self.stay.pulled_full(nature, three_tries(nature), lubricant)

    def _spun(self, nature: Nature, when: str) -> None:
        if not self.records:
            return
        name = f"spin{when}.{self.chance.choice(('wav', 'csv', 'csv'))}"
        inertia = bare_inertia(known(self.plan.reel.slug))
        self.stay.spun(measuring.spin(nature, self.chance.randrange(10**6), inertia, name))

    def is_looked_into(self) -> None:
        for part, fault, evidence in words_said.findings(self.chance):
            self.stay.found(part, fault, evidence)
            self.faults.append(Finding(part, fault, evidence))

    def is_asked_about(self) -> None:
        sheet, rates = known(self.plan.reel.slug), self.shop.rates
        readings, around = taken_as_found(self.stay.visit.pk), Around(posted=self.plan.posted)
        ways = three_options(sheet, readings, self.faults, rates, around=around, samples=DRAWS, seed=1)
        self.option = self.chance.choices(ways, (5, 8, 2))[0]
        deposit = DEPOSIT if self.option.key == "most" else 0
        self.quote = self.stay.asked([offered(way) for way in ways], deposit=deposit)
        spread = promised_spread(self.chance.randrange(600, 2600), self.option.minutes, clock.today())
        self.stay.promised(spread.likely, spread.safe)

    def is_answered(self) -> None:
        if "no" in self.plan.turns:
            said, channel = words_said.no(self.chance)
            self.stay.answered(self.quote, "", Said(self.who, channel, said), to="post table")
            return
        key, total = self.option.key, self.option.total_minor
        said, channel, cap = words_said.yes(self.chance, key, total, "extra" in self.plan.turns)
        self.stay.answered(self.quote, self.option.key, Said(self.who, channel, said, cap))
        if self.option.key == "most" and self.plan.at_last == "home":
            self.stay.paid(DEPOSIT, "card", "Deposit.")

    def waits_for_a_part(self) -> None:
        parts = [part.name for work in self.option.works for part in work.parts] or ["plate screws"]
        self._to("waits for a part", f"{parts[0].capitalize()} ordered; looked for within the week.")

    def is_on_the_mat(self) -> None:
        self._to("mat")
        if "extra" in self.plan.turns:
            self._more_was_found()

    def _more_was_found(self) -> None:
        """Something that was not seen before: it is inside the cap, so it is told and not asked."""
        self.extra = more = words_said.extra(self.chance, [work.id for work in self.option.works])
        self.stay.found(more["part"], more["fault"], more["evidence"])
        works = [OfferedWork(more["work"], more["title"], 4)]
        option = told_option(self.shop.rates, "extra", more["title"], [_charge(more)], works)
        self.stay.asked([option], "Told by picture; it stays inside the cap.", to="mat")

    def is_worked_on(self) -> None:
        works = self.option.works
        done = [(work.id, work.title) for work in works]
        parts = [Fitted(p.name.capitalize(), p.count) for w in works for p in w.parts if p.sure == "sure"]
        if self.extra:
            done.append((self.extra["work"], self.extra["title"]))
            parts.append(Fitted(self.extra["priced"][0]))
        minutes = max(8, round(self.option.minutes * self.chance.uniform(0.88, 1.22)))
        oils = lots.usual(self.plan.reel.kind, clock.today())
        self.stay.worked(done, minutes, parts, oils, words_said.aside(self.chance))

    def is_tried(self) -> None:
        outcome = next((turn for turn in ("failed", "not shown") if turn in self.plan.turns), "shown")
        made = [promise.reading_kind for promise in self.option.promises]
        doubted = next((kind for kind in DOUBTED if kind in made), "")
        self._read_again(mended(self.before, self.option, self.chance, outcome, doubted), "-after")

    def _read_again(self, nature: Nature, when: str) -> None:
        self._typed(nature)
        self._pulled(nature, "cleaned and oiled", when)
        self._spun(nature, when)

    def is_mended_again(self) -> None:
        """The proof failed: out again, and read once more."""
        words = "The proof failed: a burr on the ear of one metal disc. Dressed, no charge."
        self.stay.worked([("dress-drag", "Dress the drag and grease it")], 24, words=words)
        self._read_again(mended(self.before, self.option, self.chance), "-again")
        self.stay.proved()

    def is_billed(self) -> None:
        charges, why = charges_of(self.option.lines), ""
        if self.extra:
            charges.append(_charge(self.extra))
            why = f"{self.extra['title']}: {self.extra['evidence']}. Told by picture, inside your cap."
        if "struck bill" in self.plan.turns:
            wrong = self.stay.billed(charges, why, "Her old address is on it.")
            self.stay.struck(wrong.entry, "the old address is on it: written again under the next number")
        self.invoice = self.stay.billed(charges, why)


def _charge(extra: Mapping[str, Any]) -> Charge:
    title, kroner = extra["priced"]
    return Charge("part", title, kroner * 100)
