"""Five hundred damaged or hostile files, built the same way every time: what phones send, and worse."""

from __future__ import annotations

import io
import struct
import zipfile
import zlib
from collections.abc import Collection, Iterator
from itertools import chain
from typing import NamedTuple

import numpy as np

from spoolwright.demo import signals
from tests.encoded import clicks, encode

COUNT = 500
_SECONDS = 0.8
_RATE = 16_000


_STARTS = (
    b"fLaC",
    b"OggS",
    b"\x1aE\xdf\xa3",
    b"ID3\x04\x00\x00\x7f\x7f\x7f\x7f",
    b"#!AMR\n",
    b"caff\x00\x01\x00\x00",
    b"FORM\xff\xff\xff\xffAIFF",
    b"\x00\x00\x00\x18ftypmp42",
    b"\xff\xfb\x90\x00",
    b"\xff\xf1\x50\x80",
)


class Hostile(NamedTuple):
    """What was done to it, and the bytes."""

    name: str
    data: bytes


def files() -> list[Hostile]:
    """All of them: those that were thought of, then seeded damage to sound ones until there are enough."""
    made = [*_thought_of_sound(), *_thought_of_text()]
    damage = _damaged()
    while len(made) < COUNT:
        made.append(next(damage))
    return made


def named(names: Collection[str]) -> dict[str, bytes]:
    """Those of these names among the ones that were thought of, without the rest being made."""
    found = {
        one.name: one.data for one in chain(_thought_of_sound(), _thought_of_text()) if one.name in names
    }
    assert set(found) == set(names)
    return found


def _sound(kind: str, channels: int = 1, rate: int = 48_000, seconds: float = _SECONDS) -> bytes:
    at = tuple(0.1 + 0.15 * k for k in range(int((seconds - 0.1) / 0.15)))
    return encode(kind, np.tile(clicks(seconds, at, rate), (channels, 1)), rate)


def _wav(
    body: bytes, coding: int = 1, channels: int = 1, rate: int = _RATE, bits: int = 16, size: int = -1
) -> bytes:
    frame = channels * bits // 8
    form = struct.pack("<HHIIHH", coding, channels, rate, rate * frame % 2**32, frame % 2**16, bits)
    said = len(body) if size < 0 else size
    inside = b"WAVEfmt " + struct.pack("<I", 16) + form + b"data" + struct.pack("<I", said) + body
    return b"RIFF" + struct.pack("<I", len(inside) % 2**32) + inside


def _floats(*values: float, count: int = 16_000) -> bytes:
    return np.resize(np.array(values, dtype="<f4"), count).tobytes()


def _zipped(name: str, data: bytes) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as file:
        file.writestr(name, data)
    return out.getvalue()


def _thought_of_sound() -> Iterator[Hostile]:
    quiet = bytes(32_000)
    flac, webm, m4a = _sound("flac"), _sound("webm"), _sound("m4a")
    yield Hostile("nothing", b"")
    yield Hostile("one byte", b"R")
    yield Hostile("zeros", bytes(5_000))
    yield Hostile("zip", _zipped("spin.wav", _wav(quiet)))
    yield Hostile("zip of zeros", _zipped("spin.wav", bytes(10_000_000)))
    yield Hostile("compressed bomb", zlib.compress(bytes(10_000_000)))
    yield Hostile("hours of FLAC", encode("flac", np.zeros(700 * 8_000), 8_000))
    yield Hostile("eight channels", _sound("flac", 8, seconds=0.4))
    yield Hostile("192 kHz", _sound("flac", 1, 192_000, 0.4))
    yield Hostile("eight channels of 192 kHz", _sound("flac", 8, 192_000, 0.4))
    for what, values in {
        "NaN": (np.nan,),
        "half NaN": (0.1, np.nan),
        "endless": (np.inf,),
        "huge": (3e38,),
    }.items():
        yield Hostile(f"WAV of {what}", _wav(_floats(*values), 3, bits=32))
        yield Hostile(f"MOV of {what}", encode("float mov", np.resize(np.array(values), 16_000), _RATE))
    yield Hostile("a level", _wav(np.full(16_000, 9_000, dtype="<i2").tobytes()))
    yield Hostile("one sample", _wav(b"\x01\x02"))
    yield Hostile("no sample", _wav(b""))
    for channels, rate, bits in (
        (0, 16_000, 16),
        (65_535, 16_000, 16),
        (1, 0, 16),
        (1, 2**32 - 1, 16),
        (2, 8_000, 0),
    ):
        yield Hostile(f"WAV of {channels}, {rate}, {bits}", _wav(quiet, 1, channels, rate, bits))
    for size in (2**32 - 1, 2**31, 2**32 - 44, 1):
        yield Hostile(f"WAV that says {size} bytes", _wav(quiet, size=size))
        yield Hostile(f"chunk of {size} bytes", _wav(quiet)[:12] + b"junk" + struct.pack("<I", size) + quiet)
    for size in (2**32 - 1, 2**31, 2**24):
        for box in (b"stsz", b"stts", b"stsc", b"stco", b"trak", b"moov", b"mdat", b"esds"):
            yield Hostile(f"{box.decode()} of {size}", _with_size(m4a, box, size))
    for mark in (b"\x1f\x43\xb6\x75", b"\xa3", b"\x16\x54\xae\x6b"):
        yield Hostile(
            f"element {mark.hex()} without end", webm.replace(mark, mark + b"\x01" + b"\xff" * 7, 1)
        )
    for start in _STARTS:
        noise = np.random.default_rng(len(start)).bytes(3_000)
        yield Hostile(f"{start!r} and noise", start + noise)
        yield Hostile(f"{start!r} and zeros", start + bytes(3_000))
        yield Hostile(f"{start!r} alone", start)
    yield Hostile("a list of addresses", b"#EXTM3U\nhttp://127.0.0.1:1/a.mp3\n")
    yield Hostile("a list of files", b"ffconcat version 1.0\nfile /etc/hostname\n")
    yield Hostile("a FLAC in a FLAC", flac[:40] + flac)


