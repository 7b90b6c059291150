"""Fields that read quantities and amounts, and keep what was typed."""

from datetime import UTC, datetime
from types import SimpleNamespace

import pytest
from django import forms
from django.core.exceptions import ValidationError

from spoolwright.pages.words import asked

SHOP = SimpleNamespace(currency_mark="kr", currency="NOK", minor_digits=2)


class Weighing(forms.Form):
    mass = asked.QuantityField("mass", label="Parcel mass")
    cap = asked.MoneyField(label="Cap", required=False)
    day = asked.DayField(required=False)

    def __init__(self, *args: object, system: str = "metric", **kwargs: object) -> None:
        super().__init__(*args, **kwargs)
        asked.ask_in(self, system, SHOP)


@pytest.mark.parametrize(
    ("typed", "unit", "kilograms"),
    [
        ("742", "g", 0.742),
        ("742 g", "kg", 0.742),  # a unit typed after the number counts before the one beside it
        ("0,742", "kg", 0.742),
        ("1 1/2", "oz", 0.0425242846875),  # the avoirdupois ounce is 28.349523125 g: NIST SP 811, B.8
    ],
)
def test_number_and_unit_are_read_together(typed: str, unit: str, kilograms: float) -> None:
    form = Weighing({"mass": typed, "mass_unit": unit})
    assert form.is_valid(), form.errors
    assert form.cleaned_data["mass"] == pytest.approx(kilograms, rel=1e-12)


def test_a_number_without_a_unit_is_refused_with_what_is_accepted() -> None:
    form = Weighing({"mass": "742"})
    assert "Accepted:" in form.errors["mass"][0]
    assert "742" in form.errors["mass"][0]


def test_what_was_refused_stays_in_the_field_with_its_unit() -> None:
    page = str(Weighing({"mass": "7..2", "mass_unit": "g"})["mass"])
    assert 'value="7..2' in page
    page = str(Weighing({"mass": "742", "mass_unit": "oz", "day": "nonsense"})["mass"])
    assert 'value="742"' in page
    assert '<option value="oz" selected>' in page


def test_the_persons_own_unit_is_the_first_one() -> None:
    assert Weighing(system="imperial").fields["mass"].widget.unit_names[0] == "oz"
    assert Weighing().fields["mass"].widget.unit_names[0] == "g"


def test_script_in_a_field_comes_back_as_text() -> None:
    page = str(Weighing({"mass": "<script>alert(1)</script>", "mass_unit": '"><b>'})["mass"])
    assert "<script>" not in page
    assert "<b>" not in page


def test_a_plain_number_has_no_unit_beside_it() -> None:
    assert "<select" not in str(asked.QuantityField("count").widget.render("n", "3"))


def test_a_stored_value_is_asked_again_in_the_persons_units() -> None:
    page = str(Weighing(initial={"mass": 0.338}, system="metric")["mass"])
    assert 'value="338"' in page


def test_an_amount_is_read_and_shown_in_the_shops_currency() -> None:
    form = Weighing({"mass": "1 g", "cap": "1,200 kr"})
    assert form.is_valid()
    assert form.cleaned_data["cap"] == 120_000
    assert "1,200.00 kr" in str(Weighing(initial={"cap": 120_000})["cap"])


def test_what_is_no_amount_and_no_day_is_refused() -> None:
    form = Weighing({"mass": "1 g", "cap": "a lot", "day": "14/6"})
    assert "Accepted: 1,200 kr" in form.errors["cap"][0]
    assert "Accepted:" in form.errors["day"][0]


def test_nothing_typed_where_nothing_is_needed_is_none() -> None:
    form = Weighing({"mass": "1 g"})
    assert form.is_valid()
    assert form.cleaned_data["cap"] is None


@pytest.mark.parametrize("typed", ["2025-06-14T14:10", "2025-06-14 14:10"])
def test_a_moment_is_read_in_the_shops_own_time(typed: str) -> None:
    moment = asked.MomentField().clean(typed)
    assert moment == datetime(2025, 6, 14, 12, 10, tzinfo=UTC)  # Oslo, tests/settings.py: summer time, + 2 h


@pytest.mark.parametrize("typed", ["yesterday", "14:10", "2025-06-31T14:10"])
def test_what_is_no_moment_is_refused_with_what_is_accepted(typed: str) -> None:
    with pytest.raises(ValidationError, match="Accepted: year-month-day hour:minute"):
        asked.MomentField().clean(typed)
