"""The verb `sweep`."""

from __future__ import annotations

import json

import pytest

from spoolwright.command.__main__ import main
from spoolwright.command.sweep import progress_bar

THROW = ("--payload", "150 g", "--speed", "55 m/s", "--samples", "200")


def told(capsys: pytest.CaptureFixture[str], *typed: str, code: int = 0) -> str:
    assert main(["sweep", *typed]) == code
    got = capsys.readouterr()
    return got.out if code == 0 else got.err


def test_today_and_each_option_are_told_with_what_decides(capsys: pytest.CaptureFixture[str]) -> None:
    said = told(capsys, "tarvak-58r", *THROW, "--option", "hybrid-spool-bearings,strip-and-wash")
    assert "200 casts of every option, seed 1" in said
    assert "Today" in said
    assert "Strip to the last part and wash + Hybrid spool bearings" in said
    assert "with the brake set again" in said
    assert "how hard the caster throws" in said


def test_without_options_every_work_that_touches_a_cast_has_a_row(capsys: pytest.CaptureFixture[str]) -> None:
    data = json.loads(told(capsys, "tarvak-58r", *THROW, "--json", "--seed", "7"))
    assert data["seed"] == 7
    assert data["options"][0]["name"] == "today"
    assert ["hybrid-spool-bearings"] in [option["works"] for option in data["options"]]
    assert data["weights"][0]["share"] >= data["weights"][-1]["share"]
    assert data["options"][0]["distance"]["unit"] == "m"


def test_a_kind_that_is_not_cast_says_why(capsys: pytest.CaptureFixture[str]) -> None:
    assert "its own line" in told(capsys, "brekkas-9-10", *THROW)


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        (("--samples", "50"), "100 to 10000000 samples"),
        (("--seed=-1",), "a seed of 0 or more"),
        (("--option", "polish-the-moon"), "is no work that is done on such a reel"),
        (("--cluster", "nowhere"), "No cluster answers at nowhere"),
    ],
)
def test_what_cannot_be_swept_is_refused_in_one_line(
    typed: tuple[str, ...], said: str, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("spoolwright.judgement.cluster.WAIT", 0.2)
    err = told(capsys, "tarvak-58r", *THROW, *typed, code=2)
    assert said in err
    assert err.count("\n") == 1


def test_the_bar_fills_and_is_gone_when_all_is_done() -> None:
    written: list[str] = []
    bar = progress_bar(written.append, lambda: None)
    bar(0, 4)
    bar(2, 4)
    bar(4, 4)
    assert "[" + " " * 40 + "] 0 of 4" in written[0]
    assert "[" + "=" * 20 + " " * 20 + "] 2 of 4" in written[1]
    assert written[-1].strip() == ""
