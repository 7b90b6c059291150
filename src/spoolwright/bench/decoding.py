"""Sound of any usual kind to one channel, decoded in a process beside this one that may fail without harm."""

from __future__ import annotations

import json
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from threading import Timer
from typing import Any, BinaryIO, cast

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import decoder
from spoolwright.bench.mono import (
    ACCEPTED,
    FASTEST_RATE,
    LONGEST,
    MOST_CHANNELS,
    SHORTEST,
    SLOWEST_RATE,
    Mono,
    values_of,
)
from spoolwright.bench.sound_kinds import SoundKind
from spoolwright.bench.unreadable import Unreadable

PATIENCE = 60.0
"""Seconds by the clock after which a decoder that is not done is ended."""

_GAP = 0.03
"""Seconds missing between two pieces that count as a gap; less is the rounding of time stamps."""

_MUCH_LOST = 0.3
_SHORT_BY, _SHORT_OF = 0.5, 0.97
_LONGEST_LINE = 4096
_OUT_OF_TIME = 24
_MOST_BYTES = 1 << 26
_DAMAGED = "it is damaged, or not what it says it is"


@dataclass(frozen=True, eq=False)
class Decoded:
    """One channel with its samples a second [Hz], and what was left out on the way."""

    samples: NDArray[np.float32]
    rate: float
    notes: tuple[str, ...]


def decode(path: Path, kind: SoundKind, *, name: str = "") -> Decoded:
    """The sound in a file, all channels averaged into one.

    Parameters
    ----------
    path : Path
        Where the file lies [-].
    kind : SoundKind
        What its first bytes say [-].
    name : str
        What the file is called [-]; only for messages.

    Returns
    -------
    Decoded
        Samples of shape (n,), full scale 1 [1], and their rate [Hz], at most 48 kHz.

    Raises
    ------
    Unreadable
        No sound in it, damaged, cut short before anything can be heard, longer than ten minutes, another rate
        or more channels than accepted, a decoder that fails, swells or hangs.

    Notes
    -----
    Read as it comes; beside what is kept there is one second of sound in memory. Where packets are lost,
    silence stands for them, so that what follows keeps its time; the notes say how much it is.

    Source
    ------
    Our own rules; the decoder is the FFmpeg library's.

    Examples
    --------
    >>> from spoolwright.bench.sound_kinds import WAV
    >>> decode(Path("no such file"), WAV)  # doctest: +ELLIPSIS
    Traceback (most recent call last):
    ...
    spoolwright.bench.unreadable.Unreadable: The file cannot be opened as WAV: ...
    """
    with _decoder(path, kind) as work:
        found = gather(work.out, kind, name=name)
    if found is None:
        reason = f"the decoder gave up on the file, because {work.way_out}; {_DAMAGED}"
        raise Unreadable(reason, name, ACCEPTED)
    return found


def gather(out: BinaryIO, kind: SoundKind, *, name: str = "") -> Decoded | None:
    """What a decoder sends, as one channel; None where it breaks off before it has said how it ended.

    Parameters
    ----------
    out : binary file
        What `decoder` writes [-].
    kind : SoundKind
        What the first bytes of the file say [-].
    name : str
        What the file is called [-]; only for messages.

    Returns
    -------
    Decoded or None
        As `decode` [-].

    Raises
    ------
    Unreadable
        As `decode`.

    Source
    ------
    Our own rules.

    Examples
    --------
    >>> from io import BytesIO
    >>> from spoolwright.bench.sound_kinds import WAV
    >>> gather(BytesIO(b"nothing of use"), WAV) is None
    True
    """
    reading = _Reading(kind, name)
    for head, body in _messages(out):
        reading.take(head, body)
        if reading.ended is not None:
            return reading.finish(reading.ended)
    return None


@dataclass
class _Work:
    """The decoder at work, where it speaks, and whether it was ended because it took too long."""

    process: subprocess.Popen[bytes]
    out: BinaryIO
    late: bool = False

    def end_late(self) -> None:
        self.late = True
        self.process.kill()

    @property
    def way_out(self) -> str:
        """How a decoder ended that said nothing."""
        code = self.process.returncode
        if self.late or code == -_OUT_OF_TIME:
            return "it took too much time"
        return "it broke down" if code and code < 0 else "it asked for too much memory or broke down"


