"""The answers and findings of a trace are plain values."""

from spoolwright.bench.trace import TraceForm


def test_an_empty_form_asks_for_everything_to_be_found_out() -> None:
    form = TraceForm()
    assert form.rate is None
    assert {form.delimiter, form.decimal, form.time_column, form.force_column, form.force_unit} == {""}


def test_forms_with_the_same_answers_are_the_same() -> None:
    assert TraceForm(force_unit="kg", rate=100.0) == TraceForm(force_unit="kg", rate=100.0)
