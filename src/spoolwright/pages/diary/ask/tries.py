"""Up to three tries of one reading: each a field with the number keypad, one unit beside them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from django import forms
from django.utils.html import format_html, format_html_join
from django.utils.safestring import SafeString

from spoolwright import quantities
from spoolwright.bench import typed
from spoolwright.bench.instrument import Instrument
from spoolwright.bench.typed import TypedReading
from spoolwright.bench.unreadable import Unreadable
from spoolwright.pages.words.asked import BARE_NUMBER, QuantityInput
from spoolwright.sheets.reading_kinds import ReadingKind

NTH = ("first try", "second try", "third try")


class TriesInput(QuantityInput):
    """Three number fields and one unit. A text with semicolons, typed into the first, counts as well."""

    def value_from_datadict(self, data: Mapping[str, Any], files: Any, name: str) -> str:
        unit = (data.get(f"{name}_unit") or "").strip()
        texts = [(data.get(key) or "").strip() for key in self.names(name)]
        parts = [part.strip() for text in texts for part in text.split(";") if part.strip()]
        return "; ".join(f"{part} {unit}" if unit and BARE_NUMBER.fullmatch(part) else part for part in parts)

    def names(self, name: str) -> list[str]:
        return [name, *(f"{name}_{number}" for number in range(2, len(NTH) + 1))]

    def render(
        self, name: str, value: Any, attrs: dict[str, Any] | None = None, renderer: Any = None
    ) -> SafeString:
        parted = [self.parted(part.strip()) for part in str(value or "").split(";")]
        numbers = [number for number, _ in parted]
        unit = next((unit for _, unit in reversed(parted) if unit), "")
        spare = "; ".join(numbers[len(NTH) - 1 :])
        shown = [*numbers[: len(NTH) - 1], spare][: len(NTH)]
        boxes = [self._box(name, k, shown[k] if k < len(shown) else "", attrs or {}) for k in range(len(NTH))]
        return format_html(
            '<span class="tries">{}{}</span>',
            format_html_join("", "{}", ((b,) for b in boxes)),
            self._units(name, unit),
        )

    def _box(self, name: str, number: int, text: str, attrs: dict[str, Any]) -> SafeString:
        own = {**self.attrs, **attrs} if not number else {**self.attrs, "aria-label": NTH[number]}
        if number:
            own |= {"id": f"{attrs.get('id', name)}_{number + 1}", "placeholder": NTH[number]}
        plain = forms.TextInput(own)
        return plain.render(self.names(name)[number], text)

    def _units(self, name: str, chosen: str) -> SafeString:
        if not self.unit_names:
            return SafeString("")
        rows = ((unit, SafeString(" selected") if unit == chosen else "") for unit in self.unit_names)
        options = format_html_join("", '<option value="{}"{}>{}</option>', ((u, s, u) for u, s in rows))
        return format_html(
            '<select name="{}_unit" aria-label="the unit of the tries">{}</select>', name, options
        )


class TriesField(forms.CharField):
    """Text of one or more tries in, the reading with its uncertainty out; refused in the bench's words."""

    def __init__(self, kind: ReadingKind, **kwargs: Any) -> None:
        super().__init__(widget=TriesInput(kind.dimension), max_length=1000, **kwargs)
        self.kind = kind
        self.instrument: Instrument | None = None

    def to_python(self, value: Any) -> Any:
        text = super().to_python(value)
        return None if text in self.empty_values else self.read(text)

    def run_validators(self, value: Any) -> None:
        """The bench has looked at it already."""

    def read(self, text: str) -> TypedReading:
        try:
            system = getattr(self.widget, "system", "metric")
            return typed.read(self.kind.id, text, system, self.instrument)
        except quantities.NotAQuantity as fault:
            raise forms.ValidationError(str(fault)) from fault
        except Unreadable as fault:
            raise forms.ValidationError(fault.words) from fault


class ScaleField(forms.ChoiceField):
    """A score on a scale of words: one row each, a thumb high."""

    def __init__(self, kind: ReadingKind, **kwargs: Any) -> None:
        choices = [(str(step), f"{step}: {words}") for step, words in enumerate(kind.scale)]
        super().__init__(choices=choices, widget=forms.RadioSelect, **kwargs)
        self.kind = kind

    def clean(self, value: Any) -> Any:
        chosen = super().clean(value)
        return typed.read(self.kind.id, chosen) if chosen else None
