"""Tick times out of a file."""

import numpy as np
import pytest

from spoolwright.bench.tick_file import read_csv
from spoolwright.bench.unreadable import NeedsAnswer, Unreadable
from spoolwright.demo.signals import SPIN_STYLES, PullShape, pull_trace, spin_recording

TICKS = np.cumsum(0.2 + 0.003 * np.arange(20))


def rows(scale: float = 1.0, places: int = 6) -> str:
    return "".join(f"{t * scale:.{places}f}\n" for t in TICKS)


@pytest.mark.parametrize("style", SPIN_STYLES)
def test_every_style_of_file_gives_the_same_ticks(style: str) -> None:
    signal = spin_recording(seed=3)
    np.testing.assert_allclose(read_csv(signal.to_csv(style)), signal.ticks, atol=1e-6)


@pytest.mark.parametrize(("scale", "places"), [(1.0, 6), (1e3, 3), (1e6, 0)])
def test_without_a_unit_the_speed_tells_it(scale: float, places: int) -> None:
    np.testing.assert_allclose(read_csv(rows(scale, places).encode()), TICKS, atol=1e-5)


def test_the_long_last_turns_of_a_slow_spool_do_not_make_its_seconds_milliseconds() -> None:
    slow = np.cumsum(6.0 * 1.015 ** np.arange(50))
    assert np.median(np.diff(slow)) > 8.0
    np.testing.assert_allclose(read_csv("\n".join(f"{t:.4f}" for t in slow).encode()), slow, atol=1e-3)


@pytest.mark.parametrize("header", ["tick_time_ms", "Zeit [ms]", "ms", "t (ms)"])
def test_the_header_goes_before_the_speed(header: str) -> None:
    np.testing.assert_allclose(read_csv(f"{header}\n{rows(1e3)}".encode()), TICKS, atol=1e-6)


def test_an_answer_goes_before_the_header() -> None:
    np.testing.assert_allclose(read_csv(f"t (ms)\n{rows()}".encode(), time_unit="s"), TICKS, atol=1e-6)
    with pytest.raises(NeedsAnswer, match="no unit of time"):
        read_csv(rows().encode(), time_unit="turns")


def test_a_decimal_comma_and_a_column_that_counts() -> None:
    text = "".join(f"{i};{t:.4f}\n".replace(".", ",") for i, t in enumerate(TICKS))
    np.testing.assert_allclose(read_csv(text.encode()), TICKS, atol=1e-4)


def test_a_column_n_that_counts_is_no_force() -> None:
    text = "n,time_s\n" + "".join(f"{i},{t:.6f}\n" for i, t in enumerate(TICKS))
    np.testing.assert_allclose(read_csv(text.encode()), TICKS, atol=1e-6)


def test_the_same_moment_twice_is_one_tick() -> None:
    assert len(read_csv(("0.000000\n" * 3 + rows()).encode())) == len(TICKS) + 1


def test_ticks_beside_another_signal_are_found_by_their_header() -> None:
    text = "tick_s;level\n" + "".join(f"{t:.4f};{(-1) ** i}\n" for i, t in enumerate(TICKS))
    np.testing.assert_allclose(read_csv(text.encode()), TICKS, atol=1e-4)


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (pull_trace(PullShape()).to_csv("plain"), "pull trace"),
        (("t;x\n" + "".join(f"{i / 100:.2f};{i % 5}\n" for i in range(90))).encode(), "a trace, not ticks"),
        (b"tick_s\n0.1\n0.4\n0.3\n0.9\n1.2\n1.5\n1.9\n2.2\n2.6\n", "line 4: the ticks run backwards"),
        (b"tick_s\n0.1\n0.4\n0.8\n", "3 ticks"),
        (b"a;b\n1;3\n2;1\n1;2\n3;1\n1;1\n2;2\n1;1\n2;5\n", "no column in the file rises"),
        (b"5\n5\n5\n5\n5\n5\n5\n5\n5\n", "stand still"),
        (b"tick_s\n0.1\n0.4\nnan\n0.9\n1.2\n1.5\n1.9\n2.2\n", "line 4"),
        (b"the spool ticked nicely\n", "no rows of numbers"),
    ],
)
def test_what_is_no_list_of_ticks_is_refused_in_words(data: bytes, words: str) -> None:
    with pytest.raises(Unreadable, match=words):
        read_csv(data, name="ticks.csv")


def test_two_columns_that_rise_are_asked_about() -> None:
    text = "".join(f"{t:.3f};{2 * t:.3f}\n" for t in TICKS)
    with pytest.raises(NeedsAnswer) as asked:
        read_csv(text.encode())
    assert asked.value.missing == ("time_column",)


def test_of_two_rising_columns_the_one_that_is_asked_for_is_read() -> None:
    rows = "\n".join(f"{k * 0.2:.2f},{k * 0.3:.2f}" for k in range(12))
    data = f"time a,time b\n{rows}\n".encode()
    with pytest.raises(NeedsAnswer) as needed:
        read_csv(data)
    assert needed.value.missing == ("time_column",)
    assert read_csv(data, time_column="2")[1] == pytest.approx(0.3)
    assert read_csv(data, time_column="time a")[1] == pytest.approx(0.2)
    with pytest.raises(Unreadable, match="no column of numbers called"):
        read_csv(data, time_column="time c")
