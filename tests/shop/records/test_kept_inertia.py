"""A kept inertia comes back as it was put away, with its swing and without."""

from __future__ import annotations

import json

import pytest

from spoolwright.bench.budget import Contribution
from spoolwright.bench.uncertainty import Measured
from spoolwright.shop.records.kept_inertia import KeptInertia, KeptSwing, inertia_from
from spoolwright.shop.records.signals import pull_from, spin_from

SWING = KeptSwing(
    (0.0, 0.1), (1.0, -0.9), (0.99, -0.91), Measured(0.4, 1e-4, "time"), Measured(0.3, 0.01, "frequency")
)
KEPT = KeptInertia(
    method="spring",
    inertia=Measured(9.7e-6, 1e-7, "inertia"),
    inputs=(("Stiffness of the spring in twist", Measured(2.4e-3, 1e-5, "twist_stiffness")),),
    budget=(Contribution("spool_inertia", "Stiffness: last digit", "B", 1e-7),),
    notes=("Only 5 swings are in the record.",),
    sheet=Measured(9e-6, 5e-7, "inertia"),
    swing=SWING,
)
FELL = KeptInertia("fall", KEPT.inertia, (), (), friction=Measured(4e-5, 1e-6, "torque"))


@pytest.mark.parametrize("kept", [KEPT, FELL])
def test_it_comes_back_whole_from_the_column(kept: KeptInertia) -> None:
    assert inertia_from(json.loads(json.dumps(kept.as_data()))) == kept


def test_other_signals_are_not_taken_for_it_nor_it_for_them() -> None:
    assert inertia_from({"signal": "spin"}) is None
    assert inertia_from({}) is None
    assert pull_from(KEPT.as_data()) is None
    assert spin_from(KEPT.as_data()) is None
