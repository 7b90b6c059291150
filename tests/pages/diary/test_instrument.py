"""The instrument of a typed reading: offered where it measures such a thing, and its uncertainty is used."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.shop.acts.add_instrument import Known, add_instrument
from spoolwright.shop.acts.retire_instrument import retire_instrument
from tests.pages.diary.at_the_desk import (
    PULL,
    arrived,
    file,
    form,
    last,
    pull_csv,
    send,
    text,
    typed_way,
    way,
)
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_without_instruments_nothing_is_asked(bench: Client, torbal: Any) -> None:
    assert "Taken with" not in text(bench.get(typed_way(arrived(torbal), "end_float")))


def test_only_those_that_measure_such_a_thing_are_offered(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    walk.caliper(torbal)
    assert "The long caliper (C1)" in text(bench.get(typed_way(visit, "end_float")))
    assert "The long caliper" not in text(bench.get(typed_way(visit, "mass")))
    assert "The long caliper" not in text(bench.get(typed_way(visit, "feel")))


def test_its_uncertainty_is_used_and_its_name_is_read(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    tool = walk.caliper(torbal)
    send(bench, typed_way(visit, "end_float"), values="0.42 mm")
    usual = last(visit).part.values.get(repeat=0).standard_uncertainty_si
    send(bench, typed_way(visit, "end_float"), values="0.42 mm", instrument="C1")
    own = last(visit).part
    assert own.instrument == tool
    assert own.values.get(repeat=0).standard_uncertainty_si > usual
    assert "With: caliper C1." in text(bench.get(f"/diary/{visit.tag}/"))
    assert form(bench.get(typed_way(visit, "end_float"))).initial["instrument"] == "C1"


def test_one_that_was_put_away_is_not_taken(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    walk.caliper(torbal, "C2")
    retire_instrument(hand=torbal, instrument=walk.caliper(torbal), why="lost")
    response = send(bench, typed_way(visit, "end_float"), values="0.42 mm", instrument="C1")
    assert response.status_code == 422


def test_a_pull_is_taken_with_a_scale_of_the_shops_own(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    known = Known("Hanging scale", 0.1, limit=2.0, share=0.01)
    tool = add_instrument(hand=torbal, mark="S1", kind="hanging-scale", known=known)
    kept = form(send(bench, way(visit, "pull"), "look", signal=file(pull_csv()), **PULL)).file.last.pk
    send(bench, way(visit, "pull"), signal_kept=kept, **PULL)
    usual = last(visit).part
    send(bench, way(visit, "pull"), signal_kept=kept, gauge_own="S1", **PULL)
    own = last(visit).part
    assert (usual.instrument, own.instrument) == (None, tool)
    run = [one.values.get(kind="pull_run").standard_uncertainty_si for one in (usual, own)]
    assert run[1] > run[0] + 0.5
    assert "With: hanging scale S1." in text(bench.get(f"/diary/{visit.tag}/"))
    send(bench, way(visit, "pull"), signal_kept=kept, **PULL)
    again = f"{way(visit, 'pull')}?again={own.entry.pk}"
    assert form(bench.get(again))["gauge_own"].value() == "S1"
    retire_instrument(hand=torbal, instrument=tool, why="lost")
    add_instrument(hand=torbal, mark="S2", kind="hanging-scale", known=known)
    assert form(bench.get(again))["gauge_own"].value() == ""
