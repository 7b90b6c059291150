"""Finding one thing by the number that stands on it; None when there is no such thing."""

from __future__ import annotations

from pathlib import Path

from django.conf import settings

from spoolwright.shop.records.attachment import Attachment
from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.invoice import Invoice
from spoolwright.shop.records.parcel import Parcel
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.reel import Reel
from spoolwright.shop.records.visit import Visit

_VISITS = Visit.objects.select_related("reel__customer", "reel__sheet_version__sheet", "parcel", "return_of")


def visit(visit_id: int) -> Visit | None:
    return _VISITS.filter(pk=visit_id).first()


def visit_tagged(tag: int) -> Visit | None:
    """The visit whose number hangs on the reel's foot."""
    return _VISITS.filter(tag=tag).first()


def visits_of_parcel(parcel: Parcel) -> tuple[Visit, ...]:
    return tuple(_VISITS.filter(parcel=parcel).order_by("tag"))


def parcel(number: int) -> Parcel | None:
    return Parcel.objects.select_related("customer", "opened_by").filter(number=number).first()


def reel(reel_id: int) -> Reel | None:
    return Reel.objects.select_related("customer", "sheet_version__sheet").filter(pk=reel_id).first()


def entry(entry_id: int) -> Entry | None:
    return Entry.objects.select_related("visit__reel__customer", "author").filter(pk=entry_id).first()


def invoice(number: int) -> Invoice | None:
    read = Invoice.objects.select_related("entry__visit__reel", "entry__author", "customer")
    return read.prefetch_related("lines").filter(number=number).first()


def attachment(attachment_id: int) -> Attachment | None:
    return Attachment.objects.filter(pk=attachment_id).first()


def attachments_of(person: Person, ids: list[int]) -> tuple[Attachment, ...]:
    """Files that this person brought in, in the order asked for; others' are not handed out by number."""
    found = Attachment.objects.filter(author=person).in_bulk(ids)
    return tuple(found[i] for i in ids if i in found)


def path_of(attachment: Attachment) -> Path:
    """Where the file lies; its name is its own hash."""
    return Path(settings.MEDIA_ROOT) / attachment.stored_as
