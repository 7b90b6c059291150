"""Spool shaft and bearings."""

from __future__ import annotations

from math import pi

import numpy as np
import pytest

from spoolwright.judgement.spool_rungs import spool_rungs
from spoolwright.sheets.materials import structural_material
from spoolwright.sheets.sheet_tables import ShaftStep
from tests.unit.judgement.ladder_loads import changed, loads_of, middles


def of(sheet) -> dict[str, float]:
    return middles(spool_rungs(loads_of(sheet)))


def test_a_plain_shaft_by_hand() -> None:
    """54C, no gears or steps: M = F gap (span - gap) / span, gap 10 of 52 mm; 1.70 pi d^3 / 32 yield."""
    bare = changed("tarvak-54c", shaft={"steps": ()}).model_copy(update={"gears": None})
    moment = 10e-3 * 42 / 52
    section = 16 / (3 * pi) * pi * 3e-3**3 / 32
    steel = structural_material("stainless steel").yield_strength.middle
    assert of(bare)["spool shaft"] == pytest.approx(section * steel / moment, rel=0.05)


def test_a_thicker_shaft_holds_with_its_cube() -> None:
    plain = changed("tarvak-52", shaft={"steps": ()})
    thicker = changed("tarvak-52", shaft={"steps": (), "diameter": 5e-3})
    assert of(thicker)["spool shaft"] == pytest.approx((5 / 4) ** 3 * of(plain)["spool shaft"], rel=1e-6)


def test_a_step_outside_the_hub_counts_by_its_own_section() -> None:
    cylinders = ((10e-3, 2.5e-3), (38e-3, 4e-3), (8e-3, 4e-3))
    steps = tuple(ShaftStep.model_construct(length=long, diameter=thick) for long, thick in cylinders)
    necked = changed("tarvak-52", shaft={"steps": steps})
    assert of(necked)["spool shaft"] < 0.6 * of("tarvak-52")["spool shaft"]


def test_a_pinion_on_the_shaft_presses_its_bearing_and_one_beside_it_hardly() -> None:
    assert of("tarvak-54c")["spool bearings"] > 150
    without = loads_of("tarvak-54c").sheet
    kept = tuple(bearing for bearing in without.bearings if "pinion" not in bearing.place)
    riding = without.model_copy(update={"bearings": kept})
    assert of(riding)["spool bearings"] < 0.6 * of("tarvak-54c")["spool bearings"]


def test_one_sided_spools_bend_with_their_overhang() -> None:
    near = changed("lumvik-4000", shaft={"overhang": 17.5e-3})
    assert of(near)["spool shaft"] == pytest.approx(2 * of("lumvik-4000")["spool shaft"], rel=0.02)
    assert (
        next(r for r in spool_rungs(loads_of("lumvik-4000")) if r.part == "spool shaft").name == "main shaft"
    )


def test_a_line_roller_carries_the_line_s_bend() -> None:
    roller = next(r for r in spool_rungs(loads_of("lumvik-4000")) if r.part == "bearing of the line roller")
    # C0 of a 4 x 7 x 2.5 mm bearing, 107 to 118 N in general catalogues, over 1.41 and a safety of 0.5 to 1.
    assert roller.pull.min() > 107 / 1.415 / 1.0
    assert roller.pull.max() < 118 / 1.413 / 0.5


def test_a_bearing_of_no_standard_size_has_no_rung() -> None:
    sheet = loads_of("tarvak-52").sheet
    size = sheet.bearings[0].size.__class__(4.1e-3, 10.4e-3, 4.4e-3)
    odd = tuple(bearing.model_copy(update={"size": size}) for bearing in sheet.bearings)
    assert "spool bearings" not in of(sheet.model_copy(update={"bearings": odd}))
    assert of(sheet.model_copy(update={"bearings": (), "shaft": None})) == {}


def test_a_shaft_that_turns_bears_less_for_its_life() -> None:
    shaft = next(r for r in spool_rungs(loads_of("tarvak-54c")) if r.part == "spool shaft")
    assert np.median(shaft.lasts) < np.median(shaft.pull)
