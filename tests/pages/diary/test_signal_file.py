"""The questions that a file leaves open, as fields; and a rate as it is typed."""

from __future__ import annotations

import pytest
from django import forms

from spoolwright.bench.trace import TraceForm
from spoolwright.bench.unreadable import Question
from spoolwright.pages.diary.ask.signal_file import LABELS, RateField, answer_field


def test_every_answer_that_the_bench_can_ask_for_has_a_label() -> None:
    assert set(TraceForm.__dataclass_fields__) <= set(LABELS)


def test_choices_are_offered_where_the_bench_names_them() -> None:
    field = answer_field(Question("force_unit", "In which unit is the pull?", "N, kgf, kg, g"))
    assert [value for value, _ in field.choices] == ["", "N", "kgf", "kg", "g"]
    assert field.label == "The unit of the pull"


def test_a_column_is_answered_by_its_number() -> None:
    field = answer_field(Question("force_column", "Which column?", "1 “t”, 2 “F”"))
    assert field.choices[1:] == [("1", "1 “t”"), ("2", "2 “F”")]


def test_an_answer_left_out_is_asked_for_in_the_benchs_own_words() -> None:
    field = answer_field(Question("force_unit", "In which unit is the pull?", "N, kg"))
    with pytest.raises(forms.ValidationError, match="In which unit is the pull"):
        field.clean("")


@pytest.mark.parametrize(
    ("text", "rate"), [("100", 100.0), ("100 Hz", 100.0), ("1,5 kHz", 1500.0), ("12.5", 12.5)]
)
def test_a_rate_is_read_with_and_without_its_unit(text: str, rate: float) -> None:
    assert RateField().clean(text) == pytest.approx(rate)


@pytest.mark.parametrize("text", ["fast", "20 kg", "1.2.3"])
def test_another_rate_is_refused(text: str) -> None:
    with pytest.raises(forms.ValidationError):
        RateField().clean(text)
