"""Which readings an option promises, and within what; the ends follow the prediction until somebody types."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from django import forms
from django.forms.boundfield import BoundField

from spoolwright import quantities
from spoolwright.judgement.prediction import PREDICTS
from spoolwright.judgement.promises import PromisedReading, at_radius, proving_conditions
from spoolwright.judgement.quote_options import Option
from spoolwright.pages.quote.desk import Desk
from spoolwright.pages.quote.expected import Expected, expected
from spoolwright.pages.words import conditions, promised
from spoolwright.pages.words.asked import QuantityField
from spoolwright.sheets import reading_kinds
from spoolwright.sheets.drag_setting import setting_of
from spoolwright.shop.acts.send_quote import OfferedPromise

MOST_OWN = 3
NO_END = "Write the least or the most that is promised: with neither nothing could prove it."
UPSIDE_DOWN = "The least is above the most. Accepted: a least that is not above the most."


@dataclass(frozen=True)
class PromiseRow:
    """A reading that may be promised: what is expected, under which conditions, and the fields."""

    title: str
    expected: Expected
    conditions: str
    tick: BoundField
    ends: tuple[BoundField, ...]
    was: BoundField


class PromisesForm(forms.Form):
    """One option's promises; `setting` is the radius and the star at which pulls will be proved."""

    def __init__(
        self, data: Any, desk: Desk, number: int, option: Option, setting: tuple[float | None, float | None]
    ) -> None:
        self.desk, self.option = desk, option
        self.radius, self.star_turns = setting
        self.promised = [self._there(one) for one in option.promises]
        super().__init__(None, prefix=f"promise_{number}")
        self.own_count = self._count_own(data)
        for one in self.promised:
            self._ask(one)
        for place in range(self.own_count):
            self._ask_own(place)
        if data is not None:
            self.data, self.is_bound = self._followed(data), True

    def _there(self, one: PromisedReading) -> PromisedReading:
        return at_radius(one, self.radius) if self.radius else one

    def _ask(self, one: PromisedReading) -> None:
        kind, (low, high) = one.reading_kind, self._ends(one)
        self.fields[kind] = forms.BooleanField(label="Promise this", required=False, initial=True)
        for name, words, end in (("low", "at least", low), ("high", "at most", high)):
            if end:
                self.fields[f"{kind}_{name}"] = self._end_field(one.predicted.dimension, words, end)
        self.fields[f"{kind}_was"] = forms.CharField(
            required=False, initial=f"{low} | {high}", widget=forms.HiddenInput
        )

    def _end_field(self, dimension: str, words: str, end: str) -> QuantityField:
        """A share is typed as it is said, "1.14" or "9 %": a unit beside it would turn one into the other."""
        bare = forms.TextInput({"inputmode": "decimal", "autocomplete": "off"})
        own = {"widget": bare} if dimension == "ratio" else {}
        return QuantityField(
            dimension, system=self.desk.system, label=words, required=False, initial=end, **own
        )

    def _ends(self, one: PromisedReading) -> tuple[str, str]:
        """Both ends as text, rounded outwards, so that what is promised holds all that is expected."""
        value, unit = one.predicted, promised.unit_of(one.reading_kind)
        width = value.high - value.low

        def said(end: float | None, up: bool) -> str:
            if end is None:
                return ""
            return quantities.show_end(end, value.dimension, self.desk.system, width=width, up=up, unit=unit)

        return said(one.low, up=False), said(one.high, up=True)

    def _ask_own(self, place: int) -> None:
        taken = {one.reading_kind for one in self.promised}
        kinds = [(k.id, k.title) for k in reading_kinds.kinds().values() if k.id not in taken]
        self.fields[f"own_{place}_kind"] = forms.ChoiceField(
            label="Promise another reading", choices=[("", "none"), *kinds], required=False
        )
        for name, words in (("low", "at least"), ("high", "at most")):
            self.fields[f"own_{place}_{name}"] = forms.CharField(
                label=words, required=False, widget=forms.TextInput({"autocomplete": "off"})
            )

    def _count_own(self, data: Any) -> int:
        names = [f"{self.prefix}-own_{place}_kind" for place in range(MOST_OWN)]
        filled = [place for place, name in enumerate(names) if data and data.get(name)]
        return min(max(filled, default=-1) + 2, MOST_OWN)

    def _followed(self, data: Any) -> Any:
        """What was sent, with ends that nobody touched moved along with the prediction."""
        data = data.copy()
        for one in self.promised:
            kind, ends = one.reading_kind, self._ends(one)
            was = data.get(self.add_prefix(f"{kind}_was"))
            if was is None:
                data[self.add_prefix(kind)] = "on"
            if was is None or was == " | ".join(self._sent(data, kind)):
                for name, end in zip(("low", "high"), ends, strict=True):
                    data[self.add_prefix(f"{kind}_{name}")] = end
                    data[self.add_prefix(f"{kind}_{name}_unit")] = ""
            data[self.add_prefix(f"{kind}_was")] = " | ".join(ends)
        return data

    def _sent(self, data: Any, kind: str) -> list[str]:
        """Both ends as they were sent, an end that is not asked for empty."""
        names = [f"{kind}_{name}" for name in ("low", "high")]
        asked = [(self.fields.get(name), self.add_prefix(name)) for name in names]
        return [f.widget.value_from_datadict(data, {}, name) if f else "" for f, name in asked]

    def clean(self) -> dict[str, Any]:
        cleaned = super().clean() or {}
        for one in self.promised:
            kind = one.reading_kind
            if cleaned.get(kind):
                self._refuse_ends(kind, cleaned.get(f"{kind}_low"), cleaned.get(f"{kind}_high"))
        for place in range(self.own_count):
            self._read_own(place, cleaned)
        return cleaned

    def _read_own(self, place: int, cleaned: dict[str, Any]) -> None:
        kind = cleaned.get(f"own_{place}_kind")
        if not kind:
            return
        dimension = reading_kinds.kind(kind).dimension
        for name in (f"own_{place}_low", f"own_{place}_high"):
            try:
                cleaned[name] = quantities.read(cleaned[name], dimension) if cleaned.get(name) else None
            except quantities.NotAQuantity as fault:
                self.add_error(name, str(fault))
        self._refuse_ends(f"own_{place}", cleaned.get(f"own_{place}_low"), cleaned.get(f"own_{place}_high"))

    def _refuse_ends(self, name: str, low: float | None, high: float | None) -> None:
        ends = [end for end in (f"{name}_low", f"{name}_high") if end in self.fields]
        if set(ends) & set(self.errors):
            return
        if low is None and high is None:
            self.add_error(ends[0], NO_END)
        elif low is not None and high is not None and low > high:
            self.add_error(ends[0], UPSIDE_DOWN)

    @property
    def rows(self) -> list[PromiseRow]:
        return [self._row(one) for one in self.promised]

    def _row(self, one: PromisedReading) -> PromiseRow:
        kind = reading_kinds.kind(one.reading_kind)
        setting = setting_of(self.desk.sheet)
        where = conditions.in_words(self._where(one), self.desk.system, setting)
        ends = tuple(self[f"{kind.id}_{end}"] for end in ("low", "high") if f"{kind.id}_{end}" in self.fields)
        told = expected(one.predicted, self.desk.system, kind.id, setting)
        return PromiseRow(kind.title, told, where, self[kind.id], ends, self[f"{kind.id}_was"])

    @property
    def has_own(self) -> bool:
        return self.own_count > 1 or any(name.startswith("own_") for name in self.errors)

    @property
    def own_rows(self) -> list[list[BoundField]]:
        return [
            [self[f"own_{place}_{name}"] for name in ("kind", "low", "high")]
            for place in range(self.own_count)
        ]

    def _where(self, one: PromisedReading) -> dict[str, Any]:
        return proving_conditions(one, self.desk.taken, self.star_turns)

    def offered(self) -> list[OfferedPromise]:
        """The promises as they will be written; call it on a valid form."""
        return [*self._predicted_ones(), *self._own_ones()]

    def _predicted_ones(self) -> Iterable[OfferedPromise]:
        for one in self.promised:
            kind, told = one.reading_kind, self.cleaned_data
            if told.get(kind):
                yield OfferedPromise(
                    kind=PREDICTS[kind],
                    dimension=one.predicted.dimension,
                    low=told.get(f"{kind}_low"),
                    middle=one.predicted.middle,
                    high=told.get(f"{kind}_high"),
                    reading_kind=kind,
                    words=one.predicted.quantity,
                    conditions=self._where(one),
                    rests_on="; ".join(one.predicted.rests_on),
                )

    def _own_ones(self) -> Iterable[OfferedPromise]:
        for place in range(self.own_count):
            told = self.cleaned_data
            if kind := told.get(f"own_{place}_kind"):
                known = reading_kinds.kind(kind)
                yield OfferedPromise(
                    kind=kind,
                    dimension=known.dimension,
                    low=told[f"own_{place}_low"],
                    high=told[f"own_{place}_high"],
                    reading_kind=kind,
                    words=known.title,
                    rests_on="the bench's own word, not predicted",
                )
