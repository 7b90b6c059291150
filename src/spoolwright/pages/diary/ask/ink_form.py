"""What every form of the diary has: words, files, another place, and what the writer had seen."""

from __future__ import annotations

from functools import cached_property
from typing import Any

from django import forms

from spoolwright.pages import doors
from spoolwright.pages.diary.ask import kept_files
from spoolwright.pages.diary.ask.kept_files import KeptFiles
from spoolwright.pages.diary.desk import Desk
from spoolwright.pages.words.asked import ask_in
from spoolwright.shop.acts.open_diary import Beside
from spoolwright.shop.questions import blocks, choices
from spoolwright.shop.questions.blocks import Block

WRITE = "write"
"""What the button says that writes; whatever is sent without it is only looked at."""


class InkForm(forms.Form):
    """A form of the open block. Each kind says its title, what its button writes and where it is sent."""

    what = ""
    title = ""
    button = "Write it"
    template = ""
    buttons = "diary/ask/_buttons.html"
    cautions: tuple[str, ...] = ()
    says = ""
    looks_at: tuple[str, ...] = ()
    own_files = True
    own_move = True
    files_open = False
    changed_words = "Anything else, in words"

    seen = forms.IntegerField(required=False, widget=forms.HiddenInput)
    again = forms.IntegerField(required=False, widget=forms.HiddenInput)
    reason = forms.CharField(
        label="Why the old one is struck out",
        max_length=1000,
        help_text="It stays readable, with this reason beside it.",
    )
    words = forms.CharField(
        label="Anything else, in words",
        required=False,
        max_length=4000,
        widget=forms.Textarea({"rows": 3}),
    )
    moved_to = forms.ChoiceField(label="Then the reel goes", required=False)

    def __init__(self, desk: Desk, *, sent: bool = True) -> None:
        self.desk = desk
        super().__init__(doors.posted(desk.request) if sent else None)
        self._offer_places()
        if not self.old_stands:
            del self.fields["reason"]
        if not self.own_move:
            del self.fields["moved_to"]
        if self.own_files:
            # Only a place for its faults: the files themselves are put away by kept_files.
            self.fields["photos"] = forms.FileField(required=False)
        self.lay_out()
        self.initial |= self.started() | {"seen": desk.visit.last_seq}
        if self.old:
            self.initial |= self.started_again(self.old) | {"again": self.old.entry.pk}
        ask_in(self, desk.system, desk.shop)

    def lay_out(self) -> None:
        """Fields that depend on the reel or on what was chosen before."""

    def started(self) -> dict[str, Any]:
        """What stands in an empty form."""
        return {}

    def started_again(self, old: Block) -> dict[str, Any]:
        """What was written, for writing it again."""
        return {"words": old.entry.words}

    def _offer_places(self) -> None:
        here = self.desk.visit.place
        places = [(place, f"to the {place}") for place in choices.PLACES if place != here]
        self.fields["moved_to"].choices = [("", f"nowhere: it stays ({here})"), *places]

    @cached_property
    def old(self) -> Block | None:
        """The entry that is written again here, if it is one of this diary."""
        asked = self.data.get("again") if self.is_bound else self.desk.request.GET.get("again")
        if not (asked and asked.isascii() and asked.isdigit() and len(asked) < 19):
            return None
        found = blocks.block(int(asked))
        return found if found and found.entry.visit_id == self.desk.visit.pk else None

    @property
    def old_stands(self) -> bool:
        """Whether the old entry still has to be struck out; else only its words are taken."""
        return self.old is not None and not self.old.is_struck

    @cached_property
    def files_beside(self) -> KeptFiles:
        """Files that go beside the entry, those that came before among them."""
        if not (self.is_bound and self.own_files):
            return self._old_photos()
        return kept_files.keep(self.desk.request, "photos")

    def _old_photos(self) -> KeptFiles:
        kept = KeptFiles("photos")
        mine = [
            f for f in (self.old.attached if self.old else ()) if f.attachment.author_id == self.desk.hand.pk
        ]
        kept.attachments = [file.attachment for file in mine]
        kept.captions = {file.attachment.pk: file.caption for file in mine}
        return kept

    @property
    def is_look(self) -> bool:
        """Whether a file is only read or a bill only added up: nothing is written then."""
        return self.is_bound and self.data.get("do") != WRITE

    @property
    def is_ready(self) -> bool:
        """Sent, sound, and meant to be written."""
        return self.is_bound and self.is_valid() and not self.is_look

    def full_clean(self) -> None:
        super().full_clean()
        if not self.is_bound:
            return
        if self.is_look:
            # Whoever only looks has not finished: what is still empty is no fault yet.
            kept = {name: faults for name, faults in self._errors.items() if name in self.looks_at}
            self._errors = type(self._errors)(kept)
        for fault in self.files_beside.faults if self.own_files else ():
            self.add_error("photos", fault)

    @property
    def action(self) -> str:
        return self.desk.way(self.what)

    @property
    def keep(self) -> str:
        """The name under which the browser keeps what is typed here, the same wherever the form stands."""
        again = f" again {self.old.entry.pk}" if self.old else ""
        return f"diary {self.desk.visit.tag} {self.what}{again}"

    @property
    def has_extras(self) -> bool:
        """Whether words, files or another place were given, so that the fold they lie in stands open."""
        given = (self["words"].value(), self["moved_to"].value() if self.own_move else "")
        return any(given) or bool(self.files_beside.attachments or self.files_beside.faults)

    def beside(self) -> Beside:
        given = self.cleaned_data
        return Beside(
            words=given["words"],
            moved_to=given.get("moved_to", ""),
            attached=self.files_beside.attached(),
            seen=given["seen"],
        )
