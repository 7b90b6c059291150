"""Every row of checks.csv: an expression on the mechanics room and the value that its source prints."""

from __future__ import annotations

import csv
from math import pi, radians
from pathlib import Path

import pytest

import spoolwright.mechanics as mechanics

ROWS = list(csv.DictReader(Path(__file__).with_name("checks.csv").open(encoding="utf-8", newline="")))
SCOPE = {name: getattr(mechanics, name) for name in mechanics.__all__} | {"pi": pi, "radians": radians}


@pytest.mark.parametrize("row", ROWS, ids=[row["id"] for row in ROWS])
def test_published_value_is_met(row: dict[str, str]) -> None:
    got = float(eval(row["call"], dict(SCOPE)))  # our own file, read above
    expected, tolerance = float(row["expected"]), float(row["rel_tolerance"])
    assert got == pytest.approx(expected, rel=tolerance), f"{row['call']}; {row['source']} ({row['how']})"


def test_every_row_names_its_source_and_how_it_was_come_by() -> None:
    assert ROWS
    assert all(row["source"].strip() and row["how"].strip() for row in ROWS)
    assert len({row["id"] for row in ROWS}) == len(ROWS)
