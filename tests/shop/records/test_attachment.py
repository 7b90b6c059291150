"""A photograph is known by its kind, and one place in an entry holds one file."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import IntegrityError, transaction

from spoolwright.shop.records.attachment import EntryAttachment
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_a_photo_is_shown_and_other_files_are_only_named(hand: Any) -> None:
    photo = walk.attach_file(hand=hand, data=walk.PHOTO, original_name="a.csv")
    trace = walk.attach_file(hand=hand, data=b"0,1", original_name="a.jpg")
    assert (photo.is_photo, trace.is_photo) == (True, False)


def test_one_file_in_one_place(hand: Any) -> None:
    held = walk.everything(hand).entries.get(kind="finding").attached.get()
    with pytest.raises(IntegrityError), transaction.atomic():
        EntryAttachment(entry=held.entry, attachment=held.attachment, position=held.position).save()
