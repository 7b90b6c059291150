"""`spoolwright spinlog`: a log in, the differences out."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from spoolwright.command.__main__ import main

LOG = b"bearing,reel,time\nsteel,A,40\nsteel,B,44\nsteel,C,42\ngreased,D,9\ngreased,E,10\ngreased,F,9.5\n"


def test_kinds_pairs_and_words(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "log.csv"
    path.write_bytes(LOG)
    assert main(["spinlog", str(path), "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert [kind["kind"] for kind in found["kinds"]] == ["steel", "greased"]
    assert found["pairs"][0]["shown"] is True
    assert main(["spinlog", str(path)]) == 0
    assert "times as long as" in capsys.readouterr().out


def test_another_file_is_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "log.csv"
    path.write_bytes(b"time\n1\n")
    assert main(["spinlog", str(path)]) == 2
    assert "bearing and time" in capsys.readouterr().err
