"""Kinds of instrument: whole, sourced, and measuring what the house can write down."""

from __future__ import annotations

import pytest

from spoolwright.quantities import DIMENSIONS
from spoolwright.sheets import instrument_kinds
from spoolwright.sheets.instrument_kinds import InstrumentKind, step_dimension
from spoolwright.shop.records.reading import WAYS

EVERY = list(instrument_kinds.kinds().values())


def test_the_shop_of_the_handbook_finds_its_own_in_the_list() -> None:
    needed = {
        "caliper",
        "feeler-gauge",
        "dial-indicator",
        "hanging-scale",
        "kitchen-scale",
        "stopwatch",
        "phone",
    }
    assert needed <= set(instrument_kinds.kinds())


@pytest.mark.parametrize("kind", EVERY, ids=lambda k: k.id)
def test_every_kind_has_its_size_its_source_and_a_way_to_check_it(kind: InstrumentKind) -> None:
    assert kind.title
    assert kind.check.endswith((".", ")"))
    assert set(kind.dimensions) <= set(DIMENSIONS)
    assert kind.resolution >= 0
    assert kind.resolution or kind.limit or kind.share
    assert kind.source
    if kind.how == "judgement prior":
        assert "DIN" not in kind.source


def test_what_records_a_signal_by_itself_says_which() -> None:
    takes = {key: kind.takes for key, kind in instrument_kinds.kinds().items() if kind.takes}
    assert set(takes) == {"phone", "recorder"}
    assert "swing" not in takes["recorder"]
    assert {way for ways in takes.values() for way in ways} - {"swing"} <= set(WAYS)


def test_a_step_of_temperature_is_no_temperature() -> None:
    assert step_dimension("temperature") == "temperature_step"
    assert step_dimension("length") == "length"
    assert instrument_kinds.kind("thermometer").resolution == pytest.approx(0.1)


def test_an_unknown_kind_lists_the_known_ones() -> None:
    with pytest.raises(KeyError, match=r"luck.*caliper"):
        instrument_kinds.kind("luck")
