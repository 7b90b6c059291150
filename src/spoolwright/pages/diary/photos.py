"""Photographs: whether one is what it says, and a small copy of it that carries nothing but the picture."""

from __future__ import annotations

import io
from typing import Any, BinaryIO

from spoolwright.shop.acts.attach_file import media_type

SHOWN = ("image/jpeg", "image/png", "image/webp", "image/gif")
"""Kinds that a browser is given to show; everything else is only handed over as a file."""

FORMATS = ("JPEG", "PNG", "WEBP", "GIF")
MOST_DOTS = 80_000_000
"""Dots of a picture: more than any camera on a bench, less than would fill the memory."""

SMALL = (640, 480)
NOT_A_PHOTO = (
    "this begins like a photo and cannot be opened as one. "
    "Accepted: JPEG, PNG, WebP or GIF; was it sent whole?"
)


def fault_of(file: Any) -> str:
    """What is wrong with a file that says it is a photo; empty for sound photos and for other files."""
    start = file.read(4096)
    file.seek(0)
    if media_type(start) not in SHOWN:
        return ""
    fault = "" if is_whole(file) else NOT_A_PHOTO
    file.seek(0)
    return fault


def is_whole(file: BinaryIO) -> bool:
    """Whether the picture can be drawn to its last line; coarsely and quickly where its kind allows that."""
    return small_copy(file) is not None


def can_be_shown(file: BinaryIO) -> bool:
    """Whether these bytes are a picture of a kind that a browser is given."""
    from PIL import Image, UnidentifiedImageError

    try:
        with Image.open(file, formats=FORMATS) as image:
            sound = image.width * image.height <= MOST_DOTS
            image.verify()
    except (UnidentifiedImageError, OSError, ValueError, SyntaxError, Image.DecompressionBombError):
        return False
    return sound


def small_copy(file: BinaryIO) -> bytes | None:
    """A JPEG of at most 640 by 480, turned upright, without place, time or anything else from the camera."""
    from PIL import Image, ImageOps, UnidentifiedImageError

    try:
        with Image.open(file, formats=FORMATS) as image:
            if image.width * image.height > MOST_DOTS:
                return None
            image.draft("RGB", SMALL)
            upright = ImageOps.exif_transpose(image).convert("RGB")
            upright.thumbnail(SMALL)
            out = io.BytesIO()
            upright.save(out, "JPEG", quality=82)
    except (UnidentifiedImageError, OSError, ValueError, SyntaxError, Image.DecompressionBombError):
        return None
    return out.getvalue()
