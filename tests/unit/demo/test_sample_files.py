"""With the files alone, a newcomer's reel goes from its readings to a proof in which everything is shown."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from spoolwright.bench import pull_trace, recording, spin_down, ticks, typed
from spoolwright.bench.uncertainty import Measured
from spoolwright.demo import study_file
from spoolwright.demo.measuring import GAUGE
from spoolwright.demo.newcomers import NEWCOMERS
from spoolwright.demo.sample_files import FOLDER, files, improve, write
from spoolwright.judgement.proof import Promise, decide
from spoolwright.judgement.shop_rates import starting_rates

TAGS = (88, 89, 90)
RATES = starting_rates()
NAMES = ("pull-half-drag.csv", "spin.wav", "calipers.txt")
LINES = {"end_float": "spool end-float", "spin_time": "free spin", "pull_full": "full drag"}


@pytest.fixture(scope="module")
def laid() -> dict[str, bytes]:
    return files(TAGS, RATES)


def typed_from(notes: str, kind: str) -> Measured:
    """What somebody types who copies the number from its line."""
    line = next(line for line in notes.splitlines() if line.startswith(LINES[kind]))
    return typed.read(kind, line[25:].strip()).measured


def read_from(laid: dict[str, bytes], folder: str) -> dict[str, Measured]:
    """Everything that the files of one folder say."""
    trace = pull_trace.read(laid[f"{folder}/pull-half-drag.csv"])
    pull = pull_trace.analyse(trace, GAUGE)
    notes = laid[f"{folder}/calipers.txt"].decode()
    found = {"start_up_ratio": pull.start_up_ratio, "judder": pull.judder}
    return found | {kind: typed_from(notes, kind) for kind in LINES}


@pytest.mark.parametrize("number", range(3))
def test_what_the_files_say_after_the_work_keeps_the_promise(laid: dict[str, bytes], number: int) -> None:
    option = improve(NEWCOMERS[number], RATES)
    after = read_from(laid, f"reel-{TAGS[number]}/after")
    assert option.promises
    for promise in option.promises:
        kind, dimension = promise.reading_kind, promise.predicted.dimension
        assert decide(Promise(promise.low, promise.high, dimension), after[kind]).kind == "shown", kind


@pytest.mark.parametrize("number", range(3))
def test_before_the_work_it_was_worse(laid: dict[str, bytes], number: int) -> None:
    before, after = (read_from(laid, f"reel-{TAGS[number]}/{when}") for when in ("before", "after"))
    assert before["start_up_ratio"].value > after["start_up_ratio"].value + 0.1
    assert before["judder"].value > after["judder"].value
    assert before["spin_time"].value < after["spin_time"].value


@pytest.mark.parametrize("when", ["before", "after"])
def test_the_recording_spins_as_long_as_the_stopwatch_says(laid: dict[str, bytes], when: str) -> None:
    sound = recording.read_wav(laid[f"reel-88/{when}/spin.wav"])
    spin = spin_down.fit(ticks.mend(ticks.find(sound)))
    watch = typed_from(laid[f"reel-88/{when}/calipers.txt"].decode(), "spin_time")
    assert spin.stop_time.value == pytest.approx(watch.value, abs=0.8)


def test_each_reels_gauge_writes_its_own_kind_of_file(laid: dict[str, bytes]) -> None:
    found = {pull_trace.read(laid[f"reel-{tag}/before/pull-half-drag.csv"]).found.force_unit for tag in TAGS}
    assert len(found) > 1


def test_the_slips_of_paper_name_every_condition(laid: dict[str, bytes]) -> None:
    notes = laid["reel-88/before/calipers.txt"].decode()
    for words in (
        "18.0 °C",
        "23.5 mm",
        "line on",
        "line off",
        "brakes off",
        "third pull",
        "2.5 turns",
    ):
        assert words in notes
    assert "F15" in notes


def test_they_are_laid_below_the_data_folder(shop: Any, tmp_path: Path) -> None:
    below = write(tmp_path, TAGS)
    assert below == tmp_path / FOLDER
    assert (below / study_file.NAME).is_file()
    laid = {path.relative_to(below).as_posix() for path in below.rglob("*") if path.is_file()}
    assert laid - {study_file.NAME} == {
        f"reel-{tag}/{name}"
        for tag in TAGS
        for name in ("how-to.txt", *(f"{when}/{one}" for when in ("before", "after") for one in NAMES))
    }
