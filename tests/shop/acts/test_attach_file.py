"""A file is stored under its own hash, is known by its first bytes, and is never believed by its name."""

from __future__ import annotations

import hashlib
import io
from pathlib import Path
from typing import Any

import pytest

from spoolwright.shop.acts.attach_file import FileWasEmpty, FileWasTooLarge, attach_file
from spoolwright.shop.acts.refused import HandWasNotOurs
from spoolwright.shop.questions.by_number import attachments_of, path_of
from spoolwright.shop.records.attachment import Attachment
from tests import people
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_the_name_on_the_disk_is_the_hash(hand: Any, files: Path) -> None:
    kept = attach_file(hand=hand, data=walk.PHOTO, original_name="slate.jpg")
    assert kept.sha256 == hashlib.sha256(walk.PHOTO).hexdigest()
    assert path_of(kept) == files / kept.sha256[:2] / kept.sha256
    assert path_of(kept).read_bytes() == walk.PHOTO
    assert (kept.original_name, kept.media_type, kept.size_bytes) == ("slate.jpg", "image/jpeg", 404)
    assert kept.is_photo


def test_the_same_bytes_twice_lie_there_once(hand: Any, files: Path) -> None:
    first = attach_file(hand=hand, data=walk.PHOTO, original_name="one.jpg")
    second = attach_file(hand=hand, data=io.BytesIO(walk.PHOTO), original_name="two.jpg")
    assert (first.pk != second.pk, first.stored_as) == (True, second.stored_as)
    assert len([p for p in files.rglob("*") if p.is_file()]) == 1


@pytest.mark.parametrize(
    ("start", "kind"),
    [
        (b"\x89PNG\r\n\x1a\n", "image/png"),
        (b"RIFF\x24\x00\x00\x00WAVEfmt ", "audio/wav"),
        (b"RIFF\x24\x00\x00\x00WEBPVP8 ", "image/webp"),
        (b"\x1aE\xdf\xa3" + bytes(20), "video/webm"),
        (b"\x00\x00\x00\x1cftypM4A " + bytes(20), "video/mp4"),
        (b"\x00\x00\x00\x1cftypheic" + bytes(20), "image/heic"),
        (b"OggS" + bytes(20), "audio/ogg"),
        (b"%PDF-1.7", "application/pdf"),
        (b"time;force\n0,0;1,2\n", "text/plain"),
        (b"<html><script>alert(1)</script>", "text/plain"),
        (b"\x00\x01\x02\x03", "application/octet-stream"),
        ("time\n".encode("utf-16"), "text/plain"),
    ],
)
def test_the_first_bytes_say_what_it_is(hand: Any, start: bytes, kind: str) -> None:
    assert attach_file(hand=hand, data=start, original_name="holiday.jpg").media_type == kind


@pytest.mark.parametrize(
    ("typed", "shown"),
    [
        ("../../etc/passwd", "passwd"),
        ("C:\\reels\\pull.csv", "pull.csv"),
        ("<script>.wav", "<script>.wav"),
        ("bad\x00name.csv", "badname.csv"),
        ("", "file without a name"),
        ("x" * 400 + ".csv", "x" * 251 + ".csv"),
    ],
)
def test_a_name_is_only_ever_words(hand: Any, files: Path, typed: str, shown: str) -> None:
    kept = attach_file(hand=hand, data=b"a", original_name=typed)
    assert kept.original_name == shown
    assert path_of(kept).resolve().is_relative_to(files.resolve())


def test_too_large_and_empty_leave_nothing_behind(hand: Any, files: Path, settings: Any) -> None:
    settings.LARGEST_FILE = 3 * 2**20
    with pytest.raises(FileWasTooLarge, match=r"trace\.csv: the file is larger than 3 MB"):
        attach_file(hand=hand, data=io.BytesIO(b"1" * (3 * 2**20 + 1)), original_name="trace.csv")
    with pytest.raises(FileWasEmpty, match="empty"):
        attach_file(hand=hand, data=b"", original_name="trace.csv")
    assert [p for p in files.rglob("*") if p.is_file()] == []
    assert not Attachment.objects.exists()


def test_a_stranger_leaves_no_file(files: Path) -> None:
    with pytest.raises(HandWasNotOurs):
        attach_file(hand=people.stranger(), data=b"a", original_name="a")
    assert not files.exists()


def test_others_files_are_not_handed_out_by_number(hand: Any, owner: Any) -> None:
    mine = attach_file(hand=hand, data=b"mine", original_name="mine.csv")
    theirs = attach_file(hand=owner, data=b"theirs", original_name="theirs.csv")
    assert attachments_of(hand, [theirs.pk, mine.pk, 999]) == (mine,)
