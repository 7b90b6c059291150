"""A WAV file to one channel of sound: any usual sample format, in bounded memory, or a plain refusal."""

from __future__ import annotations

import struct
from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import file_text
from spoolwright.bench.unreadable import Unreadable

SLOWEST_RATE, FASTEST_RATE = 8_000, 192_000
LONGEST = 600.0
"""Seconds. Ten minutes outlast every spool."""

SHORTEST = 0.2
"""Seconds in which hardly two ticks of a slow spool fit."""

ENOUGH_RATE = 48_000
"""Samples a second that are kept: faster recordings are averaged down, because a tick lasts a millisecond."""

_QUIETEST = 2e-4
"""Largest swing (1 = full scale) below which nothing was recorded: three steps of a 16-bit file."""

_ACCEPTED = "a WAV recording, 8 to 192 kHz, 8 to 32 bit or float, mono or stereo, up to 10 minutes"
_PCM, _FLOAT, _EXTENSIBLE = 1, 3, 0xFFFE
_OTHER_CODINGS = {2: "ADPCM", 6: "A-law", 7: "mu-law", 0x11: "ADPCM", 0x31: "GSM", 0x55: "MP3"}
_ENDLESS = 1e6
_BLOCK = 1 << 20
_UNKNOWN_LENGTHS = (0xFFFFFFFF, 0)


@dataclass(frozen=True, eq=False)
class Recording:
    """Sound of one channel, full scale 1, with its samples a second and what was put right on the way."""

    samples: NDArray[np.float32]
    rate: float
    notes: tuple[str, ...] = ()

    @property
    def seconds(self) -> float:
        return len(self.samples) / self.rate


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


def read_wav(data: bytes, *, name: str = "") -> Recording:
    """The sound in a WAV file, all channels averaged into one.

    Parameters
    ----------
    data : bytes
        The whole file [-].
    name : str
        What the file is called [-]; only for messages.

    Returns
    -------
    Recording
        Samples of shape (n,), full scale 1, less their mean [1], and their rate [Hz], at most 48 kHz.

    Raises
    ------
    Unreadable
        No WAV, another coding than PCM or float, cut short, empty, longer than ten minutes, silent, nothing
        but a constant level, values that are no numbers.

    Notes
    -----
    Read in blocks of a million frames: beside the file itself, one float32 for each kept sample. Faster
    recordings are averaged over whole numbers of samples.

    Source
    ------
    Multimedia Programming Interface and Data Specifications 1.0 (1991), RIFF WAVE (from memory).

    Examples
    --------
    >>> import io, wave
    >>> out = io.BytesIO()
    >>> with wave.open(out, "wb") as file:
    ...     file.setparams((1, 2, 8000, 0, "NONE", ""))
    ...     file.writeframes((np.arange(8000) % 100 * 100).astype("<i2").tobytes())
    >>> read_wav(out.getvalue()).seconds
    1.0
    """
    form, start, length = _chunks(data, name)
    _check_format(form, name)
    _check_length(form, length, name)
    samples, rate = _mono(memoryview(data)[start : start + length], form, name)
    level = float(samples.mean(dtype=np.float64))
    samples -= np.float32(level)
    _check_sound(samples, level, name)
    return Recording(samples, rate)


def _chunks(data: bytes, name: str) -> tuple[_Format, int, int]:
    """The format, and where the samples begin and how many bytes they take."""
    if len(data) < 12 or data[:4] not in (b"RIFF", b"RF64") or data[8:12] != b"WAVE":
        raise Unreadable(_what_it_is(data), name, _ACCEPTED)
    form: _Format | None = None
    for kind, start, size in _walk(data):
        if kind == b"fmt ":
            form = _format(data[start : start + size], name)
        elif kind == b"data":
            if form is None:
                raise Unreadable("the sound comes before its description", name, _ACCEPTED)
            return form, start, _whole(data, form, start, size, name)
    raise Unreadable("the file is cut short: it ends before the sound begins", name, _ACCEPTED)


def _what_it_is(data: bytes) -> str:
    if not data:
        return "the file is empty"
    return f"this is {file_text.kind_of(data) or 'no WAV recording'}"


def _walk(data: bytes) -> Iterator[tuple[bytes, int, int]]:
    at = 12
    while at + 8 <= len(data):
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


def _whole(data: bytes, form: _Format, start: int, size: int, name: str) -> int:
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
        raise Unreadable(f"the sound is coded as {coding}", name, _ACCEPTED)
    if form.bits not in widths[form.coding]:
        raise Unreadable(f"the samples have {form.bits} bits", name, _ACCEPTED)
    if not 1 <= form.channels <= 8:
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


def _mono(data: memoryview, form: _Format, name: str) -> tuple[NDArray[np.float32], float]:
    every = -(-form.rate // ENOUGH_RATE)
    frames = len(data) // form.frame // every * every
    out = np.empty(frames // every, dtype=np.float32)
    block = _BLOCK // every * every
    for first in range(0, frames, block):
        count = min(block, frames - first)
        raw = data[first * form.frame : (first + count) * form.frame]
        values = _values(raw, form).reshape(count, form.channels).mean(axis=1)
        if not np.all(np.abs(values) < _ENDLESS):
            raise Unreadable("the recording holds values that are no sound (NaN or endless)", name, _ACCEPTED)
        kept = values.reshape(-1, every).mean(axis=1)
        out[first // every : first // every + len(kept)] = kept
    return out, form.rate / every


def _values(raw: memoryview, form: _Format) -> NDArray[np.float64]:
    """Samples between -1 and 1 whatever their width; 8-bit WAV counts from 0, all others from the middle."""
    if form.coding == _FLOAT:
        return np.frombuffer(raw, dtype=f"<f{form.bits // 8}").astype(np.float64)
    if form.bits == 8:
        return (np.frombuffer(raw, dtype=np.uint8).astype(np.float64) - 128.0) / 128.0
    if form.bits == 24:
        bytes_ = np.frombuffer(raw, dtype=np.uint8).reshape(-1, 3).astype(np.int32)
        whole = (bytes_[:, 0] << 8) | (bytes_[:, 1] << 16) | (bytes_[:, 2] << 24)
        return whole.astype(np.float64) / 2.0**31
    return np.frombuffer(raw, dtype=f"<i{form.bits // 8}").astype(np.float64) / 2.0 ** (form.bits - 1)


def _check_sound(samples: NDArray[np.float32], level: float, name: str) -> None:
    swing = float(np.abs(samples).max())
    if swing >= _QUIETEST:
        return
    if abs(level) > 10 * _QUIETEST:
        raise Unreadable(f"the recording is a constant level of {level:.2f} and no sound", name, _ACCEPTED)
    reason = "the recording is silent: was the microphone switched off or out of reach?"
    raise Unreadable(reason, name, "a recording in which each turn of the spool is heard as a tick")
