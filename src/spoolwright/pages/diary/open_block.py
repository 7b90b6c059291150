"""The last block of a diary: the form that stands open in it, and what else is offered in words."""

from __future__ import annotations

from dataclasses import dataclass

from spoolwright.pages.diary import due
from spoolwright.pages.diary.ask.ink_form import InkForm
from spoolwright.pages.diary.desk import Desk
from spoolwright.pages.diary.due import Way


@dataclass(frozen=True)
class OpenBlock:
    """`is_next`: the form is that of what comes next, not one that somebody chose."""

    title: str
    says: str
    minutes: int
    form: InkForm | None
    way: Way | None
    promised: str
    others: list[Way]
    not_taken: list[Way]
    is_next: bool


def laid_out(desk: Desk, form: InkForm | None) -> OpenBlock:
    """The open block with the chosen form in it, or with that of what comes next."""
    if form is not None:
        return OpenBlock(
            form.title, form.says, 0, form, None, "", due.others(desk), due.not_taken_ways(desk), False
        )
    found, following = due.due(desk), desk.diary.next
    title = f"Next: {_lowered(found.form.title)}" if found.form else _title(following.act)
    return OpenBlock(
        title=title,
        says=following.words,
        minutes=following.minutes,
        form=found.form,
        way=found.way,
        promised=found.promised,
        others=due.others(desk),
        not_taken=due.not_taken_ways(desk),
        is_next=True,
    )


TITLES = {
    "quote": "Next: the quote",
    "proof": "Next: the proof",
    "arrival": "Next: its arrival",
    "answer": "Next: the customer’s answer",
    "nothing": "It has gone home",
}


def _title(act: str) -> str:
    return TITLES.get(act, "Next")


def _lowered(title: str) -> str:
    return title[0].lower() + title[1:]
