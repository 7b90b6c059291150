"""Worked examples of the Guide (JCGM 100:2008, annex H) and of EA-4/02, through our own propagation."""

from __future__ import annotations

from math import cos, sin, sqrt

import numpy as np
import pytest

from spoolwright.bench.budget import Contribution, combined
from spoolwright.bench.propagation import Known, propagate
from spoolwright.bench.uncertainty import Measured

RECTANGLE = 1 / sqrt(3)
# H.1, an end gauge [nm, K]; opened in GTC's examples (GUM_H1.py).
END_GAUGE = {
    "standard": (5.0000623e7, 25.0),
    "mean": (215.0, 5.8),
    "random": (0.0, 3.9),
    "systematic": (0.0, 6.7),
    "expansion": (11.5e-6, 2e-6 * RECTANGLE),
    "difference": (0.0, 1e-6 * RECTANGLE),
    "offset": (0.0, 0.05 * RECTANGLE),
    "room": (-0.1, 0.2),
    "cycle": (0.0, 0.5 / sqrt(2)),
}
# H.2, five readings of voltage [V], current [mA] and phase [rad] at once. From memory; their means and their
# correlations, printed in table H.2, come out of them. Standard uncertainties as the table prints them.
VOLTS = np.array([5.007, 4.994, 5.005, 4.990, 4.999])
MILLIAMPERES = np.array([19.663, 19.639, 19.640, 19.685, 19.678])
PHASES = np.array([1.0456, 1.0438, 1.0468, 1.0428, 1.0433])
PRINTED = {"V": 0.0032, "I": 0.0095, "phi": 0.00075}


def known(inputs: dict[str, tuple[float, float]]) -> dict[str, Known]:
    return {name: Known(name, Measured(value, u, "ratio")) for name, (value, u) in inputs.items()}


def end_gauge(x: dict[str, float]) -> float:
    warm = x["difference"] * (x["room"] + x["cycle"]) + x["expansion"] * x["offset"]
    return x["standard"] + x["mean"] + x["random"] + x["systematic"] - x["standard"] * warm


def test_end_gauge() -> None:
    # H.1: 50 000 838 nm (+-0.5), combined standard uncertainty 32 nm (+-0.5) to first order. As above.
    found, rows = propagate("length", "ratio", end_gauge, known(END_GAUGE))
    assert found.value == pytest.approx(50_000_838, abs=0.5)
    assert found.uncertainty == pytest.approx(32, abs=0.5)
    assert len(rows) == 9


def test_end_gauge_to_second_order() -> None:
    # H.1.7: 34 nm (+-0.5) with the products of expansion and temperature. Opened, as above. The first order
    # is ours; the two products are arithmetic on the published numbers, no code of ours (that stops at first
    # order). Their terms are the Guide's, 5.1.2 note; a draw of the whole agrees within its own error.
    first, _ = propagate("length", "ratio", end_gauge, known(END_GAUGE))
    long = END_GAUGE["standard"][0]
    warm = long * END_GAUGE["difference"][1] * np.hypot(END_GAUGE["room"][1], END_GAUGE["cycle"][1])
    other = long * END_GAUGE["expansion"][1] * END_GAUGE["offset"][1]
    second = sqrt(first.uncertainty**2 + warm**2 + other**2)
    assert second == pytest.approx(34, abs=0.5)
    rng = np.random.default_rng(1)
    drawn = end_gauge({name: rng.normal(value, u, 100_000) for name, (value, u) in END_GAUGE.items()})
    assert drawn.std() == pytest.approx(second, rel=0.01)


@pytest.mark.parametrize(
    ("formula", "value", "uncertainty"),
    [
        (lambda x: 1000 * x["V"] / x["I"] * cos(x["phi"]), 127.732, 0.071),
        (lambda x: 1000 * x["V"] / x["I"] * sin(x["phi"]), 219.847, 0.295),
        (lambda x: 1000 * x["V"] / x["I"], 254.260, 0.236),
    ],
)
def test_resistance_reactance_impedance(formula, value: float, uncertainty: float) -> None:
    # H.2, table H.3: R 127.732 (opened in GTC's documentation, GUM_H2), X 219.847, Z 254.260 ohm with 0.071,
    # 0.295 and 0.236 (from memory). Inputs are correlated because they were read together. The Guide starts
    # from the standard uncertainties as it prints them, with correlations that it has not rounded: unrounded
    # ones make 0.2956 of the second spread, and correlations of two figures make 0.070 of the first.
    series = {"V": VOLTS, "I": MILLIAMPERES, "phi": PHASES}
    inputs = {name: (values.mean(), PRINTED[name]) for name, values in series.items()}
    for name, values in series.items():
        assert values.std(ddof=1) / sqrt(5) == pytest.approx(PRINTED[name], rel=0.005)
    pairs = [("V", "I"), ("V", "phi"), ("I", "phi")]
    together = {pair: np.corrcoef(series[pair[0]], series[pair[1]])[0, 1] for pair in pairs}
    found, _ = propagate("z", "ratio", formula, known(inputs), together)
    assert found.value == pytest.approx(value, abs=5e-4)
    assert found.uncertainty == pytest.approx(uncertainty, abs=5e-4)


def test_inputs_that_were_read_together() -> None:
    # H.2, table H.2: r(V, I) -0.36, r(V, phi) 0.86, r(I, phi) -0.65, and r(X, Z) 0.993. From memory.
    # Arithmetic on the published numbers, no code of ours: it shows that the readings above are the Guide's.
    found = np.corrcoef([VOLTS, MILLIAMPERES, PHASES])
    assert [found[0, 1], found[0, 2], found[1, 2]] == pytest.approx([-0.36, 0.86, -0.65], abs=0.005)
    impedance = VOLTS / MILLIAMPERES
    assert np.corrcoef(impedance * np.sin(PHASES), impedance)[0, 1] == pytest.approx(0.993, abs=5e-4)


def test_a_ten_kilogram_weight() -> None:
    # EA-4/02, example S2: 22.5, 15/sqrt 3 (limits), 14.2 and twice 10/sqrt 3 (limits) mg: 29.147 mg (+-0.01).
    # Published budget, opened. Its degrees of freedom (33) rest on some of type B that it does not print, and
    # ours are never pooled: each scatter is widened alone (bench/student.py), no code of ours answers it.
    parts = {"standard": 22.5, "drift": 15 * RECTANGLE, "comparison": 14.2, "corners": 10 * RECTANGLE}
    rows = [Contribution("mass", name, "B", u) for name, u in parts.items()]
    rows.append(Contribution("mass", "buoyancy", "B", 10 * RECTANGLE))
    assert combined(rows) == pytest.approx(29.147, abs=0.01)
