"""Drawn pictures are real PNG files, and what is broken looks different from what is whole."""

from __future__ import annotations

import struct
import zlib

import numpy as np
import pytest

from spoolwright.demo.pictures import SIZE, cog, pawl, png
from spoolwright.shop.acts.attach_file import media_type


def pixels(data: bytes) -> np.ndarray:
    """The picture back from its file, chunk by chunk, with every checksum looked at."""
    at, body = 8, b""
    while at < len(data):
        (size,) = struct.unpack(">I", data[at : at + 4])
        kind, content = data[at + 4 : at + 8], data[at + 8 : at + 8 + size]
        assert struct.unpack(">I", data[at + 8 + size : at + 12 + size])[0] == zlib.crc32(kind + content)
        if kind == b"IHDR":
            width, height = struct.unpack(">II", content[:8])
        body += content if kind == b"IDAT" else b""
        at += 12 + size
    rows = np.frombuffer(zlib.decompress(body), dtype=np.uint8).reshape(height, width + 1)
    return rows[:, 1:]


def test_what_goes_in_comes_out() -> None:
    grey = np.arange(12, dtype=np.uint8).reshape(3, 4)
    assert np.array_equal(pixels(png(grey)), grey)


@pytest.mark.parametrize("data", [cog(), cog(24, 0.7), pawl(True), pawl(False)])
def test_each_is_a_picture_that_the_shop_knows(data: bytes) -> None:
    assert media_type(data) == "image/png"
    assert pixels(data).shape == (SIZE, SIZE)


def test_a_split_is_seen() -> None:
    whole, split = pixels(cog(24)), pixels(cog(24, 0.7))
    share = float(np.mean(whole != split))
    assert 0 < share < 0.05


def test_a_worn_tip_is_seen() -> None:
    assert not np.array_equal(pixels(pawl(True)), pixels(pawl(False)))
