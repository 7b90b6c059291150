"""A gauge at the other end of a pseudo-terminal: sends, is asked, is unplugged, is not there, is silent."""

from __future__ import annotations

import threading
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

from spoolwright.bench.gauge_lines import GaugeLog
from spoolwright.bench.gauge_protocol import GaugeProtocol
from spoolwright.shop.errands import gauge_port
from spoolwright.shop.errands.gauge_port import NoGauge
from tests.fake_gauge import FakeGauge, plugged_in

KG = 9.80665
PLAIN = GaugeProtocol(unit="kg")


@pytest.fixture
def gauge() -> Iterator[FakeGauge]:
    with plugged_in() as fake:
        yield fake


def until(log: GaugeLog, many: int) -> object:
    ends = time.monotonic() + 10
    return lambda: len(log.pulls) < many and time.monotonic() < ends


def test_what_the_gauge_sends_is_in_the_log(gauge: FakeGauge) -> None:
    log, heard = GaugeLog(PLAIN), []
    with gauge_port.open_port(gauge.name, PLAIN) as port:
        gauge.sends(b"0.00\n1.50\nERR\n2.35\n")
        ended = gauge_port.listen(port, log, until(log, 3), heard.extend)
    assert ended == ""
    assert log.pulls == pytest.approx([0, 1.5 * KG, 2.35 * KG])
    assert heard == log.pulls
    assert log.unread == 1


def test_a_gauge_that_waits_to_be_asked_is_asked(gauge: FakeGauge) -> None:
    say = GaugeProtocol(unit="N", request="D\r", every=0.02)
    log = GaugeLog(say)

    def answers() -> None:
        for _ in range(3):
            assert gauge.hears().startswith(b"D\r")
            gauge.sends(b"23.1\n")

    far = threading.Thread(target=answers, daemon=True)
    with gauge_port.open_port(gauge.name, say) as port:
        far.start()
        gauge_port.listen(port, log, until(log, 3))
    far.join(5)
    assert log.pulls == pytest.approx([23.1] * 3)


def test_unplugged_in_the_middle_of_a_pull_it_keeps_what_came(gauge: FakeGauge) -> None:
    log = GaugeLog(PLAIN)
    with gauge_port.open_port(gauge.name, PLAIN) as port:
        gauge.sends(b"1.00\n2.00\n2.3")
        pull = threading.Timer(0.3, gauge.is_unplugged)
        pull.start()
        ended = gauge_port.listen(port, log, until(log, 99))
        pull.join()
    assert ended == gauge_port.UNPLUGGED
    assert log.pulls == pytest.approx([KG, 2 * KG])


def test_a_full_log_stops_by_itself(gauge: FakeGauge, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("spoolwright.bench.gauge_lines.MOST", 2)
    log = GaugeLog(PLAIN)
    with gauge_port.open_port(gauge.name, PLAIN) as port:
        gauge.sends(b"1.00\n2.00\n3.00\n")
        assert gauge_port.listen(port, log, until(log, 99)) == gauge_port.FULL
    assert len(log.pulls) == 2


def test_a_port_that_is_not_there_says_which_are() -> None:
    with pytest.raises(
        NoGauge, match=r"There is no port /dev/ttyNONE\. (Ports that are there|This computer)"
    ):
        gauge_port.open_port("/dev/ttyNONE", PLAIN)


def test_what_is_no_serial_port_is_said(tmp_path: Path) -> None:
    plain = tmp_path / "file"
    plain.write_text("no gauge")
    with pytest.raises(NoGauge, match="cannot be opened as a serial port"):
        gauge_port.open_port(str(plain), PLAIN)


def test_a_port_that_another_program_holds_is_said(gauge: FakeGauge) -> None:
    with (
        gauge_port.open_port(gauge.name, PLAIN),
        pytest.raises(NoGauge, match="held by another program"),
    ):
        gauge_port.open_port(gauge.name, PLAIN)


def test_a_port_that_is_forbidden_names_the_group() -> None:
    assert "dialout" in gauge_port._why_shut("/dev/ttyUSB0", PermissionError(13, "no"))


def test_silence_says_what_to_look_at() -> None:
    log = GaugeLog(PLAIN)
    assert gauge_port.silence(log, 1.0) == ""
    assert "Is the gauge on? Does it send by itself" in gauge_port.silence(log, 6.0)
    log.take(b"\x80\x90" * 30, 0.0)
    assert "is the speed right" in gauge_port.silence(log, 6.0)
    log.take(b"\n1.00\n", 0.1)
    assert gauge_port.silence(log, 6.0) == ""
