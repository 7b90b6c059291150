"""The pieces of a page: fields, faults, the words at the top."""

from __future__ import annotations

import re

import pytest
from django import forms
from django.template import Context, Template

from spoolwright.pages.templatetags import house
from spoolwright.pages.words.asked import QuantityField


class Asked(forms.Form):
    mass = QuantityField("mass", label="Mass without line", help_text="On the kitchen scale.")
    hand = forms.ChoiceField(
        label="Hand", choices=[("right", "right"), ("left", "left")], widget=forms.RadioSelect
    )
    wet = forms.BooleanField(label="Was it under water?", required=False, help_text="Then do not turn it.")
    word = forms.CharField(label="A word", required=False)
    place = forms.ChoiceField(label="Then it goes", choices=[("", "nowhere")], required=False)


def drawn(form: forms.Form, field: str, options: str = "") -> str:
    return Template(f"{{% load house %}}{{% field form.{field} {options} %}}").render(Context({"form": form}))


def test_a_field_has_its_label_its_hint_and_its_keypad() -> None:
    html = drawn(Asked(), "mass", "digits=True")
    assert '<label for="id_mass">Mass without line' in html
    assert 'inputmode="decimal"' in html
    assert 'aria-describedby="id_mass_helptext"' in html
    assert 'id="id_mass_helptext"' in html
    assert "digits" in html


def test_a_fault_stands_beside_the_field_and_the_field_says_so() -> None:
    html = drawn(Asked({"mass": "338"}), "mass")
    assert 'aria-invalid="true"' in html
    assert re.search(r'aria-describedby="[^"]*id_mass_error"', html)
    assert '<span class="accepted">Accepted: ' in html
    assert 'value="338"' in html


def test_choices_are_a_group_with_a_name_and_each_a_row() -> None:
    html = drawn(Asked(), "hand")
    assert "<legend>Hand</legend>" in html
    assert html.count('class="choice"') == 2
    assert 'for="id_hand_0"' in html


def test_a_single_tick_is_one_row() -> None:
    html = drawn(Asked(), "wet")
    assert '<label class="choice" for="id_wet">' in html
    assert "Then do not turn it." in html


def test_what_need_not_be_given_says_so() -> None:
    assert "if there is one" in drawn(Asked(), "word")
    assert "if there is one" not in drawn(Asked(), "mass")


def test_where_something_stands_already_nothing_is_said_of_leaving_it_empty() -> None:
    assert "if there is one" not in drawn(Asked(initial={"word": "wind knots"}), "word")
    assert "if there is one" not in drawn(Asked(), "place")


def test_the_summary_leads_to_each_field_and_takes_the_focus() -> None:
    form = Asked({"mass": "338", "hand": "middle"})
    form.add_error(None, "Somebody else wrote first.")
    html = Template("{% load house %}{% faults form %}").render(Context({"form": form}))
    assert 'tabindex="-1" autofocus' in html
    assert 'href="#id_mass"' in html
    assert 'href="#id_hand"' in html
    assert "Somebody else wrote first." in html


def test_no_summary_where_nothing_was_refused() -> None:
    blank = Template("{% load house %}{% faults form %}")
    assert blank.render(Context({"form": Asked()})).strip() == ""
    assert blank.render(Context({"form": Asked({"mass": "1 g", "hand": "left"})})).strip() == ""


def test_every_id_in_the_summary_is_on_the_page() -> None:
    form = Asked({"mass": "338", "hand": "middle"})
    pieces = "{% load house %}{% faults form %}{% for one in form %}{% field one %}{% endfor %}"
    html = Template(pieces).render(Context({"form": form}))
    ids = re.findall(r'\bid="([^"]+)"', html)
    assert set(re.findall(r'href="#([^"]+)"', html)) <= set(ids)
    assert len(ids) == len(set(ids))
    described = {one for all_ in re.findall(r'aria-describedby="([^"]+)"', html) for one in all_.split()}
    assert described <= set(ids)


@pytest.mark.parametrize(
    ("line", "said", "accepted"),
    [("“742” has no unit. Accepted: 742 g.", "“742” has no unit.", "742 g."), ("Needed.", "Needed.", "")],
)
def test_a_fault_parts_into_what_was_read_and_what_is_accepted(line: str, said: str, accepted: str) -> None:
    assert house.before_accepted(line) == said
    assert house.accepted(line) == accepted


def test_the_keys_of_the_words_at_the_top_are_all_different() -> None:
    keys = [key for _, _, key in house.WAY_ROUND]
    assert len(set(keys)) == len(keys) == 5
    assert ("finder:find", "Find", "/") in house.WAY_ROUND
