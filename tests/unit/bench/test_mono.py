"""Channels are averaged, quick recordings averaged down, whatever the pieces in which they come."""

import numpy as np
import pytest

from spoolwright.bench.mono import ENOUGH_RATE, Mono, values_of
from spoolwright.bench.unreadable import Unreadable

LEFT = np.linspace(-0.5, 0.5, 1200)


@pytest.mark.parametrize("piece", [1, 7, 400, 1200])
@pytest.mark.parametrize(
    ("rate", "every"), [(8_000, 1), (48_000, 1), (96_000, 2), (192_000, 4), (176_400, 4)]
)
def test_the_pieces_do_not_matter(rate: int, every: int, piece: int) -> None:
    mono = Mono(rate)
    both = np.stack([LEFT, np.zeros(1200)], axis=1)
    for first in range(0, 1200, piece):
        mono.add(both[first : first + piece])
    assert mono.seconds == pytest.approx(1200 / rate)
    samples, kept_rate = mono.finish()
    assert kept_rate == rate / every <= ENOUGH_RATE
    np.testing.assert_allclose(samples, (LEFT / 2).reshape(-1, every).mean(axis=1), atol=1e-7)


def test_silence_stands_where_sound_is_missing() -> None:
    mono = Mono(8_000)
    mono.add(np.ones((80, 1)))
    mono.add_silence(0.02)
    mono.add(np.ones((80, 1)))
    assert mono.finish()[0].tolist() == [1.0] * 80 + [0.0] * 160 + [1.0] * 80


@pytest.mark.parametrize("value", [np.nan, np.inf, 1e9])
def test_what_is_no_number_is_refused(value: float) -> None:
    with pytest.raises(Unreadable, match=r"x\.wav: the recording holds values that are no sound"):
        Mono(8_000, "x.wav").add(np.full((3, 1), value))


@pytest.mark.parametrize(
    ("kind", "form", "raw"),
    [
        ("u1", "u8", [192, 64]),
        ("<i2", "s16", [16384, -16384]),
        ("<i4", "s32", [2**30, -(2**30)]),
        ("<i8", "s64", [2**62, -(2**62)]),
        ("<f4", "flt", [0.5, -0.5]),
        ("<f8", "dbl", [0.5, -0.5]),
    ],
)
def test_every_form_comes_to_the_same_values(kind: str, form: str, raw: list[float]) -> None:
    data = np.array(raw, dtype=kind).tobytes()
    assert values_of(data, form, 2).tolist() == [[0.5, -0.5]]
    assert values_of(data, form, 1).tolist() == [[0.5], [-0.5]]
    assert values_of(data + data, f"{form}p", 2).tolist() == [[0.5, 0.5], [-0.5, -0.5]]
