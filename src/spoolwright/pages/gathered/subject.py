"""Whose picture is drawn: a sheet, a reel or a visit, and the states in which it is drawn side by side."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property, lru_cache
from typing import Any
from urllib.parse import urlencode

from django.http import HttpRequest

from spoolwright import quantities
from spoolwright.judgement.book_lessons import NOTHING_LEARNED, Lessons
from spoolwright.judgement.line_said import read_line
from spoolwright.judgement.taken import Taken
from spoolwright.judgement.works import all_works
from spoolwright.pages import doors
from spoolwright.pages.gathered.kept_readings import FrozenTaken, frozen, thawed
from spoolwright.pages.words import shown
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.drag_setting import DragSetting, setting_of
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.shop.questions import book, by_number, readings, reel_sheets
from spoolwright.shop.questions.agreed import Agreed, agreed
from spoolwright.shop.questions.blocks import Block, blocks_of

Finder = Callable[[HttpRequest, Any], "Subject"]

AS_BUILT, TODAY, AS_IT_CAME = "as built", "today", "as it came in"
LONGEST_LINE = 60
NO_SHEET = "There is no reel sheet of this name."
NO_REEL = "No reel of ours has this number."
NO_VISIT = "No reel of ours carries this tag."
NOT_DESCRIBED = "No sheet describes this reel yet, so nothing about it can be worked out."


@dataclass(frozen=True)
class State:
    """One state of the reel: its key in an address, its name in words, the works that lead to it."""

    key: str
    words: str
    works: tuple[str, ...] = ()


@dataclass(frozen=True)
class Subject:
    """What every picture of a reel is drawn from; `door` and `key` are the words of its address."""

    door: str
    key: str | int
    title: str
    margin: str
    rests_on: str
    back: str
    back_words: str
    sheet: ReelSheet
    taken: tuple[FrozenTaken, ...]
    system: str
    states: tuple[State, ...]
    fill: float = 1.0
    line: str = ""
    learned: Lessons = NOTHING_LEARNED

    @cached_property
    def readings(self) -> dict[str, tuple[Taken, ...]]:
        """The readings that the states start from; none: a sound reel of this model is meant."""
        return thawed(self.taken)

    @property
    def setting(self) -> DragSetting:
        """What sets the drag of this reel, and how a place on its way is said."""
        return setting_of(self.sheet)

    @property
    def kept(self) -> str:
        """What goes along to the other pictures, as the end of an address."""
        said = {"fill": f"{round(100 * self.fill)} %" if self.fill != 1.0 else "", "line": self.line}
        return urlencode({name: text for name, text in said.items() if text})

    def state(self, key: str) -> State:
        """The state of this key; the first where there is none."""
        return next((one for one in self.states if one.key == key), self.states[0])


def of_sheet(request: HttpRequest, slug: str) -> Subject:
    """A sound reel as the version of its sheet that stands describes it."""
    version = doors.found(reel_sheets.version(slug), NO_SHEET)
    sheet = read(version.toml)
    return Subject(
        door="sheet",
        key=slug,
        title=f"{sheet.reel.maker} {sheet.reel.model}",
        margin=sheet.reel.kind,
        rests_on="A sound reel as this sheet describes it.",
        back=doors.way_to("reel_sheet:sheet", slug),
        back_words="Back to the sheet",
        sheet=sheet,
        taken=(),
        system=shown.system_of(request.user),
        states=(State("as-built", AS_BUILT),),
        learned=book.lessons(),
        **asked_of(request),
    )


def of_reel(request: HttpRequest, number: int) -> Subject:
    """One reel as it is today: from its latest readings before any work, and the works done since."""
    reel = doors.found(by_number.reel(number), NO_REEL)
    sheet = sheet_of(reel)
    taken, works, tag = today(reel.visits.order_by("-arrived_at", "-pk"))
    known = tuple(work for work in works if may_be_done(work, sheet))
    return Subject(
        door="reel",
        key=number,
        title=f"{reel.described} of {reel.customer.name}",
        margin="reel",
        rests_on=told_of(taken, tag, known),
        back=doors.way_to("passport:passport", number),
        back_words="Back to the passport",
        sheet=sheet,
        taken=frozen(taken),
        system=shown.system_of(request.user),
        states=(State("today", TODAY, known),),
        learned=book.lessons(),
        **asked_of(request),
    )


def of_visit(request: HttpRequest, tag: int) -> Subject:
    """One reel at the bench: as it came in, and as each option of the standing quote would leave it."""
    visit = doors.found(by_number.visit_tagged(tag), NO_VISIT)
    sheet = sheet_of(visit.reel)
    blocks = blocks_of([visit.pk])[visit.pk]
    taken = readings.taken_as_found(visit.pk)
    first = State("today", AS_IT_CAME if works_done(blocks) else TODAY)
    return Subject(
        door="visit",
        key=tag,
        title=f"{visit.reel.described} of {visit.reel.customer.name}",
        margin=str(tag),
        rests_on=told_of(taken, tag, ()),
        back=doors.way_to("diary:diary", tag),
        back_words="Back to the diary",
        sheet=sheet,
        taken=frozen(taken),
        system=shown.system_of(request.user),
        states=(first, *options(blocks, agreed(visit.pk), sheet)),
        learned=book.lessons(),
        **asked_of(request),
    )


def sheet_of(reel: Any) -> ReelSheet:
    """The sheet that describes this reel, or the page that says that none does."""
    return read(doors.found(reel.sheet_version, NOT_DESCRIBED).toml)


@lru_cache(maxsize=64)
def read(text: str) -> ReelSheet:
    """The sheet in a text that was read once already before it was written down."""
    return reel_sheet.read(text)


def asked_of(request: HttpRequest) -> dict[str, Any]:
    """Fill and line as the address carries them from one picture to the next; else a full spool."""
    return {"fill": fill_asked(request.GET.get("fill", "")), "line": line_asked(request.GET.get("line", ""))}


def fill_asked(text: str) -> float:
    """The share of a full spool's line that is on; 1 where nothing that can be read was asked."""
    typed = text.strip()
    try:
        share = quantities.read(typed if typed.endswith("%") else f"{typed} %", "ratio")
    except quantities.NotAQuantity:
        return 1.0
    return share if 0.0 <= share <= 1.0 else 1.0


