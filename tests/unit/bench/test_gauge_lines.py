"""Lines of a gauge to pulls: where the number stands, garbage counted, times from the bytes, bounds held."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spoolwright.bench import gauge_lines, pull_trace
from spoolwright.bench.gauge_lines import GaugeLog, pull_of
from spoolwright.bench.gauge_protocol import GaugeProtocol
from spoolwright.bench.unreadable import Unreadable

KG = 9.80665
PLAIN = GaugeProtocol(unit="kg")


@pytest.mark.parametrize(
    ("line", "say", "newtons"),
    [
        ("2.35 kg", GaugeProtocol(), 2.35 * KG),
        ("2.35", PLAIN, 2.35 * KG),
        ("-0.02 kg", GaugeProtocol(), -0.02 * KG),
        ("+   23.1 N", GaugeProtocol(), 23.1),
        ("A,7,+  2.350kg", GaugeProtocol(separator="comma", field=3), 2.35 * KG),
        ("7;23,1;N", GaugeProtocol(separator="semicolon", field=2, unit_field=3, decimal="comma"), 23.1),
        ("W 5.2 LB stable", GaugeProtocol(field=2), 5.2 * 4.4482216152605),
        ("time:12:2.35", GaugeProtocol(separator="colon", field=3, unit="kg"), 2.35 * KG),
        (".5", PLAIN, 0.5 * KG),
    ],
)
def test_the_number_is_found_where_it_is_said_to_stand(line: str, say: GaugeProtocol, newtons: float) -> None:
    assert pull_of(line, say) == pytest.approx(newtons)


@pytest.mark.parametrize(
    ("line", "say", "words"),
    [
        ("2.35", GaugeProtocol(), "“2.35”: the gauge names no unit"),
        ("OL kg", PLAIN, "it holds no number where it should"),
        ("1.2.3", PLAIN, "it holds no number where it should"),
        ("A,7", GaugeProtocol(separator="comma", field=3), "it has 2 parts"),
        ("2.35 mm", PLAIN, "“mm” is no unit of a pull"),
        ("99999 kg", PLAIN, "no line holds such a pull"),
        ("2\x01", PLAIN, "“2·”: it holds no number"),
    ],
)
def test_what_is_no_pull_says_why(line: str, say: GaugeProtocol, words: str) -> None:
    with pytest.raises(Unreadable) as refused:
        pull_of(line, say)
    assert words in refused.value.words


def test_bytes_come_as_they_like_and_times_are_those_of_the_line() -> None:
    """At 9600 baud a byte takes 10/9600 s: two lines that arrive together ended five bytes apart."""
    log = GaugeLog(PLAIN)
    assert log.take(b"1.0", 10.00) == []
    assert log.take(b"0\n2.00\n", 10.01) == pytest.approx([KG, 2 * KG])
    assert log.times[1] - log.times[0] == pytest.approx(5 * 10 / 9600)
    assert log.times[1] == pytest.approx(10.01)


def test_garbage_between_is_counted_and_what_is_good_is_kept() -> None:
    log = GaugeLog(PLAIN)
    log.take(b"1.00\nERR 7\n\n2.00\n\xff\xfe\n3.00\n", 1.0)
    assert log.pulls == pytest.approx([KG, 2 * KG, 3 * KG])
    assert log.unread == 2
    assert "ERR 7" in log.why_unread
    assert log.complaint() == ""


def test_times_never_run_backwards() -> None:
    log = GaugeLog(GaugeProtocol(unit="kg", baud=1200))
    log.take(b"1.00\n", 1.0)
    log.take(b"2.00\n" * 5, 1.001)
    assert log.times == sorted(log.times)


@pytest.mark.parametrize(
    ("came", "say", "words"),
    [
        (b"\x8f\xf0\x9c\x00" * 20, PLAIN, "What comes at 9600 baud is no text: is the speed right"),
        (b"READY\n" * 12, PLAIN, "None of 12 lines holds a pull. “READY”"),
        (b"2.35\n", GaugeProtocol(), "the gauge names no unit"),
        (b"2.35\r" * 60, PLAIN, "letters came and no end of a line (lf): is the terminator right?"),
    ],
)
def test_when_nothing_can_be_read_it_says_what_to_look_at(
    came: bytes, say: GaugeProtocol, words: str
) -> None:
    log = GaugeLog(say)
    for k in range(0, len(came), 7):
        log.take(came[k : k + 7], k / 100)
    assert words in log.complaint()


def test_a_log_is_bounded(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(gauge_lines, "MOST", 5)
    log = GaugeLog(PLAIN)
    log.take(b"1.0\n" * 9, 1.0)
    assert len(log.pulls) == len(log.times) == 5
    assert log.is_full
    log.take(b"x" * 10_000, 2.0)
    assert len(log._waiting) <= gauge_lines.LONGEST_LINE


def test_its_file_is_read_as_a_pull_trace() -> None:
    log = GaugeLog(PLAIN)
    for k in range(60):
        log.take(b"%.2f\n" % min(k / 10, 2.5), k / 10)
    file = gauge_lines.CSV_HEAD + "".join(log.csv_rows())
    trace = pull_trace.read(file.encode(), name="pull.csv")
    assert trace.found.force_unit == "N"
    assert trace.force[-1] == pytest.approx(2.5 * KG, abs=1e-3)
    assert trace.time[-1] == pytest.approx(5.9, abs=1e-3)
    assert file.endswith("".join(log.csv_rows(58)))
    assert len(list(log.csv_rows(58))) == 2


@given(st.lists(st.binary(max_size=60), max_size=12))
def test_whatever_comes_it_goes_on(pieces: list[bytes]) -> None:
    log = GaugeLog(PLAIN)
    for k, piece in enumerate(pieces):
        log.take(piece, k / 10)
    assert len(log.times) == len(log.pulls)
    assert isinstance(log.complaint(), str)
