"""Three kinds of typing that only the shop's settings need: a percentage, days in order, a price list."""

from __future__ import annotations

import re
from decimal import Decimal
from typing import Any

from django import forms

from spoolwright.pages.words import money
from spoolwright.pages.words.asked import MoneyField

PERCENT = re.compile(r"([0-9]{1,4})(?:[.,]([0-9]{1,3}))? ?%?")
PRICE_LINE = re.compile(r"(?P<part>.+?)[\s:]+(?P<sum>[0-9].*)")


class PercentField(forms.CharField):
    """ "25 %" in, Decimal("0.25") out."""

    def __init__(self, **kwargs: Any) -> None:
        kwargs.setdefault("widget", forms.TextInput({"inputmode": "decimal", "autocomplete": "off"}))
        super().__init__(**kwargs)

    def to_python(self, value: Any) -> Any:
        text = super().to_python(value)
        if text in self.empty_values:
            return None
        found = PERCENT.fullmatch(text)
        if not found:
            raise forms.ValidationError(f"“{text[:40]}” is no percentage. Accepted: 25 %, 12.5 %.")
        return Decimal(f"{found[1]}.{found[2] or 0}") / 100

    def prepare_value(self, value: Any) -> Any:
        return f"{(value * 100).normalize():f} %" if isinstance(value, Decimal) else value


class DaysField(forms.CharField):
    """ "7, 14, 28" in, the list out."""

    def to_python(self, value: Any) -> Any:
        text = super().to_python(value)
        words = re.split(r"[,;\s]+", text.strip())
        days = [int(word) for word in words if re.fullmatch("[0-9]{1,4}", word)]
        if len(days) != len(words) or days != sorted(set(days)) or 0 in days:
            raise forms.ValidationError(
                f"“{text[:60]}” cannot be read. Accepted: whole days, each later than the one before, "
                "such as 7, 14, 28."
            )
        return days

    def prepare_value(self, value: Any) -> Any:
        return ", ".join(str(day) for day in value) if isinstance(value, list) else value


class PriceListField(MoneyField):
    """A part and its price on each line in, minor units by part out."""

    def __init__(self, **kwargs: Any) -> None:
        super().__init__(widget=forms.Textarea({"rows": 6}), **kwargs)

    def to_python(self, value: Any) -> Any:
        lines = [line.strip() for line in str(value or "").splitlines() if line.strip()]
        return dict(self.part_and_price(line) for line in lines)

    def part_and_price(self, line: str) -> tuple[str, int]:
        found = PRICE_LINE.fullmatch(line)
        if not found:
            raise forms.ValidationError(f"“{line[:60]}” has no price. Accepted: pawl 95 {self.mark}")
        return found["part"].rstrip(":"), super().to_python(found["sum"])

    def prepare_value(self, value: Any) -> Any:
        if not isinstance(value, dict):
            return value
        sums = ((part, money.show(minor, self.mark, self.shop.minor_digits)) for part, minor in value.items())
        return "\n".join(f"{part}  {amount}" for part, amount in sums).replace("\u00a0", " ")
