"""Decision rules against JCGM 106, ISO 14253-1 and ILAC-G8."""

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.proof import Promise, chance_outside, decide

LIMIT = Promise(None, 1.0, "ratio")
U = 0.01


def test_voltage_diode_conformance() -> None:
    # JCGM 106:2012, example of the diode: -5.47 V, u 0.05 V, limit -5.40 V: conformance probability 0.92.
    # From memory.
    outside = chance_outside(Promise(None, -5.40, "ratio"), Measured(-5.47, 0.05, "ratio"))
    assert 1 - outside == pytest.approx(0.92, abs=0.005)


def test_simple_acceptance_at_the_limit_is_a_coin_toss() -> None:
    # ILAC-G8:09/2019, 4.2.1: without a guard band the risk of a wrong pass is up to 50 %. Opened.
    told = decide(LIMIT, Measured(1.0, U, "ratio"), guard_factor=0.0)
    assert told.chance_of_wrong_pass == pytest.approx(0.5, abs=1e-12)


def test_a_guard_band_of_the_expanded_uncertainty_keeps_a_wrong_pass_under_two_and_a_half_per_cent() -> None:
    # ILAC-G8:09/2019, 4.2.2: w = U gives a risk below 2.5 %. Opened.
    told = decide(LIMIT, Measured(1.0 - 2 * U, U, "ratio"))
    assert told.kind == "shown"
    assert told.chance_of_wrong_pass is not None
    assert told.chance_of_wrong_pass < 0.025


def test_the_one_sided_factor_leaves_five_per_cent() -> None:
    # ISO 14253-1:2017: default 95 % for a one-sided limit, guard factor 1.645 (+-5e-4). From memory.
    told = decide(LIMIT, Measured(1.0 - 1.645 * U, U, "ratio"), guard_factor=1.645)
    assert told.kind == "shown"
    assert told.chance_of_wrong_pass == pytest.approx(0.05, abs=1e-4)


def test_between_the_bands_nothing_is_claimed() -> None:
    # ISO 14253-1:2017: inside the uncertainty range neither conformity nor non-conformity is proved. From
    # memory.
    for value in (1.0 - 1.9 * U, 1.0, 1.0 + 1.9 * U):
        assert decide(LIMIT, Measured(value, U, "ratio")).kind == "not shown"
    assert decide(LIMIT, Measured(1.0 + 2.1 * U, U, "ratio")).kind == "failed"
