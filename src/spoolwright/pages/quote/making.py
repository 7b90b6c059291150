"""A quote in the making: the options as they stand now, their promises, and whether it may be sent."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import Any

from django.forms import BaseForm, Form
from django.forms.boundfield import BoundField

from spoolwright.judgement import price
from spoolwright.judgement.carried import in_words
from spoolwright.judgement.earned import Earned, job_earned
from spoolwright.judgement.option_works import Way
from spoolwright.judgement.prediction import PREDICTS
from spoolwright.judgement.quote_options import Option, offer
from spoolwright.judgement.star_turns import star_turn_for
from spoolwright.judgement.works import Work
from spoolwright.pages.quote.desk import Desk
from spoolwright.pages.quote.expected import Expected, expected
from spoolwright.pages.quote.promises_form import PromisesForm
from spoolwright.pages.quote.send_form import SendForm
from spoolwright.pages.quote.works_form import WorksForm
from spoolwright.sheets.drag_setting import setting_of
from spoolwright.shop.acts.open_diary import Beside
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.acts.send_quote import OfferedOption, as_offered
from spoolwright.shop.questions.agreed import may_be_billed
from spoolwright.shop.questions.blocks import Block

ASK = "ask"
CHANGED = "The sums were worked out again since you last saw them. Look at them, then ask."
BESIDES = (
    "pull_half_spool",
    "pull_near_empty",
    "pull_per_star_turn",
    "drag_torque",
    "line_capacity",
    "line_per_turn",
)
"""What is expected besides that which can be promised."""


@dataclass(frozen=True)
class OptionNow:
    """One option as it stands, with what only the shop sees beside it."""

    number: int
    option: Option
    is_offered: bool
    promises: PromisesForm
    earned: Earned | None
    whole_minor: int
    ceiling_minor: int | None
    ruling: str
    offer: BoundField
    notes: tuple[str, ...]

    @property
    def besides(self) -> list[Expected]:
        """What is expected and not among the promises."""
        promised = {PREDICTS[one.reading_kind] for one in self.option.promises}
        keys = [*(k for k in self.option.predicted if k not in BESIDES), *BESIDES]
        values = [self.option.predicted[k] for k in keys if k in self.option.predicted and k not in promised]
        desk = self.promises.desk
        return [expected(value, desk.system, setting=setting_of(desk.sheet)) for value in values]

    @property
    def carried(self) -> str:
        """What would carry the pull then, in a line."""
        found = self.option.carried
        return in_words(found, self.promises.desk.system) if found else ""

    @property
    def costs_nothing(self) -> bool:
        return not self.option.lines


class Making:
    """Everything on the page that puts a quote together."""

    def __init__(self, desk: Desk, data: Any) -> None:
        self.desk, self.data = desk, data
        self.works = WorksForm(data, desk)
        self.case = replace(desk.case, around=self.works.around())
        self.options = tuple(self._option(number, way) for number, way in enumerate(self._ways()))
        self.send = SendForm(data, desk, inside_cap=self.is_inside_cap)
        self.missed = self._missed()
        self.refusal = ""

    def _ways(self) -> list[Way]:
        chosen = [self.works.chosen(number) for number in range(len(self.desk.ways))]
        return [
            replace(way, works=works, wider=_wider(works, chosen[number + 1 : number + 2]))
            for number, (way, works) in enumerate(zip(self.desk.ways, chosen, strict=True))
        ]

    def _option(self, number: int, way: Way) -> OptionNow:
        option = offer(self.case, way, self.works.changes(number))
        setting = (self.works.told("radius"), self.works.told("star_turns"))
        whole = self.desk.before.total_minor + option.total_minor
        held, shop = self.desk.diary.agreed, self.desk.shop
        ruling = may_be_billed(self.desk.visit, whole, shop, held=held).words if self.desk.is_extra else ""
        return OptionNow(
            number=number,
            option=option,
            is_offered=self.works.is_offered(number) and bool(option.lines),
            promises=PromisesForm(self.data, self.desk, number, option, setting),
            earned=self._earned(option),
            whole_minor=whole,
            ceiling_minor=price.ceiling(whole, self.desk.rates),
            ruling=ruling,
            offer=self.works[f"offer_{number}"],
            notes=tuple(self._notes(way, option)),
        )

    def _earned(self, option: Option) -> Earned | None:
        if not option.lines:
            return None
        posted, extra = self.case.around.posted, self.desk.is_extra
        return job_earned(option.priced, option.minutes, self.desk.rates, posted=posted, extra=extra)

    def _notes(self, way: Way, option: Option) -> Iterable[str]:
        names = {work.id: work.title for work in way.works}
        for work in way.works:
            for other in work.instead_of:
                if other in names and work.role != "base":
                    yield f"{work.title} takes the place of “{names[other].lower()}”: leave one of them out."
        wanted = self.works.told("wanted_pull")
        if wanted and option.prediction and option.prediction.star_turns:
            yield star_turn_for(option.prediction, wanted, self.desk.system).words

    def _missed(self) -> tuple[Block, ...]:
        """What others wrote since this page was opened: the quote waits until it has been seen."""
        seen = self.data.get("seen", "") if self.data else ""
        if not seen.isdigit():
            return ()
        others = [block for block in self.desk.diary.blocks if block.entry.seq > int(seen)]
        return tuple(block for block in others if not block.is_struck)

    @property
    def is_inside_cap(self) -> bool:
        """Whether an extra lies inside what the customer allowed beforehand."""
        if not self.desk.is_extra:
            return False
        cap = self.desk.diary.agreed.cap_minor
        return cap is not None and all(now.whole_minor <= cap for now in self.options)

    @property
    def cautions(self) -> tuple[str, ...]:
        """What can hurt at the bench, over all options, each once."""
        return tuple(dict.fromkeys(words for now in self.options for words in now.option.cautions))

    @property
    def forms(self) -> list[BaseForm]:
        return [self.works, *(now.promises for now in self.options if now.is_offered), self.send]

    @property
    def asked(self) -> list[BaseForm]:
        """The forms whose faults are listed, filled up to as many as the page has places for."""
        return [*self.forms, *(Form() for _ in range(5 - len(self.forms)))]

    @property
    def is_faulty(self) -> bool:
        return any(form.is_bound and form.errors for form in self.forms)

    @property
    def wants_sending(self) -> bool:
        return self.data is not None and self.data.get("do") == ASK

    def may_be_sent(self) -> bool:
        """Every field can be read, nobody wrote meanwhile, and the sums are those that were looked at."""
        faulty = [form for form in self.forms if not form.is_valid()]
        readable = not faulty
        if readable and self._sums_changed():
            self.refusal = CHANGED
        return readable and not self.refusal and not self.missed

    def _sums_changed(self) -> bool:
        shown = {now.number: self.data.get(f"shown_{now.number}") for now in self.options if now.is_offered}
        return any(shown[now.number] != str(now.option.total_minor) for now in self.options if now.is_offered)

    def refused(self, refusal: Refused) -> None:
        self.refusal = refusal.words

    def offered(self) -> dict[str, Any]:
        """The arguments with which the quote is sent."""
        told = self.send.cleaned_data
        return {
            "options": [self._as_offered(now) for now in self.options if now.is_offered],
            "deposit_asked_minor": told.get("deposit") or 0,
            "valid_until": told["valid_until"],
            "beside": Beside(words=told["words"], moved_to=told["moved_to"], seen=told["seen"]),
        }

    def _as_offered(self, now: OptionNow) -> OfferedOption:
        offered = as_offered(now.option, now.promises.offered())
        if not self.desk.is_extra:
            return offered
        # Several extras may follow one another in a diary; each is called after what it holds.
        named = ", ".join(work.title.lower() for work in now.option.works) or "added by hand"
        return replace(offered, key="extra", title=f"Found since: {named}"[:200])


def _wider(works: tuple[Work, ...], following: list[tuple[Work, ...]]) -> tuple[Work, ...]:
    """What the option after this one does besides."""
    own = {work.id for work in works}
    return tuple(work for next_works in following for work in next_works if work.id not in own)
