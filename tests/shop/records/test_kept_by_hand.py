"""What is kept of a part measured by hand comes back as it was, through JSON."""

from __future__ import annotations

import json
import math
from dataclasses import replace

import pytest

from spoolwright.judgement.guard_band import Limits
from spoolwright.shop.records.kept_by_hand import from_data
from tests.shop import walk

KEPT = walk.by_hand().kept


@pytest.mark.parametrize(
    "kept",
    [
        KEPT,
        replace(KEPT, limits=Limits(high=1e-4, reject_high=2e-4)),
        replace(KEPT, limits=None, call=None, new=None, new_source=""),
    ],
)
def test_it_comes_back_as_it_was(kept: object) -> None:
    data = json.loads(json.dumps(kept.as_data(), allow_nan=False))  # type: ignore[attr-defined]
    assert from_data(data) == kept


def test_an_end_without_a_limit_stays_open() -> None:
    back = from_data(KEPT.as_data())
    assert back is not None
    assert back.limits is not None
    assert back.limits.high == math.inf


def test_other_signals_are_not_taken_for_it() -> None:
    assert from_data({"signal": "pull"}) is None
    assert from_data({}) is None
