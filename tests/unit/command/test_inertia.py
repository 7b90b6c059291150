"""`spoolwright inertia`: every way by its examples, a recorded swing, several results weighed."""

import json
from pathlib import Path

import numpy as np
import pytest

from spoolwright.command.__main__ import main
from spoolwright.sheets import inertia_methods


def asked(capsys: pytest.CaptureFixture[str], *typed: str, code: int = 0) -> str:
    assert main(["inertia", *typed]) == code
    out, err = capsys.readouterr()
    return out or err


def options(way: str) -> list[str]:
    asks = inertia_methods.method(way).asks
    return [way, *(part for one in asks for part in (f"--{one.key.replace('_', '-')}", one.example))]


def swung(folder: Path, name: str = "swing.csv") -> str:
    t = np.arange(0, 5, 0.01)
    rates = np.exp(-0.2 * t) * np.cos(15.5 * t)
    rows = "".join(f"{a:.3f},{b:.6f}\n" for a, b in zip(t, rates, strict=True))
    (folder / name).write_text("time,rate\n" + rows)
    return str(folder / name)


@pytest.mark.parametrize("way", list(inertia_methods.methods()))
def test_each_way_prints_value_uncertainty_and_budget(way: str, capsys: pytest.CaptureFixture[str]) -> None:
    data = json.loads(asked(capsys, *options(way), "--json"))
    assert data["inertia"]["expanded_uncertainty"] == 2 * data["inertia"]["standard_uncertainty"]
    squares = sum(row["uncertainty"] ** 2 for row in data["budget"] if row["result"] == "spool_inertia")
    assert squares == pytest.approx(data["inertia"]["standard_uncertainty"] ** 2)
    said = asked(capsys, *options(way))
    assert "g cm^2 ±" in said
    assert "What the uncertainty is made of" in said


def test_beside_a_sheet_it_agrees_or_not(capsys: pytest.CaptureFixture[str]) -> None:
    data = json.loads(asked(capsys, *options("sizes"), "--sheet", "tarvak-58r", "--json"))
    assert isinstance(data["sheet"]["agrees"], bool)
    assert "The sheet says" in asked(capsys, *options("sizes"), "--sheet", "tarvak-58r")
    both = json.loads(asked(capsys, *options("sizes"), "--sheet", "tarvak-58r", "--line-on", "--json"))
    assert both["sheet"]["inertia"]["value"] > data["sheet"]["inertia"]["value"]


def test_the_caution_of_a_falling_weight_is_printed(capsys: pytest.CaptureFixture[str]) -> None:
    assert "feet and hands clear" in asked(capsys, *options("fall"))


def test_a_thumb_costs(capsys: pytest.CaptureFixture[str]) -> None:
    video, hand = (
        json.loads(asked(capsys, *options("fall"), "--json", *more))["inertia"]["standard_uncertainty"]
        for more in ((), ("--by-hand",))
    )
    assert hand > 3 * video


def test_a_recorded_swing(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = swung(tmp_path)
    data = json.loads(asked(capsys, "swing", path, "--json"))
    assert data["period"]["value"] == pytest.approx(2 * np.pi / 15.5, rel=1e-4)
    assert "One swing there and back" in asked(capsys, "swing", path)
    typed = ("spring", "--stiffness", "2.40 mN m/rad", "--record", path)
    spring = json.loads(asked(capsys, *typed, "--json"))
    assert spring["inertia"]["value"] == pytest.approx(2.4e-3 / (15.5**2 + 0.2**2), rel=1e-4)


def test_several_results_are_weighed(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    files = []
    for way in ("fall", "threads"):
        files.append(str(tmp_path / f"{way}.json"))
        Path(files[-1]).write_text(asked(capsys, *options(way), "--json"))
    data = json.loads(asked(capsys, "together", *files, "--json"))
    assert data["degrees_of_freedom"] == 1
    assert data["farthest"] in ("fall", "threads")
    assert "The 2 ways" in asked(capsys, "together", *files)
    assert "two files or more" in asked(capsys, "together", files[0], code=2)


@pytest.mark.parametrize("text", ["hello", "{}", '{"inertia": 3}'])
def test_what_is_no_result_is_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str], text: str) -> None:
    (tmp_path / "x.json").write_text(text)
    said = asked(capsys, "together", str(tmp_path / "x.json"), str(tmp_path / "x.json"), code=2)
    assert "what --json printed" in said


def test_a_unit_that_is_missing_is_refused_in_words(capsys: pytest.CaptureFixture[str]) -> None:
    typed = options("sizes")
    typed[typed.index("25.0 mm")] = "25.0"
    assert "Accepted" in asked(capsys, *typed, code=2)
