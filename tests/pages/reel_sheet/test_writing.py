"""A further version and a new sheet: looked through, written once, nothing that was typed ever lost."""

from __future__ import annotations

import html
import re
from typing import Any

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client

from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from spoolwright.shop.questions import reel_sheets
from tests.people import bench_hand
from tests.unit.papers.section import reels

pytestmark = pytest.mark.django_db
TEXT = reel_sheet.shipped()["tarvak-54c"]
CHANGED = TEXT.replace('line_level = "2.0 mm"', 'line_level = "2.5 mm"')
AT = "/sheets/tarvak-54c/new-version/"


def text_of(page: str, name: str = "id_toml") -> str:
    found = re.search(rf'<textarea[^>]*id="{name}"[^>]*>\n?(.*?)</textarea>', page, re.DOTALL)
    assert found
    return html.unescape(found[1])


def sent(toml: str, after: int = 1, **more: Any) -> dict[str, Any]:
    return {"toml": toml, "after": after, "words": "", **more}


def test_the_page_begins_with_the_version_that_stands(desk: Client, shelf: Any) -> None:
    page = desk.get(AT).content.decode()
    assert text_of(page) == TEXT
    assert 'name="after" value="1"' in page
    assert "Write version 2" in page


def test_looking_through_writes_nothing_and_says_what_is_new(desk: Client, shelf: Any) -> None:
    response = desk.post(AT, sent(CHANGED.replace("\n", "\r\n"), look="yes"))
    page = response.content.decode()
    assert response.status_code == 200
    assert "Spool, line level: 2.5 mm in place of 2 mm." in page
    assert text_of(page) == CHANGED
    assert len(reel_sheets.versions("tarvak-54c")) == 1


def test_a_bench_hand_writes_a_version_with_its_reason(bench: Client, shelf: Any) -> None:
    response = bench.post(AT, sent(CHANGED, words=" measured on three reels ", write="yes"))
    assert response.status_code == 302
    assert response["Location"] == "/sheets/tarvak-54c/"
    newest = reel_sheets.version("tarvak-54c")
    assert newest is not None
    assert (newest.number, newest.toml, newest.words) == (2, CHANGED, "measured on three reels")
    assert newest.author == bench_hand()
    assert "Version 2 of the Tarvak 54C is written." in bench.get("/sheets/tarvak-54c/").content.decode()


def test_the_very_same_text_writes_nothing_and_says_so(desk: Client, shelf: Any) -> None:
    desk.post(AT, sent(TEXT, write="yes"))
    assert len(reel_sheets.versions("tarvak-54c")) == 1
    assert "nothing was written" in desk.get("/sheets/tarvak-54c/").content.decode()


@pytest.mark.parametrize("button", ["look", "write"])
@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("[spool]", "[spool", "tables in [brackets]"),
        ('width = "32 mm"', 'width = "-32 mm"', "spool.width"),
        ('material = "woven carbon"', 'material = "woven carbn"', "nearest is “woven carbon”"),
        ('slug = "tarvak-54c"', 'slug = "tarvak-99"', "names another sheet"),
        ("face_width", "face_wdith", "nearest is “face_width”"),
    ],
)
def test_a_fault_stands_beside_the_text_which_is_kept(
    desk: Client, shelf: Any, old: str, new: str, said: str, button: str
) -> None:
    faulty = TEXT.replace(old, new, 1)
    response = desk.post(AT, sent(faulty, words="my reason", **{button: "yes"}))
    page = response.content.decode()
    assert response.status_code == 422
    assert said in html.unescape(page)
    assert "Accepted: " in page
    assert 'data-line="' in page
    assert text_of(page) == faulty
    assert 'value="my reason"' in page
    assert 'class="fault-list"' in page
    assert len(reel_sheets.versions("tarvak-54c")) == 1


def test_the_line_of_a_fault_is_the_line_in_the_text(desk: Client, shelf: Any) -> None:
    faulty = TEXT.replace('width = "32 mm"', 'width = "-32 mm"')
    number = faulty[: faulty.index('width = "-32 mm"')].count("\n") + 1
    page = desk.post(AT, sent(faulty, look="yes")).content.decode()
    assert f'data-line="{number}">line {number}</a>, spool.width' in page


def test_a_file_takes_the_place_of_the_text_and_what_was_typed_is_put_aside(desk: Client, shelf: Any) -> None:
    file = SimpleUploadedFile("54c.toml", CHANGED.encode())
    page = desk.post(AT, sent("my own half-typed text", look="yes", file=file)).content.decode()
    assert text_of(page) == CHANGED
    assert text_of(page, "typed-before") == "my own half-typed text"
    assert "Spool, line level" in page


