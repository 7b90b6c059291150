"""Home again: carrier, number, mass of the closed parcel, what goes with it, and how it was packed."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from django import forms

from spoolwright.pages.diary.ask.conditions import AboveNothing
from spoolwright.pages.diary.ask.ink_form import InkForm
from spoolwright.pages.diary.ask.offered import WordsField
from spoolwright.pages.words.asked import MoneyField
from spoolwright.shop.acts.open_diary import Beside
from spoolwright.shop.acts.send_home import WayHome
from spoolwright.shop.questions import choices
from spoolwright.shop.questions.blocks import Block

WAYS = {"post": "by post", "fetched": "it is fetched here", "delivered": "we bring it"}
ENCLOSED = (
    "the proof, before beside after",
    "the old parts in a bag",
    "the care card",
    "the day of the next service",
    "the words of our warranty",
)
PACKED = (
    "drag backed off",
    "click off",
    "cast cap as it was delivered, and said so",
    "handle folded or off",
    "reel in its bag, five centimetres of padding all round",
    "name slip inside",
    "closed parcel photographed on the scale with its label",
)
"""Common practice, no source."""


class DispatchForm(InkForm):
    what = "dispatch"
    title = "Send it home"
    button = "Write that it went home"
    template = "diary/ask/_dispatch.html"
    own_move = False
    files_open = True

    went_by = forms.ChoiceField(
        label="It goes", choices=[(way, WAYS[way]) for way in choices.WAYS_HOME], widget=forms.RadioSelect
    )
    mass_kg = AboveNothing(
        "mass",
        label="Mass of the closed parcel",
        required=False,
        help_text="Needed by post: on the receipt it is evidence if the parcel is lost.",
    )
    carrier = WordsField(label="Carrier", required=False, max_length=100)
    carrier_number = WordsField(label="Its number", required=False, max_length=100)
    insured_minor = MoneyField(label="Insured for", required=False)
    sent_to = forms.CharField(label="To", required=False, max_length=1000, widget=forms.Textarea({"rows": 3}))
    enclosed = forms.MultipleChoiceField(
        label="With it go",
        required=False,
        choices=[(it, it) for it in ENCLOSED],
        widget=forms.CheckboxSelectMultiple,
    )
    enclosed_more = forms.CharField(label="And with it", required=False, max_length=300)
    packed = forms.MultipleChoiceField(
        label="Packed so",
        required=False,
        choices=[(it, it) for it in PACKED],
        widget=forms.CheckboxSelectMultiple,
    )

    def started(self) -> dict[str, Any]:
        visit = self.desk.visit
        customer = visit.reel.customer
        parcel = visit.parcel
        return {
            "went_by": "post" if parcel and parcel.came_by == "post" else "fetched",
            "carrier": parcel.carrier if parcel else "",
            "sent_to": f"{customer.name}\n{customer.address}".strip(),
            "insured_minor": None,
        }

    def started_again(self, old: Block) -> dict[str, Any]:
        if old.kind != "dispatch":
            return super().started_again(old)
        way = old.part
        names = ("went_by", "carrier", "carrier_number", "mass_kg", "insured_minor", "sent_to")
        known = [it for it in way.enclosed if it in ENCLOSED]
        more = "; ".join(it for it in way.enclosed if it not in ENCLOSED)
        written = {name: getattr(way, name) for name in names}
        return super().started_again(old) | written | {"enclosed": known, "enclosed_more": more}

    def way(self) -> WayHome:
        given = self.cleaned_data
        more = [given["enclosed_more"].strip()] if given["enclosed_more"].strip() else []
        return WayHome(
            went_by=given["went_by"],
            carrier=given["carrier"] if given["went_by"] == "post" else "",
            carrier_number=given["carrier_number"],
            mass_kg=given["mass_kg"],
            insured_minor=given["insured_minor"],
            sent_to=given["sent_to"],
            enclosed=[*given["enclosed"], *more],
        )

    def beside(self) -> Beside:
        """How it was packed is said in words; the place is the act's own."""
        beside, packed = super().beside(), self.cleaned_data["packed"]
        said = f"Packed: {'; '.join(packed)}." if packed else ""
        return replace(beside, words=f"{beside.words} {said}".strip())
