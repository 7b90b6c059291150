"""A program of its own: decodes one sound file and writes its samples out, so that a fault stays in here.

Damaged or hostile files can crash, hang or swell a decoder. This program runs beside the one that wants the
sound, with limits on its time and memory, and imports nothing of ours. On its way out goes, for each piece, a
line of JSON (rate, channels, form, when it begins, bytes) followed by so many bytes; the last line says how
it ended.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Iterator
from contextlib import suppress
from typing import Any, BinaryIO

PIECE = 1 << 16
"""Moments that are gathered before they are sent."""

CAP_MEMORY, CAP_SECONDS = 1 << 29, 20
"""Bytes and seconds of processor time after which the system ends the decoder; ten minutes take about two."""

MOST_FAULTS = 2_000
"""Packets in a row that may fail before nothing more is expected."""

Piece = tuple[dict[str, Any], bytes]


def limit_self() -> None:
    """Ask the system to hold this process to its limits; where it knows none, the clock has to do.

    Source
    ------
    Python documentation, module resource (opened).
    """
    try:
        import resource
    except ImportError:
        return
    for kind, most in (
        (resource.RLIMIT_AS, CAP_MEMORY),
        (resource.RLIMIT_CPU, CAP_SECONDS),
        (resource.RLIMIT_FSIZE, 0),
        (resource.RLIMIT_CORE, 0),
    ):
        with suppress(ValueError, OSError):
            resource.setrlimit(kind, (most, most))


def pieces(path: str, container: str) -> Iterator[Piece]:
    """The sound of a file, piece by piece, as it is stored; the last piece tells how it ended.

    Parameters
    ----------
    path : str
        Where the file lies [-].
    container : str
        Name of its container for the library [-], such as "ogg": nothing else is tried, so that a file which
        only points to other files opens none of them.

    Returns
    -------
    iterator of (dict, bytes)
        rate [Hz], channels, form, at [s] with their samples; at last ended, why, faults, tracks, claimed [s].

    Notes
    -----
    Packets that cannot be decoded are left out and counted; `at` is the time stamp of a piece, so that the
    reader can see what is missing. The delay of a codec is taken off by the library.

    Source
    ------
    PyAV documentation, containers and frames (opened).

    Examples
    --------
    >>> next(pieces("no such file", "wav"))[0]["ended"]
    'not opened'
    """
    import av

    try:
        opened = av.open(
            path, format=container, options={"protocol_whitelist": "file"}, metadata_errors="ignore"
        )
    except (av.FFmpegError, MemoryError, OSError, ValueError) as fault:
        yield {"ended": "not opened", "why": str(fault)[:200]}, b""
        return
    with opened:
        yield from _of_container(opened)


def _of_container(opened: Any) -> Iterator[Piece]:
    told: dict[str, Any] = {
        "tracks": len(opened.streams.audio),
        "claimed": opened.duration / 1e6 if opened.duration and opened.duration > 0 else None,
        "faults": 0,
        "why": "",
    }
    stream = _track(opened)
    if stream is None:
        yield {**told, "ended": "no track", "film": bool(opened.streams.video)}, b""
        return
    gathered = _Gathered()
    for frame in _frames(opened, stream, told):
        if gathered.full or not gathered.fits(frame):
            yield gathered.sent()
        gathered.add(frame)
    if gathered.moments:
        yield gathered.sent()
    yield {**told, "ended": "read"}, b""


def _track(opened: Any) -> Any:
    """The sound track: of several the one that the library thinks best, among those that it can decode."""
    known = [stream for stream in opened.streams.audio if stream.codec_context is not None]
    best = opened.streams.best("audio") if known else None
    return best if best in known else next(iter(known), None)


def _frames(opened: Any, stream: Any, told: dict[str, Any]) -> Iterator[Any]:
    import av

    in_a_row = 0
    try:
        for packet in opened.demux(stream):
            try:
                yield from packet.decode()
                in_a_row = 0
            except (av.FFmpegError, ValueError) as fault:
                told["faults"] += 1
                told["why"] = str(fault)[:200]
                in_a_row += 1
                if in_a_row > MOST_FAULTS:
                    return
    except (av.FFmpegError, MemoryError, OSError, ValueError) as fault:
        told["faults"] += 1
        told["why"] = str(fault)[:200]


class _Gathered:
    """Frames of one kind that follow each other without a gap, up to about a second of them."""

    def __init__(self) -> None:
        self.kind: tuple[Any, ...] = ()
        self.planes: list[list[bytes]] = []
        self.moments = 0
        self.at: float | None = None

    @property
    def full(self) -> bool:
        return self.moments >= PIECE

    def fits(self, frame: Any) -> bool:
        if not self.moments:
            return True
        if self.kind != _kind(frame):
            return False
        due = None if self.at is None else self.at + self.moments / frame.sample_rate
        return due is None or frame.time is None or abs(frame.time - due) < 0.01

    def add(self, frame: Any) -> None:
        if not self.moments:
            self.kind, self.at = _kind(frame), frame.time
            self.planes = [[] for _ in frame.planes]
        size = frame.samples * frame.format.bytes * (1 if frame.format.is_planar else self.kind[1])
        for parts, plane in zip(self.planes, frame.planes, strict=True):
            parts.append(bytes(memoryview(plane)[:size]))
        self.moments += frame.samples

    def sent(self) -> Piece:
        body = b"".join(b"".join(parts) for parts in self.planes)
        rate, channels, form = self.kind
        head = {"rate": rate, "channels": channels, "form": form, "at": self.at, "bytes": len(body)}
        self.moments = 0
        return head, body


def _kind(frame: Any) -> tuple[Any, ...]:
    return frame.sample_rate, len(frame.layout.channels), frame.format.name


def write(out: BinaryIO, path: str, container: str) -> None:
    """Send all pieces; a reader that has heard enough closes its end, and that is no fault.

    Parameters
    ----------
    out : binary file
        Where they go [-].
    path : str
        Where the file lies [-].
    container : str
        As for `pieces` [-].

    Source
    ------
    Our own rule.

    Examples
    --------
    >>> from io import BytesIO
    >>> out = BytesIO()
    >>> write(out, "no such file", "wav")
    >>> out.getvalue()[:23]
    b'{"ended": "not opened",'
    """
    with suppress(BrokenPipeError):
        for head, body in pieces(path, container):
            out.write(json.dumps(head).encode() + b"\n")
            out.write(body)
        out.flush()


if __name__ == "__main__":
    limit_self()
    write(sys.stdout.buffer, sys.argv[1], sys.argv[2])
