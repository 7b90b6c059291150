"""WAV files of every usual kind, written by two independent libraries, and files that are none."""

import io
import struct
import tracemalloc
import wave
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray
from scipy.io import wavfile

from spoolwright.bench import ticks
from spoolwright.bench.recording import is_sound, read, read_wav
from spoolwright.bench.unreadable import Unreadable
from tests.encoded import CLICK, KINDS, RATE, clicks, encode

TONE = 0.5 * np.sin(2 * np.pi * 440 * np.arange(16_000) / 16_000)


def by_wave(samples: NDArray[np.float64], rate: int = 16_000, width: int = 2, channels: int = 1) -> bytes:
    """PCM as the standard library writes it."""
    whole = np.round(samples * (2 ** (8 * width - 1) - 1)).astype(np.int64)
    if width == 1:
        raw = (whole + 128).astype(np.uint8).tobytes()
    elif width == 3:
        raw = (whole.astype("<i4") << 8).view(np.uint8).reshape(-1, 4)[:, 1:].tobytes()
    else:
        raw = whole.astype(f"<i{width}").tobytes()
    out = io.BytesIO()
    with wave.open(out, "wb") as file:
        file.setparams((channels, width, rate, 0, "NONE", ""))
        file.writeframes(raw)
    return out.getvalue()


def by_scipy(samples: NDArray[np.generic], rate: int = 16_000) -> bytes:
    out = io.BytesIO()
    wavfile.write(out, rate, samples)
    return out.getvalue()


@pytest.mark.parametrize(("width", "off"), [(1, 0.01), (2, 1e-4), (3, 1e-6), (4, 1e-6)])
def test_pcm_of_every_width(width: int, off: float) -> None:
    recording = read_wav(by_wave(TONE, width=width))
    assert recording.rate == 16_000
    np.testing.assert_allclose(recording.samples, TONE, atol=off)


@pytest.mark.parametrize("kind", ["<f4", "<f8"])
def test_float_of_both_widths(kind: str) -> None:
    np.testing.assert_allclose(read_wav(by_scipy(TONE.astype(kind))).samples, TONE, atol=1e-6)


def test_channels_are_averaged() -> None:
    left, right = TONE, np.zeros_like(TONE)
    recording = read_wav(by_scipy(np.stack([left, right], axis=1).astype("<f4")))
    np.testing.assert_allclose(recording.samples, TONE / 2, atol=1e-6)


def test_a_constant_level_is_taken_off() -> None:
    assert abs(read_wav(by_wave(TONE / 2 + 0.3)).samples.mean()) < 1e-4


def test_fast_recordings_are_averaged_down_and_keep_their_length() -> None:
    slow = np.sin(2 * np.pi * 100 * np.arange(192_000) / 192_000) * 0.5
    recording = read_wav(by_wave(slow, rate=192_000))
    assert recording.rate == 48_000
    assert recording.seconds == pytest.approx(1.0)
    assert np.abs(recording.samples).max() == pytest.approx(0.5, abs=0.01)


def test_other_chunks_are_passed_over() -> None:
    data = by_wave(TONE)
    extra = b"LIST" + struct.pack("<I", 5) + b"notes\x00"
    assert read_wav(data[:12] + extra + data[12:]).seconds == pytest.approx(1.0)


def test_a_length_that_was_never_filled_in_means_all_that_follows() -> None:
    data = bytearray(by_wave(TONE))
    data[40:44] = b"\xff\xff\xff\xff"
    assert read_wav(bytes(data)).seconds == pytest.approx(1.0)


def test_memory_stays_near_what_is_kept() -> None:
    long = by_scipy(
        np.zeros((48_000 * 60, 2), dtype="<i2") + (np.arange(48_000 * 60) % 99 * 50)[:, None].astype("<i2")
    )
    tracemalloc.start()
    recording = read_wav(long)
    _, most = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert most < recording.samples.nbytes + 60e6


def with_format(
    coding: int, channels: int = 1, rate: int = 16_000, bits: int = 16, body: bytes = b"\0" * 32_000
) -> bytes:
    form = struct.pack(
        "<HHIIHH", coding, channels, rate, rate * channels * bits // 8, channels * bits // 8, bits
    )
    inside = b"WAVEfmt " + struct.pack("<I", 16) + form + b"data" + struct.pack("<I", len(body)) + body
    return b"RIFF" + struct.pack("<I", len(inside)) + inside


