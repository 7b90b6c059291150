"""The three small fields of one reading, and the scale in words."""

from __future__ import annotations

import pytest
from django import forms
from django.http import QueryDict

from spoolwright.pages.diary.ask.tries import ScaleField, TriesField, TriesInput
from spoolwright.sheets import reading_kinds


def typed(sent: str) -> str:
    return TriesInput("force").value_from_datadict(QueryDict(sent), {}, "values")


@pytest.mark.parametrize(
    ("sent", "text"),
    [
        ("values=3.9&values_2=3.8&values_3=3.9&values_unit=kg", "3.9 kg; 3.8 kg; 3.9 kg"),
        ("values=3.9&values_2=&values_3=&values_unit=kg", "3.9 kg"),
        ("values=8+lb&values_2=3,8&values_unit=kg", "8 lb; 3,8 kg"),
        ("values=3.9;3.8;3.9&values_unit=kg".replace(";", "%3B"), "3.9 kg; 3.8 kg; 3.9 kg"),
        ("values_unit=kg", ""),
    ],
)
def test_what_is_typed_becomes_one_text(sent: str, text: str) -> None:
    assert typed(sent) == text


def test_what_was_typed_stands_in_its_fields_again() -> None:
    drawn = TriesInput("force").render("values", "3.9 kg; 3.8 kg; 3.7 kg; 3.6 kg", {"id": "id_values"})
    assert 'value="3.9"' in drawn
    assert 'value="3.8"' in drawn
    assert 'value="3.7; 3.6"' in drawn
    assert '<option value="kg" selected>' in drawn


def test_a_text_that_does_not_part_stays_whole() -> None:
    drawn = TriesInput("force").render("values", "<b>much</b>", {"id": "id_values"})
    assert 'value="&lt;b&gt;much&lt;/b&gt;"' in drawn


def test_the_keypad_has_numbers_and_every_field_a_name() -> None:
    drawn = TriesInput("force").render("values", "", {"id": "id_values"})
    assert drawn.count('inputmode="decimal"') == 3
    assert 'aria-label="second try"' in drawn
    assert 'aria-label="the unit of the tries"' in drawn


def test_a_count_has_no_unit() -> None:
    assert "<select" not in TriesInput("count").render("values", "", {"id": "id_values"})


def test_the_bench_says_what_is_wrong() -> None:
    field = TriesField(reading_kinds.kind("end_float"))
    with pytest.raises(forms.ValidationError, match="below zero"):
        field.clean("-0.4 mm")
    assert field.clean("0.4 mm; 0.42 mm").tries == pytest.approx((0.0004, 0.00042))


def test_a_scale_offers_its_words_and_nothing_else() -> None:
    field = ScaleField(reading_kinds.kind("feel"))
    assert ("0", "0: smooth") in field.choices
    assert field.clean("2").measured.value == 2
    with pytest.raises(forms.ValidationError):
        field.clean("9")
