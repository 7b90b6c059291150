"""Photos that came with the form: put away at once, so that an error in a field does not lose them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any

from django.http import HttpRequest

from spoolwright.shop.acts.attach_file import attach_file, media_type
from spoolwright.shop.acts.open_diary import Attached
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.questions import by_number

MOST = 24


@dataclass
class Photos:
    """The photos of one reel so far, and what was wrong with files that are none."""

    kept: list[Any] = field(default_factory=list)
    faults: list[str] = field(default_factory=list)

    @property
    def numbers(self) -> str:
        return ",".join(str(photo.pk) for photo in self.kept)

    def attached(self) -> Sequence[Attached]:
        return [Attached(photo) for photo in self.kept]


def kept_name(row: int) -> str:
    return f"r{row}_photos_kept"


def put_away(request: HttpRequest, row: int) -> Photos:
    """Those that were put away before, and those that came now."""
    before = [int(text) for text in request.POST.get(kept_name(row), "").split(",") if is_number(text)]
    photos = Photos(list(by_number.attachments_of(request.user, before[:MOST])))
    for file in request.FILES.getlist(f"r{row}_photos"):
        take(request.user, file, photos)
    return photos


def is_number(text: str) -> bool:
    return text.isascii() and text.isdigit() and len(text) < 19


def take(hand: Any, file: Any, photos: Photos) -> None:
    if len(photos.kept) >= MOST:
        photos.faults.append(f"{file.name}: more than {MOST} photos. Write this arrival, then add the rest.")
        return
    start = file.read(64)
    file.seek(0)
    if start and not media_type(start).startswith("image/"):
        photos.faults.append(f"“{file.name}” is no picture. Accepted: JPEG, PNG, WebP, GIF or HEIC.")
        return
    try:
        photos.kept.append(attach_file(hand=hand, data=file, original_name=file.name))
    except Refused as refusal:
        photos.faults.append(refusal.words)
