"""Knot, arbor, flanges."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.judgement.line_rungs import line_rungs
from tests.unit.judgement.ladder_loads import changed, loads_of, middles

KG = 9.80665


def of(sheet, line: str, fill: float = 1.0) -> dict[str, float]:
    return middles(line_rungs(loads_of(sheet, line, fill)))


def test_no_line_no_rung() -> None:
    assert line_rungs(loads_of("tarvak-52")) == []


def test_a_knot_keeps_its_share() -> None:
    knot = next(r for r in line_rungs(loads_of("tarvak-52", "braid 0.25 mm 20 kg")) if r.part == "line")
    kept = loads_of("tarvak-52", "braid 0.25 mm").line.material.knot
    assert 19 * KG * kept.low <= knot.pull.min() < knot.pull.max() <= 21 * KG * kept.high


def test_thicker_line_presses_less_for_the_same_pull() -> None:
    thick, thin = (of("tarvak-52", f"nylon {d} mm") for d in (0.5, 0.25))
    assert thick["arbor"] > thin["arbor"]
    assert thick["flanges"] > thin["flanges"]


def test_a_stouter_spool_stands_more() -> None:
    stout = changed("tarvak-52", spool={"wall": 3.2e-3, "flange_thickness": 3.2e-3})
    assert of(stout, "nylon 0.3 mm")["flanges"] == pytest.approx(
        4 * of("tarvak-52", "nylon 0.3 mm")["flanges"], rel=0.01
    )
    assert of(stout, "nylon 0.3 mm")["arbor"] > 1.6 * of("tarvak-52", "nylon 0.3 mm")["arbor"]


def test_braid_presses_by_the_mild_end() -> None:
    """Common practice, no source: sound spools stand braid wound on at 1 to 1.5 kg, a third of its drag."""
    braid = of("tarvak-58r", "braid 0.25 mm")
    assert 0.34 * min(braid["arbor"], braid["flanges"]) > 0.8 * KG


def test_a_spool_without_walls_or_an_empty_one_has_only_its_knot() -> None:
    assert set(of(changed("tarvak-52", spool={"wall": None}), "nylon 0.3 mm")) == {"line"}
    assert set(of("tarvak-52", "nylon 0.3 mm", fill=0.0)) == {"line"}


def test_all_of_it_hangs_on_the_line() -> None:
    limits = line_rungs(loads_of("tarvak-52", "nylon 0.3 mm"))
    assert {limit.borne for limit in limits} == {"line"}
    assert all(np.all(limit.pull > 0) for limit in limits)
