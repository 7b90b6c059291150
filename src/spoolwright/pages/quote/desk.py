"""What lies on the desk while a quote is put together: reel, readings, findings, what was agreed."""

from __future__ import annotations

from functools import cached_property
from typing import Any

from django.http import HttpRequest

from spoolwright.judgement.findings import Finding, Wrong
from spoolwright.judgement.job_price import NOTHING_BEFORE, Before
from spoolwright.judgement.option_works import Way, extra_way, three_ways
from spoolwright.judgement.quote_case import Around, Case, open_case
from spoolwright.judgement.shop_rates import ShopRates
from spoolwright.judgement.taken import Taken, listed
from spoolwright.judgement.works import all_works
from spoolwright.pages import doors
from spoolwright.pages.words import shown
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.shop.questions import book, by_number, reel_sheets
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.diary import Diary, diary
from spoolwright.shop.questions.readings import taken_as_found
from spoolwright.shop.questions.shop_settings import rates

KINDS = tuple(dict.fromkeys(kind for work in all_works().values() for kind in work.kinds))


class Desk:
    """One request for one visit; what costs a question or a prediction is worked out once."""

    def __init__(self, request: HttpRequest, tag: int) -> None:
        self.request = request
        self.visit = doors.found(by_number.visit_tagged(tag), "No reel of ours carries this tag.")

    @property
    def system(self) -> str:
        return shown.system_of(self.request.user)

    @cached_property
    def shop(self) -> Any:
        return doors.shop(self.request)

    @cached_property
    def rates(self) -> ShopRates:
        return rates()

    @cached_property
    def diary(self) -> Diary:
        return doors.found(diary(self.visit.pk))

    @cached_property
    def sheet(self) -> ReelSheet | None:
        version = self.visit.reel.sheet_version
        return reel_sheets.read(version) if version else None

    @property
    def ladder(self) -> str:
        """Where the load ladder of this reel is drawn; empty while there is no such page."""
        return doors.way_to("carries:visit", self.visit.tag)

    @cached_property
    def kind(self) -> str:
        """The kind of reel: from its sheet, else as somebody chose it on this page."""
        if self.sheet:
            return self.sheet.reel.kind
        asked = self.request.POST.get("kind") or self.request.GET.get("kind") or ""
        return asked if asked in KINDS else KINDS[0]

    @property
    def is_extra(self) -> bool:
        """Whether the customer said yes to something already: then only what is new is asked."""
        return bool(self.diary.agreed.answers)

    @cached_property
    def before(self) -> Before:
        """The tier that is paid for, the works and the sum that were agreed."""
        held = self.diary.agreed
        if not held.answers:
            return NOTHING_BEFORE
        titles = [line.what for a in held.answers for line in a.option.lines.all() if line.kind == "tier"]
        tier = next((tier.key for tier in self.rates.tiers if tier.title in titles), "")
        return Before(tier, held.works, held.total_minor)

    @cached_property
    def last_quote(self) -> Block | None:
        """The last quote that is not struck, answered or not."""
        return next(iter(reversed(self.diary.of_kind("quote"))), None)

    @property
    def quote_waits(self) -> bool:
        """Whether a question is out that nobody has answered yet."""
        answered = {block.part.quote_id for block in self.diary.of_kind("answer")}
        return self.last_quote is not None and self.last_quote.entry.pk not in answered

    @cached_property
    def findings(self) -> tuple[Block, ...]:
        """Findings that the quote answers; for an extra those since the last question."""
        since = self.last_quote.entry.seq if self.is_extra and self.last_quote else 0
        return tuple(block for block in self.diary.of_kind("finding") if block.entry.seq > since)

    @cached_property
    def readings(self) -> dict[str, tuple[Taken, ...]]:
        return taken_as_found(self.visit.pk)

    @property
    def taken(self) -> tuple[Taken, ...]:
        return listed(self.readings)

    @cached_property
    def case(self) -> Case:
        """The case as judgement sees it, before anybody has typed anything."""
        found = [Finding(b.part.part, b.part.fault, b.part.evidence) for b in self.findings]
        return open_case(self.sheet, self.readings, found, self.rates, around=self.around)

    @property
    def wrong(self) -> tuple[Wrong, ...]:
        """What the quote answers; readings from before the first answer are no news for an extra."""
        found = self.case.wrong
        return tuple(one for one in found if one.known_from == "finding") if self.is_extra else found

    @cached_property
    def around(self) -> Around:
        told = [block.part.used_value_minor for block in self.diary.of_kind("arrival")]
        parcel = self.visit.parcel
        return Around(
            used_price_minor=next(iter(reversed(told)), None),
            posted=parcel is not None and parcel.came_by == "post",
            system=self.system,
            kind=self.kind,
            before=self.before,
            learned=book.lessons(),
        )

    @cached_property
    def ways(self) -> tuple[Way, ...]:
        """What judgement proposes: three options, or what was found since."""
        return (extra_way(self.case),) if self.is_extra else three_ways(self.case)

    def latest(self, kind: str) -> Taken | None:
        """The latest reading of a kind from before the work."""
        return next((one for one in reversed(self.taken) if one.kind == kind), None)
