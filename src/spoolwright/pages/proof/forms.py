"""What the hand that writes a proof adds to it: what was tried, a word, where the reel goes."""

from __future__ import annotations

from typing import Any

from django import forms

from spoolwright.pages.proof.bench import Bench
from spoolwright.shop.acts.prove import TriedByHand
from spoolwright.shop.questions import choices

CHANGED = "Readings were taken or struck since you last looked. Look again, then write."


class ProofForm(forms.Form):
    """`pairs` carries which readings stood beside which promises, so that none changes unseen."""

    tried = forms.MultipleChoiceField(
        label="Tried by hand, and in order", required=False, widget=forms.CheckboxSelectMultiple
    )
    words = forms.CharField(label="A word about it", required=False, widget=forms.Textarea({"rows": 3}))
    moved_to = forms.ChoiceField(label="The reel goes to", required=False)
    seen = forms.IntegerField(required=False, widget=forms.HiddenInput)
    pairs = forms.CharField(required=False, widget=forms.HiddenInput)

    def __init__(self, data: Any, bench: Bench) -> None:
        initial = {"seen": bench.diary.last_seq, "pairs": paired(bench)}
        super().__init__(data, initial=initial)
        self.bench = bench
        rows = [(row.key, row.words) for row in bench.gate if row.stand == "by hand"]
        self.fields["tried"].choices = rows
        stays = ("", f"stays: {bench.visit.place}")
        self.fields["moved_to"].choices = [stays, *((place, place) for place in choices.PLACES)]

    def clean_pairs(self) -> str:
        """Readings taken since the page was opened change what is proved: they are looked at first."""
        if self.cleaned_data["pairs"] != (now := paired(self.bench)):
            self.data = self.data.copy()
            self.data[self.add_prefix("pairs")] = now
            self.add_error(None, CHANGED)
        return now

    def tried_by_hand(self) -> list[TriedByHand]:
        said = dict(self.fields["tried"].choices)
        return [TriedByHand(key, said[key]) for key in self.cleaned_data["tried"]]


def paired(bench: Bench) -> str:
    """Which reading answers which promise, as one word."""
    return " ".join(f"{row.promise.pk}={row.measured.pk}" for row in bench.pairs)
