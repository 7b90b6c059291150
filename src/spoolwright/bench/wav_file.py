"""A WAV file to one channel of sound: any usual sample format, read where it lies, or a plain refusal."""

from __future__ import annotations

import struct
from collections.abc import Iterator
from dataclasses import dataclass
from mmap import mmap

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import file_text
from spoolwright.bench.mono import (
    FASTEST_RATE,
    LONGEST,
    MOST_CHANNELS,
    SHORTEST,
    SLOWEST_RATE,
    Mono,
    values_of,
)
from spoolwright.bench.unreadable import Unreadable

_ACCEPTED = "a WAV recording, 8 to 192 kHz, 8 to 32 bit or float, up to 8 channels, up to 10 minutes"
_PCM, _FLOAT, _EXTENSIBLE = 1, 3, 0xFFFE
_OTHER_CODINGS = {2: "ADPCM", 6: "A-law", 7: "mu-law", 0x11: "ADPCM", 0x31: "GSM", 0x55: "MP3"}
_PIECE = 1 << 18
_UNKNOWN_LENGTHS = (0xFFFFFFFF, 0)
_MOST_CHUNKS = 10_000
_LONGEST_FORMAT = 64

Bytes = bytes | mmap
Samples = NDArray[np.float32]


class OtherCoding(Unreadable):
    """A WAV whose sound is packed in a way that takes a decoder."""


@dataclass(frozen=True)
class _Format:
    coding: int
    channels: int
    rate: int
    bits: int

    @property
    def frame(self) -> int:
        """Bytes of one moment in all channels."""
        return self.channels * self.bits // 8


def decode(data: Bytes, *, name: str = "") -> tuple[Samples, float]:
    """The sound in a WAV file, all channels averaged into one.

    Parameters
    ----------
    data : bytes or mmap
        The whole file [-].
    name : str
        What the file is called [-]; only for messages.

    Returns
    -------
    tuple of array and float
        Samples of shape (n,), full scale 1 [1], and their rate [Hz], at most 48 kHz.

    Raises
    ------
    Unreadable
        No WAV, another coding than PCM or float, cut short, empty, longer than ten minutes, values that are
        no numbers.

    Notes
    -----
    Read in pieces of a quarter of a million moments: beside the file, one float32 for each kept sample.

    Source
    ------
    Multimedia Programming Interface and Data Specifications 1.0 (1991), RIFF WAVE (from memory).

    Examples
    --------
    >>> import io, wave
    >>> out = io.BytesIO()
    >>> with wave.open(out, "wb") as file:
    ...     file.setparams((2, 2, 8000, 0, "NONE", ""))
    ...     file.writeframes(np.full(16000, 16384, dtype="<i2").tobytes())
    >>> samples, rate = decode(out.getvalue())
    >>> samples[:2].tolist(), rate
    ([0.5, 0.5], 8000.0)
    """
    form, start, length = _chunks(data, name)
    _check_format(form, name)
    _check_length(form, length, name)
    mono = Mono(form.rate, name)
    end = start + length // form.frame * form.frame
    for at in range(start, end, _PIECE * form.frame):
        mono.add(_values(data[at : min(at + _PIECE * form.frame, end)], form))
    return mono.finish()


def _chunks(data: Bytes, name: str) -> tuple[_Format, int, int]:
    """The format, and where the samples begin and how many bytes they take."""
    if len(data) < 12 or data[:4] not in (b"RIFF", b"RF64") or data[8:12] != b"WAVE":
        raise Unreadable(_what_it_is(data), name, _ACCEPTED)
    form: _Format | None = None
    for kind, start, size in _walk(data):
        if kind == b"fmt ":
            form = _format(data[start : start + min(size, _LONGEST_FORMAT)], name)
        elif kind == b"data":
            if form is None:
                raise Unreadable("the sound comes before its description", name, _ACCEPTED)
            return form, start, _whole(data, form, start, size, name)
    raise Unreadable("the file is cut short: it ends before the sound begins", name, _ACCEPTED)


def _what_it_is(data: Bytes) -> str:
    if not len(data):
        return "the file is empty"
    return f"this is {file_text.kind_of(data[:64]) or 'no WAV recording'}"


def _walk(data: Bytes) -> Iterator[tuple[bytes, int, int]]:
    at = 12
    for _ in range(_MOST_CHUNKS):
        if at + 8 > len(data):
            return
        kind, size = struct.unpack_from("<4sI", data, at)
        yield kind, at + 8, size
        at += 8 + size + (size & 1)


def _format(chunk: bytes, name: str) -> _Format:
    if len(chunk) < 16:
        raise Unreadable("the file is cut short inside its description", name, _ACCEPTED)
    coding, channels, rate, _, _, bits = struct.unpack_from("<HHIIHH", chunk)
    if coding == _EXTENSIBLE and len(chunk) >= 26:
        (coding,) = struct.unpack_from("<H", chunk, 24)
    return _Format(coding, channels, rate, bits)


def _whole(data: Bytes, form: _Format, start: int, size: int, name: str) -> int:
    there = len(data) - start
    if size in _UNKNOWN_LENGTHS and there:
        return there
    if size > there:
        per_second = max(1, form.frame * form.rate)
        said, found = size / per_second, there / per_second
        raise Unreadable(
            f"the file is cut short: it says {said:.1f} s and holds {found:.1f} s", name, _ACCEPTED
        )
    return size


def _check_format(form: _Format, name: str) -> None:
    widths = {_PCM: (8, 16, 24, 32), _FLOAT: (32, 64)}
    if form.coding not in widths:
        coding = _OTHER_CODINGS.get(form.coding, f"number {form.coding}")
        raise OtherCoding(f"the sound is coded as {coding}", name, _ACCEPTED)
    if form.bits not in widths[form.coding]:
        raise Unreadable(f"the samples have {form.bits} bits", name, _ACCEPTED)
    if not 1 <= form.channels <= MOST_CHANNELS:
        raise Unreadable(f"the recording has {form.channels} channels", name, _ACCEPTED)
    if not SLOWEST_RATE <= form.rate <= FASTEST_RATE:
        raise Unreadable(f"the recording has {form.rate} samples a second", name, _ACCEPTED)


def _check_length(form: _Format, length: int, name: str) -> None:
    frames = length // form.frame
    seconds = frames / form.rate
    if frames == 0:
        raise Unreadable("the recording has no sound in it: its length is zero", name, _ACCEPTED)
    if seconds < SHORTEST:
        shown = "one sample" if frames == 1 else f"{seconds:.3f} s"
        raise Unreadable(f"the recording holds {shown} only", name, f"{SHORTEST:g} s or more")
    if seconds > LONGEST:
        raise Unreadable(f"the recording lasts {seconds / 60:.1f} minutes", name, _ACCEPTED)


def _values(raw: bytes, form: _Format) -> NDArray[np.float64]:
    """Samples between -1 and 1 whatever their width; 8-bit WAV counts from 0, all others from the middle."""
    if form.coding == _FLOAT:
        return values_of(raw, "flt" if form.bits == 32 else "dbl", form.channels)
    if form.bits == 24:
        wide = np.zeros((len(raw) // 3, 4), dtype=np.uint8)
        wide[:, 1:] = np.frombuffer(raw, dtype=np.uint8).reshape(-1, 3)
        return values_of(wide.tobytes(), "s32", form.channels)
    return values_of(raw, {8: "u8", 16: "s16", 32: "s32"}[form.bits], form.channels)
