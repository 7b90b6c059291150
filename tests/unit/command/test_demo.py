"""The verb demo: says what it does, and leaves a shop alone that has visits already."""

from __future__ import annotations

import argparse
import os
import subprocess
import sys
from datetime import datetime
from pathlib import Path
from typing import Any

import pytest

from spoolwright.command import demo
from spoolwright.command.__main__ import build_parser


def command(data: Path) -> subprocess.CompletedProcess[str]:
    env = {key: value for key, value in os.environ.items() if not key.startswith(("SPOOLWRIGHT_", "DJANGO_"))}
    words = [sys.executable, "-m", "spoolwright.command", "demo", "--data", str(data)]
    return subprocess.run(words, capture_output=True, text=True, env=env, timeout=300, check=False)


@pytest.fixture(scope="module")
def filled(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, subprocess.CompletedProcess[str]]:
    """A shop filled by the command itself, in a process of its own."""
    data = tmp_path_factory.mktemp("filled")
    return data, command(data)


def test_it_takes_a_folder_and_a_seed() -> None:
    args = build_parser(["demo"]).parse_args(["demo", "--data", "x", "--seed", "7"])
    assert (args.data, args.seed) == ("x", 7)
    assert build_parser(["demo"]).parse_args(["demo"]).seed == 1


def test_it_fills_a_shop_and_says_how_far_it_is(filled: tuple[Path, Any]) -> None:
    data, done = filled
    assert done.returncode == 0, done.stderr
    assert "90 visits, all invented" in done.stdout
    assert "stories told" in done.stdout
    assert (data / "shop.sqlite3").stat().st_size > 1_000_000


def test_it_lays_the_files_ready_and_names_the_reels(filled: tuple[Path, Any]) -> None:
    data, done = filled
    assert "Reels 88, 89, 90 have just arrived" in done.stdout
    for tag in (88, 89, 90):
        for when in ("before", "after"):
            assert (data / "demo-files" / f"reel-{tag}" / when / "spin.wav").is_file()


def test_a_second_time_it_refuses_in_words(filled: tuple[Path, Any]) -> None:
    data, _ = filled
    before = (data / "shop.sqlite3").read_bytes()
    again = command(data)
    assert again.returncode == 2
    assert again.stderr.strip().startswith("This shop has visits in its books already")
    assert "Traceback" not in again.stderr
    assert (data / "shop.sqlite3").read_bytes() == before


def test_in_a_file_there_is_one_line_a_month(capsys: pytest.CaptureFixture[str]) -> None:
    told = demo._progress()
    for day in ("2026-04-01", "2026-04-20", "2026-05-02"):
        told(datetime.fromisoformat(day), 1, 9)
    assert capsys.readouterr().out.splitlines() == [
        "Filling an invented workshop. April 2026: 1 of 9 stories told",
        "Filling an invented workshop. May 2026: 1 of 9 stories told",
    ]


def test_on_a_screen_one_line_is_written_over(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(sys.stdout, "isatty", lambda: True, raising=False)
    told = demo._progress()
    told(datetime.fromisoformat("2026-04-01"), 1, 9)
    told(datetime.fromisoformat("2026-04-02"), 2, 9)
    out = capsys.readouterr().out
    assert out.count("\r") == 2
    assert "\n" not in out


def test_it_is_a_verb() -> None:
    parser = argparse.ArgumentParser()
    demo.arguments(parser)
    assert demo.SUMMARY
    assert callable(demo.run)
