"""A moment of inertia in ink: its value, its way, and what is kept of it."""

from __future__ import annotations

import pytest

from spoolwright.bench import inertia
from spoolwright.sheets import inertia_methods
from spoolwright.shop.acts.take_inertia import take_inertia
from spoolwright.shop.acts.take_reading import ConditionsWereMissing
from spoolwright.shop.questions.kept_inertia import KeptInertia, inertia_of, kept_inertia
from tests.people import bench_hand
from tests.shop.walk import arrived

pytestmark = pytest.mark.django_db


def fell() -> KeptInertia:
    given = {one.key: inertia.known(one, one.example) for one in inertia_methods.method("fall").asks}
    return kept_inertia("fall", inertia.read("fall", given))


def test_it_is_written_under_its_way_and_comes_back() -> None:
    hand, kept = bench_hand(), fell()
    written = take_inertia(hand=hand, visit=arrived(hand), kept=kept, conditions={"line": "off"})
    reading = written.entry.reading
    assert reading.way == "inertia"
    (value,) = reading.values.all()
    assert (value.kind, value.dimension) == ("spool_inertia", "inertia")
    assert value.value_si == kept.inertia.value
    assert value.standard_uncertainty_si == kept.inertia.uncertainty
    assert inertia_of(reading) == kept


def test_whether_the_line_was_on_has_to_be_said() -> None:
    hand = bench_hand()
    with pytest.raises(ConditionsWereMissing):
        take_inertia(hand=hand, visit=arrived(hand), kept=fell(), conditions={})
