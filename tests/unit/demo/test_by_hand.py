"""A disc measured in the story of the pier reel: near its limit, with the caliper named."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from spoolwright.demo import shelf
from spoolwright.demo.scenarios import pier_reel
from spoolwright.shop.models import Reading
from spoolwright.shop.questions.by_hand import by_hand_of
from tests.unit.demo.conftest import TUESDAY


def test_the_disc_of_the_pier_reel_is_too_close_to_call(shop: Any, tell: Callable[..., list[Any]]) -> None:
    tell(pier_reel.story(shop, TUESDAY))
    reading = Reading.objects.get(way="by hand")
    assert reading.instrument.mark == shelf.CALIPER
    kept = by_hand_of(reading)
    assert kept
    assert kept.call
    assert kept.call.verdict == "too close to call"
    assert [value.value_si for value in reading.values.filter(repeat__gt=0)] == [0.66e-3, 0.65e-3, 0.65e-3]
