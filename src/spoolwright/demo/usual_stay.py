"""A stay that is no story of its own: what every kind of job has, and how it goes on step by step."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime, timedelta
from typing import Any

from spoolwright.demo.pace import REMINDER, moments
from spoolwright.demo.planned import Book, Planned
from spoolwright.demo.shop_hours import at, open_day
from spoolwright.demo.stay import Stay
from spoolwright.demo.timetable import Story
from spoolwright.demo.usual_arrival import arrives
from spoolwright.demo.workshop import Workshop
from spoolwright.shop.acts.send_home import WayHome

SELDOM = {"order": "part", "mend": "failed", "wind": "respool"}
"""Steps of a tune that are taken only where the plan says so."""


class Job:
    """What every kind of job has: a reel that comes, is billed, goes home and is paid for."""

    stay: Stay
    invoice: Any
    mass = 0.3

    def __init__(self, shop: Workshop, book: Book, plan: Planned) -> None:
        self.shop, self.book, self.plan = shop, book, plan
        self.chance = shop.chance(f"{plan.name} {plan.job}")

    def steps(self) -> Mapping[str, Callable[[], None]]:
        """What is done at each step of the plan's pace."""
        return {"arrival": self.arrives, "send": self.is_sent, "pay": self.is_paid}

    def arrives(self) -> None:
        self.stay = arrives(self.shop, self.book, self.plan, self.chance)

    @property
    def who(self) -> str:
        return str(self.stay.visit.reel.customer.name)

    @property
    def owes(self) -> int:
        return 0 if "unpaid" in self.plan.turns else int(self.invoice.due_minor)

    def is_sent(self) -> None:
        enclosed = ["proof", "old parts in a bag"]
        if self.plan.posted:
            number = f"HP {4400 + self.stay.tag} {self.chance.randrange(1000, 9999)}"
            self.stay.gone(
                WayHome("post", "Havnepost", number, round(self.mass + 0.41, 3), enclosed=enclosed)
            )
            return
        if self.owes:
            self.stay.paid(self.owes, self.chance.choice(("card", "cash")), f"Invoice {self.invoice.number}.")
        self.stay.gone(WayHome("fetched", enclosed=enclosed))

    def is_paid(self) -> None:
        if self.plan.posted and self.owes:
            self.stay.paid(self.owes, words=f"Invoice {self.invoice.number}.")

    def sent_back(self) -> None:
        """After a no: as it came."""
        number, mass = f"HP {4400 + self.stay.tag} 0001", round(self.mass + 0.39, 3)
        way = WayHome("post", "Havnepost", number, mass) if self.plan.posted else WayHome("fetched")
        self.stay.gone(way, "As it came; told what was found.")


def play(job: Job, plan: Planned, until: datetime) -> Story:
    """The job as far as it is planned; what would come after `until` has not happened yet."""
    taken = job.steps()
    for step, moment in moments(plan.steps, plan.came, job.shop.chance(plan.name)).items():
        if moment > until or (plan.job == "tune" and SELDOM.get(step, "") not in {"", *plan.turns}):
            continue
        yield moment
        taken[step]()
        if step == plan.last_step:
            break
        if step == "answer" and "no" in plan.turns:
            yield at(open_day(moment.date() + timedelta(days=1)), "15:10")
            job.sent_back()
            return
    if "silent" in plan.turns:
        yield at(open_day(moment.date() + REMINDER), "09:20")
        job.stay.said("Reminded by text message: no answer for a week.")
