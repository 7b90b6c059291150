"""A process of its own that reads every hostile file with every reader, within a bound of memory, and tells.

Before each file a line says which, after each reader another how it ended and how long it took: so whoever
started this knows which file ended it.
"""

from __future__ import annotations

import json
import sys
import tempfile
import time
from collections.abc import Callable
from io import BytesIO
from typing import Any

from spoolwright.bench import (
    decoder,
    decoding,
    pull_trace,
    run_record,
    sound_kinds,
    swing_file,
    ticks,
)
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.recording import Recording, is_sound, read_wav
from spoolwright.bench.unreadable import Unreadable
from tests import hostile

MEMORY = 3 * 2**30
"""Bytes of address space, libraries and all."""

SECONDS = 120
"""Of processor time for all files together."""


def _sound(data: bytes) -> Recording:
    """As `recording.read`, but the decoder works in this process: a process for each would take minutes."""
    kind = sound_kinds.find(data[: sound_kinds.START], "spin")
    if kind == sound_kinds.WAV:
        return read_wav(data, name="spin")
    found = decoding.gather(_decoded(data, kind.container), kind, name="spin")
    if found is None:
        raise AssertionError("the decoder broke off")
    return Recording(found.samples, found.rate, found.notes)


def _decoded(data: bytes, container: str) -> BytesIO:
    out = BytesIO()
    with tempfile.NamedTemporaryFile() as file:
        file.write(data)
        file.flush()
        decoder.write(out, file.name, container)
    out.seek(0)
    return out


READERS: dict[str, Callable[[bytes], Any]] = {
    "sound": _sound,
    "ticks": lambda data: ticks.mend(ticks.read_csv(data, name="spin")),
    "pull": lambda data: pull_trace.analyse(pull_trace.read(data, name="pull"), Gauge()),
    "run": lambda data: run_record.read(data, name="run", speed=2.0),
    "swing": lambda data: swing_file.read(data, name="swing"),
}


def outcome(read: Callable[[bytes], Any], data: bytes) -> str:
    """ "read", or the words of the refusal; any other exception ends this process and so is seen."""
    try:
        read(data)
    except Unreadable as refused:
        return refused.words
    return "read"


def main() -> None:
    if sys.platform != "win32":
        import resource

        resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
        resource.setrlimit(resource.RLIMIT_CPU, (SECONDS, SECONDS))
    for number, (name, data) in enumerate(hostile.files()):
        _tell({"begins": number, "name": name})
        is_sound(data)
        for reader, read in READERS.items():
            began = time.process_time()
            told = outcome(read, data)
            _tell({"number": number, "reader": reader, "told": told, "took": time.process_time() - began})


def _tell(what: dict[str, Any]) -> None:
    sys.stdout.write(json.dumps(what) + "\n")
    sys.stdout.flush()


if __name__ == "__main__":
    main()
