"""Real hand-spun times over seven kinds of bearing, and a textbook's nested analysis of variance.

Source of the times: ali-raheem/fidgetspinner-dataset (MIT): two spinners, seven kinds of 8 x 22 x 7 bearing,
six spins each, turned over after three; m open steel, c full ceramic, h hybrid, g full of grease.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from scipy import stats

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
def spins() -> tuple[Spin, ...]:
    if not FILE.is_file():
        pytest.skip("the open data lie beside the project, in ../shared/references/data, and are not here")
    return spin_log_file.read(FILE.read_bytes(), name=FILE.name)


@pytest.fixture(scope="module")
def log(spins: tuple[Spin, ...]) -> SpinLog:
    return spin_log.analyse(spins)


@pytest.fixture(scope="module")
def times(spins: tuple[Spin, ...]) -> dict[str, np.ndarray]:
    """Of each kind an array of spinner, side up and spin."""
    found = {}
    for kind in dict.fromkeys(spin.kind for spin in spins):
        own = sorted((spin.unit, spin.side, spin.time) for spin in spins if spin.kind == kind)
        found[kind] = np.array([time for _, _, time in own]).reshape(2, 2, 3)
    return found


def test_open_steel_spins_longest_and_full_ceramic_among_the_shortest(
    log: SpinLog, times: dict[str, np.ndarray]
) -> None:
    # Source of the times: as above; the order is the same whichever mean is taken.
    usual = [kind.kind for kind in log.kinds]
    mean = sorted(times, key=lambda kind: -times[kind].mean())
    for order in (usual, mean):
        assert len(order) == 7
        assert order[0] == "m"
        assert order.index("c") >= 4
        assert order[-1] == "g"
    assert log.spins == 84


@pytest.mark.parametrize(
    ("kind", "mean", "places"),
    [("m", 147.58, 2), ("h", 86.6, 1), ("c", 65.83, 2), ("r", 71.92, 2), ("m2", 32.42, 2), ("g", 16.5, 1)],
)
def test_means_are_those_of_the_published_summary(
    log: SpinLog, times: dict[str, np.ndarray], kind: str, mean: float, places: int
) -> None:
    # Source of the arithmetic means: the summary beside the data (tribology.csv, S-X08 to S-X13, and its
    # text), derived from the raw times, to as many places as it prints. Geometric mean: numpy's.
    assert times[kind].mean() == pytest.approx(mean, abs=0.5001 * 10**-places)
    (found,) = (one for one in log.kinds if one.kind == kind)
    assert found.spins == 12
    assert found.middle == pytest.approx(np.exp(np.log(times[kind]).mean()), rel=1e-12)
    assert found.low < found.middle < times[kind].mean()


def test_turning_over_changes_nothing_that_can_be_shown(log: SpinLog, times: dict[str, np.ndarray]) -> None:
    # Source of the times: as above. Interval: Student's t of the fourteen differences, by scipy.
    apart = np.array([np.log(one).mean(axis=2) @ [-1, 1] for one in times.values()]).ravel()
    assert len(apart) == 14
    reach = stats.t.ppf(0.975, 13) * apart.std(ddof=1) / np.sqrt(14)
    assert log.turned_over == pytest.approx(np.exp(apart.mean() + reach * np.array([0, -1, 1])), rel=1e-9)
    _, low, high = log.turned_over
    assert low < 1.0 < high


def test_the_scatter_has_three_parts_that_sum_to_the_whole(
    log: SpinLog, times: dict[str, np.ndarray]
) -> None:
    # Source of the times: as above. The whole: the mean square that is left of a table of kinds by spinners,
    # half the variance of the differences; of spins the pooled variance of 28 groups of three: by numpy.
    # Their sum: expected mean squares of nested groups (Montgomery, from memory).
    parts = {part.name: part.deviation**2 for part in log.parts}
    assert list(parts) == ["from reel to reel", "after turning over", "from spin to spin"]
    logs = np.log(np.array(list(times.values())))
    spin = logs.var(axis=3, ddof=1).mean()
    side = logs.mean(axis=3).var(axis=2, ddof=1).mean() - spin / 3
    whole = (logs.mean(axis=(2, 3)) @ [1, -1]).var(ddof=1) / 2
    assert parts["from spin to spin"] == pytest.approx(spin, rel=1e-9)
    assert parts["after turning over"] == pytest.approx(side, rel=1e-9)
    assert parts["from reel to reel"] + side / 2 + spin / 6 == pytest.approx(whole, rel=1e-9)
    assert min(parts.values()) > 0


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
