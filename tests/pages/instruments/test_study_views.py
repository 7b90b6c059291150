"""A study: laid out, typed or dropped as a file, and read with its picture and what it comes to."""

from __future__ import annotations

from typing import Any

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client

from spoolwright.shop.questions import instruments
from tests.pages.diary.at_the_desk import text
from tests.shop import walk

pytestmark = pytest.mark.django_db
ABOUT = {"what": "washers", "people": "Ada, Ole", "parts": "2", "tries": "2", "unit": "mm"}
TYPED = {
    "v0-1-1": "4.00", "v0-2-1": "4.01", "v0-1-2": "4.10", "v0-2-2": "4.09",
    "v1-1-1": "4.01", "v1-2-1": "4.02", "v1-1-2": "4.11", "v1-2-2": "4.09 mm",
}  # fmt: skip


@pytest.fixture
def kept(torbal: Any) -> Any:
    return walk.caliper(torbal)


def test_fields_are_laid_out_for_each_hand(bench: Client, kept: Any) -> None:
    before = bench.get(f"/instruments/{kept.pk}/study/")
    assert "Lay the fields out" in text(before)
    laid = bench.post(f"/instruments/{kept.pk}/study/", ABOUT | {"do": "look"})
    assert laid.status_code == 200
    assert laid.content.decode().count('name="v0-') == 4
    assert "Ada, try 2, part 1" in text(laid)
    assert not kept.studies.exists()


def test_what_was_typed_is_written_and_read(bench: Client, kept: Any) -> None:
    response = bench.post(f"/instruments/{kept.pk}/study/", ABOUT | TYPED | {"do": "write"})
    assert response.status_code == 302
    assert kept.studies.get().trials.count() == 8
    page = text(bench.get(response.headers["Location"]))
    assert "The same hand finds its own size again to ±" in page
    assert "2 parts, by Ada, Ole" in page
    assert "is the uncertainty of C1 from then on" in page
    assert "2 parts are few" in page
    found = instruments.numbered(kept.pk)
    assert found is not None
    assert found.now.rests_on == "study"


def test_what_is_missing_is_named_and_nothing_typed_is_lost(bench: Client, kept: Any) -> None:
    sent = ABOUT | TYPED | {"do": "write", "v1-2-2": "", "v0-1-1": "thin"}
    response = bench.post(f"/instruments/{kept.pk}/study/", sent)
    assert response.status_code == 422
    page = text(response)
    assert "Ole, try 2, part 2" in page
    assert "everybody measures every part" in page
    assert "“thin mm”" in page or "“thin”" in page
    assert 'value="4.10"' in response.content.decode()
    assert not kept.studies.exists()


def test_a_file_takes_the_place_of_the_fields(bench: Client, kept: Any) -> None:
    lines = [f"{part},{who},4.{part}{k}" for part in "123" for who in ("A", "B") for k in range(2)]
    data = "\n".join(["part,person,value", *lines]).encode()
    sent = ABOUT | {"do": "write", "file": SimpleUploadedFile("study.csv", data)}
    assert bench.post(f"/instruments/{kept.pk}/study/", sent).status_code == 302
    assert kept.studies.get().trials.count() == 12
    bad = ABOUT | {"do": "write", "file": SimpleUploadedFile("study.csv", b"a,b\n1,2\n")}
    refused = bench.post(f"/instruments/{kept.pk}/study/", bad)
    assert "no column is headed" in text(refused)


@pytest.mark.parametrize(
    "changed", [{"people": ""}, {"people": "a,b,c,d,e"}, {"parts": "99"}, {"tries": "x"}]
)
def test_what_cannot_be_laid_out_is_refused(bench: Client, kept: Any, changed: dict[str, str]) -> None:
    response = bench.post(f"/instruments/{kept.pk}/study/", ABOUT | changed | {"do": "write"})
    assert response.status_code == 422


def test_the_latest_takes_the_place_of_an_older_one(bench: Client, torbal: Any) -> None:
    kept = walk.measured_with(torbal)
    first = kept.studies.get()
    bench.post(f"/instruments/{kept.pk}/study/", ABOUT | TYPED | {"do": "write"})
    assert "A later study has taken its place" in text(bench.get(f"/instruments/study/{first.pk}/"))
    assert bench.get("/instruments/study/999/").status_code == 404
