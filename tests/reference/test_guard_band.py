"""Accept, reject, too close to call: against the standards' own factors and one worked example."""

from __future__ import annotations

import pytest
from scipy import stats

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.guard_band import SURE, Limits, call


def test_the_one_sided_factor() -> None:
    # ISO 14253-1:2017, from memory: probability 95 % unless agreed otherwise, one limit in reach: 1.645
    # (+-0.0005).
    assert call(Measured(0.0, 1.0, "length"), Limits(high=9.0)).guard == pytest.approx(1.645, abs=5e-4)
    assert stats.norm.ppf(SURE) == pytest.approx(1.645, abs=5e-4)


def test_voltage_of_a_diode() -> None:
    # JCGM 106:2012, example of a diode's breakdown voltage: -5.47 V, u 0.05 V, limit -5.40 V: chance of
    # conformance 0.92 (+-0.005). From memory. That is below 95 %, so by our rule it is too close to call.
    said = call(Measured(-5.47, 0.05, "ratio"), Limits(high=-5.40))
    assert said.chance_good == pytest.approx(0.92, abs=0.005)
    assert said.verdict == "too close to call"


def test_on_the_limit_nothing_is_known() -> None:
    # ILAC-G8:09/2019, 4.2.1: simple acceptance at the limit is wrong half of the time. Opened.
    assert call(Measured(1.0, 0.1, "length"), Limits(high=1.0)).chance_good == pytest.approx(0.5)


@pytest.mark.parametrize(("distance", "risk"), [(2.0, 0.025), (1.645, 0.05), (3.0, 0.00135)])
def test_the_risk_at_a_distance_from_the_limit(distance: float, risk: float) -> None:
    # ILAC-G8:09/2019, table 1 (guard band and specific risk): 2 u less than 2.5 %, 1.645 u 5 %, 3 u 0.16 %.
    # Opened in part; the numbers are those of the normal law (scipy.stats).
    said = call(Measured(1.0 - distance * 0.1, 0.1, "length"), Limits(high=1.0))
    assert said.chance_wrong is not None
    assert said.chance_wrong <= risk + 1e-4
    assert said.chance_wrong == pytest.approx(stats.norm.sf(distance))


def test_the_older_edition_is_stricter() -> None:
    # ISO 14253-1:1998/2013: conformity is proven only where the whole interval y +- U, k = 2, lies inside.
    # From memory. Whatever it accepts or rejects, the newer rule does too.
    for distance in (-2.5, -2.0, 2.0, 2.5):
        said = call(Measured(1.0 - distance * 0.1, 0.1, "length"), Limits(high=1.0))
        assert said.verdict == ("accept" if distance > 0 else "reject")
