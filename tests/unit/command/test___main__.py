"""Which verb runs, and what a refusal looks like."""

import json
import subprocess
import sys
from pathlib import Path

import pytest

from spoolwright.command.__main__ import VERBS, as_json, in_words, main


def run(*words: str) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "spoolwright.command", *words]
    return subprocess.run(command, capture_output=True, text=True, check=False)


def test_help_lists_every_verb_with_what_it_does() -> None:
    told = run("--help")
    assert told.returncode == 0, told.stderr
    for name, find in VERBS.items():
        assert name in told.stdout
        assert find().SUMMARY.split()[0] in told.stdout
        assert f"spoolwright {find().TYPED}" in told.stdout
        assert "[--json]" in find().TYPED


def test_whoever_stops_reading_is_not_shown_our_insides() -> None:
    """As `spoolwright sheet schema | head -1` does."""
    command = [sys.executable, "-m", "spoolwright.command", "sheet", "schema"]
    with subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True) as running:
        assert running.stdout
        assert running.stderr
        running.stdout.close()
        assert running.stderr.read() == ""


@pytest.mark.parametrize("verb", VERBS)
def test_every_verb_has_help_of_its_own(verb: str) -> None:
    told = run(verb, "--help")
    assert told.returncode == 0, told.stderr
    assert "usage: spoolwright" in told.stdout


def test_no_verb_and_an_unknown_one_are_refused() -> None:
    assert run().returncode == 2
    told = run("polish")
    assert told.returncode == 2
    assert "polish" in told.stderr


def test_reading_a_recording_does_not_wake_the_database() -> None:
    code = (
        "import sys; from spoolwright.command.__main__ import build_parser;"
        "build_parser(['spin']); print('django' in sys.modules)"
    )
    told = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=False)
    assert told.stdout.strip() == "False", told.stderr


def test_a_missing_file_is_one_plain_line(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    missing = tmp_path / "nothing.csv"
    assert main(["pull", str(missing)]) == 2
    told = capsys.readouterr()
    assert told.out == ""
    assert str(missing) in told.err
    assert "Traceback" not in told.err
    assert len(told.err.strip().splitlines()) == 1


def test_a_missing_file_is_an_object_where_json_was_asked_for(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    missing = tmp_path / "nothing.csv"
    assert main(["pull", str(missing), "--json"]) == 2
    told = json.loads(capsys.readouterr().out)
    assert str(missing) in told["error"]["words"]
    assert told["error"]["kind"] == "FileNotFoundError"


def test_a_refusal_carries_what_it_knows() -> None:
    class Refusal(ValueError):
        reason = "the needle never moved"
        where = "line 3"
        accepted = "a pull of one second at least"

    told = json.loads(as_json(Refusal("the needle never moved")))["error"]
    assert told == {
        "kind": "Refusal",
        "words": "the needle never moved",
        "reason": "the needle never moved",
        "where": "line 3",
        "accepted": "a pull of one second at least",
    }


def test_the_words_of_a_refusal_are_those_it_was_given() -> None:
    refusal = ValueError("for the log")
    refusal.words = "For the person."  # type: ignore[attr-defined]
    assert in_words(refusal) == "For the person."
    assert in_words(FileNotFoundError(2, "No such file or directory", "a.csv")).startswith(
        "a.csv: no such file"
    )
