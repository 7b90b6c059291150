"""`spoolwright gauge` at the other end of a pseudo-terminal: what it shows, what it keeps, how it ends."""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path

import pytest

from spoolwright.bench import pull_trace
from spoolwright.command.__main__ import main
from spoolwright.sheets.cautions import LINE_UNDER_LOAD
from tests.fake_gauge import FakeGauge, plugged_in

KG = 9.80665


@pytest.fixture(autouse=True)
def there(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)


@pytest.fixture
def gauge() -> Iterator[FakeGauge]:
    with plugged_in() as fake:
        yield fake


def told(capsys: pytest.CaptureFixture[str]) -> str:
    out, err = capsys.readouterr()
    return out + err


def sent(count: int = 40) -> bytes:
    return b"".join(b"%.2f kg\n" % min(k / 10, 2.5) for k in range(count))


def listen(gauge: FakeGauge, *words: str) -> int:
    return main(["gauge", "--port", gauge.name, "--seconds", "0.4", *words])


def test_the_pull_is_shown_and_kept_for_the_diary(
    gauge: FakeGauge,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    gauge.speaks_when_opened(monkeypatch, sent())
    assert listen(gauge, "--out", "pull.csv") == 0
    said = told(capsys)
    assert said.startswith(LINE_UNDER_LOAD)
    assert "40 numbers in" in said
    assert "the highest 2.50 kg" in said
    assert "Kept in pull.csv: spoolwright pull reads it" in said
    trace = pull_trace.read(Path("pull.csv").read_bytes(), name="pull.csv")
    assert trace.force.max() == pytest.approx(2.5 * KG, abs=1e-3)
    assert len(trace.time) == 40


def test_only_watched_it_keeps_nothing(
    gauge: FakeGauge,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
    tmp_path: Path,
) -> None:
    gauge.speaks_when_opened(monkeypatch, sent())
    assert listen(gauge, "--watch") == 0
    assert "40 numbers" in told(capsys)
    assert list(tmp_path.iterdir()) == []


def test_it_is_described_in_a_file_and_told_as_json(
    gauge: FakeGauge,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    Path("gauge.toml").write_text('separator = "comma"\nfield = 3\nunit = "N"\n')
    gauge.speaks_when_opened(monkeypatch, b"A,7,+  2.350kg\nOL\nA,7,+ 23.1\n")
    assert listen(gauge, "--like", "gauge.toml", "--out", "a.csv", "--json") == 0
    out, err = capsys.readouterr()
    facts = json.loads(out)
    assert err.startswith(LINE_UNDER_LOAD)
    assert facts["numbers"] == 2
    assert facts["highest_n"] == pytest.approx(23.1)
    assert facts["unread_lines"] == 1
    assert "“OL”" in facts["why_unread"]
    assert facts["file"] == "a.csv"


def test_unplugged_it_says_so_and_what_came_is_in_the_file(
    gauge: FakeGauge,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    gauge.speaks_when_opened(monkeypatch, sent(5), unplugged=0.3)
    assert main(["gauge", "--port", gauge.name, "--out", "pull.csv"]) == 1
    said = told(capsys)
    assert "The gauge was unplugged, or its line broke." in said
    assert "5 numbers" in said
    assert len(Path("pull.csv").read_text().splitlines()) == 6


@pytest.mark.parametrize(
    ("came", "words"),
    [
        (b"\xf0\x9c\x80\xff" * 30, "is the speed right"),
        (b"2.35\n", "the gauge names no unit"),
        (b"READY\n" * 12, "None of 12 lines holds a pull"),
    ],
)
def test_when_nothing_can_be_read_there_is_no_file_and_a_reason(
    gauge: FakeGauge,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
    tmp_path: Path,
    came: bytes,
    words: str,
) -> None:
    gauge.speaks_when_opened(monkeypatch, came)
    assert listen(gauge) == 1
    said = told(capsys)
    assert words in said
    assert "No number came, so there is no file." in said
    assert list(tmp_path.iterdir()) == []


def test_a_file_that_is_there_is_never_written_over(
    gauge: FakeGauge,
    capsys: pytest.CaptureFixture[str],
) -> None:
    Path("pull.csv").write_text("yesterday's pull")
    assert listen(gauge, "--out", "pull.csv") == 2
    assert "there is such a file already" in told(capsys)
    assert Path("pull.csv").read_text() == "yesterday's pull"


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["--port", "/dev/ttyNONE"], "There is no port /dev/ttyNONE."),
        (["--port", "x", "--baud", "9601"], "“9601” cannot be"),
        (["--port", "x", "--unit", "mm"], "“mm” is no unit of a pull"),
        (["--port", "x", "--like", "nowhere.toml"], "nowhere.toml: no such file"),
        (["--port", "x", "--like", "a.png"], "a.png: this is no text in UTF-8"),
    ],
)
def test_what_cannot_be_is_refused_in_words(
    capsys: pytest.CaptureFixture[str], words: list[str], said: str
) -> None:
    Path("a.png").write_bytes(b"\x89PNG\r\n")
    assert main(["gauge", *words]) == 2
    assert said in told(capsys)
    assert main(["gauge", *words, "--json"]) == 2
    assert said in json.loads(capsys.readouterr().out)["error"]["words"]


def test_without_a_port_it_lists_them(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["gauge", "--json"]) == 0
    assert isinstance(json.loads(capsys.readouterr().out)["ports"], list)
    assert main(["gauge"]) == 0
