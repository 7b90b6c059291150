"""A WAV read where it lies; all its sample formats are tried in test_recording."""

import io
import wave
from mmap import ACCESS_READ, mmap
from pathlib import Path

import numpy as np
import pytest

from spoolwright.bench import wav_file
from spoolwright.bench.unreadable import Unreadable


def wav(frames: bytes, channels: int = 1) -> bytes:
    out = io.BytesIO()
    with wave.open(out, "wb") as file:
        file.setparams((channels, 2, 8_000, 0, "NONE", ""))
        file.writeframes(frames)
    return out.getvalue()


def test_a_file_on_the_disk_is_read_as_its_bytes_are(tmp_path: Path) -> None:
    data = wav((np.arange(16_000) % 1000).astype("<i2").tobytes(), channels=2)
    (tmp_path / "x.wav").write_bytes(data)
    with (tmp_path / "x.wav").open("rb") as file:
        mapped = mmap(file.fileno(), 0, access=ACCESS_READ)
    there, rate = wav_file.decode(mapped)
    assert rate == 8_000
    np.testing.assert_array_equal(there, wav_file.decode(data)[0])


def test_a_description_of_four_gigabytes_is_not_copied() -> None:
    data = bytearray(wav(bytes(16_000)))
    data[16:20] = b"\xff\xff\xff\xff"
    with pytest.raises(Unreadable, match="ends before the sound begins"):
        wav_file.decode(bytes(data))


def test_chunks_without_end_are_not_followed_for_ever() -> None:
    head = wav(bytes(16_000))[:12]
    with pytest.raises(Unreadable, match="ends before the sound begins"):
        wav_file.decode(head + b"junk\x00\x00\x00\x00" * 200_000)
