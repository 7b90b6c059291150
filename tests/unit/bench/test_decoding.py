"""Every kind of file gives its ticks back in time; what is damaged costs a sentence and never the program."""

import os
import sys
import time
import tracemalloc
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from spoolwright.bench import decoder, decoding, sound_kinds
from spoolwright.bench.decoding import decode
from spoolwright.bench.mono import LONGEST
from spoolwright.bench.unreadable import Unreadable
from tests.encoded import CLICK, RATE, clicks, encode

SOUND = clicks(0.5, (0.3,))
ROOM = 32 * 2**20
"""Bytes that this process may take beside the samples it keeps; the decoder beside it has its own limit."""


@dataclass
class Swelling:
    """The most memory that was held at once."""

    most: int = 0


@contextmanager
def swelling() -> Iterator[Swelling]:
    seen = Swelling()
    tracemalloc.start()
    try:
        yield seen
        _, seen.most = tracemalloc.get_traced_memory()
    finally:
        tracemalloc.stop()


@pytest.fixture
def laid(tmp_path: Path) -> Any:
    def lay(data: bytes) -> tuple[Path, sound_kinds.SoundKind]:
        path = tmp_path / "spin"
        path.write_bytes(data)
        return path, sound_kinds.find(data[: sound_kinds.START])

    return lay


@pytest.fixture
def beside(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> Any:
    """Another program in the decoder's place, to see what its faults do here."""

    def stand_in(code: str) -> None:
        (tmp_path / "other.py").write_text(code)
        monkeypatch.setattr(decoder, "__file__", str(tmp_path / "other.py"))

    return stand_in


def test_what_is_cut_short_is_read_as_far_as_it_goes(laid: Any) -> None:
    data = encode("webm", clicks(5.0, (1.0, 2.0)))
    found = decode(*laid(data[: len(data) // 2]), name="spin.webm")
    assert 1.5 < len(found.samples) / found.rate < 3.5
    assert "cut short: it says 5.0 s" in found.notes[0]
    with pytest.raises(
        Unreadable, match=r"(?i)only 0\.\d+ s of the sound|nothing in the file can be decoded"
    ):
        decode(*laid(data[:2500]))


def test_an_m4a_without_its_end_cannot_be_opened(laid: Any) -> None:
    data = encode("m4a", SOUND)
    with pytest.raises(Unreadable, match=r"x\.m4a: the file cannot be opened as M4A.*cut short"):
        decode(*laid(data[: len(data) // 2]), name="x.m4a")


def test_sound_that_is_lost_inside_leaves_what_follows_in_its_place(laid: Any) -> None:
    data = bytearray(encode("ogg", clicks(10.0, (1.0, 9.0)), RATE))
    data[len(data) // 2 : len(data) // 2 + 600] = bytes(600)
    found = decode(*laid(bytes(data)))
    last = int(np.argmax(np.abs(found.samples[8 * RATE :]))) + 8 * RATE
    assert last == pytest.approx(9.0 * RATE, abs=len(CLICK))


def test_a_film_without_sound_is_said_to_be_one(laid: Any) -> None:
    with pytest.raises(Unreadable, match="film without sound"):
        decode(*laid(encode("mp4", SOUND, sound_track=False)))


def test_sound_that_lasts_too_long_is_given_up_at_the_limit(laid: Any) -> None:
    bomb = encode("flac", np.zeros(620 * 8_000), 8_000)
    assert len(bomb) < 200_000
    with swelling() as seen, pytest.raises(Unreadable, match="lasts longer than 10 minutes"):
        decode(*laid(bomb))
    assert seen.most < 4 * 8_000 * LONGEST + ROOM


def test_ten_minutes_in_a_small_file_take_little_more_memory_than_the_samples_kept(laid: Any) -> None:
    small = laid(encode("flac", np.zeros(590 * 8_000), 8_000))
    with swelling() as seen:
        found = decode(*small)
    assert found.samples.nbytes == 4 * 590 * 8_000
    assert seen.most < found.samples.nbytes + ROOM


def test_bare_aac_says_that_its_times_are_late(laid: Any) -> None:
    assert "may be late by the same few hundredths" in decode(*laid(encode("aac", SOUND))).notes[-1]


@pytest.mark.parametrize(
    ("code", "words"),
    [
        ("import os, signal; os.kill(os.getpid(), signal.SIGSEGV)", "decoder gave up"),
        ("raise MemoryError", "decoder gave up"),
        ("print('not JSON')", "decoder gave up"),
        ("print('[1]')", "decoder gave up"),
        ("print('{\"bytes\": 99999999999}')", "decoder gave up"),
        ("print('{\"bytes\": 100}')", "decoder gave up"),
        ("print('x' * 10**7)", "decoder gave up"),
        ("", "decoder gave up"),
    ],
    ids=["crash", "memory", "words", "list", "huge", "too little", "no end of line", "nothing"],
)
@pytest.mark.skipif(sys.platform == "win32", reason="signals of another kind")
def test_whatever_becomes_of_the_decoder_is_a_refusal(laid: Any, beside: Any, code: str, words: str) -> None:
    beside(code)
    with pytest.raises(Unreadable, match=words) as refused:
        decode(*laid(encode("wav", SOUND)), name="spin.wav")
    assert refused.value.where == "spin.wav"


def test_a_decoder_that_hangs_is_ended(laid: Any, beside: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    beside("import os, time; print('{\"bytes\": 9}', flush=True); time.sleep(60)")
    monkeypatch.setattr(decoding, "PATIENCE", 0.5)
    began = time.monotonic()
    with pytest.raises(Unreadable, match="it took too much time"):
        decode(*laid(encode("wav", SOUND)))
    assert time.monotonic() - began < 20.0


@pytest.mark.parametrize(
    ("head", "words"),
    [
        ('{"rate": 4000, "channels": 1, "form": "s16", "at": 0, "bytes": 4}', "4000 samples a second"),
        ('{"rate": 768000, "channels": 1, "form": "s16", "at": 0, "bytes": 4}', "768000 samples a second"),
        ('{"rate": 8000, "channels": 9, "form": "s16", "at": 0, "bytes": 18}', "9 channels"),
        ('{"rate": 8000, "channels": 0, "form": "s16", "at": 0, "bytes": 4}', "0 channels"),
    ],
)
def test_limits_hold_for_what_a_file_only_shows_when_decoded(
    laid: Any, beside: Any, head: str, words: str
) -> None:
    beside(f"import sys; sys.stdout.buffer.write({head.encode()!r} + b'\\n' + bytes(18))")
    with pytest.raises(Unreadable, match=words):
        decode(*laid(encode("wav", SOUND)))


def test_no_decoder_stays_behind(laid: Any) -> None:
    before = decoders()
    decode(*laid(encode("wav", SOUND)))
    assert decoders() <= before


def decoders() -> set[str]:
    """Processes of this one that decode, as far as the system shows them."""
    found = set()
    for process in Path("/proc").glob("[0-9]*"):
        try:
            words, state = (process / "cmdline").read_text(), (process / "stat").read_text()
        except OSError:
            continue  # it ended meanwhile
        if "decoder" in words and state.rsplit(")", 1)[1].split()[1] == str(os.getpid()):
            found.add(process.name)
    return found
