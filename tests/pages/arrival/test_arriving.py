"""From what was typed to what the act is told."""

from __future__ import annotations

import pytest
from django.test import Client

from spoolwright.pages.arrival.arriving import line_words
from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from tests.pages.arrival.sending import arrival, send, visit
from tests.people import bench_hand

pytestmark = pytest.mark.django_db


@pytest.mark.parametrize(
    ("line", "diameter", "said"),
    [
        ("nylon", 0.0004, "nylon, 0.4 mm"),
        ("", 0.0004, "0.4 mm"),
        ("braided polyethylene", None, "braided polyethylene"),
        ("none", 0.0004, "none on it"),
        ("", None, ""),
    ],
)
def test_the_line_in_words(line: str, diameter: float | None, said: str) -> None:
    assert line_words({"line": line, "line_diameter": diameter}).startswith(said)


def test_the_mass_without_line_is_the_first_identity_mark(desk: Client) -> None:
    send(desk, r0_mass="286 g", r0_mass_line="off", r0_serial="5801")
    marks = {mark.kind: mark.words for mark in visit(1).reel.marks.all()}
    assert marks == {"serial": "5801", "mass without line": "286 g"}


def test_the_mass_with_line_is_none(desk: Client) -> None:
    send(desk, r0_mass="338 g", r0_mass_line="on")
    assert not visit(1).reel.marks.exists()


def test_a_sheet_says_what_the_reel_is(desk: Client) -> None:
    add_sheet_version(hand=bench_hand(), toml=reel_sheet.shipped()["tarvak-58r"])
    assert send(desk, r0_described="", r0_sheet="tarvak-58r").status_code == 302
    assert visit(1).reel.described == "Tarvak 58R"
    assert visit(1).reel.sheet_version.sheet.slug == "tarvak-58r"


def test_a_line_counted_on_the_mat_is_written_once(desk: Client) -> None:
    send(desk, count_8="2", r0_line="nylon")
    lines = [(c.what, c.count) for c in arrival(1).part.contents.all()]
    assert lines == [("reel", 1), ("line", 2)]
