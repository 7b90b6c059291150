"""Which form stands open: the one thing that comes next, and the words in which all else is offered."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from spoolwright.pages.diary import ways
from spoolwright.pages.diary.ask.answer import AnswerForm
from spoolwright.pages.diary.ask.dispatch import DispatchForm
from spoolwright.pages.diary.ask.finding import FindingForm
from spoolwright.pages.diary.ask.ink_form import InkForm
from spoolwright.pages.diary.ask.invoice import InvoiceForm
from spoolwright.pages.diary.ask.pull import PullForm
from spoolwright.pages.diary.ask.spin import SpinForm
from spoolwright.pages.diary.ask.typed_reading import TypedReadingForm
from spoolwright.pages.diary.ask.work import WorkForm
from spoolwright.pages.diary.desk import Desk
from spoolwright.pages.words import promised
from spoolwright.sheets import reading_kinds
from spoolwright.shop.questions import readings
from spoolwright.shop.questions.readings import ToProve

FORMS: dict[str, type[InkForm]] = {
    "finding": FindingForm,
    "answer": AnswerForm,
    "work": WorkForm,
    "invoice": InvoiceForm,
    "dispatch": DispatchForm,
}

FIRST_READINGS = ("mass", "feel", "pull", "end_float", "spin")
"""What is taken before anything is cleaned, in the order of the bench: common practice, no source."""

ANSWERED_BY = {"pull": ("pull_run", "pull_full"), "spin": ("stop_time", "spin_time")}
BY_STOPWATCH = "spin_time"
"""From the flick to rest, which no recording holds: it begins at its own first tick."""

SAID = {"pull": "the pull", "spin": "the spin"}


@dataclass(frozen=True)
class Way:
    """Something else that can be written: where, and in which words; `inside` opens in this very block."""

    address: str
    words: str
    inside: bool = True


@dataclass(frozen=True)
class Due:
    """The open block before a form was chosen: the form of what comes next, or the way to its page."""

    form: InkForm | None
    way: Way | None = None
    promised: str = ""


def due(desk: Desk) -> Due:
    """What comes next in this diary, with its form right there where this page has one."""
    act = desk.diary.next.act
    if act == "reading":
        return Due(_form_of(desk, (not_taken(desk) or ["pull"])[0]))
    if act == "proof":
        return _proof(desk)
    if act == "quote":
        return Due(None, _to(ways.to_quote(desk.visit.tag), "Write the quote"))
    if act == "answer" and not desk.diary.of_kind("quote"):
        return Due(None)
    return Due(FORMS[act](desk, sent=False)) if act in FORMS else Due(None)


def _to(address: str, words: str) -> Way | None:
    return Way(address, words, inside=False) if address else None


def _proof(desk: Desk) -> Due:
    """The first promise without its reading asks for it; with all of them the proof can be written."""
    missing = next(
        (row for row in readings.to_prove(desk.visit.pk, desk.system) if row.measured is None), None
    )
    way = _to(ways.to_proof(desk.visit.tag), "Set them beside the promise")
    if missing is None:
        return Due(None, way)
    form = _form_of(desk, _asked_by(missing))
    if form is None:
        return Due(None, way)
    _same_conditions(form, missing)
    words = promised.in_words(missing.promise, desk.system)
    return Due(form, promised=f"Promised: {promised.title(missing.promise).lower()} {words}.")


def _asked_by(missing: ToProve) -> str:
    kind = missing.promise.reading_kind or missing.promise.kind
    known = reading_kinds.kinds().get(kind)
    if known is None:
        return "pull"
    if kind == BY_STOPWATCH or (missing.before and missing.before.reading.way == "typed"):
        return kind  # taken from a hanging scale or a stopwatch before, it is asked for in the same way after
    return {"pull trace": "pull", "spin-down": "spin"}.get(known.way, kind)


def _same_conditions(form: InkForm, missing: ToProve) -> None:
    """The reading after the work is taken as the one before it was: else the two cannot be compared."""
    before = missing.before.reading.conditions if missing.before else dict(missing.promise.conditions)
    for key, value in before.items():
        if key in form.fields and key != "pull_number":
            form.initial[key] = value
    if isinstance(form, PullForm) and missing.promise.reading_kind == "pull_full":
        form.initial["setting"] = "hard"


def _form_of(desk: Desk, what: str) -> InkForm | None:
    if what == "pull":
        return PullForm(desk, sent=False)
    if what == "spin":
        return SpinForm(desk, sent=False)
    known = reading_kinds.kinds().get(what)
    return TypedReadingForm(desk, known, sent=False) if known else None


def not_taken(desk: Desk) -> list[str]:
    """First readings that this visit does not have yet."""
    taken = {value.kind for value in readings.results(desk.visit.pk)}
    return [what for what in FIRST_READINGS if not taken & set(ANSWERED_BY.get(what, (what,)))]


def others(desk: Desk) -> list[Way]:
    """Everything else that can be written now, in words."""
    return [way for way in _others(desk) if way.address]


def _others(desk: Desk) -> Iterable[Way]:
    tag, is_here = desk.visit.tag, desk.visit.is_open
    if is_here:
        yield Way(desk.way("reading", all=1), "a reading")
        yield Way(desk.way("pull"), "a pull trace")
        yield Way(desk.way("live"), "a pull, typed as it goes")
        yield Way(desk.way("series"), "a series of pulls")
        yield Way(desk.way("spin"), "a spin-down")
        yield Way(desk.way("inertia"), "a moment of inertia")
        yield Way(desk.way("bearing"), "the noise of a bearing")
        yield Way(desk.way("gears"), "the noise of the gears")
        yield Way(desk.way("hand"), "a part measured by hand")
        yield Way(desk.way("finding"), "a finding")
        yield Way(ways.to_quote(tag), "a question to the customer", inside=False)
        if desk.diary.of_kind("quote"):
            yield Way(desk.way("answer"), "the answer")
        yield Way(desk.way("work"), "work done")
        if desk.diary.agreed.answers:
            yield Way(ways.to_proof(tag), "the proof", inside=False)
    yield Way(desk.way("word"), "a word or photos")
    yield Way(desk.way("payment"), "a payment")
    if is_here:
        yield Way(desk.way("invoice"), "the invoice")
        yield Way(desk.way("promise"), "the promised days")
        yield Way(desk.way("move"), "another place")
        yield Way(desk.way("dispatch"), "send it home")


def not_taken_ways(desk: Desk) -> list[Way]:
    """First readings still to be taken, while the reel is as it was found."""
    if not desk.visit.is_open or desk.diary.of_kind("work"):
        return []
    return [_reading_way(desk, what) for what in not_taken(desk)]


def _reading_way(desk: Desk, what: str) -> Way:
    if what in SAID:
        return Way(desk.way(what), SAID[what])
    return Way(desk.typed_way(what), reading_kinds.kind(what).title.lower())
