"""The arrival as a form: whose it is, how it came, what was counted out, and each reel."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from django import forms
from django.forms.boundfield import BoundField

from spoolwright.pages.arrival import mat, reel_fields
from spoolwright.pages.arrival.photos import Photos, is_number
from spoolwright.pages.arrival.reel_fields import radio, words
from spoolwright.pages.arrival.reel_rules import NOTHING_WEIGHS, check_row, check_twins
from spoolwright.pages.arrival.which import KnownReels, known_reels
from spoolwright.pages.words.asked import QuantityField, ask_in
from spoolwright.shop.questions import customers, reel_sheets

WAYS = (
    ("post", "by post"),
    ("walk-in", "over the counter"),
    ("collected", "collected by us"),
    ("club evening", "at a club evening"),
)
SOMEBODY_NEW = "new"
SOMEBODY_IS_KNOWN = "Somebody of that name is known. Say who it is, or that it is none of these."
REACH = ("telephone", "email", "address")
SELDOM = ("last_opened", "line_wish", "used_value", "send_back_to")


@dataclass(frozen=True)
class Around:
    """What is round the form: the reader's units, the shop, and the photos of each reel so far."""

    system: str
    shop: Any
    photos: Sequence[Photos]


class ReelRow:
    """The questions about one reel, by their plain names."""

    def __init__(self, form: ArrivalForm, row: int) -> None:
        self.form, self.row, self.number = form, row, row + 1
        self.photos_kept = form.around.photos[row]

    def __getitem__(self, name: str) -> BoundField:
        return self.form[f"r{self.row}_{name}"]

    @property
    def asks_for_twin(self) -> bool:
        """A second reel may be the twin of the first; a first one is asked when it has a twin with us."""
        return bool(self.row) or is_used(self["twin_mark"])

    @property
    def more_is_open(self) -> bool:
        return any(is_used(self[name]) for name in SELDOM)


def is_used(field: BoundField) -> bool:
    """Whether there is something in a field, or something wrong with it, so that its fold stands open."""
    return bool(field.errors or field.value())


class ArrivalForm(forms.Form):
    use_required_attribute = False

    who = words("Whose is it?", 200, "A name, a place or a telephone number.")
    customer = forms.CharField(label="Which customer", required=False, max_length=20)
    telephone = words("Telephone", 60)
    email = words("E-mail", 254)
    address = words("Address", 1000, rows=2)
    came_by = radio("It came", WAYS)
    while_you_wait = forms.BooleanField(
        label="The customer waits for it",
        required=False,
        help_text="Then nothing is counted and weighed: a name, the reel and its fault are enough.",
    )
    carrier = words("Carrier", 100)
    carrier_number = words("Number on the parcel", 100)
    mass = QuantityField("mass", label="Mass of the closed parcel", required=False)
    outer_damage = words(
        "Damage outside",
        1000,
        "Empty: none was seen. If there is any, stop: photograph box, padding and reel together, keep the "
        "packing, and tell the carrier and the sender today.",
    )
    mat_words = words("In words, where there is something to say", 2000, rows=2)

    def __init__(self, data: Any = None, *, rows: int, around: Around, initial: Any = None) -> None:
        self.around = around
        super().__init__(data, initial={"came_by": "post"} | (initial or {}))
        self.fields |= dict(mat.fields())
        self.fields["mass"].help_text = reel_fields.such_as(0.742, "mass", around.system)
        sheets = reel_sheets.all_sheets()
        for row in range(rows):
            named = reel_fields.fields(sheets, around.system)
            self.fields |= {f"r{row}_{name}": asked for name, asked in named.items()}
        ask_in(self, around.system, around.shop)
        self.rows = [ReelRow(self, row) for row in range(rows)]
        self.initial[mat.REELS] = rows

    def counts(self) -> list[BoundField]:
        return [self[name] for name, _ in mat.fields()]

    @property
    def reach_is_open(self) -> bool:
        return any(is_used(self[name]) for name in REACH)

    def said(self, name: str) -> str:
        """What stands in a field, sent or not yet, as text."""
        return str(self[name].value() or "").strip()

    @cached_property
    def chosen(self) -> Any:
        """The known customer that was chosen, if one was."""
        number = self.said("customer")
        return customers.customer(int(number)) if is_number(number) else None

    @cached_property
    def known(self) -> list[Any]:
        """Customers whom the words typed may mean, the chosen one among them."""
        found = list(customers.known_as(self.said("who")))
        return found if self.chosen is None or self.chosen in found else [self.chosen, *found]

    @cached_property
    def known_reels(self) -> KnownReels:
        return known_reels(self.chosen)

    def clean_customer(self) -> str:
        said = self.cleaned_data["customer"]
        if said and said != SOMEBODY_NEW and self.chosen is None:
            raise forms.ValidationError("This customer is not written here. Look for the name once more.")
        return said

    def clean_came_by(self) -> str:
        return self.cleaned_data["came_by"] or "post"

    def clean_mass(self) -> float | None:
        mass = self.cleaned_data["mass"]
        if mass is not None and mass <= 0:
            raise forms.ValidationError(NOTHING_WEIGHS)
        return mass

    def clean(self) -> None:
        self.check_customer()
        for row in self.rows:
            check_row(self, row.row)
        check_twins(self)
        if self.is_bound and mat.reels_described(self.data) > len(self.rows):
            self.add_error(mat.REELS, "More reels are described below than were counted out here.")

    def check_customer(self) -> None:
        if self.chosen or self.errors.get("customer"):
            return
        if not self.said("who"):
            self.add_error("who", "Whose it is has to be written down.")
        elif self.known and self.said("customer") != SOMEBODY_NEW:
            self.add_error("customer", SOMEBODY_IS_KNOWN)


def as_typed(data: Mapping[str, Any], *, rows: int, around: Around) -> ArrivalForm:
    """The form with everything that was typed in it and no fault found: nothing was to be written yet."""
    empty = ArrivalForm(rows=rows, around=around)
    typed = {
        name: field.widget.value_from_datadict(data, {}, name)
        for name, field in empty.fields.items()
        if not isinstance(field, forms.FileField)
    }
    typed.pop(mat.REELS)
    return ArrivalForm(rows=rows, around=around, initial=typed)
