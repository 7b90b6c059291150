"""What kind of sound file this is, by its first bytes: nothing is guessed from a name."""

from __future__ import annotations

from dataclasses import dataclass

from spoolwright.bench import file_text
from spoolwright.bench.mono import ACCEPTED
from spoolwright.bench.unreadable import Unreadable

START = 4096
"""Bytes from the beginning of a file that tell what it is."""

ENDINGS = tuple(
    f".{ending}"
    for ending in (
        *("wav", "flac", "m4a", "m4b", "aac", "mp3", "ogg", "oga", "opus", "webm", "weba", "mka", "mkv"),
        *("mp4", "m4v", "mov", "3gp", "amr", "caf", "aif", "aiff"),
    )
)
"""What such files are called, for a browser's chooser."""

MEDIA = ("audio/*", "video/mp4", "video/quicktime", "video/webm")


@dataclass(frozen=True)
class SoundKind:
    """The container for the decoder, in words and as a media type; whether it says what its codec delays."""

    container: str
    words: str
    media: str
    says_delay: bool = True


WAV = SoundKind("wav", "WAV", "audio/wav")
_MOV = SoundKind("mov", "M4A, MP4 or MOV", "video/mp4")
_MP3 = SoundKind("mp3", "MP3", "audio/mpeg")
_KINDS = (
    (0, b"fLaC", SoundKind("flac", "FLAC", "audio/flac")),
    (0, b"OggS", SoundKind("ogg", "Ogg", "audio/ogg")),
    (0, b"\x1aE\xdf\xa3", SoundKind("matroska", "WebM", "video/webm")),
    (0, b"ID3", _MP3),
    (0, b"#!AMR", SoundKind("amr", "AMR", "audio/amr")),
    (0, b"caff", SoundKind("caf", "CAF", "audio/x-caf")),
    (8, b"AIFF", SoundKind("aiff", "AIFF", "audio/aiff")),
    (8, b"AIFC", SoundKind("aiff", "AIFF", "audio/aiff")),
    *((4, box, _MOV) for box in (b"ftyp", b"moov", b"mdat", b"wide", b"free", b"skip")),
)
_PICTURES = (b"heic", b"heix", b"heim", b"heis", b"hevc", b"mif1", b"msf1", b"avif", b"avis")


def find(start: bytes, name: str = "") -> SoundKind:
    """The kind of sound file that begins so.

    Parameters
    ----------
    start : bytes
        The first bytes of the file [-]; `START` of them are enough.
    name : str
        What the file is called [-]; only for messages.

    Returns
    -------
    SoundKind
        One that can be read [-].

    Raises
    ------
    Unreadable
        An empty file, a picture, a program, a workbook, bytes that are none of the known kinds.

    Source
    ------
    Signatures as each format's own specification gives them (from memory).

    Examples
    --------
    >>> find(b"fLaC" + bytes(40)).words
    'FLAC'
    """
    if not start:
        raise Unreadable("the file is empty", name, ACCEPTED)
    if _is_photo(start):
        raise Unreadable("this is a photo (HEIC)", name, ACCEPTED)
    if kind := known(start):
        return kind
    what = file_text.kind_of(start) or "no recording that is known here"
    raise Unreadable(f"this is {what}", name, ACCEPTED)


def known(start: bytes) -> SoundKind | None:
    """The kind of sound or film that begins so, or None.

    Parameters
    ----------
    start : bytes
        The first bytes of the file [-].

    Returns
    -------
    SoundKind or None
        One that can be read [-].

    Source
    ------
    Signatures as each format's own specification gives them (from memory).

    Examples
    --------
    >>> known(b"OggS" + bytes(40)).media, known(b"%PDF")
    ('audio/ogg', None)
    """
    if start[:4] in (b"RIFF", b"RF64") and start[8:12] == b"WAVE":
        return WAV
    if _is_photo(start):
        return None
    marked = (kind for at, mark, kind in _KINDS if start[at : at + len(mark)] == mark)
    return next(marked, None) or _of_frames(start)


def _is_photo(start: bytes) -> bool:
    return start[4:8] == b"ftyp" and start[8:12] in _PICTURES


def _of_frames(start: bytes) -> SoundKind | None:
    """Sound without a container: eleven set bits begin each frame, then come its version and layer."""
    if len(start) < 4 or start[0] != 0xFF or start[1] & 0xE0 != 0xE0:
        return None
    if start[1] & 0xF6 == 0xF0:
        return SoundKind("aac", "AAC", "audio/aac", says_delay=False)
    layer_3 = start[1] & 0x06 == 0x02
    return _MP3 if layer_3 and start[1] & 0x18 != 0x08 and start[2] & 0xF0 != 0xF0 else None
