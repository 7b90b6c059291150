"""The conditions of a reading as fields: those that a kind needs, each with the keypad it wants."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from typing import Any

from django import forms

from spoolwright import quantities
from spoolwright.pages.diary.ask.offered import WordsField
from spoolwright.pages.diary.desk import Desk
from spoolwright.pages.words.asked import QuantityField
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.shop.questions import readings

MISSING = "Missing: without it this reading cannot be compared with any other."
STATES = ("as found", "cleaned and oiled", "greased", "dry")
COUNTED = {"pull_number", "pulls_of", "star_turns"}
STAYS = ("line", "radius", "brakes", "temperature", "star_turns", "pulls_of", "lubricant_state")
"""Conditions that usually are the same for the next reading of the same reel."""


class TurnsField(forms.CharField):
    """Turns of the star from free: "1.25", "1 1/4"."""

    def to_python(self, value: Any) -> Any:
        text = super().to_python(value)
        if text in self.empty_values:
            return None
        fault = f"“{text[:40]}” is no number of turns. Accepted: turns from free such as 0, 1.25 or 1 1/4."
        try:
            turns = quantities.read(text, "ratio")
        except quantities.NotAQuantity as wrong:
            raise forms.ValidationError(fault) from wrong
        if turns < 0 or turns > 100 or "%" in text:
            raise forms.ValidationError(fault)
        return turns

    def prepare_value(self, value: Any) -> Any:
        return f"{value:g}" if isinstance(value, float) else value


class AboveNothing(QuantityField):
    """A quantity that can only be more than nothing, such as a radius."""

    def to_python(self, value: Any) -> Any:
        number = super().to_python(value)
        if number is not None and not number > 0:
            accepted = quantities.DIMENSIONS[self.dimension].accepted
            raise forms.ValidationError(f"“{value}” is not more than nothing. Accepted: {accepted}.")
        return number


def _choice(label: str, *choices: tuple[str, str], **more: Any) -> forms.ChoiceField:
    return forms.ChoiceField(label=label, choices=choices, widget=forms.RadioSelect, **more)


def _whole(label: str, **more: Any) -> forms.IntegerField:
    box = forms.NumberInput({"inputmode": "numeric", "autocomplete": "off"})
    return forms.IntegerField(label=label, min_value=1, max_value=99, widget=box, **more)


def _star(sheet: ReelSheet | None, **more: Any) -> TurnsField:
    control = sheet.drag.control if sheet and sheet.drag else "star"
    full = f"; this reel’s sheet has {sheet.drag.turns_to_full:g} to full" if sheet and sheet.drag else ""
    hint = f"How far the {control} was turned on from where it is free, such as 1.25{full}."
    if control == "lever":
        hint = "How far the lever stood from free, as a share of its way: 0.5 is half way, 1 is full."
    return TurnsField(
        label=f"Turns of the {control} from free" if control != "lever" else "Way of the lever from free",
        help_text=hint,
        widget=forms.TextInput({"inputmode": "decimal", "autocomplete": "off"}),
        **more,
    )


_FIELDS: Mapping[str, Callable[..., forms.Field]] = {
    "place_measured": lambda sheet, **more: WordsField(
        (part.name for part in sheet.parts) if sheet else (),
        label="Where it was measured",
        max_length=100,
        **more,
    ),
    "line": lambda _, **more: _choice(
        "The line is", ("on", "on the spool"), ("off", "off the spool"), **more
    ),
    "radius": lambda _, **more: AboveNothing(
        "length",
        label="Radius where the line leaves the spool",
        help_text="From the axis to the top of the line; half the diameter over the line.",
        **more,
    ),
    "brakes": lambda _, **more: _choice(
        "Cast brakes", ("on", "on"), ("off", "off"), ("none", "none fitted"), **more
    ),
    "star_turns": _star,
    "pull_number": lambda _, **more: _whole("Which pull this was", **more),
    "pulls_of": lambda _, **more: _whole("Of how many pulls", **more),
    "lubricant_state": lambda _, **more: WordsField(STATES, label="What is in it", max_length=100, **more),
    "anti_reverse_cold": lambda _, **more: _choice(
        "The anti-reverse was tried",
        ("warm", "warm, at the bench"),
        ("cold", "cold, out of the freezer"),
        **more,
    ),
    "temperature": lambda _, **more: AboveNothing("temperature", label="Temperature at the bench", **more),
}


def fields(keys: Iterable[str], sheet: ReelSheet | None) -> dict[str, forms.Field]:
    """A field for each of these conditions, in one order for every kind of reading."""
    wanted = set(keys)
    return {
        key: make(sheet, error_messages={"required": MISSING})
        for key, make in _FIELDS.items()
        if key in wanted
    }


def started(desk: Desk, keys: Iterable[str]) -> dict[str, Any]:
    """What the last reading like it was taken under, as far as that stays; pulls are counted on."""
    wanted = set(keys)
    given = [value.reading.conditions for value in reversed(readings.results(desk.visit.pk))]
    alike = next((held for held in given if wanted - COUNTED <= held.keys()), {})
    kept = {key: value for key, value in alike.items() if key in STAYS and key in wanted}
    if "temperature" in wanted and "temperature" not in kept:
        kept |= next(({"temperature": held["temperature"]} for held in given if "temperature" in held), {})
    return kept | (_next_pull(alike) if "pull_number" in wanted else {})


def _next_pull(before: Mapping[str, Any]) -> dict[str, Any]:
    """The pull after that one; three pulls is the rule of the trade for a first reading."""
    number, of = before.get("pull_number", 0), before.get("pulls_of") or 3
    return {"pull_number": number + 1 if number < of else 1, "pulls_of": of}


def as_fields(conditions: Mapping[str, Any]) -> dict[str, Any]:
    """Conditions in ink as a form shows them."""
    shown = dict(conditions)
    if "anti_reverse_cold" in shown:
        shown["anti_reverse_cold"] = "cold" if shown["anti_reverse_cold"] else "warm"
    return shown


def given(cleaned: Mapping[str, Any], keys: Iterable[str]) -> dict[str, Any]:
    """What was given, as the act takes it: SI, and a yes or no for cold."""
    found = {key: cleaned.get(key) for key in keys}
    if found.get("anti_reverse_cold"):
        found["anti_reverse_cold"] = found["anti_reverse_cold"] == "cold"
    return {key: value for key, value in found.items() if value not in (None, "")}
