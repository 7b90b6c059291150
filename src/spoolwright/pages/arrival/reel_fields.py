"""What is asked about one reel. Everything but what it is may be unknown when it comes."""

from __future__ import annotations

from django import forms

from spoolwright import quantities
from spoolwright.pages.words.asked import DayField, MomentField, MoneyField, QuantityField
from spoolwright.sheets.lines import line_names
from spoolwright.shop.questions.reel_sheets import SheetInUse

HANDS = (("", "not seen"), ("right", "right hand"), ("left", "left hand"), ("either", "either hand"))
LINE_STATES = (("on", "with its line"), ("off", "without line"))
WATERS = (("", "not said"), ("fresh", "fresh"), ("brackish", "brackish"), ("salt", "salt"))
WISHES = (
    ("", "not said"),
    ("keep", "keep it"),
    ("discard", "throw it away"),
    ("strip and respool", "wind new line"),
)
SAID = (("", "not said"), ("yes", "yes"), ("no", "no"))
UNDER_WATER = (("", "no, or not said"), ("yes", "yes"))


class PhotosInput(forms.FileInput):
    allow_multiple_selected = True


def radio(label: str, choices: tuple[tuple[str, str], ...]) -> forms.ChoiceField:
    return forms.ChoiceField(label=label, choices=choices, required=False, widget=forms.RadioSelect)


def words(label: str, most: int, hint: str = "", rows: int = 0) -> forms.CharField:
    widget = forms.Textarea({"rows": rows}) if rows else forms.TextInput({"autocomplete": "off"})
    return forms.CharField(label=label, required=False, max_length=most, help_text=hint, widget=widget)


def such_as(value: float, dimension: str, system: str) -> str:
    """ "Such as 338 g.", in the units of whoever writes."""
    return f"Such as {quantities.show(value, dimension, system)}."


def fields(sheets: tuple[SheetInUse, ...], system: str = "metric") -> dict[str, forms.Field]:
    """The questions in the order in which they are asked."""
    return what_it_is(sheets) | what_it_weighs(system) | what_was_said() | what_it_may_cost() | what_is_seen()


def what_it_is(sheets: tuple[SheetInUse, ...]) -> dict[str, forms.Field]:
    known = [(one.sheet.slug, one.sheet.shown) for one in sheets]
    return {
        "which": forms.CharField(label="Which of this customer’s reels", required=False, max_length=30),
        "sheet": forms.ChoiceField(
            label="Its reel sheet", choices=[("", "not known yet"), *known], required=False
        ),
        "described": words("What stands on it", 200, "Such as Tarvak 58R. Not needed if a sheet is chosen."),
        "winding_hand": radio("Wound with the", HANDS),
        "serial": words("Serial, or a mark to know it by", 300, "Under the foot, inside the side plate."),
        "twin_mark": words(
            "What tells it from its twin",
            300,
            "Two of one model: a dot of removable paint under the foot, before either is opened.",
        ),
    }


def what_it_weighs(system: str) -> dict[str, forms.Field]:
    kinds = [(name, name) for name in line_names()]
    return {
        "mass": QuantityField(
            "mass", label="Mass of the reel", required=False, help_text=such_as(0.338, "mass", system)
        ),
        "mass_line": radio("Weighed", LINE_STATES),
        "line": forms.ChoiceField(
            label="Line on it",
            choices=[("", "not known"), *kinds, ("none", "none")],
            required=False,
        ),
        "line_diameter": QuantityField(
            "length",
            label="Thickness of the line",
            required=False,
            help_text=such_as(0.40e-3, "length", system),
        ),
    }


def what_was_said() -> dict[str, forms.Field]:
    return {
        "complaint": words(
            "What it does wrong",
            4000,
            "In the customer’s own words: since when, how often, only cold, wet or under load?",
            rows=3,
        ),
        "water": radio("Water", WATERS),
        "under_water": radio("Was it ever under water?", UNDER_WATER),
        "under_water_at": MomentField(
            label="When did it come out?",
            required=False,
            help_text="As near as is known: two days decide.",
        ),
        "needed_by": DayField(
            label="Needed by", required=False, help_text="A real day: a trip, the opening of the season."
        ),
        "last_opened": words("Last opened when, and by whom?", 300, "By its owner: look for lost washers."),
        "line_wish": radio("The line", WISHES),
    }


def what_it_may_cost() -> dict[str, forms.Field]:
    return {
        "up_to": MoneyField(label="Up to what sum without asking?", required=False),
        "old_parts_back": radio("Old parts go back", SAID),
        "used_value": MoneyField(
            label="What it is worth used",
            required=False,
            help_text="Work near that sum is said beforehand.",
        ),
        "send_back_to": words("Send it back to", 1000, "Only if it is not the customer’s address.", rows=2),
    }


def what_is_seen() -> dict[str, forms.Field]:
    chooser = PhotosInput({"accept": "image/*", "capture": "environment"})
    return {
        "photos": forms.FileField(
            label="Photos",
            required=False,
            widget=chooser,
            help_text="With its number in the first: gear side, off side, foot, spool.",
        )
    }
