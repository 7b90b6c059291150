"""What comes next for this reel? Read from the entries of its visit, said in words, with minutes."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Literal

Act = Literal[
    "arrival", "reading", "finding", "quote", "answer", "work", "proof", "invoice", "dispatch", "nothing"
]

# Hand minutes of one posted common tune, round multiplier: judgement prior.
MINUTES: dict[str, int] = {
    "arrival": 7,
    "reading": 8,
    "finding": 6,
    "quote": 5,
    "answer": 1,
    "work": 55,
    "proof": 7,
    "invoice": 4,
    "dispatch": 6,
    "nothing": 0,
}


@dataclass(frozen=True)
class EntryFact:
    """One entry of the diary, as plain facts.

    `says` is "yes" or "no" for an answer; "shown", "not shown" or "failed" for a proof; "said" for words
    that say something, where others only carry the reel along; else empty.
    `amount_minor` is a quote's total or an answer's cap, where there is one.
    """

    kind: str
    struck: bool = False
    says: str = ""
    amount_minor: int | None = None
    written_at: datetime | None = None


@dataclass(frozen=True)
class Facts:
    """What is known of a visit. `works_left` counts agreed works not yet written as done; None: not counted.

    `quick` is a job done while the customer waits: no full check-in is forced on it. `free` is a return
    under our own warranty: nothing is invoiced. `posted` says whether the reel goes home by post.
    `dunked` is a reel out of the water so lately that nobody may turn it before it is stripped.
    `beforehand` says that the customer named a sum at the counter up to which nothing is asked.
    `now` and `silence_days`: after so many days without an answer it is asked again, after the last of them
    the reel goes home as it came.
    """

    entries: Sequence[EntryFact]
    place: str = "mat"
    works_left: int | None = None
    work_minutes: int | None = None
    quick: bool = False
    free: bool = False
    posted: bool = True
    dunked: bool = False
    beforehand: bool = False
    now: datetime | None = None
    silence_days: Sequence[int] = ()


@dataclass(frozen=True)
class Next:
    """The next entry, the place it belongs in, what to do in words, and the minutes it takes by hand."""

    act: Act
    words: str
    minutes: int
    place: str


def what_next(facts: Facts) -> Next:
    """Which entry comes next in a visit.

    Parameters
    ----------
    facts : Facts
        Entries in the order they were written, struck ones marked; place; what is left to do **[-]**.

    Returns
    -------
    Next
        The act, its place, its words, its minutes **[min]**.

    Notes
    -----
    Struck entries count for nothing. A dunked reel is stripped unread. A finding after the last quote is a
    new question; a quote is open until an answer comes after it, unless it stays within a cap already given.
    Silence is asked about again at each of `silence_days`; a word in the diary says that it was.
    Work after a proof asks for a new proof. A return under our own warranty needs no quote and no proof, but
    the reading for which it came back is taken again.

    Source
    ------
    Order of the job: common practice, no source. Minutes: judgement prior.

    Examples
    --------
    >>> what_next(Facts(entries=[])).act
    'arrival'
    >>> what_next(Facts(entries=[EntryFact("arrival"), EntryFact("reading"), EntryFact("finding"),
    ...                          EntryFact("quote", amount_minor=110400)])).words
    'Ask the customer and write the answer in exact words, with the cap. Silence is not a yes.'
    """
    for rule in _RULES:
        found = rule(facts)
        if found is not None:
            return found
    return Next("nothing", "Nothing is left to do: the reel has gone home.", 0, facts.place)


def _last(facts: Facts, kind: str, says: str | None = None) -> int:
    """Position of the last unstruck entry of that kind, -1 when there is none."""
    for i in range(len(facts.entries) - 1, -1, -1):
        entry = facts.entries[i]
        if entry.kind == kind and not entry.struck and (says is None or entry.says == says):
            return i
    return -1


def _agreed_cap(facts: Facts, before: int) -> int | None:
    """The cap of the last yes before that position."""
    caps = [
        e.amount_minor
        for e in facts.entries[:before]
        if e.kind == "answer" and not e.struck and e.says == "yes"
    ]
    return caps[-1] if caps else None


def quote_is_open(facts: Facts) -> bool:
    """Whether a quote still waits for its answer.

    Parameters
    ----------
    facts : Facts
        The visit **[-]**.

    Returns
    -------
    bool
        True while the last quote is newer than the last answer and above any cap already given.

    Source
    ------
    Trade rule: an extra found is a new question, the old answer is kept; common practice, no source.

    Examples
    --------
    >>> quote_is_open(Facts(entries=[EntryFact("quote", amount_minor=52000)]))
    True
    >>> quote_is_open(Facts(entries=[EntryFact("quote", amount_minor=110400),
    ...     EntryFact("answer", says="yes", amount_minor=120000), EntryFact("quote", amount_minor=116900)]))
    False
    """
    quote = _last(facts, "quote")
    if quote < 0 or _last(facts, "answer") > quote:
        return False
    cap, total = _agreed_cap(facts, quote), facts.entries[quote].amount_minor
    return cap is None or total is None or total > cap


def _next(act: Act, place: str, words: str, minutes: int | None = None) -> Next:
    return Next(act, words, MINUTES[act] if minutes is None else minutes, place)


def _gone(facts: Facts) -> Next | None:
    if _last(facts, "dispatch") < 0:
        return None
    return _next("nothing", facts.place, "Nothing is left to do: the reel has gone home.")


def _arrival(facts: Facts) -> Next | None:
    if _last(facts, "arrival") >= 0:
        return None
    return _next(
        "arrival", "mat", "Open the parcel on camera, count everything onto the mat, weigh the reel."
    )


def _reading(facts: Facts) -> Next | None:
    if (
        facts.quick
        or facts.dunked
        or max(_last(facts, "reading"), _last(facts, "quote"), _last(facts, "work")) >= 0
    ):
        return None
    return _next(
        "reading", "jig", "Take the readings before anything is cleaned: pulls three times, spin, feel."
    )


# Strip 10, look it over 6: judgement prior.
_STRIP_MINUTES = 16


def _finding(facts: Facts) -> Next | None:
    if facts.quick or max(_last(facts, "finding"), _last(facts, "quote"), _last(facts, "work")) >= 0:
        return None
    if facts.dunked:
        words = "Strip it at once, without turning the handle, and write what was found, with a picture."
        return _next("finding", "mat", words, _STRIP_MINUTES)
    return _next(
        "finding", "mat", "Write what was found, with a picture; or go on to the quote if nothing was."
    )


def _no_answer(facts: Facts) -> Next | None:
    answer = _last(facts, "answer")
    if answer < 0 or facts.entries[answer].says != "no" or _last(facts, "answer", "yes") >= 0:
        return None
    if _last(facts, "quote") > answer:
        return None
    return _next(
        "dispatch", "post table", "The answer was no: send it back as it came, and say what was found."
    )


def _quote(facts: Facts) -> Next | None:
    quote = _last(facts, "quote")
    if quote < 0 and (facts.free or (facts.quick and facts.beforehand)):
        return None
    if quote < 0:
        return _next(
            "quote", "mat", "Write the quote: what is wrong, three ways to put it right, what each gives."
        )
    if _last(facts, "finding") > quote:
        return _next(
            "quote", "asked shelf", "Something new was found: price it and ask. Do only what was agreed."
        )
    return None


def _answer(facts: Facts) -> Next | None:
    if not quote_is_open(facts):
        return None
    silent, due = _silence(facts)
    if due and due == facts.silence_days[-1] and _last(facts, "answer", "yes") < 0:
        words = f"No answer for {silent} days: send it back as it came, and say what was found."
        return _next("dispatch", "post table", words)
    if due:
        words = f"No answer for {silent} days: ask again, and write down that you did. Silence is not a yes."
        return _next("answer", "asked shelf", words, _ASK_AGAIN_MINUTES)
    words = "Ask the customer and write the answer in exact words, with the cap. Silence is not a yes."
    return _next("answer", "asked shelf", words)


# A telephone call or a message: judgement prior.
_ASK_AGAIN_MINUTES = 3


def _silence(facts: Facts) -> tuple[int, int]:
    """Days since the open question, and the step of silence that is due; a word written since stills it."""
    asked = facts.entries[_last(facts, "quote")].written_at
    if facts.now is None or asked is None:
        return 0, 0
    silent = (facts.now - asked).days
    due = max((day for day in facts.silence_days if day <= silent), default=0)
    words = [entry for entry in facts.entries if entry.says == "said" and not entry.struck]
    said = [(word.written_at - asked).days for word in words if word.written_at is not None]
    return silent, 0 if any(day >= due for day in said) else due


_WAITS = {
    "waits for a part": "A part is on its way: when it is here, bring the reel to the mat and fit it.",
    "bath": "Take the parts out of the bath, rinse twice, and lay them on the drying rack.",
    "drying rack": "When everything is dry, lubricate, fit and adjust; write down each piece of work.",
}


def _work(facts: Facts) -> Next | None:
    last_work = _last(facts, "work")
    done = facts.works_left == 0 or (facts.works_left is None and last_work > _last(facts, "answer", "yes"))
    failed = _last(facts, "proof", "failed")
    if failed >= 0 and failed == _last(facts, "proof") and failed > last_work:
        return _next("work", "mat", "The proof failed: find out why, put it right, write the work.")
    if done and last_work >= 0:
        return None
    words = _WAITS.get(facts.place, "Do the agreed work; write down each piece, the parts and the minutes.")
    return _next("work", "mat", words, facts.work_minutes)


def _proof(facts: Facts) -> Next | None:
    proof = _last(facts, "proof")
    if facts.free and _last(facts, "quote") < 0:
        # Nothing was promised anew: the reading that failed before is what has to be shown.
        if _last(facts, "reading") > _last(facts, "work"):
            return None
        return _next("reading", "jig", "Take the reading for which it came back again, the same way.")
    if facts.quick or (proof > _last(facts, "work") and facts.entries[proof].says != "not shown"):
        return None
    if proof > _last(facts, "work"):
        return _next(
            "proof", "jig", "Not shown: take the reading again, more pulls, same place; or say so and go on."
        )
    return _next(
        "proof", "jig", "Take the same readings as before the work, and set them beside the promise."
    )


def _invoice(facts: Facts) -> Next | None:
    if facts.free or _last(facts, "invoice") >= 0:
        return None
    return _next("invoice", "post table", "Write the invoice; it may not pass the cap that was answered.")


def _dispatch(facts: Facts) -> Next | None:
    if facts.posted:
        words = (
            "Back the drag off, pack it with the old parts and the proof, weigh and photograph the parcel."
        )
        return _next("dispatch", "post table", words)
    return _next(
        "dispatch", "post table", "Hand it over with the old parts and the proof; say what was done.", 3
    )


_RULES: tuple[Callable[[Facts], Next | None], ...] = (
    _gone, _arrival, _reading, _finding, _no_answer, _quote, _answer, _work, _proof, _invoice, _dispatch,
)  # fmt: skip