@contextmanager
def _decoder(path: Path, kind: SoundKind) -> Iterator[_Work]:
    """The decoder at work; it is ended when nobody listens any more, or when it takes too long."""
    words = [sys.executable, "-I", decoder.__file__, str(path), kind.container]
    process = subprocess.Popen(
        words, stdin=subprocess.DEVNULL, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, bufsize=1 << 20
    )
    assert process.stdout is not None
    work = _Work(process, cast("BinaryIO", process.stdout))
    clock = Timer(PATIENCE, work.end_late)
    clock.daemon = True
    clock.start()
    try:
        with process.stdout:
            yield work
    finally:
        clock.cancel()
        process.kill()
        process.wait()


def _messages(out: BinaryIO) -> Iterator[tuple[dict[str, Any], bytes]]:
    """What the decoder sends; a decoder that went wrong may send anything, so nothing of it is believed."""
    while line := out.readline(_LONGEST_LINE):
        try:
            head = json.loads(line)
            size = int(head.get("bytes", 0))
        except (ValueError, AttributeError, TypeError):
            return
        if not 0 <= size <= _MOST_BYTES:
            return
        body = out.read(size)
        if len(body) < size:
            return
        yield head, body


@dataclass
class _Reading:
    """What has come from the decoder so far."""

    kind: SoundKind
    name: str
    mono: Mono | None = None
    first: float | None = None
    missing: float = 0.0
    ended: dict[str, Any] | None = None
    notes: list[str] = field(default_factory=list)

    def take(self, head: dict[str, Any], body: bytes) -> None:
        if "ended" in head:
            self.ended = head
            return
        rate, channels = head["rate"], head["channels"]
        mono = self.mono = self.mono or self._begin(rate)
        if rate != mono.rate:
            self._refuse(f"the recording changes from {mono.rate} to {rate} samples a second halfway")
        if not 1 <= channels <= MOST_CHANNELS:
            self._refuse(f"the recording has {channels} channels")
        self._wait_for(head["at"], mono)
        mono.add(values_of(body, head["form"], channels))
        if mono.seconds > LONGEST + 1.0:
            self._refuse(f"the recording lasts longer than {LONGEST / 60:.0f} minutes")

    def _begin(self, rate: int) -> Mono:
        if not SLOWEST_RATE <= rate <= FASTEST_RATE:
            self._refuse(f"the recording has {rate} samples a second")
        return Mono(rate, self.name)

    def _wait_for(self, at: float | None, mono: Mono) -> None:
        """Silence until the time stamp of what comes now, where sound before it is missing."""
        if at is None:
            return
        self.first = at if self.first is None else self.first
        late = at - self.first - mono.seconds
        if _GAP < late <= LONGEST:
            mono.add_silence(late)
            self.missing += late

    def finish(self, ended: dict[str, Any]) -> Decoded:
        if ended["ended"] == "not opened":
            words = f"the file cannot be opened as {self.kind.words}: {_DAMAGED}, or it is cut short"
            self._refuse(words)
        if ended["ended"] == "no track":
            what = "a film without sound" if ended.get("film") else "a file without a sound track"
            self._refuse(f"this is {what}, or its sound is of a kind that cannot be decoded here")
        if self.mono is None:
            self._refuse(f"nothing in the file can be decoded: {_DAMAGED}")
            raise AssertionError
        seconds = self.mono.seconds
        if seconds < SHORTEST:
            self._refuse(f"only {seconds:.3f} s of the sound can be decoded")
        if self.missing > _MUCH_LOST * seconds:
            self._refuse(f"{self.missing:.1f} s of {seconds:.1f} s are missing: {_DAMAGED}")
        return Decoded(*self.mono.finish(), tuple(self._notes(ended, seconds)))

    def _notes(self, ended: dict[str, Any], seconds: float) -> Iterator[str]:
        claimed = ended.get("claimed")
        if claimed and seconds < min(claimed - _SHORT_BY, claimed * _SHORT_OF):
            yield f"The file is cut short: it says {claimed:.1f} s, it holds {seconds:.1f} s."
        if self.missing:
            yield f"{self.missing:.2f} s of sound are missing inside the file; silence stands in their place."
        if ended["faults"]:
            yield f"{ended['faults']} pieces of the file could not be decoded and were left out."
        if ended["tracks"] > 1:
            yield f"The file has {ended['tracks']} sound tracks; the one that says most was read."
        if not self.kind.says_delay:
            yield (
                f"Bare {self.kind.words} does not say by how much its coding delays: all times may be late "
                "by the same few hundredths of a second."
            )

    def _refuse(self, reason: str) -> None:
        raise Unreadable(reason, self.name, ACCEPTED)
