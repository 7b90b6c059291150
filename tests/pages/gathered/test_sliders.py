"""A quantity that is slid or typed: which of the two counts, in whose units, and what is said to a slip."""

from __future__ import annotations

from typing import Any

import pytest
from django import forms
from hypothesis import given, settings
from hypothesis import strategies as st

from spoolwright.pages.gathered.sliders import PERCENT, SliderField, SliderForm, rounded, track


class Throwing(SliderForm):
    payload = SliderField("mass", low=0.02, high=0.3, step=0.005, start=0.15, label="Payload")
    fill = SliderField("ratio", low=0.0, high=1.0, step=0.05, start=1.0, units=PERCENT, label="Line")
    turns = SliderField("score", low=0.5, high=4.0, step=0.5, start=4.0, after="turns", label="Star")
    wind = forms.ChoiceField(choices=[("calm", "calm"), ("head", "head wind")], initial="calm", label="Wind")


def asked(system: str = "metric", **sent: str) -> Throwing:
    return Throwing(sent, system=system)


def test_everything_has_an_answer_before_it_is_touched() -> None:
    form = asked()
    assert not form.errors
    assert (form.value("payload"), form.value("fill"), form.value("wind")) == (0.15, 1.0, "calm")
    assert [one.said for one in form.sliders] == ["150 g", "100 %", "4.0 turns"]


def test_starts_of_this_reel_go_before_the_usual_ones() -> None:
    form = Throwing({}, system="metric", starts={"fill": 0.6, "wind": "head"})
    assert (form.value("fill"), form.value("wind")) == (0.6, "head")


def test_a_slider_that_was_moved_counts_before_what_is_typed() -> None:
    form = asked(payload="150 g", payload_slide="200", payload_was="150")
    assert form.value("payload") == pytest.approx(0.2)
    assert next(form.sliders.__iter__()).moved


def test_a_slider_that_was_not_moved_leaves_the_word_to_what_is_typed() -> None:
    form = asked(payload="5 oz", payload_slide="150", payload_was="150")
    assert form.value("payload") == pytest.approx(0.14175, rel=1e-4)
    assert not form.sliders[0].moved


def test_a_bare_number_is_one_of_the_unit_that_the_slider_has() -> None:
    assert asked(fill="70").value("fill") == pytest.approx(0.7)
    assert asked(payload="70").value("payload") == pytest.approx(0.07)
    assert asked(turns="2.5").value("turns") == 2.5


@pytest.mark.parametrize(
    ("typed", "words"),
    [("7 quarts", "quarts"), ("900 g", "Accepted: 20 g to 300 g"), ("heavy", "number"), ("1e999 g", "")],
)
def test_what_cannot_be_read_is_kept_and_the_picture_stays(typed: str, words: str) -> None:
    form = asked(payload=typed, payload_slide="200", payload_was="200")
    assert words in str(form["payload"].errors)
    assert form.errors
    assert form["payload"].value() == typed
    assert form.value("payload") == pytest.approx(0.2)


def test_a_choice_that_is_none_falls_back_to_the_first_answer() -> None:
    form = asked(wind="from below")
    assert form.errors
    assert form.value("wind") == "calm"


def test_the_track_is_in_the_units_of_the_person() -> None:
    metric, imperial = asked().sliders[0].track, asked("imperial").sliders[0].track
    assert (metric.unit, metric.low, metric.high, metric.step) == ("g", 20.0, 300.0, 5.0)
    assert imperial.unit == "oz"
    assert imperial.low * 28.349523 <= 20.0
    assert imperial.high * 28.349523 >= 300.0


@pytest.mark.parametrize(
    ("step", "round_one"), [(0.005, 0.005), (0.18, 0.2), (3.7, 5), (0.0013, 0.001), (7.9, 10)]
)
def test_steps_are_round_numbers(step: float, round_one: float) -> None:
    assert rounded(step) == pytest.approx(round_one)


@settings(max_examples=40)
@given(
    st.floats(0.001, 50.0), st.floats(1.1, 40.0), st.integers(3, 60), st.sampled_from(["kg", "lb", "N", "oz"])
)
def test_a_track_holds_both_its_ends_and_every_step_between(
    low: float, times: float, steps: int, unit: str
) -> None:
    found = track(low, low * times, low * (times - 1) / steps, "force", unit)
    assert found.holds(low)
    assert found.holds(low * times)
    for k in range(int((found.high - found.low) / found.step + 0.5) + 1):
        assert found.holds(found.si(float(found.text(found.si(found.low + k * found.step)))))


def test_a_temperature_has_its_zero_where_its_unit_has_it() -> None:
    found = track(273.15, 313.15, 1.0, "temperature", "°C")
    assert (found.low, found.high, found.text(293.15)) == (0.0, 40.0, "20")


@pytest.mark.parametrize(
    "sent", [{"payload_slide": "nan"}, {"payload_slide": "inf", "payload_was": "1"}, {"payload_was": "x"}]
)
def test_a_slider_that_sends_nonsense_moves_nothing(sent: dict[str, Any]) -> None:
    form = asked(**sent)
    assert form.value("payload") == pytest.approx(0.15)