def line_asked(text: str) -> str:
    """The line as it was typed; empty where it is none that we know."""
    try:
        read_line(text[:LONGEST_LINE])
    except quantities.NotAQuantity:
        return ""
    return text[:LONGEST_LINE]


def options(blocks: Iterable[Block], held: Agreed, sheet: ReelSheet) -> list[State]:
    """Each option of the last quote that stands, on top of what was agreed before it was asked."""
    quotes = [block.part for block in blocks if block.kind == "quote" and not block.is_struck]
    if not quotes:
        return []
    quote = quotes[-1]
    before = [a.option for a in held.answers if a.quote_id != quote.pk and quote.extends_id]
    return [
        State(f"option-{option.position}", option.title, works_of([*before, option], sheet))
        for option in quote.options.all()
    ]


def works_of(several: Iterable[Any], sheet: ReelSheet) -> tuple[str, ...]:
    """The works of some options that our list knows for this kind of reel, each once."""
    named = dict.fromkeys(work.work for option in several for work in option.works.all())
    return tuple(name for name in named if may_be_done(name, sheet))


def may_be_done(name: str, sheet: ReelSheet) -> bool:
    return name in all_works() and sheet.reel.kind in all_works()[name].kinds


def works_done(blocks: Iterable[Block]) -> tuple[str, ...]:
    """The works written down as done, each once."""
    done = (block.part for block in blocks if block.kind == "work" and not block.is_struck)
    return tuple(dict.fromkeys(row.key for work in done for row in work.done.all()))


def today(visits: Iterable[Any]) -> tuple[dict[str, tuple[Taken, ...]], tuple[str, ...], int]:
    """Readings of the latest visit that has any, the works done since they were taken, the visit's tag.

    `visits` newest first.
    """
    works: tuple[str, ...] = ()
    for visit in visits:
        done = works_done(blocks_of([visit.pk])[visit.pk])
        works = tuple(dict.fromkeys((*done, *works)))
        taken = readings.taken_as_found(visit.pk)
        if taken:
            return taken, works, visit.tag
    return {}, works, 0


def told_of(taken: dict[str, Any], tag: int, works: Sequence[str]) -> str:
    """What the picture rests on, in a sentence."""
    if not taken and not works:
        return "No reading was taken: a sound reel of this model is meant."
    start = (
        f"From the readings of number {tag} before any work" if taken else "From a sound reel of this model"
    )
    done = ", ".join(all_works()[name].title.lower() for name in works)
    return f"{start}, with the works done since: {done}." if done else f"{start}."
