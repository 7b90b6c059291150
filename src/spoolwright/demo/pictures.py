"""Pictures drawn for the demonstration, in place of photographs: plain PNG files made of sums."""

from __future__ import annotations

import struct
import zlib

import numpy as np
from numpy.typing import NDArray

SIZE = 360
_PAPER, _METAL, _SHADE = 236, 150, 96


def cog(teeth: int = 24, split_at: float | None = None) -> bytes:
    """A small cog on the mat, as seen from above; `split_at` [rad] is where it is cracked through."""
    rise, angle = _polar()
    tip = 0.80 + 0.07 * np.clip(3.0 * np.cos(teeth * angle), -1.0, 1.0)
    body = (rise < tip) & (rise > 0.22)
    grey = np.where(body, _METAL + 24.0 * np.cos(angle - 2.2), float(_PAPER))
    grey = np.where(body & (np.abs(rise - 0.42) < 0.012), _SHADE, grey)
    if split_at is not None:
        width = 0.012 + 0.01 * np.sin(23.0 * rise)
        off = np.abs(np.angle(np.exp(1j * (angle - split_at - 0.05 * np.sin(9.0 * rise)))))
        grey = np.where((rise > 0.2) & (rise < 0.9) & (off * rise < width), _PAPER - 190.0, grey)
    return png(grey.astype(np.uint8))


def pawl(worn: bool) -> bytes:
    """A level-wind pawl from the side: a round body and a tip, hooked where it is worn."""
    y, x = np.mgrid[0:SIZE, 0:SIZE] / SIZE
    body = (np.abs(x - 0.5) < 0.14) & (y > 0.42) & (y < 0.9)
    middle = 0.5 - (0.10 * np.clip((0.42 - y) / 0.22, 0.0, 1.0) ** 2 if worn else 0.0)
    tip = (np.abs(x - middle) < 0.030 + 0.10 * (y - 0.16)) & (y > (0.24 if worn else 0.16)) & (y <= 0.42)
    grey = np.where(body | tip, _METAL + 60.0 * (x - 0.5), float(_PAPER))
    return png(grey.astype(np.uint8))


def _polar() -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    y, x = (np.mgrid[0:SIZE, 0:SIZE] - SIZE / 2) / (SIZE / 2)
    return np.hypot(x, y), np.arctan2(y, x)


def png(grey: NDArray[np.uint8]) -> bytes:
    """An 8-bit grey picture as a PNG file."""
    height, width = grey.shape
    rows = b"".join(b"\x00" + row.tobytes() for row in grey)
    head = struct.pack(">IIBBBBB", width, height, 8, 0, 0, 0, 0)
    chunks = ((b"IHDR", head), (b"IDAT", zlib.compress(rows, 9)), (b"IEND", b""))
    return b"\x89PNG\r\n\x1a\n" + b"".join(_chunk(kind, data) for kind, data in chunks)


def _chunk(kind: bytes, data: bytes) -> bytes:
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))
