"""What is kept of a noise comes back as it was."""

import json

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.shop.records.kept_noise import BEARING, KeptNoise, noise_from

KEPT = KeptNoise(
    about=BEARING,
    place="spool shaft, gear side",
    speed=187.5,
    verdict="outer",
    confidence=0.9,
    evidence=("Lines stand.",),
    unit="Hz",
    named=(("outer ring", 107.3), ("cage", 11.9)),
    frequencies=(1.0, 107.25),
    swelling=(0.01, 0.8),
    low=500.0,
    high=5700.0,
    strength=Measured(0.8, 0.05, "ratio"),
    notes=("Two channels were averaged.",),
)


def test_it_comes_back_from_plain_data() -> None:
    assert noise_from(json.loads(json.dumps(KEPT.as_data()))) == KEPT


@pytest.mark.parametrize("data", [{}, {"signal": "spin"}])
def test_other_data_hold_no_noise(data: dict[str, str]) -> None:
    assert noise_from(data) is None
