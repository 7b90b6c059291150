"""Form fields that read what a person types: a quantity with its unit, an amount of money.

A phone's number keypad has no letters, so a quantity is asked as a number and, beside it, its unit; a unit
typed after the number ("742 g") counts before the one beside it.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any

from django import forms

from spoolwright import quantities
from spoolwright.pages.words import money

BARE_NUMBER = re.compile(r"[+-]?[0-9][0-9\s.,/]*|[+-]?[.,][0-9]+")


class QuantityInput(forms.TextInput):
    """A number field with the decimal keypad, and the unit beside it."""

    template_name = "_quantity_input.html"

    def __init__(self, dimension: str, system: str = "metric", attrs: dict[str, Any] | None = None) -> None:
        super().__init__({"inputmode": "decimal", "autocomplete": "off"} | (attrs or {}))
        self.dimension, self.system = dimension, system

    @property
    def unit_names(self) -> list[str]:
        """The person's own units first, then everything else that is accepted."""
        kind = quantities.DIMENSIONS[self.dimension]
        own = kind.imperial if self.system == "imperial" else kind.metric
        return [name for name in dict.fromkeys([*own, *(unit.name for unit in kind.units)]) if name]

    def value_from_datadict(self, data: Mapping[str, Any], files: Any, name: str) -> str:
        number, unit = (data.get(name) or "").strip(), (data.get(f"{name}_unit") or "").strip()
        return f"{number} {unit}" if unit and BARE_NUMBER.fullmatch(number) else number

    def get_context(self, name: str, value: Any, attrs: dict[str, Any] | None) -> dict[str, Any]:
        number, unit = self.parted(str(value or ""))
        context = super().get_context(name, number, attrs)
        context["units"] = [{"name": unit_name, "chosen": unit_name == unit} for unit_name in self.unit_names]
        return context

    def parted(self, text: str) -> tuple[str, str]:
        """The text as number and unit; text that does not part so stays whole in the number field."""
        for unit in sorted(self.unit_names, key=len, reverse=True):
            number = text.removesuffix(unit).strip()
            if text.endswith(unit) and BARE_NUMBER.fullmatch(number):
                return number, unit
        return text, ""


class QuantityField(forms.CharField):
    """Text in, the SI value out; refused with what was read and what is accepted."""

    def __init__(self, dimension: str, *, system: str = "metric", **kwargs: Any) -> None:
        kwargs.setdefault("widget", QuantityInput(dimension, system))
        super().__init__(**kwargs)
        self.dimension = dimension

    def to_python(self, value: Any) -> Any:
        text = super().to_python(value)
        if text in self.empty_values:
            return None
        try:
            return quantities.read(text, self.dimension)
        except quantities.NotAQuantity as fault:
            raise forms.ValidationError(str(fault), code="not-a-quantity") from fault

    def prepare_value(self, value: Any) -> Any:
        if isinstance(value, float):
            return quantities.show(value, self.dimension, self.widget.system)
        return value

    def has_changed(self, initial: Any, data: Any) -> bool:
        return (self.prepare_value(initial) or "") != (data or "")


class MoneyField(forms.CharField):
    """Text in, whole minor units out. `shop` is anything with currency_mark, currency and minor_digits."""

    shop: Any = None

    def __init__(self, **kwargs: Any) -> None:
        kwargs.setdefault("widget", forms.TextInput({"inputmode": "decimal", "autocomplete": "off"}))
        super().__init__(**kwargs)

    @property
    def mark(self) -> str:
        return self.shop.currency_mark or self.shop.currency

    def to_python(self, value: Any) -> Any:
        text = super().to_python(value)
        if text in self.empty_values:
            return None
        try:
            return money.read(text, self.mark, self.shop.currency, self.shop.minor_digits)
        except money.NotAnAmount as fault:
            raise forms.ValidationError(str(fault), code="not-an-amount") from fault

    def prepare_value(self, value: Any) -> Any:
        if isinstance(value, int) and self.shop is not None:
            return money.show(value, self.mark, self.shop.minor_digits).replace("\u00a0", " ")
        return value


class DayField(forms.DateField):
    """A day, with the browser's own day picker."""

    def __init__(self, **kwargs: Any) -> None:
        kwargs.setdefault("widget", forms.DateInput(format="%Y-%m-%d", attrs={"type": "date"}))
        kwargs.setdefault(
            "error_messages",
            {"invalid": "This is not a day. Accepted: year-month-day, such as 2025-06-14."},
        )
        super().__init__(input_formats=["%Y-%m-%d"], **kwargs)


class MomentField(forms.DateTimeField):
    """A day and an hour in the shop's own time, with the browser's own picker."""

    def __init__(self, **kwargs: Any) -> None:
        widget = forms.DateTimeInput(format="%Y-%m-%dT%H:%M", attrs={"type": "datetime-local"})
        kwargs.setdefault("widget", widget)
        kwargs.setdefault(
            "error_messages",
            {"invalid": "This is no moment. Accepted: year-month-day hour:minute, such as 2025-06-14 14:10."},
        )
        super().__init__(input_formats=["%Y-%m-%dT%H:%M", "%Y-%m-%d %H:%M"], **kwargs)


def ask_in(form: forms.BaseForm, system: str, shop: Any = None) -> None:
    """Set every quantity of the form to the person's units, every amount to the shop's currency."""
    for field in form.fields.values():
        if isinstance(field.widget, QuantityInput):
            field.widget.system = system
        if isinstance(field, MoneyField):
            field.shop = shop
