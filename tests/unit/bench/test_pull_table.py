"""A short table of pulls, however a spreadsheet writes it."""

import pytest

from spoolwright.bench import pull_table
from spoolwright.bench.unreadable import Unreadable

KG = 9.80665


@pytest.mark.parametrize(
    "text",
    [
        "turns,start-up [kg],running [kg]\n1,2.2,2.0\n1.5,3.3,3.0\n",
        "Turns of the star;Start-up (kg);Running (kg)\n1;2,2;2,0\n1 1/2;3,3;3,0\n",
        "turns\tstart-up\trunning\n1\t2.2 kg\t2.0 kg\n1.5\t3.3 kg\t3.0 kg\n",
        "\ufeffrunning, kg;turns;start-up, kg\n2.0;1;2.2\n3.0;1.5;3.3\n\n",
    ],
)
def test_it_is_read_as_it_was_written(text: str) -> None:
    first, second = pull_table.read(text.encode())
    assert (first.at, second.at) == (1.0, 1.5)
    assert first.running == pytest.approx(2.0 * KG)
    assert second.start_up == pytest.approx(3.3 * KG)
    assert second.step == pytest.approx(0.1 * KG)


def test_speeds_times_and_judder_have_their_units() -> None:
    [pull] = pull_table.read(b"speed [m/s],running [N],judder [%]\n0.3,20.0,12\n", along="speed")
    assert (pull.at, pull.running, pull.judder) == (0.3, 20.0, pytest.approx(0.12))
    [pull] = pull_table.read(b"time,running [N]\n2 min,20.0\n", along="time")
    assert pull.at == 120.0


@pytest.mark.parametrize(
    ("text", "words"),
    [
        (b"turns,running [kg]\n", "no rows"),
        (b"a,b\n1,2\n", "no column"),
        (b"turns,running\n1,2\n", "line 2"),
        (b"turns,running [kg]\n1,two\n", "line 2"),
        (b"turns,running [kg]\n1,\n", "missing"),
        (b"turns,running [kg]\n" + b"1,2\n" * 61, "61 rows"),
        (b"turns,running [kg]\n" + b" " * 300_000, "too long"),
    ],
)
def test_what_cannot_be_read_is_refused_with_its_place(text: bytes, words: str) -> None:
    with pytest.raises(Unreadable, match=words):
        pull_table.read(text, name="pulls.csv")
