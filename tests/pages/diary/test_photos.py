"""Photographs: whole or not, and a small copy with nothing of the camera in it."""

from __future__ import annotations

import io

import pytest
from PIL import Image

from spoolwright.pages.diary.photos import MOST_DOTS, can_be_shown, fault_of, is_whole, small_copy
from tests.pages.diary.at_the_desk import photo


@pytest.mark.parametrize("kind", ["JPEG", "PNG", "WEBP", "GIF"])
def test_every_kind_that_a_browser_shows_is_taken(kind: str) -> None:
    assert fault_of(io.BytesIO(photo(kind))) == ""
    assert can_be_shown(io.BytesIO(photo(kind)))


@pytest.mark.parametrize("kind", ["JPEG", "PNG"])
def test_half_a_picture_is_none(kind: str) -> None:
    out = io.BytesIO()
    Image.effect_noise((400, 300), 60).save(out, kind)
    half = out.getvalue()[: len(out.getvalue()) // 2]
    assert not is_whole(io.BytesIO(half))
    assert "sent whole" in fault_of(io.BytesIO(half))


def test_other_files_are_nobodys_fault() -> None:
    assert fault_of(io.BytesIO(b"time;pull\n")) == ""
    assert fault_of(io.BytesIO(b"")) == ""


def test_the_file_is_left_where_it_was_found() -> None:
    file = io.BytesIO(photo())
    fault_of(file)
    assert file.tell() == 0


def test_the_small_copy_is_upright_and_says_nothing_of_where_it_was_taken() -> None:
    out, exif = io.BytesIO(), Image.Exif()
    exif[0x0112] = 6  # turned by a quarter: EXIF 2.32, table of orientations (from memory)
    exif[0x010E] = "Moloveien 3"
    Image.new("RGB", (900, 600), "white").save(out, "JPEG", exif=exif)
    with Image.open(io.BytesIO(small_copy(io.BytesIO(out.getvalue())) or b"")) as small:
        assert small.height > small.width
        assert not small.getexif()
    assert b"Moloveien" not in (small_copy(io.BytesIO(out.getvalue())) or b"")


def test_a_picture_that_would_fill_the_memory_is_not_opened() -> None:
    side = int(MOST_DOTS**0.5) + 10
    out = io.BytesIO()
    Image.new("1", (side, side)).save(out, "PNG")
    assert small_copy(io.BytesIO(out.getvalue())) is None
    assert not can_be_shown(io.BytesIO(out.getvalue()))
