"""`spoolwright gauge-study`: the components in words and as data, and what it refuses."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from spoolwright.command.__main__ import main

BY_HAND = {("1", "A"): (10, 12), ("1", "B"): (14, 16), ("2", "A"): (20, 22), ("2", "B"): (24, 26)}


@pytest.fixture
def file(tmp_path: Path) -> Path:
    lines = [f"{part};{who};{value}" for (part, who), values in BY_HAND.items() for value in values]
    path = tmp_path / "study.csv"
    path.write_text("\n".join(["part;person;value mm", *lines]))
    return path


def test_as_data(file: Path, capsys: Any) -> None:
    """The example that is done by hand in tests/unit/bench/test_gauge_study.py, in millimetres."""
    assert main(["gauge-study", str(file), "--tolerance", "30 mm", "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert told["unit"] == "m"
    assert told["spreads"]["repeatability"]["deviation"] == pytest.approx(1.6**0.5 * 1e-3)
    assert told["spreads"]["persons"]["deviation"] == pytest.approx(7.6**0.5 * 1e-3)
    assert told["of_tolerance"] == pytest.approx(6 * 9.2**0.5 / 30)
    assert (told["pooled"], told["classes"], told["persons"]) == (True, 3, ["A", "B"])
    assert told["table"][0]["squares"] == pytest.approx(200e-6)


def test_in_words(file: Path, capsys: Any) -> None:
    assert main(["gauge-study", str(file), "--units", "imperial"]) == 0
    told = capsys.readouterr().out
    assert told.startswith("2 parts, 2 persons (A, B), 2 tries each.")
    assert "The same hand again: 0.050 in" in told
    assert "taken into repeatability" in told
    assert "3 classes" in told


def test_one_person_is_no_persons(tmp_path: Path, capsys: Any) -> None:
    path = tmp_path / "alone.csv"
    path.write_text(
        "part;person;value mm\n" + "".join(f"{p};A;{v}\n" for p in (1, 2) for v in (10 * p, 11 * p))
    )
    assert main(["gauge-study", str(path)]) == 0
    assert capsys.readouterr().out.startswith("2 parts, 1 person (A), 2 tries each.")


@pytest.mark.parametrize(
    ("more", "kind"),
    [
        (["--tolerance", "-1 mm"], "NotAQuantity"),
        (["--tolerance", "wide"], "NotAQuantity"),
        (["--of", "force"], "Unreadable"),
    ],
)
def test_what_does_not_fit_is_refused_in_words(file: Path, capsys: Any, more: list[str], kind: str) -> None:
    assert main(["gauge-study", str(file), *more, "--json"]) == 2
    told = json.loads(capsys.readouterr().out)
    assert told["error"]["kind"] == kind
    assert told["error"]["words"]


def test_a_file_that_is_not_there(tmp_path: Path, capsys: Any) -> None:
    assert main(["gauge-study", str(tmp_path / "nothing.csv")]) == 2
    assert "nothing.csv" in capsys.readouterr().err
