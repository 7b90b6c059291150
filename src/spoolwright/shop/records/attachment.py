"""Files that belong to the record: named by their own hash, so none can be swapped unseen."""

from __future__ import annotations

from django.db import models

from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.ink import Inked
from spoolwright.shop.records.people import Person


class Attachment(Inked):
    """`stored_as` is the path below the media folder; `original_name` is only ever shown as text."""

    sha256 = models.CharField(max_length=64, db_index=True)
    stored_as = models.CharField(max_length=120)
    original_name = models.CharField(max_length=255)
    media_type = models.CharField(max_length=100)
    size_bytes = models.PositiveBigIntegerField()
    author = models.ForeignKey(Person, on_delete=models.PROTECT, related_name="+")
    written_at = models.DateTimeField()

    @property
    def is_photo(self) -> bool:
        return self.media_type in ("image/jpeg", "image/png", "image/webp", "image/gif")


class EntryAttachment(Inked):
    """One file in one entry, with the words beside it."""

    entry = models.ForeignKey(Entry, on_delete=models.PROTECT, related_name="attached")
    attachment = models.ForeignKey(Attachment, on_delete=models.PROTECT, related_name="in_entries")
    position = models.PositiveSmallIntegerField()
    caption = models.CharField(max_length=300, blank=True)

    class Meta:
        ordering = ["entry_id", "position"]
        constraints = [
            models.UniqueConstraint(fields=["entry", "position"], name="shop_attachment_position_once")
        ]