def test_a_photo_for_a_file_is_refused_and_the_text_kept(desk: Client, shelf: Any) -> None:
    file = SimpleUploadedFile("reel.jpg", b"\xff\xd8\xff\xe0" + bytes(200))
    response = desk.post(AT, sent(CHANGED, write="yes", file=file))
    assert response.status_code == 422
    assert "is not text in UTF-8" in response.content.decode()
    assert text_of(response.content.decode()) == CHANGED


def test_a_text_of_two_megabytes_is_answered_and_kept(desk: Client, shelf: Any) -> None:
    long = TEXT + "# " + "x" * 2_000_000
    response = desk.post(AT, sent(long, write="yes"))
    page = response.content.decode()
    assert response.status_code == 422
    assert "Has more than 200000 characters" in page
    assert "at most 200000" in page
    assert text_of(page) == long


def test_a_script_in_a_text_stays_text(desk: Client, shelf: Any) -> None:
    nasty = TEXT.replace('name = "main gear"', 'name = "</textarea><script>alert(1)</script>"')
    page = desk.post(AT, sent(nasty.replace('width = "32 mm"', 'width = "<script>2</script>"'), look="yes"))
    assert "<script>alert" not in page.content.decode()
    assert "<script>2" not in page.content.decode()
    assert "&lt;script&gt;2" in page.content.decode()


def test_the_second_of_two_sees_the_first_before_writing(desk: Client, bench: Client, shelf: Any) -> None:
    mine = TEXT.replace('mass = "328 g"', 'mass = "330 g"')
    bench.post(AT, sent(CHANGED, words="line level measured", write="yes"))
    response = desk.post(AT, sent(mine, write="yes"))
    page = html.unescape(response.content.decode())
    assert response.status_code == 422
    assert "Version 2 of the Tarvak 54C was written meanwhile, by Torbal Kvie" in page
    assert "“line level measured”" in page
    assert "Spool, line level: 2 mm in place of 2.5 mm." in page
    assert text_of(page) == mine
    assert 'name="after" value="2"' in page
    assert desk.post(AT, sent(mine, after=2, write="yes")).status_code == 302
    assert len(reel_sheets.versions("tarvak-54c")) == 3


def test_a_new_sheet_is_written_from_a_file(desk: Client, hand: Any) -> None:
    file = SimpleUploadedFile("fly.toml", reels.FLY.encode())
    response = desk.post("/sheets/new/", sent("", after=0, write="yes", file=file))
    assert response.status_code == 302
    assert response["Location"] == "/sheets/brekkas-89/"
    assert desk.get("/sheets/brekkas-89/").status_code == 200


def test_a_new_sheet_is_looked_through_first(desk: Client, hand: Any) -> None:
    page = desk.post("/sheets/new/", sent(TEXT, after=0, look="yes")).content.decode()
    assert "It can be written." in page
    assert reel_sheets.version("tarvak-54c") is None


def test_a_new_sheet_under_a_name_that_stands_is_shown_what_stands(desk: Client, shelf: Any) -> None:
    response = desk.post("/sheets/new/", sent(CHANGED, after=0, write="yes"))
    page = response.content.decode()
    assert response.status_code == 422
    assert "stands already" in page
    assert "Spool, line level: 2.5 mm in place of 2 mm." in page
    assert len(reel_sheets.versions("tarvak-54c")) == 1
    assert desk.post("/sheets/new/", sent(CHANGED, after=1, write="yes")).status_code == 302
    assert len(reel_sheets.versions("tarvak-54c")) == 2


def test_a_new_sheet_may_begin_with_one_that_comes_with_us_or_that_we_hold(desk: Client, hand: Any) -> None:
    assert text_of(desk.get("/sheets/new/?from=tarvak-54c").content.decode()) == TEXT
    add_sheet_version(hand=hand, toml=reels.FLY)
    assert text_of(desk.get("/sheets/new/?from=brekkas-89").content.decode()) == reels.FLY
    assert text_of(desk.get("/sheets/new/?from=nothing").content.decode()) == ""


def test_a_form_without_its_number_writes_nothing(desk: Client, shelf: Any) -> None:
    assert desk.post(AT, {"toml": CHANGED, "write": "yes"}).status_code == 422
    assert len(reel_sheets.versions("tarvak-54c")) == 1
