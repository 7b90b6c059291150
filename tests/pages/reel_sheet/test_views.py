"""One sheet drawn and told, whole or in pieces, and its text to take away."""

from __future__ import annotations

import json
import re
from typing import Any

import pytest
from django.test import Client
from django.urls import reverse

from spoolwright.sheets import reel_sheet
from tests.unit.papers.section import reels

pytestmark = pytest.mark.django_db
HTMX = {"HTTP_HX_REQUEST": "true"}


@pytest.mark.parametrize("slug", reels.SLUGS)
def test_every_shipped_sheet_is_shown_whole(desk: Client, shelf: Any, slug: str) -> None:
    assert shelf[slug]
    response = desk.get(f"/sheets/{slug}/")
    page = response.content.decode()
    assert response.status_code == 200
    assert page.count('class="section-drawing') == 2
    for heading in ("drag stack", "pull", "line", "free spin", "bearings", "screws", "this sheet"):
        assert f'class="margin">{heading}</h2>' in page, heading
    assert page.count("data-chart=") == 2
    assert "A guess:" in page
    assert "None" not in re.sub(r"<[^>]*>", "", page)


def test_a_part_opens_without_any_script(desk: Client, shelf: Any) -> None:
    page = desk.get("/sheets/tarvak-54c/", {"part": "bearing-gear-side"}).content.decode()
    known = page[page.index('id="known"') :]
    assert "Bearing, spool shaft, gear side" in known
    assert "3 x 10 x 4\u00a0mm" in known
    assert "dynamic rating" in known
    assert 'class="part chosen" aria-current="true" data-part="bearing-gear-side"' in page


def test_a_part_that_is_not_there_is_answered_with_those_that_are(desk: Client, shelf: Any) -> None:
    page = desk.get("/sheets/tarvak-54c/", {"part": '"><script>x'}).content.decode()
    assert "The drawing has no part" in page
    assert "<script>x" not in page
    assert "Parts by name" in page


@pytest.mark.parametrize(
    ("target", "asked", "has", "lacks"),
    [
        ("known", {"part": "spool"}, "Spool", "section-drawing"),
        ("drawing", {"fill": "40", "was": "100"}, "section-drawing", "<h1"),
        ("line-answer", {"line": "nylon", "thick": "0.3 mm"}, "Line on a full spool", "section-drawing"),
        ("target-answer", {"target": "5 kg"}, "star about", "section-drawing"),
    ],
)
def test_htmx_gets_the_piece_that_it_asks_for(
    desk: Client, shelf: Any, target: str, asked: dict[str, str], has: str, lacks: str
) -> None:
    response = desk.get("/sheets/tarvak-54c/", asked, HTTP_HX_TARGET=target, **HTMX)
    piece = response.content.decode()
    assert has in piece
    assert lacks not in piece
    assert "<html" not in piece
    assert "HX-Request" in response["Vary"]


def test_an_htmx_request_for_an_unknown_place_gets_the_whole_page(desk: Client, shelf: Any) -> None:
    assert "<html" in desk.get("/sheets/tarvak-54c/", HTTP_HX_TARGET="elsewhere", **HTMX).content.decode()


def test_the_slider_moves_the_number_and_the_number_moves_the_slider(desk: Client, shelf: Any) -> None:
    def piece(**asked: str) -> str:
        return desk.get("/sheets/tarvak-54c/", asked, HTTP_HX_TARGET="drawing", **HTMX).content.decode()

    slid = piece(fill="50", was="100", level="2 mm")
    assert 'id="level-field" hx-swap-oob="true"' in slid
    assert 'id="fill-field"' not in slid
    assert (
        'value="6.97"' in slid
    )  # half of the volume: radius of the root of the mean of 11 and 23 mm squared
    typed = piece(fill="100", was="100", level="6 mm")
    assert 'id="fill-field" hx-swap-oob="true"' in typed
    assert 'id="level-field"' not in typed
    refused = piece(fill="100", was="100", level="60 mm")
    assert "Accepted:" in refused


def test_sizes_stand_in_the_readers_own_units(desk: Client, shelf: Any) -> None:
    assert "kg" in desk.get("/sheets/tarvak-52/").content.decode()
    desk.post(reverse("sign_in:units"), {"units": "imperial"})
    page = desk.get("/sheets/tarvak-52/", {"words": "sizes"}).content.decode()
    assert "\u00a0lb" in page
    assert "Ø 0.787 in" in page  # the arbor, 20 mm


def test_the_text_is_taken_away_as_it_was_written(desk: Client, shelf: Any) -> None:
    response = desk.get("/sheets/tarvak-52/versions/1/sheet.toml")
    assert response.content.decode() == reel_sheet.shipped()["tarvak-52"]
    assert response["Content-Disposition"] == 'attachment; filename="tarvak-52-1.toml"'
    assert response["Content-Type"].startswith("application/toml")
    assert desk.get("/sheets/tarvak-52/versions/2/sheet.toml").status_code == 404


def test_the_schema_is_taken_away_and_is_one(desk: Client) -> None:
    response = desk.get("/sheets/reel-sheet.schema.json")
    schema = json.loads(response.content)
    assert schema["$schema"].startswith("https://json-schema.org/")
    assert "spool" in schema["properties"]


def test_a_sheet_that_is_not_held_is_not_here(desk: Client) -> None:
    for address in ("/sheets/no-such-reel/", "/sheets/no-such-reel/parts/", "/sheets/no-such-reel/versions/"):
        response = desk.get(address)
        assert response.status_code == 404
        assert "Not here" in response.content.decode()


def test_a_finding_is_ringed_on_the_page_and_named_beside_the_part(
    desk: Client, shelf: Any, hand: Any
) -> None:
    from spoolwright.shop.acts.describe_reel import describe_reel
    from spoolwright.shop.acts.write_finding import write_finding
    from tests.shop import walk

    visit = walk.arrived(hand)
    describe_reel(hand=hand, reel=visit.reel, sheet_version=shelf["tarvak-58r"], version=visit.reel.version)
    write_finding(hand=hand, visit=visit, part="pawl", evidence="<b>hooked</b>", touched="level-wind")
    page = desk.get("/sheets/tarvak-58r/", {"visit": visit.tag, "part": "level-wind"}).content.decode()
    assert page.count('<circle class="finding"') == 2
    assert f"Found on {visit.tag}: &lt;b&gt;hooked&lt;/b&gt;" in page
    assert "<b>hooked" not in page
    other = desk.get("/sheets/tarvak-52/", {"visit": visit.tag}).content.decode()
    assert "is not described by this sheet" in other
    assert (
        "No reel of ours carries the tag"
        in desk.get("/sheets/tarvak-52/", {"visit": "soft"}).content.decode()
    )
