"""A reading sheet of every way of reading: what is on it comes from the ink, and nothing is left out."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from spoolwright.bench import spin_clock, typed
from spoolwright.bench.spin_clock import with_clock
from spoolwright.pages.gathered import reading_sheet
from spoolwright.pages.words import when
from spoolwright.papers import reading_sheet as paper
from spoolwright.sheets import hand_guides
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.add_instrument import Known, add_instrument
from spoolwright.shop.acts.check_instrument import HeldAgainst, check_instrument
from spoolwright.shop.acts.take_by_hand import take_by_hand
from spoolwright.shop.acts.take_inertia import take_inertia
from spoolwright.shop.acts.take_noise import take_noise
from spoolwright.shop.acts.take_reading import Signal, Value, take_reading
from spoolwright.shop.acts.take_spin import take_spin
from spoolwright.shop.questions.diary import diary
from tests.pages import pier_reel
from tests.shop import walk
from tests.shop.acts.test_take_inertia import fell
from tests.shop.acts.test_take_spin import FREE, spun
from tests.shop.records.test_kept_noise import KEPT
from tests.unit.papers import pdf


def sheet_of(visit: Any, entry: Any, shop: Any, system: str = "metric") -> paper.ReadingSheet:
    return reading_sheet.gathered(diary(visit.pk), entry, shop, system)


def test_what_was_typed_has_its_tries_and_their_budget(hand: Any, shop: Any) -> None:
    visit = walk.arrived(hand)
    tries = [Value("mass", g / 1000, "mass", repeat=k) for k, g in enumerate((338.0, 339.0), 1)]
    stated = typed.read("mass", "338 g; 339 g").measured.uncertainty
    result = Value("mass", 0.3385, "mass", stated, "338 g; 339 g")
    entry = take_reading(hand=hand, visit=visit, values=[result, *tries], conditions={"line": "on"}).entry
    told = sheet_of(visit, entry, shop)
    assert told.number == f"{visit.tag}-R{entry.seq}"
    assert told.title.endswith(": mass")
    assert "mean of 338" in told.results[0].remark
    assert [row.source for row in told.budget] == [
        "scatter of 2 tries, widened for their number",
        "kitchen scale that shows 1 g",
    ]
    assert told.instruments == ()
    assert told.rule == ""
    facts = dict(told.facts)
    assert facts["state"] == "as received"
    assert facts["received"] == told.date
    assert facts["issued"] == when.dated(clock.today())
    assert "Torbal Kvie" in facts["read"]


def test_a_value_without_its_text_is_taken_as_it_was_stated(hand: Any, shop: Any) -> None:
    visit = walk.arrived(hand)
    entry = walk.read(hand, visit, "pull_full", 69.0, 0.5, "force").entry
    assert [row.source for row in sheet_of(visit, entry, shop).budget] == [reading_sheet.TYPED_AS]


def test_a_pull_has_its_trace_its_budget_and_its_statements(hand: Any, shop: Any) -> None:
    visit = walk.arrived(hand)
    entry = pier_reel.pull(hand, visit, 2.7, 1.5)
    told = sheet_of(visit, entry, shop)
    assert told.pictures[0].description.startswith("Pull trace")
    assert {row.result for row in told.budget} >= {"start-up pull", "running pull"}
    calls = {row.what: row.call for row in told.results}
    assert calls["Start-up ratio"] == "outside"
    assert "95 %" in told.rule
    assert any(words.startswith("Start-up pull") for words in told.method)


def test_a_spin_without_an_inertia_is_stated_per_inertia(hand: Any, shop: Any) -> None:
    visit = walk.arrived(hand)
    entry = take_spin(hand=hand, visit=visit, spin=spun(), conditions=FREE).entry
    told = sheet_of(visit, entry, shop)
    assert any("rad/s²" in row.amount for row in told.budget)
    assert told.pictures[0].description.startswith("Spin-down")


def test_an_inertia_has_its_own_method_and_what_the_sheet_says(hand: Any, shop: Any) -> None:
    visit = walk.arrived(hand)
    entry = take_inertia(hand=hand, visit=visit, kept=fell(), conditions={"line": "off"}).entry
    told = sheet_of(visit, entry, shop)
    assert told.method[0].startswith("A thin thread is wound")
    assert any("of friction meanwhile" in line for line in told.said)
    assert any("friction torque" in row.result for row in told.budget)
    assert ("Height of the fall", "800.00\u00a0mm ±\u00a00.58\u00a0mm") in told.inputs
    assert told.budget[0].source.startswith("Time of the heavier one’s fall")


def test_a_size_by_hand_names_its_instrument_and_its_last_check(hand: Any, shop: Any) -> None:
    visit, tool = walk.arrived(hand), walk.caliper(hand)
    held = HeldAgainst("gauge block", 0.01, 0.01001, 1e-6)
    check_instrument(hand=hand, instrument=tool, held=held)
    taken = replace(walk.by_hand(), instrument=tool)
    entry = take_by_hand(hand=hand, visit=visit, taken=taken, conditions={}).entry
    told = sheet_of(visit, entry, shop)
    (instrument,) = told.instruments
    assert instrument.name == "The long caliper (C1)"
    checked = instrument.checked.replace("\u00a0", " ")
    assert "against gauge block: 10.010 mm for 10.000 mm" in checked
    assert "stated to ± 0.03" in instrument.accuracy.replace("\u00a0", " ")
    assert told.results[0].call == "inside"
    assert told.method == (hand_guides.guide(taken.kept.guide).how,)


def test_a_spin_names_its_phone_and_what_is_known_of_its_clock(hand: Any, shop: Any) -> None:
    visit = walk.arrived(hand)
    known = Known("The bench phone", 0.001, share=0.0001)
    tool = add_instrument(hand=hand, mark="P1", kind="phone", known=known, dimension="time")
    held = HeldAgainst("the time signal", 600.0, 600.02, 0.02)
    check_instrument(hand=hand, instrument=tool, held=held)
    heard = Signal(instrument=tool)
    entry = take_spin(
        hand=hand, visit=visit, spin=with_clock(spun(), 0.0001), conditions=FREE, heard=heard
    ).entry
    told = sheet_of(visit, entry, shop)
    (instrument,) = told.instruments
    assert instrument.name == "The bench phone (P1)"
    checked = instrument.checked.replace("\u00a0", " ")
    assert "against the time signal: 600.0200 s for 600.0000 s" in checked
    assert any(row.source == spin_clock.WORDS for row in told.budget)
    assert "time to rest" in {row.result for row in told.budget}


def test_of_a_noise_the_instrument_is_told_as_what_it_is(hand: Any, shop: Any) -> None:
    visit = walk.arrived(hand)
    known = Known("The bench phone", 0.1, limit=0.5, share=0.01)
    tool = add_instrument(hand=hand, mark="P1", kind="phone", known=known, dimension="time")
    entry = take_noise(
        hand=hand, visit=visit, kept=KEPT, conditions={"place_measured": KEPT.place}, instrument=tool
    ).entry
    (instrument,) = sheet_of(visit, entry, shop).instruments
    said = instrument.accuracy.replace("\u00a0", " ")
    assert said == "shows 0.100 s; stated to ± 0.500 s; stated to ± 1.00 % of what it shows"


def test_after_work_the_state_says_so(hand: Any, shop: Any) -> None:
    visit = walk.agreed(hand)
    walk.worked(hand, visit)
    entry = walk.read(hand, visit, "pull_full", 69.0, 0.5, "force").entry
    assert dict(sheet_of(visit, entry, shop).facts)["state"].startswith("after the work: ")


@pytest.mark.parametrize("system", ["metric", "imperial"])
def test_each_can_be_set_in_either_units(hand: Any, shop: Any, system: str) -> None:
    visit = walk.arrived(hand)
    entry = take_inertia(hand=hand, visit=visit, kept=fell(), conditions={"line": "off"}).entry
    said = pdf.text(paper.render(sheet_of(visit, entry, shop, system)))
    assert ("oz in²" if system == "imperial" else "g cm²") in said.replace("\u00a0", " ")
    assert "End of reading sheet" in said
