"""A sheet's versions are numbered, kept as typed, and one hand's version does not cover another's."""

from __future__ import annotations

import hashlib
from typing import Any

import pytest

from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.add_sheet_version import SheetWasFaulty, add_sheet_version
from spoolwright.shop.acts.refused import SomeoneElseWroteFirst
from spoolwright.shop.questions import reel_sheets
from spoolwright.shop.records.reel_sheet import Sheet
from tests import people
from tests.shop.at_once import at_once

TOML = reel_sheet.shipped()["tarvak-58r"]


@pytest.mark.django_db
def test_every_version_stays(hand: Any) -> None:
    first = add_sheet_version(hand=hand, toml=TOML)
    second = add_sheet_version(hand=hand, toml=TOML + "# width measured again\n", after=1, words="measured")
    assert [v.number for v in reel_sheets.versions("tarvak-58r")] == [2, 1]
    assert (first.number, second.number, first.toml) == (1, 2, TOML)
    assert second.sha256 == hashlib.sha256(second.toml.encode()).hexdigest()
    assert reel_sheets.version("tarvak-58r") == second
    assert reel_sheets.version("tarvak-58r", 1) == first
    assert reel_sheets.version("tarvak-58r", 7) is None
    assert reel_sheets.version("unheard-of") is None
    assert reel_sheets.read(second) == reel_sheet.read(TOML)


@pytest.mark.django_db
def test_the_same_text_again_is_no_new_version(hand: Any) -> None:
    assert add_sheet_version(hand=hand, toml=TOML) == add_sheet_version(hand=hand, toml=TOML)
    (in_use,) = reel_sheets.all_sheets()
    assert (in_use.sheet.slug, in_use.latest) == ("tarvak-58r", 1)


@pytest.mark.django_db
def test_a_faulty_sheet_is_refused_with_every_fault(hand: Any) -> None:
    for text in ("not a sheet", TOML.replace("[spool]", "[spoool]"), ""):
        with pytest.raises(SheetWasFaulty) as refusal:
            add_sheet_version(hand=hand, toml=text)
        assert refusal.value.faults
        assert all(fault.where and fault.accepted for fault in refusal.value.faults)
    assert not Sheet.objects.exists()


@pytest.mark.django_db
def test_the_second_screen_is_told(hand: Any, owner: Any) -> None:
    add_sheet_version(hand=hand, toml=TOML)
    add_sheet_version(hand=owner, toml=TOML + "# one\n", after=1)
    with pytest.raises(SomeoneElseWroteFirst):
        add_sheet_version(hand=hand, toml=TOML + "# two\n", after=1)


def test_two_at_once_are_two_versions(own_database: None) -> None:
    hand = people.bench_hand()
    add_sheet_version(hand=hand, toml=TOML)
    at_once([lambda n=n: add_sheet_version(hand=hand, toml=f"{TOML}# {n}\n") for n in range(3)])
    assert [v.number for v in reel_sheets.versions("tarvak-58r")] == [4, 3, 2, 1]
