"""Take a file into the record: stored under its own hash, never replaced, known by its first bytes."""

from __future__ import annotations

import hashlib
import os
import tempfile
from collections.abc import Iterator
from pathlib import Path
from typing import BinaryIO

from django.conf import settings
from django.db import transaction

from spoolwright.bench import sound_kinds
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.put import our_hand, put
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.records.attachment import Attachment
from spoolwright.shop.records.people import Person

_PIECE = 1 << 20


class FileWasEmpty(Refused):
    def __init__(self, name: str) -> None:
        super().__init__(f"{name}: the file is empty. Was it saved before it was sent?", "file")


class FileWasTooLarge(Refused):
    def __init__(self, name: str, limit: int) -> None:
        super().__init__(
            f"{name}: the file is larger than {limit // 2**20} MB, the most that is taken.", "file"
        )


def attach_file(*, hand: Person, data: bytes | BinaryIO, original_name: str) -> Attachment:
    """Store the bytes, then the row. A file without its row harms nobody; the other way round would."""
    our_hand(hand)
    digest, start, size, stored_as = _store(data, original_name)
    with transaction.atomic():
        return put(
            Attachment(
                sha256=digest,
                stored_as=stored_as,
                original_name=_shown_name(original_name),
                media_type=media_type(start),
                size_bytes=size,
                author=hand,
                written_at=clock.now(),
            )
        )


def media_type(start: bytes) -> str:
    """What the first bytes say; what the name says is never believed."""
    for offset, magic, kind in _MAGIC:
        if start[offset : offset + len(magic)] == magic:
            return kind
    if sound := sound_kinds.known(start):
        return sound.media
    return "text/plain" if _is_text(start) else "application/octet-stream"


_MAGIC = (
    (0, b"\xff\xd8\xff", "image/jpeg"),
    (0, b"\x89PNG\r\n\x1a\n", "image/png"),
    (0, b"GIF8", "image/gif"),
    (8, b"WEBP", "image/webp"),
    (0, b"%PDF-", "application/pdf"),
    (4, b"ftypheic", "image/heic"),
)


def _is_text(start: bytes) -> bool:
    return b"\x00" not in start or start[:2] in (b"\xff\xfe", b"\xfe\xff")


def _pieces(data: bytes | BinaryIO) -> Iterator[bytes]:
    if isinstance(data, bytes):
        yield data
        return
    while piece := data.read(_PIECE):
        yield piece


def _store(data: bytes | BinaryIO, name: str) -> tuple[str, bytes, int, str]:
    media = Path(settings.MEDIA_ROOT)
    media.mkdir(parents=True, exist_ok=True)
    handle, waiting = tempfile.mkstemp(dir=media, prefix="arriving-")
    try:
        with os.fdopen(handle, "wb") as out:
            digest, start, size = _copy(data, out, name)
        stored_as = f"{digest[:2]}/{digest}"
        target = media / stored_as
        target.parent.mkdir(exist_ok=True)
        Path(waiting).replace(target)
    except BaseException:
        Path(waiting).unlink(missing_ok=True)
        raise
    return digest, start, size, stored_as


def _copy(data: bytes | BinaryIO, out: BinaryIO, name: str) -> tuple[str, bytes, int]:
    digest, start, size, limit = hashlib.sha256(), b"", 0, settings.LARGEST_FILE
    for piece in _pieces(data):
        start = start or piece[:4096]
        size += len(piece)
        if size > limit:
            raise FileWasTooLarge(_shown_name(name), limit)
        digest.update(piece)
        out.write(piece)
    if not size:
        raise FileWasEmpty(_shown_name(name))
    out.flush()
    os.fsync(out.fileno())
    return digest.hexdigest(), start, size


def _shown_name(name: str) -> str:
    plain = name.replace("\x00", "").replace("\\", "/").rsplit("/", 1)[-1].strip()
    return plain[-255:] or "file without a name"
