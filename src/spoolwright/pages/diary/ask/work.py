"""Work in ink: which works, in how many minutes, with which parts and lubricants, and what was left over."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from functools import cached_property
from typing import Any

from django import forms

from spoolwright.judgement.works import Work, all_works
from spoolwright.pages.diary.ask.ink_form import InkForm
from spoolwright.pages.diary.ask.offered import WordsField
from spoolwright.pages.diary.ask.rows import RowForm, rows
from spoolwright.pages.words import places
from spoolwright.sheets import lubricants
from spoolwright.shop.acts.write_work import Done, Fitted, Labour, Lubricated
from spoolwright.shop.questions import choices
from spoolwright.shop.questions.alike_and_open import OpenReel, alike_and_open
from spoolwright.shop.questions.blocks import Block

NOTHING, STILL_OPEN, SOMETHING = "nothing", "open", "something"
OPEN_STILL = "The reel lies open still; what is left over is counted when it is closed."


class PartRow(RowForm):
    noun = "Part"
    typed_in = ("what", "made_from")
    what = WordsField(label="Part", max_length=200)
    count = forms.IntegerField(
        label="How many", min_value=1, max_value=200, initial=1, required=False,
        widget=forms.NumberInput({"inputmode": "numeric", "autocomplete": "off"}),
    )  # fmt: skip
    source = forms.ChoiceField(label="It is", choices=[(s, s) for s in choices.PART_SOURCES], required=False)
    made_from = WordsField(label="Made from", required=False, max_length=200)

    def fitted(self) -> Fitted:
        given = self.cleaned_data
        return Fitted(given["what"], given["count"] or 1, given["source"] or "new", given["made_from"])


class LubricantRow(RowForm):
    noun = "Lubricant"
    typed_in = ("point", "lubricant", "amount", "lot")
    point = WordsField(label="Point", max_length=200)
    lubricant = WordsField(
        (name for lub in lubricants.names() for name in (lub,)), label="Lubricant", max_length=100
    )
    amount = WordsField(
        ("1 needle drop", "1 bottle drop", "film", "smear", "trace"),
        label="How much",
        required=False,
        max_length=60,
    )
    lot = WordsField(label="Lot", required=False, max_length=60)

    def lubricated(self) -> Lubricated:
        given = self.cleaned_data
        return Lubricated(given["point"], given["lubricant"], given["amount"], given["lot"])


class WorkForm(InkForm):
    what = "work"
    title = "Work done"
    button = "Write the work"
    template = "diary/ask/_work.html"

    done = forms.MultipleChoiceField(
        label="What was done", required=False, widget=forms.CheckboxSelectMultiple
    )
    own_words = forms.CharField(label="Or in your own words", required=False, max_length=200)
    minutes = forms.IntegerField(
        label="Minutes it took",
        min_value=0,
        max_value=6000,
        widget=forms.NumberInput({"inputmode": "numeric", "autocomplete": "off"}),
    )
    left = forms.ChoiceField(
        label="Left over on the mat",
        choices=(
            (NOTHING, "counted: every part that came off is back, replaced or accounted for"),
            (STILL_OPEN, "the reel lies open still"),
            (SOMETHING, "something is left over"),
        ),
        widget=forms.RadioSelect,
    )
    left_over = forms.CharField(label="What is left over", required=False, max_length=300)

    def lay_out(self) -> None:
        self.fields["done"].choices = [(work, title) for work, title, _ in self.offered]
        total = sum(part.quantity for part in self.desk.sheet.parts) if self.desk.sheet else 0
        if total:
            self.fields["left"].help_text = f"The sheet lists {total} pieces."
        sent = self.data if self.is_bound else None
        old = self.old.part if self.old and self.old.kind == "work" else None
        self.parts = rows(PartRow, "part", sent, started=_rows_of(old, "parts", _part))
        self.lubricants = rows(LubricantRow, "oil", sent, started=_rows_of(old, "lubricants", _lubricant))
        for row in self.parts:
            row.fields["what"].widget.offered = self._part_names()
        for row in self.lubricants:
            row.fields["point"].widget.offered = self._points()

    @property
    def alike(self) -> tuple[str, ...]:
        """Other reels of this model in pieces: their parts and these change places unseen."""
        return tuple(map(_alike, alike_and_open(self.desk.visit)))

    @cached_property
    def agreed(self) -> tuple[str, ...]:
        """Works that the customer said yes to and that are not yet written as done."""
        done = {d.key for b in self.desk.diary.of_kind("work") for d in b.part.done.all()}
        return tuple(dict.fromkeys(work for work in self.desk.diary.agreed.works if work not in done))

    @cached_property
    def offered(self) -> list[tuple[str, str, Work | None]]:
        """The agreed works first, each with its title; then what else is done on this kind of reel."""
        known = all_works()
        mine = [(work, self._title(work), known.get(work)) for work in self.agreed]
        rest = [w for w in known.values() if (not self.desk.kind or self.desk.kind in w.kinds)]
        old = [(d.key, d.title, known.get(d.key)) for d in self._old_works() if d.key not in self.agreed]
        taken = {work for work, _, _ in [*mine, *old]}
        return [*mine, *old, *((w.id, w.title, w) for w in rest if w.id not in taken)]

    def _old_works(self) -> list[Any]:
        return list(self.old.part.done.all()) if self.old and self.old.kind == "work" else []

    def _title(self, work: str) -> str:
        for answer in self.desk.diary.agreed.answers:
            for offered in answer.option.works.all():
                if offered.work == work:
                    return str(offered.title)
        return work

    def choices_of(self, *, agreed: bool) -> list[dict[str, Any]]:
        """The check rows of the agreed works, or of all others, with minutes and caution."""
        chosen = set(self["done"].value() or ())
        rows_ = [
            (work, title, known) for work, title, known in self.offered if (work in self.agreed) == agreed
        ]
        return [
            {
                "id": work,
                "title": title,
                "checked": work in chosen,
                "minutes": known.minutes(self.desk.kind or known.kinds[0], reel_is_open=True)
                if known
                else None,
                "caution": known.caution if known else "",
            }
            for work, title, known in rows_
        ]

    @property
    def agreed_rows(self) -> list[dict[str, Any]]:
        return self.choices_of(agreed=True)

    @property
    def other_rows(self) -> list[dict[str, Any]]:
        return self.choices_of(agreed=False)

    @property
    def has_parts(self) -> bool:
        """Whether a part stands in the form, so that its fold stands open."""
        return self.is_look or any(row["what"].value() for row in self.parts)

    @property
    def has_lubricants(self) -> bool:
        return self.is_look or any(row["point"].value() for row in self.lubricants)

    @property
    def planned(self) -> int:
        return self.desk.diary.agreed.minutes

    def _part_names(self) -> list[str]:
        needed = [part.name for work in all_works().values() for part in work.parts]
        return [*needed, *((part.name for part in self.desk.sheet.parts) if self.desk.sheet else ())]

    def _points(self) -> list[str]:
        if self.desk.sheet is None:
            return []
        return [part.name for part in self.desk.sheet.parts if part.lubricant != "DRY"]

    def started_again(self, old: Block) -> dict[str, Any]:
        if old.kind != "work":
            return super().started_again(old)
        work = old.part
        return super().started_again(old) | {
            "done": [done.key for done in work.done.all()],
            "minutes": work.minutes,
            "left": SOMETHING if work.left_over else NOTHING,
            "left_over": work.left_over,
        }

    def clean(self) -> dict[str, Any]:
        given = super().clean() or self.cleaned_data
        if given.get("left") == SOMETHING and not given.get("left_over", "").strip():
            self.add_error(
                "left_over", "Say what lies there: a washer left over is a reel put together wrong."
            )
        if not self.is_look:
            for row in (*self.parts, *self.lubricants):
                for fault in row.faults():
                    self.add_error(None, fault)
        return given

    def labour(self) -> Labour:
        given = self.cleaned_data
        return Labour(
            done=list(self._done(given)),
            minutes=given["minutes"],
            parts=[row.fitted() for row in self.parts if not row.is_blank],
            lubricants=[row.lubricated() for row in self.lubricants if not row.is_blank],
            left_over=given["left_over"].strip() if given["left"] == SOMETHING else "",
        )

    def _done(self, given: dict[str, Any]) -> Iterable[Done]:
        titles = {work: title for work, title, _ in self.offered}
        yield from (Done(work, titles[work]) for work in given["done"])
        if own := given["own_words"].strip():
            yield Done(own[:60], own)

    def beside(self) -> Any:
        """That the reel lies open still is said in words: nothing was counted yet."""
        beside = super().beside()
        if self.cleaned_data["left"] != STILL_OPEN or OPEN_STILL in beside.words:
            return beside
        return replace(beside, words=f"{beside.words} {OPEN_STILL}".strip())


def _alike(other: OpenReel) -> str:
    return (
        f"Number {other.tag}, {other.reel}, lies open too, {places.there(other.place)}; {other.hand} wrote "
        "of it last. One reel of one model open for each hand, or their parts change places."
    )


def _rows_of(old: Any, name: str, shape: Any) -> list[dict[str, Any]]:
    return [shape(row) for row in getattr(old, name).all()] if old is not None else []


def _part(row: Any) -> dict[str, Any]:
    return {"what": row.what, "count": row.count, "source": row.source, "made_from": row.made_from}


def _lubricant(row: Any) -> dict[str, Any]:
    return {"point": row.point, "lubricant": row.lubricant, "amount": row.amount, "lot": row.lot}
