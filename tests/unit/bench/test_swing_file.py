"""A phone's record: which column swings, in which unit the moments are, and what is refused."""

import contextlib

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from spoolwright.bench import swing, swing_file
from spoolwright.bench.unreadable import Unreadable


def text(head: str, time: np.ndarray, *signals: np.ndarray) -> bytes:
    rows = "\n".join(";".join(f"{v:.6f}" for v in row) for row in zip(time, *signals, strict=True))
    return f"{head}\n{rows}\n".encode()


T = np.arange(0, 2, 0.01)
STILL, SWINGS = 0.01 * np.cos(T), np.sin(9 * T)


def test_the_axis_that_swings_is_read_and_named() -> None:
    found = swing_file.read(text("t [s];x;y;z", T, STILL, SWINGS, STILL))
    assert found.signal == pytest.approx(SWINGS, abs=1e-6)
    assert "3 “y” swings most" in found.notes[0]


@pytest.mark.parametrize("asked", ["x", "2"])
def test_another_column_can_be_asked_for(asked: str) -> None:
    found = swing_file.read(text("t [s];x;y", T, STILL, SWINGS), column=asked)
    assert found.signal == pytest.approx(STILL, abs=1e-6)
    assert found.notes == ()


@pytest.mark.parametrize(
    ("head", "scale"), [("t [ms];x", 1e3), ("when;x", 1e3), ("when;x", 1e6), ("when;x", 1)]
)
def test_moments_become_seconds(head: str, scale: float) -> None:
    found = swing_file.read(text(head, T * scale, SWINGS))
    assert found.time[-1] == pytest.approx(T[-1])
    assert bool(found.notes) == (head == "when;x" and scale > 1)


def test_a_moment_written_twice_counts_once() -> None:
    doubled = np.repeat(T, 2)
    assert len(swing_file.read(text("t [s];x", doubled, np.repeat(SWINGS, 2))).time) == len(T)


@pytest.mark.parametrize(
    ("data", "said"),
    [
        (text("x;y", SWINGS, STILL), "no column holds moments"),
        (text("t [s]", T), "no second column"),
        (b"nothing of use", "no rows of numbers"),
        (b"\x00\x01\x02", "Accepted"),
    ],
)
def test_what_is_no_record_is_refused(data: bytes, said: str) -> None:
    with pytest.raises(Unreadable, match=said):
        swing_file.read(data, name="swing.csv")


def test_a_column_that_is_not_there_is_refused() -> None:
    with pytest.raises(Unreadable, match="no column “w”"):
        swing_file.read(text("t [s];x;y", T, STILL, SWINGS), column="w")


@given(st.binary(max_size=300) | st.text("0123456789.,;:\t\n-+eE\u00b0naif ", max_size=300).map(str.encode))
@settings(max_examples=60, deadline=None)
def test_whatever_comes_is_a_swing_or_a_refusal(data: bytes) -> None:
    """Hostile bytes, and text that looks like numbers: a refusal in words, nothing else, and at once."""
    with contextlib.suppress(Unreadable):
        record = swing_file.read(data, name="x.csv")
        assert swing.fit(record.time, record.signal).period.value > 0
