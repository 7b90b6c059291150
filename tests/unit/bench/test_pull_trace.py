"""A gauge's file to a pull trace: every style that gauges write, and what is done to the samples."""

import numpy as np
import pytest

from spoolwright.bench import pull_trace
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.pull_trace import TraceForm
from spoolwright.bench.unreadable import NeedsAnswer, Unreadable
from spoolwright.demo.signals import PULL_STYLES
from spoolwright.demo.signals import pull_trace as made

EXPECTED = {
    "plain": ("utf-8", "comma", "point", "s", "N"),
    "semicolon": ("cp1252", "semicolon", "comma", "s", "kgf"),
    "one column": ("utf-8-sig", None, "point", "s", "kg"),
    "clock": ("utf-16", "tab", "point", "s", "lbf"),
    "quoted": ("gb18030", "comma", "point", "ms", "N"),
}


@pytest.mark.parametrize("style", PULL_STYLES)
def test_every_style_of_file_gives_the_same_trace(style: str) -> None:
    signal = made(seed=5)
    trace = pull_trace.read(signal.to_csv(style), name="pull.csv")
    encoding, delimiter, decimal, time_unit, force_unit = EXPECTED[style]
    found = trace.found
    assert (found.encoding, found.decimal, found.time_unit, found.force_unit) == (
        encoding,
        decimal,
        time_unit,
        force_unit,
    )
    assert delimiter in (None, found.delimiter)
    assert found.rate == pytest.approx(100.0, rel=0.01)
    np.testing.assert_allclose(trace.force, signal.force, atol=0.01)
    np.testing.assert_allclose(trace.time, signal.time, atol=0.001)


def test_time_begins_at_the_first_sample() -> None:
    rows = "".join(f"{100 + i / 10:.1f};{i}\n" for i in range(30))
    assert pull_trace.read(f"s;N\n{rows}".encode()).time[0] == 0.0


def test_a_gauge_that_shows_a_pull_as_negative_is_turned_round_and_says_so() -> None:
    signal = made(seed=6)
    rows = "".join(f"{t:.3f};{-f:.3f}\n" for t, f in zip(signal.time, signal.force, strict=True))
    trace = pull_trace.read(f"s;N\n{rows}".encode())
    assert trace.force.max() > 20
    found = pull_trace.analyse(trace, Gauge())
    assert any("turned round" in note for note in found.notes)


def test_a_clock_that_only_writes_seconds_asks_for_the_rate() -> None:
    rows = "".join(f"{i // 20};{min(i, 40) / 4}\n" for i in range(200))
    with pytest.raises(NeedsAnswer) as asked:
        pull_trace.read(f"Time [s];Load [N]\n{rows}".encode())
    assert asked.value.missing == ("rate",)
    trace = pull_trace.read(f"Time [s];Load [N]\n{rows}".encode(), form=TraceForm(rate=20.0))
    assert trace.found.rate == pytest.approx(20.0)
    assert trace.time[-1] == pytest.approx(199 / 20)


def test_answers_make_a_bare_file_readable() -> None:
    rows = "".join(f"{i * 10} {min(i, 40) / 4}\n" for i in range(100))
    with pytest.raises(NeedsAnswer) as asked:
        pull_trace.read(rows.encode())
    assert set(asked.value.missing) == {"time_unit", "force_unit"}
    trace = pull_trace.read(rows.encode(), form=TraceForm(time_unit="ms", force_unit="lb"))
    assert trace.found.rate == pytest.approx(100.0)
    assert trace.force.max() == pytest.approx(10 * 4.4482216152605)


def test_a_wrong_unit_of_time_is_noticed_by_the_rate() -> None:
    rows = "".join(f"{i * 10};{i % 7}\n" for i in range(100))
    with pytest.raises(Unreadable, match="is the unit of time right"):
        pull_trace.read(f"x;y\n{rows}".encode(), form=TraceForm(time_unit="min", force_unit="N"))
