"""An instrument is put on the list with its mark, once, and with what cannot be refused."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.add_instrument import Known, MarkWasTaken, add_instrument
from spoolwright.shop.acts.refused import FieldWasRefused, WordsWereMissing
from spoolwright.shop.records.instrument import Instrument
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_it_is_kept_with_its_first_version(hand: Any) -> None:
    kept = walk.caliper(hand)
    version = kept.versions.get()
    assert (kept.mark, kept.kind, kept.dimension) == ("C1", "caliper", "length")
    assert (version.number, version.resolution_si, version.limit_si, version.retired) == (
        1,
        1e-5,
        3e-5,
        False,
    )


def test_a_mark_stands_once_whatever_its_letters(hand: Any) -> None:
    walk.caliper(hand, "C1")
    with pytest.raises(MarkWasTaken, match="c1"):
        walk.caliper(hand, "c1")


@pytest.mark.parametrize(
    ("known", "field"),
    [
        (Known("it", -1e-5), "resolution"),
        (Known("it", 0.0), "resolution"),
        (Known("it", 1e-5, limit=-1e-5), "limit"),
        (Known("it", 1e-5, share=float("nan")), "share"),
        (Known("it", 1e-5, low=0.1, high=0.1), "high"),
        (Known("", 1e-5), "name"),
    ],
)
def test_what_cannot_be_is_refused_and_nothing_is_left(hand: Any, known: Known, field: str) -> None:
    with pytest.raises((FieldWasRefused, WordsWereMissing)) as told:
        add_instrument(hand=hand, mark="C1", kind="caliper", known=known)
    assert told.value.field == field
    assert not Instrument.objects.exists()


def test_its_kind_and_what_it_measures_are_closed_lists(hand: Any) -> None:
    with pytest.raises(FieldWasRefused, match=r"hanging-scale"):
        add_instrument(hand=hand, mark="X", kind="luck", known=Known("it", 1.0))
    with pytest.raises(FieldWasRefused, match=r"Caliper measures length"):
        add_instrument(hand=hand, mark="X", kind="caliper", known=Known("it", 1.0), dimension="mass")
    with pytest.raises(WordsWereMissing):
        add_instrument(hand=hand, mark=" ", kind="caliper", known=Known("it", 1.0))


def test_a_phone_measures_more_than_one_thing(hand: Any) -> None:
    kept = add_instrument(hand=hand, mark="P", kind="phone", known=Known("phone", 0.01), dimension="time")
    assert kept.dimension == "time"
