"""How a gauge talks, as it is told in a small TOML file: the usual, the particular, and nonsense refused."""

import pytest

from spoolwright.bench.gauge_protocol import GaugeProtocol, from_mapping, read_toml
from spoolwright.bench.unreadable import Unreadable


def test_what_is_not_said_is_the_usual() -> None:
    assert read_toml("") == GaugeProtocol()
    assert read_toml('unit = "kg"\nbaud = 4800').baud == 4800


def test_everything_that_is_known_can_be_said() -> None:
    said = read_toml(
        'baud = 19200\nbits = 7\nparity = "even"\nstop = 2\nterminator = "crlf"\n'
        'separator = "comma"\nfield = 3\n'
        'unit = "lb"\nunit_field = 4\ndecimal = "comma"\nrequest = "D\\r"\nevery = 0.5'
    )
    assert said == GaugeProtocol(19200, 7, "even", 2, "crlf", "comma", 3, "lb", 4, "comma", "D\r", 0.5)


def test_a_byte_with_parity_and_two_stops_takes_eleven_bits_of_time() -> None:
    """An asynchronous line: start, 7 or 8 data, parity, stop bits (ANSI/TIA-232 practice, from memory)."""
    assert GaugeProtocol(baud=9600).per_byte == pytest.approx(10 / 9600)
    assert GaugeProtocol(baud=1200, bits=7, parity="odd", stop=2).per_byte == pytest.approx(11 / 1200)


@pytest.mark.parametrize(
    ("said", "words"),
    [
        ("baud = ", "it is no TOML"),
        ("speed = 9600", "“speed” is nothing that is known of a gauge"),
        ("baud = 9601", "gauge.toml, baud: “9601” cannot be. Accepted: 1200, 2400"),
        ('baud = "9600"', "“9600” cannot be"),
        ("bits = true", "“True” cannot be"),
        ('parity = "mark"', "Accepted: none, even, odd"),
        ("field = 0", "Accepted: 1 to 32"),
        ('unit = "fish"', "“fish” is no unit of a pull"),
        ('unit = "mm"', "“mm” is no unit of a pull"),
        ("unit = 3", "“3” is no unit of a pull"),
        ("every = 0", "0.01 to 60, in seconds"),
        ("every = true", "0.01 to 60, in seconds"),
        ('request = "π"', "up to 40 plain letters"),
        ("request = 7", "up to 40 plain letters"),
        ('[line]\nend = "lf"', "“line” is nothing that is known"),
    ],
)
def test_nonsense_is_refused_with_what_is_accepted(said: str, words: str) -> None:
    with pytest.raises(Unreadable) as refused:
        read_toml(said, "gauge.toml")
    assert words in refused.value.words
    assert "Accepted:" in refused.value.words


def test_from_the_command_line_it_is_said_where() -> None:
    with pytest.raises(Unreadable, match=r"--, baud"):
        from_mapping({"baud": 1}, "--")
