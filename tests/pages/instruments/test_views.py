"""The pages of the instruments: put on the list, changed, checked, put away, each kept and each readable."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.shop.acts.add_instrument import Known, add_instrument
from spoolwright.shop.questions import instruments
from tests.pages.diary.at_the_desk import text
from tests.shop import walk

pytestmark = pytest.mark.django_db
KNOWN = {
    "mark": "D1",
    "name": "Dial indicator",
    "resolution": "0.01",
    "resolution_unit": "mm",
    "limit": "0.015",
    "limit_unit": "mm",
}


def test_the_list_says_how_sure_each_is_and_why(bench: Client, torbal: Any) -> None:
    assert "No instrument is on the list yet" in text(bench.get("/instruments/"))
    walk.caliper(torbal, "C2")
    walk.measured_with(torbal)
    page = text(bench.get("/instruments/"))
    assert "The long caliper ± 0.035 mm" in page
    assert "by what is stated of it" in page
    assert "by the study of" in page
    assert "It was never checked." in page
    assert "within what is stated" in page
    assert "What we measure with" in text(bench.get("/shop/"))


def test_one_is_put_on_the_list(bench: Client) -> None:
    page = text(bench.get("/instruments/new/dial-indicator/"))
    assert "DIN 878" in page
    assert "from memory" in page
    assert bench.post("/instruments/new/dial-indicator/", KNOWN).status_code == 302
    found = instruments.marked("D1")
    assert found is not None
    assert (found.known.resolution_si, found.known.limit_si) == (pytest.approx(1e-5), pytest.approx(1.5e-5))


def test_what_is_refused_stays_on_the_screen(bench: Client, torbal: Any) -> None:
    walk.caliper(torbal, "D1")
    response = bench.post("/instruments/new/dial-indicator/", KNOWN)
    assert response.status_code == 422
    assert "is on the list already" in text(response)
    assert 'value="Dial indicator"' in response.content.decode()
    wrong = bench.post("/instruments/new/dial-indicator/", KNOWN | {"mark": "D2", "limit": "-1"})
    assert "below zero" in text(wrong)
    assert bench.get("/instruments/new/luck/").status_code == 404
    assert bench.get("/instruments/999/").status_code == 404


def test_a_phone_may_measure_something_else(bench: Client) -> None:
    sent = {"mark": "P1", "name": "Phone", "dimension": "time", "resolution": "10", "resolution_unit": "ms"}
    assert bench.post("/instruments/new/phone/", sent).status_code == 302
    found = instruments.marked("P1")
    assert found is not None
    assert (found.row.dimension, found.known.resolution_si) == ("time", pytest.approx(0.01))


def test_a_change_is_a_new_version_and_the_second_screen_is_told(bench: Client, torbal: Any) -> None:
    kept = walk.caliper(torbal)
    sent = {"name": "Caliper by the vice", "resolution": "0.02", "resolution_unit": "mm", "version": "1"}
    assert bench.post(f"/instruments/{kept.pk}/change/", sent).status_code == 302
    page = text(bench.get(f"/instruments/{kept.pk}/"))
    assert "Caliper by the vice" in page
    assert "Version 2" in page
    again = bench.post(f"/instruments/{kept.pk}/change/", sent)
    assert again.status_code == 422
    assert "somebody else meanwhile" in text(again)


def test_a_check_says_whether_it_is_within_what_is_stated(bench: Client, torbal: Any) -> None:
    kept = walk.caliper(torbal)
    sent = {"against": "gauge block 10 mm", "nominal": "10", "nominal_unit": "mm", "found_unit": "mm"}
    sent |= {"uncertainty": "0.002", "uncertainty_unit": "mm"}
    assert bench.post(f"/instruments/{kept.pk}/check/", sent | {"found": "10.01"}).status_code == 302
    page = text(bench.get(f"/instruments/{kept.pk}/"))
    assert "Off by 0.0100 mm ± 0.0020 mm: within what is stated" in page
    bench.post(f"/instruments/{kept.pk}/check/", sent | {"found": "10.09"})
    page = text(bench.get(f"/instruments/{kept.pk}/"))
    assert "not within what is stated" in page
    assert "Its last check found it farther off than is stated" in page


def test_one_that_is_put_away_stays_readable(bench: Client, torbal: Any) -> None:
    kept = walk.measured_with(torbal)
    assert bench.post(f"/instruments/{kept.pk}/put-away/", {"why": "fell"}).status_code == 302
    page = text(bench.get(f"/instruments/{kept.pk}/"))
    assert "Put away: fell" in page
    assert "Write a check" not in page
    refused = bench.post(f"/instruments/{kept.pk}/put-away/", {"why": "again"})
    assert refused.status_code == 422
    assert "has been put away" in text(refused)


def test_what_grows_with_the_value_is_said_at_its_full_scale(bench: Client, torbal: Any) -> None:
    for mark, kind, known in (
        ("S1", "hanging-scale", Known("Scale", 0.1, limit=0.2, share=0.01, high=400.0)),
        ("W1", "weights", Known("Weights", 0.0, share=0.001, high=2.0)),
        ("W2", "weights", Known("More weights", 0.0, share=0.001)),
    ):
        add_instrument(hand=torbal, mark=mark, kind=kind, known=known)
    page = text(bench.get("/instruments/"))
    assert "near nothing, ± 0.49 kg at 40.8 kg" in page
    assert "Weights ± 2.3 g at 2000 g" in page
    assert "More weights ± 0.12 % of what it shows" in page
