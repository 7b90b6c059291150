"""A recording to one channel of sound: any usual kind of file, in bounded memory, or a plain refusal."""

from __future__ import annotations

import mmap
import os
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import decoding, file_text, sound_kinds, wav_file
from spoolwright.bench.mono import ACCEPTED, ENOUGH_RATE, LONGEST, SHORTEST
from spoolwright.bench.unreadable import Unreadable

__all__ = ["ACCEPTED", "ENOUGH_RATE", "LONGEST", "SHORTEST", "Recording", "is_sound", "read", "read_wav"]

_QUIETEST = 2e-4
"""Largest swing (1 = full scale) below which nothing was recorded: three steps of a 16-bit file."""


@dataclass(frozen=True, eq=False)
class Recording:
    """Sound of one channel, full scale 1, with its samples a second and what was put right on the way."""

    samples: NDArray[np.float32]
    rate: float
    notes: tuple[str, ...] = ()

    @property
    def seconds(self) -> float:
        return len(self.samples) / self.rate


def is_sound(data: bytes | Path) -> bool:
    """Whether a file is to be listened to rather than read: all that is no text is.

    Parameters
    ----------
    data : bytes or Path
        The file, or at least its first 4096 bytes [-].

    Returns
    -------
    bool
        False for text and for an empty file [-].

    Source
    ------
    Our own rule; what text is, as `file_text` has it.

    Examples
    --------
    >>> is_sound(b"OggS" + bytes(40)), is_sound(b"0.1 0.2 0.3")
    (True, False)
    """
    start = _start(data)
    return bool(start) and not file_text.is_text(start)


def read(data: bytes | Path, *, name: str = "") -> Recording:
    """The sound in a file of any usual kind, all channels averaged into one.

    Parameters
    ----------
    data : bytes or Path
        The whole file, or where it lies [-].
    name : str
        What the file is called [-]; only for messages, the first bytes say what it is.

    Returns
    -------
    Recording
        Samples of shape (n,), full scale 1, less their mean [1], and their rate [Hz], at most 48 kHz.

    Raises
    ------
    Unreadable
        No sound file, no sound track, damaged or cut short before anything can be heard, longer than ten
        minutes, silent, nothing but a constant level, values that are no numbers.

    Notes
    -----
    WAV of plain samples is read here; every other kind is decoded in a process of its own, with limits on its
    time and memory, so that a damaged file can do no more than be refused. The delay of a codec is taken off;
    the channels are averaged, which leaves a sound that is the same in both as loud as it was.

    Source
    ------
    `wav_file` and `decoding` name theirs.

    Examples
    --------
    >>> read(b"%PDF-1.7", name="bill.pdf")  # doctest: +ELLIPSIS
    Traceback (most recent call last):
    ...
    spoolwright.bench.unreadable.Unreadable: bill.pdf: this is a PDF. Accepted: ...
    """
    kind = sound_kinds.find(_start(data), name)
    if kind == sound_kinds.WAV:
        with suppress(wav_file.OtherCoding):
            samples, rate = wav_file.decode(_mapped(data) if isinstance(data, Path) else data, name=name)
            return _checked(samples, rate, name)
    with _on_disk(data) as path:
        decoded = decoding.decode(path, kind, name=name)
    return _checked(decoded.samples, decoded.rate, name, decoded.notes)


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
        As `wav_file.decode`; and a recording that is silent, or nothing but a constant level.

    Source
    ------
    `wav_file` names its own.

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
    samples, rate = wav_file.decode(data, name=name)
    return _checked(samples, rate, name)


def _start(data: bytes | Path) -> bytes:
    if isinstance(data, bytes):
        return data[: sound_kinds.START]
    with data.open("rb") as file:
        return file.read(sound_kinds.START)


def _mapped(path: Path) -> mmap.mmap:
    """The file as it lies on the disk, taken into memory page by page as it is read."""
    with path.open("rb") as file:
        return mmap.mmap(file.fileno(), 0, access=mmap.ACCESS_READ)


@contextmanager
def _on_disk(data: bytes | Path) -> Iterator[Path]:
    """Where a decoder can open it."""
    if isinstance(data, Path):
        yield data
        return
    handle, path = tempfile.mkstemp(prefix="spoolwright-sound-")
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(data)
        yield Path(path)
    finally:
        Path(path).unlink(missing_ok=True)


def _checked(samples: NDArray[np.float32], rate: float, name: str, notes: tuple[str, ...] = ()) -> Recording:
    level = float(samples.mean(dtype=np.float64))
    samples -= np.float32(level)
    _check_sound(samples, level, name)
    return Recording(samples, rate, notes)


def _check_sound(samples: NDArray[np.float32], level: float, name: str) -> None:
    swing = float(max(samples.max(), -samples.min()))
    if swing >= _QUIETEST:
        return
    if abs(level) > 10 * _QUIETEST:
        raise Unreadable(f"the recording is a constant level of {level:.2f} and no sound", name, ACCEPTED)
    reason = "the recording is silent: was the microphone switched off or out of reach?"
    raise Unreadable(reason, name, "a recording in which each turn of the spool is heard as a tick")
