"""Looking up what is thrown."""

from __future__ import annotations

from math import pi

import pytest

from spoolwright.sheets.payloads import payload_names, payload_shape


@pytest.mark.parametrize("name", payload_names())
def test_a_shape_is_a_set_of_ranges_that_make_sense(name: str) -> None:
    shape = payload_shape(name)
    assert 800 < shape.density.low <= shape.density.high < 12000
    assert 0.2 < shape.area_form.low <= shape.area_form.high < 7
    assert 0.1 < shape.drag.low < shape.drag.high < 1.3
    assert shape.title
    assert shape.note


def test_a_round_lead_has_the_area_of_a_sphere() -> None:
    volume = pi / 6
    assert payload_shape("ball lead").area_form.middle * volume ** (2 / 3) == pytest.approx(pi / 4, rel=1e-3)


def test_an_unknown_shape_lists_the_known_ones() -> None:
    with pytest.raises(KeyError, match="brick.*bomb lead"):
        payload_shape("brick")