NAN = np.full(16_000, np.nan, dtype="<f4")
HALF_NAN = np.where(np.arange(16_000) == 99, np.nan, TONE).astype("<f4")


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (b"", "empty"),
        (b"\xff\xd8\xff\xe0" + b"JFIF" * 100, "photo"),
        (b"time,force\n0,1\n", "no WAV"),
        (b"OggS" + b"x" * 200, "Ogg"),
        (by_wave(TONE)[:30], "cut short"),
        (by_wave(TONE)[:-8_000], "says 1.0 s and holds 0.8 s"),
        (by_wave(TONE[:0]), "length is zero"),
        (by_wave(TONE[:1]), "one sample"),
        (by_wave(TONE[:800]), "0.050 s"),
        (by_wave(np.zeros(16_000)), "silent"),
        (by_wave(np.full(16_000, 0.4)), "constant level of 0.40"),
        (by_scipy(NAN), "NaN"),
        (by_scipy(HALF_NAN), "NaN"),
        (by_scipy(np.full(16_000, 1e30, dtype="<f4")), "endless"),
        (with_format(7, bits=8), "mu-law"),
        (with_format(0x55), "MP3"),
        (with_format(99), "number 99"),
        (with_format(1, bits=12), "12 bits"),
        (with_format(1, channels=0), "0 channels"),
        (with_format(1, rate=4_000), "4000 samples a second"),
        (with_format(1, rate=768_000), "768000 samples a second"),
        (with_format(1, rate=8_000, bits=8, body=b"\x80\x90" * 2_500_000), "10.4 minutes"),
    ],
)
def test_what_cannot_be_heard_is_refused_in_words(data: bytes, words: str) -> None:
    with pytest.raises(Unreadable, match=words) as refused:
        read_wav(data, name="spin.wav")
    assert refused.value.where == "spin.wav"
    assert refused.value.accepted


AT = (0.1, 0.3, 0.7)
TONE_AND_CLICKS = clicks(0.8, AT) + 0.2 * np.sin(2 * np.pi * 1_000 * np.arange(int(0.8 * RATE)) / RATE)


@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_gives_its_clicks_back_in_time_and_as_loud_as_they_were(kind: str) -> None:
    recording = read(encode(kind, np.stack([TONE_AND_CLICKS, TONE_AND_CLICKS])), name=f"spin.{kind}")
    assert recording.rate == RATE
    assert recording.seconds == pytest.approx(0.8, abs=0.03)
    assert recording.notes == ()
    for moment in AT:
        first = round(moment * RATE)
        near = np.abs(recording.samples[first - 200 : first + 200])
        assert abs(int(np.argmax(near)) - 200 - int(np.argmax(np.abs(CLICK)))) < len(CLICK)
    loud = np.sqrt(np.mean(recording.samples[RATE // 3 : RATE // 2] ** 2))
    assert loud == pytest.approx(np.sqrt(np.mean(TONE_AND_CLICKS[RATE // 3 : RATE // 2] ** 2)), rel=0.06)


def test_what_only_one_channel_heard_counts_half() -> None:
    both = np.stack([TONE_AND_CLICKS, np.zeros_like(TONE_AND_CLICKS)])
    recording = read(encode("flac", both), name="spin.flac")
    np.testing.assert_allclose(recording.samples, TONE_AND_CLICKS / 2, atol=1e-3)


def test_eight_channels_at_192_khz_are_one_at_48() -> None:
    sound = np.tile(clicks(0.5, (0.2,), 192_000), (8, 1))
    recording = read(encode("flac", sound, 192_000))
    assert (recording.rate, recording.seconds) == (48_000, pytest.approx(0.5))


def test_ticks_of_a_film_are_found(tmp_path: Path) -> None:
    at = tuple(0.4 + 0.17 * k for k in range(9))
    film = tmp_path / "spin.mov"
    film.write_bytes(encode("mov", clicks(2.0, at)))
    assert is_sound(film)
    np.testing.assert_allclose(ticks.find(read(film, name=film.name)), at, atol=len(CLICK) / RATE)


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (encode("flac", np.zeros(RATE)), "silent"),
        (encode("flac", np.full(RATE, 0.4)), "constant level of 0.40"),
        (encode("flac", np.full(1, 0.4)), "only 0.000 s"),
        (encode("float mov", np.full(RATE, np.nan)), "NaN"),
        (encode("float mov", np.full(RATE, 1e30)), "endless"),
        (b"fLaC" + bytes(2_000), "cannot be opened as FLAC|nothing in the file"),
        (b"PK\x03\x04" + encode("flac", TONE_AND_CLICKS)[4:], "zip archive"),
    ],
    ids=["silence", "a level", "one sample", "no numbers", "endless", "zeros", "a zip renamed"],
)
def test_what_was_coded_and_cannot_be_heard_is_refused_in_words(data: bytes, words: str) -> None:
    with pytest.raises(Unreadable, match=f"(?i){words}") as refused:
        read(data, name="spin.flac")
    assert refused.value.where == "spin.flac"
    assert refused.value.accepted


def test_a_packed_wav_goes_to_the_decoder_and_is_refused_without_it() -> None:
    data = encode("packed wav", TONE_AND_CLICKS)
    assert read(data).seconds == pytest.approx(0.8, abs=0.05)
    with pytest.raises(Unreadable, match="coded as ADPCM"):
        read_wav(data)


def test_a_wav_on_the_disk_is_read_where_it_lies(tmp_path: Path) -> None:
    path = tmp_path / "long.wav"
    path.write_bytes(by_wave(np.tile(TONE, 30), width=2))
    tracemalloc.start()
    recording = read(path)
    _, most = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert recording.seconds == pytest.approx(30.0)
    assert most < recording.samples.nbytes + 40e6


def test_what_is_no_text_is_sound() -> None:
    assert is_sound(by_wave(TONE))
    assert is_sound(b"\xff\xd8\xff\xe0")
    assert not is_sound(b"tick\n0.1\n")
    assert not is_sound("tick\n0,1\n".encode("utf-16"))
    assert not is_sound(b"")
