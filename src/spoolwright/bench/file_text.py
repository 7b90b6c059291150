"""Bytes of a dropped file to text: its encoding is found out; what is no text is named for what it is."""

from __future__ import annotations

import re

from spoolwright.bench.unreadable import Unreadable

LARGEST_TEXT = 64 * 1024 * 1024
"""Bytes. An hour of a 1 kHz gauge is about 50 MB; more is a file dropped by mistake."""

_ACCEPTED = "a text file with one row for each sample, such as a CSV that the gauge's own program writes"

_KINDS: tuple[tuple[bytes, str], ...] = (
    (b"\xff\xd8\xff", "a photo (JPEG)"),
    (b"\x89PNG\r\n\x1a\n", "a picture (PNG)"),
    (b"GIF8", "a picture (GIF)"),
    (b"%PDF", "a PDF"),
    (b"PK\x03\x04", "a workbook or a zip archive; save the sheet as CSV first"),
    (b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1", "an old workbook; save the sheet as CSV first"),
    (b"ID3", "a music file (MP3)"),
    (b"OggS", "a sound file (Ogg)"),
    (b"fLaC", "a sound file (FLAC)"),
    (b"\x1aE\xdf\xa3", "a sound or film file (WebM)"),
    (b"SQLite format 3", "a database"),
    (b"\x7fELF", "a program"),
    (b"MZ", "a program"),
    (b"\x1f\x8b", "a compressed file"),
)
_MARKED: tuple[tuple[bytes, str], ...] = (
    (b"\xef\xbb\xbf", "utf-8-sig"),
    (b"\xff\xfe\x00\x00", "utf-32"),
    (b"\x00\x00\xfe\xff", "utf-32"),
    (b"\xff\xfe", "utf-16"),
    (b"\xfe\xff", "utf-16"),
)
_HIGH_RUN = re.compile(rb"[\x80-\xff]+")
_BAD_CONTROL = re.compile("[\x01-\x08\x0e-\x1a\x1c-\x1f]")


def kind_of(data: bytes) -> str | None:
    """What kind of file this is if its first bytes say so, in words for a message; None for plain text.

    Parameters
    ----------
    data : bytes
        The file, or at least its first 16 bytes [-].

    Returns
    -------
    str or None
        Words such as "a photo (JPEG)" [-].

    Source
    ------
    Signatures as each format's own specification gives them (from memory).

    Examples
    --------
    >>> kind_of(b"%PDF-1.7")
    'a PDF'
    """
    if data[:4] == b"RIFF" and data[8:12] == b"WAVE":
        return "a sound recording (WAV)"
    if data[4:8] == b"ftyp":
        return "a photo, film or sound file of a phone"
    return next((words for mark, words in _KINDS if data.startswith(mark)), None)


def is_text(start: bytes) -> bool:
    """Whether a file that begins so can be text, in any of the encodings that are read here.

    Parameters
    ----------
    start : bytes
        Its first bytes [-]; some thousand are enough.

    Returns
    -------
    bool
        False where the first bytes name another kind of file, or hold what no text holds [-].

    Source
    ------
    As `decode`.

    Examples
    --------
    >>> is_text("tick\\n0,1\\n".encode("utf-16")), is_text(b"OggS")
    (True, False)
    """
    if kind_of(start):
        return False
    try:
        text, _ = _decoded(start[: len(start) // 4 * 4] if len(start) > 64 else start, "")
    except Unreadable:
        return False
    return "\x00" not in text and not _BAD_CONTROL.search(text)


def decode(data: bytes, name: str = "") -> tuple[str, str]:
    """The text in the bytes of a file, and the encoding it was written in.

    Parameters
    ----------
    data : bytes
        The whole file [-], at most `LARGEST_TEXT` bytes.
    name : str
        What the file is called [-]; only for messages.

    Returns
    -------
    tuple of str
        Text and name of the encoding [-].

    Raises
    ------
    Unreadable
        An empty file, a file too large, a picture or another kind of file, bytes that are no text.

    Notes
    -----
    A byte order mark decides; then UTF-8; then UTF-16 by the pattern of its zeros. What is left is GB18030
    where every stretch of high bytes is whole pairs that touch no letter, else Windows-1252.

    Source
    ------
    Unicode Standard, ch. 23.8 (byte order mark); GB 18030-2005 (pairs of bytes), both from memory.

    Examples
    --------
    >>> decode("Kraft;µs".encode("cp1252"))
    ('Kraft;µs', 'cp1252')
    """
    if not data.strip(b"\x00 \t\r\n"):
        reason = "the file holds nothing but blanks" if data else "the file is empty"
        raise Unreadable(reason, name, _ACCEPTED)
    if len(data) > LARGEST_TEXT:
        most = f"{LARGEST_TEXT / 1e6:.0f} MB is the most that is read"
        raise Unreadable(f"the file has {len(data) / 1e6:.0f} MB; {most}", name, _ACCEPTED)
    if kind := kind_of(data):
        raise Unreadable(f"this is {kind}", name, _ACCEPTED)
    text, encoding = _decoded(data, name)
    if "\x00" in text or _BAD_CONTROL.search(text):
        raise Unreadable("the file holds bytes that are no text", name, _ACCEPTED)
    return text, encoding


def _decoded(data: bytes, name: str) -> tuple[str, str]:
    for encoding in (*_by_mark(data), "utf-8", *_by_zeros(data)):
        if encoding == "utf-8" and b"\x00" in data:
            continue
        try:
            return data.decode(encoding), encoding
        except UnicodeDecodeError:
            continue
    if b"\x00" in data:
        raise Unreadable("the file holds zero bytes, so it is no text", name, _ACCEPTED)
    return _by_high_bytes(data)


def _by_mark(data: bytes) -> tuple[str, ...]:
    return next(((encoding,) for mark, encoding in _MARKED if data.startswith(mark)), ())


def _by_zeros(data: bytes) -> tuple[str, ...]:
    """UTF-16 without its mark: plain letters put a zero in every second byte."""
    even, odd = data[0:4096:2].count(0), data[1:4096:2].count(0)
    some = max(1, min(len(data), 4096) // 8)
    if odd > some and even == 0:
        return ("utf-16-le",)
    return ("utf-16-be",) if even > some and odd == 0 else ()


def _by_high_bytes(data: bytes) -> tuple[str, str]:
    if _looks_chinese(data):
        try:
            return data.decode("gb18030"), "gb18030"
        except UnicodeDecodeError:
            pass
    return data.decode("cp1252", errors="replace"), "cp1252"


def _looks_chinese(data: bytes) -> bool:
    for run in _HIGH_RUN.finditer(data):
        pairs = len(run.group()) % 2 == 0 and min(run.group()) >= 0xA1
        beside = data[run.start() - 1 : run.start()] + data[run.end() : run.end() + 1]
        if not pairs or (len(run.group()) == 2 and beside.isalpha()):
            return False
    return True
