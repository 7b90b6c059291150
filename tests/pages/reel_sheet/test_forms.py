"""A sheet's text as it is typed or as it comes in a file."""

from __future__ import annotations

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile

from spoolwright.pages.reel_sheet.forms import LARGEST_FILE, SheetForm
from spoolwright.sheets import reel_sheet

TEXT = reel_sheet.shipped()["tarvak-52"]


def form(toml: str = "", file: bytes | None = None, name: str = "reel.toml", **more: object) -> SheetForm:
    files = {"file": SimpleUploadedFile(name, file)} if file is not None else None
    return SheetForm({"toml": toml, "after": "1"} | more, files, start="old", after=1)


def test_typed_text_counts_with_the_line_ends_of_a_file() -> None:
    one = form(TEXT.replace("\n", "\r\n"))
    assert one.is_valid()
    assert one.cleaned_data["text"] == TEXT


@pytest.mark.parametrize(
    "file", [TEXT.encode(), b"\xef\xbb\xbf" + TEXT.encode(), TEXT.replace("\n", "\r\n").encode()]
)
def test_a_files_text_counts_before_what_was_typed(file: bytes) -> None:
    one = form("something of mine", file)
    assert one.is_valid()
    assert one.cleaned_data["text"] == TEXT
    assert one.put_aside(TEXT, "") == "something of mine"


def test_what_stands_anyway_is_not_put_aside() -> None:
    one = form("the last version", TEXT.encode())
    assert one.is_valid()
    assert one.put_aside(TEXT, "the last version") == ""


@pytest.mark.parametrize(
    ("file", "said"),
    [
        (b"\xff\xfe\x00photo\x89PNG\r\n", "not text in UTF-8"),
        (b"\x89PNG\r\n\x1a\n" + bytes(range(256)), "not text in UTF-8"),
        (b"x" * (LARGEST_FILE + 1), "too large for a sheet"),
        ("bølge".encode("latin-1"), "not text in UTF-8"),
    ],
)
def test_a_file_that_is_no_text_is_refused_beside_its_field(file: bytes, said: str) -> None:
    one = form("kept", file, name="photo <b>.png")
    assert not one.is_valid()
    assert said in one.errors["file"][0]
    assert "Accepted" in one.errors["file"][0]
    assert one.typed == "kept"


@pytest.mark.parametrize(("toml", "file"), [("", None), ("  \n ", None), ("", b"  ")])
def test_no_text_at_all_is_said(toml: str, file: bytes | None) -> None:
    one = form(toml, file)
    assert not one.is_valid()
    assert "There is no text" in one.errors["toml"][0]


def test_an_empty_file_is_refused_and_what_was_typed_is_kept() -> None:
    one = form("typed", b"")
    assert not one.is_valid()
    assert "is empty" in one.errors["file"][0]
    assert "toml" not in one.errors
    assert one.typed == "typed"


@pytest.mark.parametrize("after", ["", "x", "-1"])
def test_a_form_that_does_not_say_what_was_on_the_screen_is_refused(after: str) -> None:
    assert not form(TEXT, after=after).is_valid()


def test_the_start_is_what_an_unsent_form_shows() -> None:
    assert SheetForm(start="old", after=3).typed == "old"
