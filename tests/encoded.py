"""Sound as phones save it, encoded by the library on the spot: nobody's recording is kept in the tests."""

from __future__ import annotations

import io
from fractions import Fraction
from typing import Any

import av
import numpy as np
from numpy.typing import NDArray

RATE = 48_000
CLICK = np.exp(-np.arange(20) / 8) * np.sin(0.4 * np.arange(20) + 0.5)
"""A click of twenty samples: about 0.4 ms."""

_KINDS = {
    "wav": ("wav", "pcm_s16le", "s16"),
    "flac": ("flac", "flac", "s16"),
    "m4a": ("mp4", "aac", "fltp"),
    "mp3": ("mp3", "mp3", "fltp"),
    "ogg": ("ogg", "libopus", "flt"),
    "webm": ("webm", "libopus", "flt"),
    "mp4": ("mp4", "aac", "fltp"),
    "mov": ("mov", "aac", "fltp"),
    "caf": ("caf", "pcm_s16le", "s16"),
    "aiff": ("aiff", "pcm_s16be", "s16"),
    "aac": ("adts", "aac", "fltp"),
    "mkv": ("matroska", "aac", "fltp"),
    "3gp": ("3gp", "aac", "fltp"),
    "packed wav": ("wav", "adpcm_ms", "s16"),
    "float mov": ("mov", "pcm_f32le", "flt"),
}
KINDS = ("wav", "flac", "m4a", "mp3", "ogg", "webm", "mp4", "mov", "caf", "aiff", "mkv", "3gp")
FILMS = ("mp4", "mov")
_LAYOUTS = {1: "mono", 2: "stereo", 8: "7.1"}


def encode(kind: str, sound: NDArray[Any], rate: int = RATE, *, sound_track: bool = True) -> bytes:
    """One or more channels of sound, shape (channels, n) or (n,), full scale 1; with a picture in a film."""
    channels = np.atleast_2d(sound)
    container, codec, form = _KINDS[kind]
    out = io.BytesIO()
    with av.open(out, "w", format=container) as file:
        film = _begin_film(file) if kind in FILMS else None
        layout = _LAYOUTS[len(channels)]
        track: Any = file.add_stream(codec, rate=rate, layout=layout) if sound_track else None
        if track is not None and not codec.startswith(("pcm", "flac")):
            track.bit_rate = 128_000
        if film is not None:
            _write_film(file, film, channels.shape[1] / rate)
        if track is not None:
            _write_sound(file, track, channels, form, layout)
    return out.getvalue()


def clicks(seconds: float, at: tuple[float, ...], rate: int = RATE, seed: int = 1) -> NDArray[np.float64]:
    """Faint hiss with a click at each of these moments [s]."""
    sound = np.random.default_rng(seed).normal(0, 0.005, int(seconds * rate))
    for moment in at:
        first = round(moment * rate)
        sound[first : first + len(CLICK)] += 0.7 * CLICK
    return sound


def _begin_film(file: Any) -> Any:
    film = file.add_stream("mpeg4", rate=10)
    film.width = film.height = 32
    film.pix_fmt = "yuv420p"
    return film


def _write_film(file: Any, film: Any, seconds: float) -> None:
    for number in range(int(10 * seconds)):
        picture = av.VideoFrame(32, 32, "yuv420p")
        picture.pts = number
        file.mux(film.encode(picture))
    file.mux(film.encode(None))


def _write_sound(file: Any, track: Any, channels: NDArray[Any], form: str, layout: str) -> None:
    for first in range(0, channels.shape[1], 4096):
        part = channels[:, first : first + 4096]
        part = (part * 32767).astype("<i2") if form == "s16" else part.astype("<f4")
        laid = part if form.endswith("p") else part.T.reshape(1, -1)
        frame = av.AudioFrame.from_ndarray(np.ascontiguousarray(laid), format=form, layout=layout)
        frame.sample_rate, frame.pts, frame.time_base = track.rate, first, Fraction(1, track.rate)
        file.mux(track.encode(frame))
    file.mux(track.encode(None))
