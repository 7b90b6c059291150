"""The small jobs: something over the counter while the customer waits, and new line on a spool."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from spoolwright.demo import words_said
from spoolwright.demo.offers import told_option
from spoolwright.demo.planned import Book, Planned
from spoolwright.demo.usual_arrival import arrives
from spoolwright.demo.usual_stay import Job
from spoolwright.demo.workshop import Workshop
from spoolwright.judgement.price import Charge, labour
from spoolwright.shop.acts.record_answer import Said
from spoolwright.shop.acts.send_quote import OfferedPromise, OfferedWork
from spoolwright.shop.acts.write_work import Fitted, Lubricated

WINDING_MINUTES = 15
FULL = OfferedPromise(
    "line_level", "length", 1.5e-3, 3.2e-3, reading_kind="line_level", words="line below the lip, all round"
)


class OverTheCounter(Job):
    """One symptom, no strip, no full check-in."""

    def __init__(self, shop: Workshop, book: Book, plan: Planned) -> None:
        super().__init__(shop, book, plan)
        self.job = words_said.small_job(self.chance)
        title, kroner = self.job["priced"]
        self.charges = [
            Charge("tier", "Quick fix", 150_00, minutes=self.job["minutes"]),
            Charge("part", title, kroner * 100),
        ]
        self.work = OfferedWork(*self.job["work"], self.job["minutes"])

    def steps(self) -> Mapping[str, Callable[[], None]]:
        return {
            **super().steps(),
            "find": self.is_looked_at,
            "ask": self.is_asked_about,
            "answer": self.is_answered,
            "work": self.is_done,
            "bill": self.is_billed,
        }

    def arrives(self) -> None:
        self.stay = arrives(self.shop, self.book, self.plan, self.chance, self.job["says"])

    def is_looked_at(self) -> None:
        self.stay.found(*self.job["fault"])

    def is_asked_about(self) -> None:
        option = told_option(self.shop.rates, "quick", self.work.title, self.charges, [self.work])
        self.quote = self.stay.asked([option], to="mat")

    def is_answered(self) -> None:
        words = self.chance.choice(("Yes, I will wait.", "Go on then.", "Please. I have half an hour."))
        self.stay.answered(self.quote, "quick", Said(self.who, "in the shop", words), to="mat")

    def is_done(self) -> None:
        oil = [Lubricated("where it was open", "Tysna 32", "1 drop")]
        minutes = self.job["minutes"] + self.chance.randrange(-2, 4)
        part = Fitted(self.job["priced"][0])
        self.stay.worked([(self.work.work, self.work.title)], minutes, [part], oil, to="mat")

    def is_billed(self) -> None:
        self.invoice = self.stay.billed(self.charges, to="")


class NewLine(Job):
    """Old line off, new line on, the level below the lip measured."""

    def __init__(self, shop: Workshop, book: Book, plan: Planned) -> None:
        super().__init__(shop, book, plan)
        self.line: dict[str, Any] = words_said.new_line(self.chance)
        name, metres = self.line["name"], self.line["metres"]
        self.title = f"{name[0].upper()}{name[1:]}, {metres} m, wound on under a wet cloth"
        self.charges = [
            labour("Old line off, new line on", WINDING_MINUTES, shop.rates),
            Charge("other", self.title, self.line["kroner"] * 100),
        ]
        if plan.posted:
            self.charges.append(Charge("post", "Post", shop.rates.post_minor))

    def steps(self) -> Mapping[str, Callable[[], None]]:
        return {
            **super().steps(),
            "ask": self.is_asked_about,
            "answer": self.is_answered,
            "wind": self.is_on_the_winder,
            "work": self.is_wound,
            "try": self.is_measured,
            "prove": self.is_proved,
            "bill": self.is_billed,
        }

    def arrives(self) -> None:
        self.stay = arrives(self.shop, self.book, self.plan, self.chance, "New line for the season, please.")

    def is_asked_about(self) -> None:
        work = OfferedWork("respool-line", "Put new line on", WINDING_MINUTES)
        option = told_option(self.shop.rates, "line", "New line", self.charges, [work], [FULL])
        self.quote = self.stay.asked([option])

    def is_answered(self) -> None:
        said = Said(self.who, "telephone", "Yes, the same as last year.")
        self.stay.answered(self.quote, "line", said)

    def is_on_the_winder(self) -> None:
        self.stay.moved("line winder", "Old line off and cut up.", self.shop.ingjerd)

    def is_wound(self) -> None:
        minutes = WINDING_MINUTES + self.chance.randrange(-2, 5)
        self.stay.worked(
            [("respool-line", "Put new line on")], minutes, [Fitted(self.title)], to="line winder",
            words="About 8 N on the line, a wet cloth in the fingers.",
        )  # fmt: skip

    def is_measured(self) -> None:
        level = self.chance.choice(
            ("2.1 mm; 2.2 mm; 2.2 mm", "2.4 mm; 2.3 mm; 2.3 mm", "1.9 mm; 2.0 mm; 2.1 mm")
        )
        self.stay.typed({"line_level": level}, {})

    def is_proved(self) -> None:
        self.stay.proved()

    def is_billed(self) -> None:
        self.invoice = self.stay.billed(self.charges)
