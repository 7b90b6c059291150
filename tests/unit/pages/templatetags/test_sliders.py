"""The form of sliders on a page, and what its answer puts right in it."""

from __future__ import annotations

import re
from types import SimpleNamespace
from typing import Any

from django.template import Context, Template
from django.test import RequestFactory

from spoolwright.pages.gathered.line_field import LineField
from spoolwright.pages.gathered.sliders import PERCENT, SliderField, SliderForm
from spoolwright.pages.gathered.subject import State, Subject
from spoolwright.sheets import reel_sheet


class Filled(SliderForm):
    line = LineField()
    fill = SliderField("ratio", low=0.0, high=1.0, step=0.05, start=1.0, units=PERCENT, label="Line left")


SUBJECT = Subject(
    door="sheet",
    key="tarvak-52",
    title="Tarvak 52",
    margin="",
    rests_on="",
    back="",
    back_words="",
    sheet=reel_sheet.load("tarvak-52"),
    taken=(),
    system="metric",
    states=(State("as-built", "as built"),),
)


def rendered(text: str, asked: dict[str, str], *, htmx: bool = False) -> str:
    request: Any = RequestFactory().get("/sheets/tarvak-52/carries/", asked)
    request.htmx = SimpleNamespace(history_restore_request=False) if htmx else False
    facts = {
        "form": Filled(asked, system="metric"),
        "subject": SUBJECT,
        "here": "carries",
        "request": request,
    }
    return Template("{% load sliders %}" + text).render(Context(facts))


def test_a_slider_and_its_typed_field_show_one_number() -> None:
    html = rendered('{% sliders form "answer" "What is drawn" %}', {"fill": "60 %"})
    slide = re.search(r'<input type="range"[^>]*>', html)[0]
    assert 'min="0" max="100" step="5" value="60"' in slide
    assert 'aria-valuetext="60 %"' in slide
    assert 'name="fill_was" value="60"' in html
    assert 'name="fill" value="60"' in html
    assert 'hx-target="#answer"' in html
    assert "Draw it so" in html


def test_a_whole_page_is_put_right_by_nothing() -> None:
    assert rendered("{% sliders_again form %}", {}).strip() == ""


def test_the_control_that_was_not_touched_follows_the_other() -> None:
    slid = rendered(
        "{% sliders_again form %}", {"fill": "100 %", "fill_slide": "40", "fill_was": "100"}, htmx=True
    )
    assert 'id="id_fill_typed" hx-swap-oob="true"' in slid
    assert 'id="id_fill_slide"' not in slid
    typed = rendered(
        "{% sliders_again form %}", {"fill": "40 %", "fill_slide": "100", "fill_was": "100"}, htmx=True
    )
    assert 'id="id_fill_typed"' not in typed
    assert re.search(r'id="id_fill_slide"[^>]*value="40"', typed)
    assert all('name="fill_was" value="40"' in html for html in (slid, typed))


def test_what_cannot_be_read_leaves_both_as_they_are_and_says_so() -> None:
    sent = {"fill": "plenty", "fill_slide": "80", "fill_was": "80", "line": "spaghetti"}
    html = rendered("{% sliders_again form %}", sent, htmx=True)
    assert "plenty" in html.partition('id="id_fill_faults"')[2]
    assert "spaghetti" in html.partition('id="id_line_again"')[2]
    assert 'id="id_fill_slide"' not in html
    assert 'id="id_fill_typed"' not in html


def test_the_links_take_along_what_was_slid() -> None:
    html = rendered("{% sliders_again form %}", {"fill": "60 %", "line": "nylon 0.40 mm"}, htmx=True)
    assert 'href="/sheets/tarvak-52/carries/?fill=60+%25&amp;line=nylon+0.40+mm" aria-current="page"' in html
    assert 'id="pictures"' in rendered("{% other_pictures %}", {})


def test_another_page_leads_to_every_picture() -> None:
    html = rendered('{% pictures_of "reel" 7 %}', {})
    assert 'href="/reels/7/carries/"' in html
    assert "aria-current" not in html


def test_numbers_in_attributes_are_bare() -> None:
    assert rendered("{{ 0.5|number }} {{ 20.0|number }}", {}) == "0.5 20"
