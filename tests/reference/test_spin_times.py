"""Real hand-spun times over seven kinds of bearing, and a textbook's nested analysis of variance.

Source of the times: ali-raheem/fidgetspinner-dataset (MIT): two spinners, seven kinds of 8 x 22 x 7 bearing,
six spins each, turned over after three; m open steel, c full ceramic, h hybrid, g full of grease.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from spoolwright.bench import spin_log, spin_log_file
from spoolwright.bench.spin_log import Spin, SpinLog

DATA = Path(__file__).resolve().parents[3] / "shared" / "references" / "data"
FILE = DATA / "spinner_times_by_bearing.csv"

MONTGOMERY = {
    1: ((1, -1, 0), (-2, -3, -4), (-2, 0, 1), (1, 4, 0)),
    2: ((1, -2, -3), (0, 4, 2), (-1, 0, -2), (0, 3, 2)),
    3: ((2, 4, 0), (-2, 0, 2), (1, -1, 2), (3, 2, 1)),
}
"""Coded purity of three suppliers, four batches each, three determinations of each."""


@pytest.fixture(scope="module")
def log() -> SpinLog:
    if not FILE.is_file():
        pytest.skip("the open data lie beside the project, in ../shared/references/data, and are not here")
    return spin_log.analyse(spin_log_file.read(FILE.read_bytes(), name=FILE.name))


def test_open_steel_spins_longest_and_ceramic_does_not(log: SpinLog) -> None:
    order = [kind.kind for kind in log.kinds]
    assert order[0] == "m"
    assert order.index("c") >= 4
    assert order.index("h") > order.index("m")
    assert order[-1] == "g"
    assert log.spins == 84


def test_means_are_those_of_the_published_summary(log: SpinLog) -> None:
    # Summary beside the data (tribology.md): arithmetic means 147.6 s open steel, 86.6 s hybrid, 65.8 s
    # ceramic, 16.5 s greased; a geometric mean lies below its arithmetic one, never above.
    arithmetic = {"m": 147.6, "h": 86.6, "c": 65.8, "g": 16.5}
    for kind in log.kinds:
        if kind.kind in arithmetic:
            assert 0.7 * arithmetic[kind.kind] < kind.middle <= arithmetic[kind.kind] + 0.05


def test_with_two_spinners_steel_against_ceramic_is_not_shown_and_grease_is(log: SpinLog) -> None:
    # Source of the times: as above; what is shown follows from Tukey's test on six degrees of freedom.
    shown = {(pair.longer, pair.shorter) for pair in log.pairs if pair.shown}
    assert ("m", "g") in shown
    assert ("m", "c") not in shown
    assert not any(pair[0] in ("c", "h") and pair[1] == "m" for pair in shown)
    assert log.basis == "kind and reel"
    assert log.freedom == 6


def test_a_textbooks_nested_analysis() -> None:
    # Montgomery, Design and Analysis of Experiments, the purity example of its chapter on nested designs
    # (from memory): sums of squares 15.06 between suppliers, 69.92 between batches; F = 0.97 on 2 and 9,
    # p = 0.42.
    rows = [
        Spin(str(supplier), f"{supplier}.{batch}", "", float(np.exp(value)))
        for supplier, batches in MONTGOMERY.items()
        for batch, values in enumerate(batches)
        for value in values
    ]
    found = spin_log.analyse(rows)
    assert found.fisher == pytest.approx(0.97, abs=0.005)
    assert found.chance == pytest.approx(0.42, abs=0.005)
    assert found.freedom == 9
