"""Each visit in a few lines: when, why, what was found, what was done, and whether it was shown."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from spoolwright.pages import doors
from spoolwright.pages.words import places, promised
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.passport import Passport, VisitInPassport


@dataclass(frozen=True)
class Stay:
    """One visit as the passport tells it; what was struck out is left to the diary."""

    visit: Any
    diary: str
    complaint: str = ""
    water: str = ""
    weighed: Sequence[Any] = ()
    found: Sequence[Any] = ()
    done: Sequence[str] = ()
    proved: Sequence[Any] = ()
    worked_on: datetime | None = None

    @property
    def days(self) -> str:
        return places.days_here(self.visit)

    @property
    def decisions(self) -> list[tuple[str, list[str]]]:
        """What the last proof showed, what it did not, and what failed: each with the readings by name."""
        told: dict[str, list[str]] = {}
        for row in self.proved:
            told.setdefault(row.decision, []).append(promised.title(row.promise))
        return list(told.items())


@dataclass
class _Told:
    arrivals: list[Any] = field(default_factory=list)
    found: list[Any] = field(default_factory=list)
    done: list[str] = field(default_factory=list)
    proved: list[Any] = field(default_factory=list)
    worked_on: datetime | None = None

    def take(self, block: Block) -> None:
        if block.kind == "arrival":
            self.arrivals.append(block.part)
        elif block.kind == "finding":
            self.found.append(block.part)
        elif block.kind == "work":
            self.done += [done.title for done in block.part.done.all()]
            self.worked_on = block.entry.written_at
        elif block.kind == "proof":
            self.proved = list(block.part.rows.all())


def stays(found: Passport) -> list[Stay]:
    """Newest first."""
    return [stay(visit) for visit in reversed(found.visits)]


def stay(visit: VisitInPassport) -> Stay:
    told = _Told()
    for block in visit.blocks:
        if not block.is_struck:
            told.take(block)
    arrival = told.arrivals[-1] if told.arrivals else None
    return Stay(
        visit=visit.visit,
        diary=doors.way_to("diary:diary", visit.visit.tag),
        complaint=arrival.complaint if arrival else "",
        water=arrival.water if arrival else "",
        weighed=[line for line in arrival.contents.all() if line.mass_kg] if arrival else (),
        found=told.found,
        done=list(dict.fromkeys(told.done)),
        proved=told.proved,
        worked_on=told.worked_on,
    )
