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
    """The container as the decoder calls it and as a person does; whether it says what its codec delays."""

    container: str
    words: str
    says_delay: bool = True


WAV = SoundKind("wav", "WAV")
_MOV = SoundKind("mov", "M4A, MP4 or MOV")
_MP3 = SoundKind("mp3", "MP3")
_KINDS = (
    (0, b"fLaC", SoundKind("flac", "FLAC")),
    (0, b"OggS", SoundKind("ogg", "Ogg")),
    (0, b"\x1aE\xdf\xa3", SoundKind("matroska", "WebM")),
    (0, b"ID3", _MP3),
    (0, b"#!AMR", SoundKind("amr", "AMR")),
    (0, b"caff", SoundKind("caf", "CAF")),
    (8, b"AIFF", SoundKind("aiff", "AIFF")),
    (8, b"AIFC", SoundKind("aiff", "AIFF")),
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
    if start[:4] in (b"RIFF", b"RF64") and start[8:12] == b"WAVE":
        return WAV
    if start[4:8] == b"ftyp" and start[8:12] in _PICTURES:
        raise Unreadable("this is a photo (HEIC)", name, ACCEPTED)
    for at, mark, kind in _KINDS:
        if start[at : at + len(mark)] == mark:
            return kind
    if found := _of_frames(start):
        return found
    raise Unreadable(
        f"this is {file_text.kind_of(start) or 'no recording that is known here'}", name, ACCEPTED
    )


def _of_frames(start: bytes) -> SoundKind | None:
    """Sound without a container: eleven set bits begin each frame, then come its version and layer."""
    if len(start) < 4 or start[0] != 0xFF or start[1] & 0xE0 != 0xE0:
        return None
    if start[1] & 0xF6 == 0xF0:
        return SoundKind("aac", "AAC", says_delay=False)
    layer_3 = start[1] & 0x06 == 0x02
    return _MP3 if layer_3 and start[1] & 0x18 != 0x08 and start[2] & 0xF0 != 0xF0 else None
