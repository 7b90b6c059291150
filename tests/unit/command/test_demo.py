"""The verb demo: says what it does, and leaves a shop alone that has visits already."""

from __future__ import annotations

import argparse
import json
import sys
from datetime import datetime

import pytest

from spoolwright.command import demo
from spoolwright.command.__main__ import build_parser
from tests.filled import FilledShop, command


def test_it_takes_a_folder_and_a_seed() -> None:
    args = build_parser(["demo"]).parse_args(["demo", "--data", "x", "--seed", "7"])
    assert (args.data, args.seed) == ("x", 7)
    assert build_parser(["demo"]).parse_args(["demo"]).seed == 1


def test_it_fills_a_shop_and_says_how_far_it_is(filled_shop: FilledShop) -> None:
    assert filled_shop.returncode == 0, filled_shop.stderr
    assert "90 visits, all invented" in filled_shop.stdout
    assert "stories told" in filled_shop.stdout
    assert filled_shop.database.stat().st_size > 1_000_000


def test_it_lays_the_files_ready_and_names_the_reels(filled_shop: FilledShop) -> None:
    assert "Reels 88, 89, 90 have just arrived" in filled_shop.stdout
    for tag in (88, 89, 90):
        for when in ("before", "after"):
            assert (filled_shop.data / "demo-files" / f"reel-{tag}" / when / "spin.wav").is_file()


def test_a_second_time_it_refuses_in_words(filled_shop: FilledShop) -> None:
    data = filled_shop.data
    before = (data / "shop.sqlite3").read_bytes()
    again = command(data)
    assert again.returncode == 2
    assert json.loads(command(data, "--json").stdout)["error"]["kind"] == "ShopWasNotEmpty"
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
