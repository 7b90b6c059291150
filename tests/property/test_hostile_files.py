"""Five hundred damaged or hostile files: each is read or refused in words, in bounded time and memory.

They are read in a process beside this one, which has a limit on its memory: what swells or crashes ends that
process, and the file that did it is named.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from tests import hostile, hostile_reading

ROOT = Path(__file__).parents[2]
SECONDS_EACH = 5.0
"""Of processor time for one file in one reader; nearly all take less than a hundredth of that."""

NO_SOUND = {
    **dict.fromkeys(("nothing", "one byte", "zeros", "one sample", "no sample"), ""),
    **dict.fromkeys(("zip", "zip of zeros"), "zip archive"),
    **dict.fromkeys(("compressed bomb", "a list of addresses", "a list of files"), "no recording"),
    "hours of FLAC": "lasts longer than 10 minutes",
    "a level": "constant level",
    **{
        f"{kind} of {what}": "values that are no sound"
        for kind in ("WAV", "MOV")
        for what in ("NaN", "half NaN", "endless", "huge")
    },
}
"""What can be no recording of a spin, and words that its refusal must hold."""


@pytest.fixture(scope="module")
def told() -> list[dict[str, Any]]:
    """What the process that read them all said, line by line."""
    paths = os.pathsep.join([str(ROOT / "src"), str(ROOT), *sys.path])
    done = subprocess.run(
        [sys.executable, "-m", "tests.hostile_reading"],
        cwd=ROOT,
        env=os.environ | {"PYTHONPATH": paths, "OPENBLAS_NUM_THREADS": "1"},
        capture_output=True,
        text=True,
    )
    lines = [json.loads(line) for line in done.stdout.splitlines()]
    begun = [line["name"] for line in lines if "begins" in line]
    assert done.returncode == 0, f"{begun[-1:]} ended the reader: {done.stderr[-2000:]}"
    return lines


def test_each_is_read_or_refused_in_words_by_every_reader(told: list[dict[str, Any]]) -> None:
    outcomes = [line for line in told if "told" in line]
    names = {line["begins"]: line["name"] for line in told if "begins" in line}
    assert len(names) == len(set(names.values())) == hostile.COUNT == 500
    assert {line["reader"] for line in outcomes} == set(hostile_reading.READERS)
    silent = [
        (names[line["number"]], line)
        for line in outcomes
        if line["told"] != "read" and len(line["told"]) < 25
    ]
    assert not silent
    assert not [line for line in outcomes if "Traceback" in line["told"] or len(line["told"]) > 2_000]


def test_what_is_no_sound_is_refused_with_the_reason_and_what_is_accepted(told: list[dict[str, Any]]) -> None:
    names = {line["begins"]: line["name"] for line in told if "begins" in line}
    heard = {names[line["number"]]: line["told"] for line in told if line.get("reader") == "sound"}
    assert set(NO_SOUND) <= set(heard)
    wrong = {
        name: heard[name]
        for name, words in NO_SOUND.items()
        if heard[name] == "read" or words not in heard[name] or "Accepted: " not in heard[name]
    }
    assert wrong == {}


def test_none_takes_long(told: list[dict[str, Any]]) -> None:
    names = {line["begins"]: line["name"] for line in told if "begins" in line}
    slow = [(names[line["number"]], line) for line in told if line.get("took", 0.0) > SECONDS_EACH]
    assert not slow
