"""A spool under tightly wound line."""

from __future__ import annotations

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.wound_line import wound_line
from spoolwright.quantities import NotAQuantity
from spoolwright.sheets import reel_sheet

PIER = reel_sheet.load("tarvak-58r")


def test_twice_the_tension_is_twice_the_pressure_and_the_same_limit() -> None:
    once, twice = (wound_line(PIER, {}, tension=tension) for tension in (5.0, 10.0))
    assert twice.pressure.middle == pytest.approx(2 * once.pressure.middle)  # type: ignore[union-attr]
    assert twice.mild == once.mild
    assert once.harsh < once.safe_tension.middle < once.mild  # type: ignore[union-attr]


def test_it_warns_once_any_rule_says_so() -> None:
    calm = wound_line(PIER, {}, tension=2.0)
    assert not calm.warnings
    tight = wound_line(PIER, {}, tension=1.1 * calm.mild)
    assert "by any published rule" in tight.warnings[0]
    near = wound_line(PIER, {}, tension=0.8 * calm.mild)
    assert "It may be" in near.warnings[0]


def test_nylon_is_warned_of_sooner_than_braid() -> None:
    nylon, braid = (
        wound_line(PIER, {}, line=line, tension=10.0) for line in ("nylon 0.35 mm", "braid 0.35 mm")
    )
    assert len(nylon.warnings) > len(braid.warnings)
    assert any("shrinks" in words for words in nylon.warnings)


def test_an_emptier_spool_is_pressed_less() -> None:
    full, half = (wound_line(PIER, {}, fill=fill).pressure for fill in (1.0, 0.3))
    assert half.middle < full.middle  # type: ignore[union-attr]


def test_a_measured_pack_closes_the_band() -> None:
    guessed, measured = (wound_line(PIER, {}, tension=10.0, anisotropy=a).pressure for a in (None, 10.0))
    assert measured.high / measured.low < 0.1 * guessed.high / guessed.low  # type: ignore[union-attr]


def test_without_a_line_the_one_that_was_measured_counts() -> None:
    readings = {"line_diameter": Measured(0.20e-3, 0.01e-3, "length")}
    assert "0.200 mm" in wound_line(PIER, readings, line="", tension=5.0).line


@pytest.mark.parametrize("slug", list(reel_sheet.shipped()))
def test_every_kind_of_reel_gets_an_answer(slug: str) -> None:
    found = wound_line(reel_sheet.load(slug), {})
    assert found.words or found.why_not


def test_walls_that_are_not_known_are_not_guessed() -> None:
    room = PIER.spool.model_copy(update={"wall": None})
    found = wound_line(PIER.model_copy(update={"spool": room}), {})
    assert "walls" in found.why_not
    assert found.safe_tension is None


def test_what_cannot_be_is_refused() -> None:
    with pytest.raises(ValueError, match="tension"):
        wound_line(PIER, {}, tension=-1.0)
    with pytest.raises(ValueError, match="fill"):
        wound_line(PIER, {}, fill=0.0)
    with pytest.raises(NotAQuantity):
        wound_line(PIER, {}, line="wool 3 mm")
