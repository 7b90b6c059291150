"""What is used of a recording, and what is kept of the rest to be drawn."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench import free_part
from spoolwright.bench.mending import Mended
from spoolwright.bench.unreadable import Unreadable


def counted(times: np.ndarray) -> Mended:
    return Mended(times, np.arange(len(times)), 0, 0, times)


def test_hand_coast_and_thumb_are_parted() -> None:
    hand = np.cumsum(0.3 * 0.85 ** np.arange(12))
    coast = hand[-1] + np.cumsum(0.045 * 1.006 ** np.arange(70))
    thumb = coast[-1] + np.cumsum(coast[-1] - coast[-2] + 0.03 * np.arange(1, 8))
    whole = counted(np.concatenate((hand, coast, thumb)))
    part = free_part.find(whole, 1)
    assert part.touched
    assert 11 <= part.first <= 15
    assert abs(len(part.counted.times) - 82) <= 3
    off = free_part.cut_off(whole, part, float(part.counted.times[-1]), 1)
    assert len(off.before) == part.first
    assert len(off.after) >= 5
    assert off.touched == pytest.approx(float(coast[-1] - whole.times[part.first]), abs=0.3)


def test_a_recording_that_ends_while_the_spool_is_fast_loses_three_ticks() -> None:
    whole = counted(np.cumsum(0.045 * 1.006 ** np.arange(70)))
    assert len(free_part.find(whole, 1).counted.times) == 67
    slow = counted(20 - np.sqrt(400 - 4 * np.pi * np.arange(0, 159) / 5))
    assert free_part.find(slow, 1).counted is slow


def test_speeds_that_no_spool_has_are_refused() -> None:
    with pytest.raises(Unreadable, match="rad/s at the start"):
        free_part.find(counted(0.001 * np.arange(40.0)), 1)
    assert free_part.find(counted(0.001 * np.arange(40.0)), 60).first == 0
