"""What the owner is asked about the shop."""

from __future__ import annotations

from types import SimpleNamespace
from typing import Any

from django import forms

from spoolwright.pages.settings_page.typed import DaysField, PercentField, PriceListField
from spoolwright.pages.words.asked import MoneyField, ask_in

UNITS = (("metric", "millimetres, grams, kilograms"), ("imperial", "inches, ounces, pounds"))
BASES = (("document", "once, on the whole paper"), ("line", "on each line"))
WITHIN = (("yes", "with tax in them"), ("no", "without tax; it is added on the paper"))
DIGITS = ((0, "none"), (1, "one"), (2, "two"), (3, "three"))
TIER = "tier_"

SECTIONS = (
    ("who we are", ("name", "address", "contact", "registration")),
    ("money", ("currency", "currency_mark", "minor_digits", "minor_per_usd")),
    ("tax", ("tax_rate", "prices_include_tax", "tax_basis")),
    ("an hour and the tiers", ("hourly_minor", TIER)),
    ("parts and post", ("own_prices", "parts_margin", "consumables_minor", "post_minor", "check_fee_minor")),
    (
        "what the law and the customer may expect",
        ("legal_ceiling", "payment_days", "reminder_days", "warranty"),
    ),
    ("units on papers", ("units",)),
)


class SettingsForm(forms.Form):
    """One field for each of the shop's settings, asked in the shop's own currency."""

    name = forms.CharField(label="Name of the shop", max_length=200)
    address = forms.CharField(label="Address", required=False, widget=forms.Textarea({"rows": 3}))
    contact = forms.CharField(
        label="Telephone and e-mail, as they stand on papers", max_length=300, required=False
    )
    registration = forms.CharField(
        label="Registration, as the tax office wants it", max_length=100, required=False
    )
    currency = forms.RegexField(
        "^[A-Z]{3}$",
        label="Currency",
        help_text="Three capital letters, such as NOK.",
        error_messages={"invalid": "This is no currency code. Accepted: three capital letters such as NOK."},
    )
    currency_mark = forms.CharField(label="How an amount is marked", max_length=8, help_text="Such as kr.")
    minor_digits = forms.TypedChoiceField(label="Decimals of the currency", coerce=int, choices=DIGITS)
    minor_per_usd = MoneyField(
        label="What one US dollar is taken as",
        help_text="Only to set our prices beside what the trade commonly asks (common practice, no source).",
    )
    tax_rate = PercentField(label="Tax", help_text="Such as 25 %.")
    prices_include_tax = forms.ChoiceField(
        label="Prices are written", choices=WITHIN, widget=forms.RadioSelect
    )
    tax_basis = forms.ChoiceField(label="Tax is rounded", choices=BASES, widget=forms.RadioSelect)
    hourly_minor = MoneyField(label="One hour of work")
    own_prices = PriceListField(
        label="Our own price list for parts", required=False, help_text="One a line, such as: pawl 95 kr"
    )
    parts_margin = PercentField(
        label="Margin on other parts", help_text="Share of the selling price, such as 40 %."
    )
    consumables_minor = MoneyField(label="Grease, solvent, rags, for each reel")
    post_minor = MoneyField(label="Post, there and back")
    check_fee_minor = MoneyField(label="For looking, when nothing is done")
    legal_ceiling = PercentField(
        label="A bill may pass its estimate by",
        required=False,
        help_text="Set by law in some countries (15 % is one country’s example, not legal advice). "
        "Empty where no law says.",
    )
    payment_days = forms.IntegerField(
        label="Days to pay", min_value=0, max_value=365, widget=forms.NumberInput({"inputmode": "numeric"})
    )
    reminder_days = DaysField(
        label="Ask again after so many days of silence",
        help_text="Such as 7, 14, 28; the last sends the reel back (common practice, no source).",
    )
    warranty = forms.CharField(
        label="What we stand by afterwards", required=False, widget=forms.Textarea({"rows": 4})
    )
    units = forms.ChoiceField(label="A customer reads in", choices=UNITS, widget=forms.RadioSelect)
    version = forms.IntegerField(widget=forms.HiddenInput)

    def __init__(self, data: Any = None, *, shop: Any) -> None:
        super().__init__(data, initial=started_from(shop))
        self.tiers = shop.rates().tiers
        for tier in self.tiers:
            self.fields[TIER + tier.key] = MoneyField(label=tier.title, help_text=tier.holds)
            self.initial[TIER + tier.key] = tier.price_minor
        ask_in(self, shop.units, self.typed_currency(shop))

    def typed_currency(self, shop: Any) -> SimpleNamespace:
        """Amounts are read in the currency of this very form: it may be the one that is being changed."""
        digits = str(self.data.get("minor_digits", "")) if self.is_bound else ""
        return SimpleNamespace(
            currency=self.data.get("currency") or shop.currency,
            currency_mark=self.data.get("currency_mark") or shop.currency_mark,
            minor_digits=int(digits) if digits in {"0", "1", "2", "3"} else shop.minor_digits,
        )

    def sections(self) -> list[tuple[str, list[forms.BoundField]]]:
        """The fields under the words that stand in the margin."""
        return [(words, [self[name] for name in self.named(names)]) for words, names in SECTIONS]

    def named(self, names: tuple[str, ...]) -> list[str]:
        tiers = [TIER + tier.key for tier in self.tiers]
        return [name for each in names for name in (tiers if each == TIER else [each])]

    def changes(self) -> dict[str, Any]:
        """The settings as the act takes them."""
        given = dict(self.cleaned_data)
        given.pop("version")
        given["tier_prices"] = {tier.key: given.pop(TIER + tier.key) for tier in self.tiers}
        given["prices_include_tax"] = given["prices_include_tax"] == "yes"
        return given


def started_from(shop: Any) -> dict[str, Any]:
    plain = {name: getattr(shop, name) for name in SettingsForm.base_fields}
    return plain | {"prices_include_tax": "yes" if shop.prices_include_tax else "no"}