def _with_size(data: bytes, box: bytes, size: int) -> bytes:
    at = data.find(box)
    return data if at < 4 else data[: at - 4] + struct.pack(">I", size) + data[at:]


def _thought_of_text() -> Iterator[Hostile]:
    rows = b"".join(b"%d,%d\n" % (k, k % 7) for k in range(300))
    yield Hostile("UTF-16", ("time [s];pull [N]\n" + "0,1;2,5\n" * 200).encode("utf-16"))
    yield Hostile("UTF-16 cut", "time [s];pull [N]\n0,1;2,5\n".encode("utf-16")[:-1])
    yield Hostile("UTF-32", rows.decode().encode("utf-32"))
    yield Hostile("a line without end", b"1," * 200_000)
    yield Hostile("digits without end", b"9" * 300_000)
    yield Hostile("lines without end", b"1\n" * 2_401_000)
    yield Hostile("blank lines without end", b"\r" * 2_401_000)
    yield Hostile("columns without end", (b"1;" * 1_500 + b"1\n") * 20)
    yield Hostile("ragged", b"".join(b"1," * (k % 90) + b"1\n" for k in range(900)))
    yield Hostile("quotes", b'"' * 3_000 + b"\n" + rows)
    yield Hostile("quotes in each", b'"0.1,"2"\n' * 500)
    yield Hostile("zero bytes", rows[:700] + bytes(50) + rows[700:])
    yield Hostile("exponents", b"time_s,force_n\n" + b"1e999,1e999\n" * 40)
    yield Hostile("tiny steps", b"tick_s\n" + b"".join(b"%.17f\n" % (1 + k * 1e-15) for k in range(100)))
    yield Hostile("standing clock", b"tick_s\n" + b"1.0\n" * 400)
    yield Hostile("many ticks", b"tick_s\n" + b"".join(b"%.2f\n" % (k * 0.01) for k in range(30_000)))
    yield Hostile("a table of formulas", b"=1+1,=cmd|' /C calc'!A0\n" * 60)
    yield Hostile("NaN throughout", b"time_s,force_n\n" + b"nan,nan\n" * 60)
    yield Hostile("clock runs round", b"".join(b"23:59:%02d.5,1\n" % (k % 60) for k in range(300)))
    yield Hostile("other digits", "١٢٣,٤٥٦\n".encode() * 100)


def _damaged() -> Iterator[Hostile]:
    """Sound files and tables with bytes turned, cut out, doubled, cut off or set to their extremes."""
    whole = {
        kind: _sound(kind)
        for kind in ("flac", "m4a", "mp3", "ogg", "webm", "mp4", "mov", "caf", "aiff", "aac")
    }
    spin = signals.spin_recording(signals.SpinShape(initial_speed=40.0, constant=20.0), seed=3)
    whole |= {
        "wav": spin.to_wav()[:60_000],
        "ticks": spin.to_csv(),
        "pull": signals.pull_trace(seed=3).to_csv(),
    }
    seed = 0
    while True:
        for kind, data in whole.items():
            rng = np.random.default_rng(seed)
            how = _WAYS[seed % len(_WAYS)]
            yield Hostile(f"{kind} {how.__name__} {seed}", how(bytearray(data), rng))
            seed += 1


def _turned(data: bytearray, rng: np.random.Generator) -> bytes:
    for at in rng.integers(0, len(data), 25):
        data[at] ^= 1 << int(rng.integers(0, 8))
    return bytes(data)


def _turned_at_the_head(data: bytearray, rng: np.random.Generator) -> bytes:
    for at in rng.integers(4, min(len(data), 700), 12):
        data[at] = int(rng.integers(0, 256))
    return bytes(data)


def _cut_off(data: bytearray, rng: np.random.Generator) -> bytes:
    return bytes(data[: int(rng.integers(0, len(data)))])


def _cut_out(data: bytearray, rng: np.random.Generator) -> bytes:
    first = int(rng.integers(0, len(data)))
    del data[first : first + int(rng.integers(1, 2_000))]
    return bytes(data)


def _doubled(data: bytearray, rng: np.random.Generator) -> bytes:
    first, last = sorted(int(at) for at in rng.integers(0, len(data), 2))
    return bytes(data[:last] + data[first:])


def _extreme(data: bytearray, rng: np.random.Generator) -> bytes:
    for at in rng.integers(4, max(5, min(len(data), 3_000) - 4), 4):
        data[at : at + 4] = [b"\xff" * 4, b"\x7f\xff\xff\xff", bytes(4), b"\x80" + bytes(3)][
            int(rng.integers(0, 4))
        ]
    return bytes(data)


_WAYS = (_turned, _cut_off, _turned_at_the_head, _cut_out, _extreme, _doubled, _turned)
