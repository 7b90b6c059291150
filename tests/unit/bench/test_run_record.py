"""A recorded run: time, line speed and pull."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench import run_record
from spoolwright.bench.unreadable import NeedsAnswer


def file(header: str, row: str, count: int = 30) -> bytes:
    lines = [row.format(t=f"{n / 2:.1f}", n=n) for n in range(count)]
    return "\n".join([header, *lines]).encode()


def test_a_column_of_speed_is_read_in_its_own_unit() -> None:
    record = run_record.read(file("time [s];line speed [km/h];pull [kg]", "{t};14.4;2.{n:02d}"))
    assert record.speed == pytest.approx(4.0)
    assert record.pull[-1] == pytest.approx(2.29 * 9.80665)
    assert record.time[-1] == pytest.approx(14.5)


def test_without_a_column_one_speed_does_or_is_asked_for() -> None:
    data = file("time [s];pull [N]", "{t};{n}")
    record = run_record.read(data, speed=3.0)
    assert record.speed == pytest.approx(3.0)
    assert "One line speed" in record.notes[-1]
    with pytest.raises(NeedsAnswer, match="line speed"):
        run_record.read(data)


def test_a_speed_without_a_unit_is_asked_for() -> None:
    with pytest.raises(NeedsAnswer, match="unit"):
        run_record.read(file("time [s];speed;pull [N]", "{t};4;{n}"))


def test_line_that_is_wound_in_makes_no_heat() -> None:
    rows = "\n".join(f"{n};{4 - n / 4};{20 + n}" for n in range(30))
    record = run_record.read(f"time [s];speed [m/s];pull [N]\n{rows}".encode())
    assert np.min(record.speed) == 0.0
    assert any("wound in" in words for words in record.notes)


def test_two_samples_at_one_moment_leave_the_last() -> None:
    rows = "\n".join(f"{n // 2 if n in (10, 11) else n / 2};4;{n}" for n in range(40))
    record = run_record.read(f"time [s];speed [m/s];pull [N]\n{rows}".encode())
    assert np.all(np.diff(record.time) > 0)
    assert 11.0 in record.pull
    assert 10.0 not in record.pull
