"""What the trade knows of what gives next, through the whole chain: from sheet and works to the ladder.

The sheets are invented; the facts are the trade's: common practice, no source, where nothing else stands
beside a check. A ladder is held against them with its middles.
"""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright import quantities
from spoolwright.judgement.frame_lean import shaft_slope
from spoolwright.judgement.line_check import HIGHEST_SHARE, LOWEST_SHARE
from spoolwright.judgement.load_ladder import Ladder, load_ladder
from spoolwright.judgement.loads import RECTANGLE_PLASTIC, ROUND_PLASTIC, SHEAR_YIELD
from spoolwright.mechanics import anti_reverse
from spoolwright.sheets import reel_sheet
from tests.reference.published import Published, each
from tests.unit.judgement.ladder_loads import changed, loads_of

KG = quantities.read("1 kg", "force")
TEXTBOOK = "any text on strength of materials, plastic bending and torsion; von Mises"
MEMORY = "from memory"


def ladder(sheet, works: list[str] | None = None, **more) -> Ladder:
    held = reel_sheet.load(sheet) if isinstance(sheet, str) else sheet
    return load_ladder(held, {}, works or [], samples=400, **more)


def plastic_over_elastic(width_at) -> float:
    """Plastic over elastic moment of a section 2 high, by its width at a height: numerically."""
    y = np.linspace(0.0, 1.0, 200_001)
    plastic, second = (2 * np.trapezoid(width_at(y) * part, y) for part in (y, y**2))
    return float(plastic / second)


CHECKS = [
    # The factors are printed; here they are also integrated from the shape of the section.
    Published("plastic factor, rectangle", lambda: RECTANGLE_PLASTIC, 1.5, 1e-12, TEXTBOOK, MEMORY),
    Published("plastic factor, round bar", lambda: ROUND_PLASTIC, 1.70, 0.005, TEXTBOOK, MEMORY),
    Published("yield in shear over tension", lambda: SHEAR_YIELD, 0.577, 0.0005, TEXTBOOK, MEMORY),
    # Trade, U28: a shaft of 5 instead of 4 mm is (5/4)^4 = 2.44 times stiffer (derived there).
    Published(
        "5 mm shaft over 4 mm, slope",
        lambda: (
            shaft_slope(changed("tarvak-52", shaft={"diameter": 4e-3}))
            / shaft_slope(changed("tarvak-52", shaft={"diameter": 5e-3}))
        ),
        2.44,
        0.05,
        "trade, U28",
        "derived",
    ),
]


@each(CHECKS)
def test_published(check: Published) -> None:
    check.agrees()


def test_the_plastic_factors_are_those_of_the_sections() -> None:
    # A rival way to the textbook's factors: the section cut into strips.
    assert plastic_over_elastic(np.ones_like) == pytest.approx(RECTANGLE_PLASTIC, rel=1e-6)
    circle = plastic_over_elastic(lambda y: np.sqrt(1 - y**2))
    assert circle == pytest.approx(ROUND_PLASTIC, rel=1e-4)


def test_a_catalogue_s_roller_clutch_lies_in_the_band() -> None:
    """Drawn-cup roller clutch for a 10 mm shaft, 12 wide: 5.3 N m (general catalogue, from memory)."""
    low, high = (anti_reverse.roller_clutch_torque(8, 2e-3, 8e-3, 5e-3, p) for p in (2.5e9, 4.0e9))
    assert low < 5.3 < high


@pytest.mark.parametrize("slug", ["tarvak-52", "tarvak-58r", "tarvak-54c", "pellmar-70"])
def test_as_built_the_drag_gives_first(slug: str) -> None:
    # Common practice, no source: the drag is there so that nothing else gives.
    found = ladder(slug)
    assert found.drag_first
    assert found.enough


def test_after_a_carbon_set_the_main_gear_and_the_anti_reverse_are_next() -> None:
    # Trade, U15: felt or fibre to carbon, next weakest: main gear, anti-reverse.
    found = ladder("tarvak-58r", ["carbon-drag-set"])
    behind = [one.part for one in found.rungs if one.borne == "reel"]
    assert set(behind[:2]) <= {"main gear", "gear flanks", "anti-reverse"}
    assert found.enough
    # The demo's pier reel gave 6.9 kg after it (invented reading): the ladder carries that.
    assert found.most.middle > 6.9 * KG


def test_one_more_pair_pulls_six_fifths_and_takes_the_margin_down_with_it() -> None:
    # Common practice, no source (trade, U18): pull goes with the number of slipping pairs, 5 to 6 here.
    built, more = ladder("tarvak-58r"), ladder("tarvak-58r", ["under-gear-disc"])
    assert more.drag.limit.middle / built.drag.limit.middle == pytest.approx(6 / 5, rel=1e-6)
    assert built.margin.middle / more.margin.middle == pytest.approx(6 / 5, rel=0.02)
    assert more.weakest.part in {"main gear", "gear flanks", "anti-reverse", "drive shaft"}


def test_a_harder_pinion_leaves_the_softer_main_gear_next() -> None:
    # Trade, U23: stainless pinion with a brass main gear; next weakest: the main gear, being softer.
    sheet = changed("tarvak-52", gears={"pinion_material": "precipitation-hardened stainless steel"})
    found = ladder(sheet)
    assert found.weakest.part in {"main gear", "gear flanks"}
    assert "brass" in found.weakest.mark


def test_a_full_steel_gear_set_leaves_anti_reverse_or_shaft_next() -> None:
    # Trade, U24: full stainless gears; next weakest: anti-reverse, shaft, foot.
    steel = "precipitation-hardened stainless steel"
    found = ladder(changed("tarvak-58r", gears={"main_material": steel, "pinion_material": steel}))
    assert found.weakest.part in {
        "anti-reverse",
        "drive shaft",
        "spool shaft",
        "spool bearings",
        "foot screws",
    }


def test_the_finer_teeth_of_a_higher_ratio_give_sooner() -> None:
    # Trade, 6.2: high-speed gears have smaller teeth and strip. Same centre distance, finer module.
    finer = 0.65e-3 * (51 + 10) / (56 + 9)
    fast = changed("tarvak-58r", gears={"main_teeth": 56, "pinion_teeth": 9, "module": finer})

    def teeth(sheet) -> float:
        rungs = ladder(sheet).rungs
        return min(one.limit.middle for one in rungs if one.part in ("main gear", "pinion", "gear flanks"))

    assert teeth(fast) < teeth("tarvak-58r")


def test_a_line_too_strong_for_the_reel_protects_nothing() -> None:
    # Trade, 6.2: a 23 kg braid asks 5.75 to 7.6 kg of a 5 kg reel: gears, anti-reverse, shaft give before it.
    strong = ladder("ostrell-s71", line="braid 0.33 mm 23 kg")
    asked = [share * 23 for share in (LOWEST_SHARE, HIGHEST_SHARE)]
    assert asked == pytest.approx([5.75, 7.59])
    assert strong.drag.limit.middle == pytest.approx(5.0 * KG, rel=0.1)
    assert strong.drag_set.limit.middle == pytest.approx(strong.drag.limit.middle, rel=0.02)
    knot = next(one for one in strong.rungs if one.part == "line")
    assert knot.limit.middle > strong.weakest.limit.middle
    # A line of 8 kg goes before the reel does, and the drag that suits it before the line.
    weak = ladder("ostrell-s71", line="braid 0.16 mm 8 kg")
    knot = next(one for one in weak.rungs if one.part == "line")
    assert weak.drag_set.limit.middle < knot.limit.middle < weak.weakest.limit.middle


def test_the_main_shaft_is_among_the_first_of_a_fixed_spool_reel() -> None:
    # Trade, F58: main shaft bent by heavy line and a tight drag, named one of the most common failures.
    behind = [one.part for one in ladder("lumvik-4000").rungs if one.borne == "reel"]
    assert behind.index("spool shaft") < 4


def test_thin_nylon_asks_most_of_the_flanges() -> None:
    # Trade, scenario of the beach caster: the next limit is the spool's flange under 0.35 nylon.
    assert ladder("tarvak-58r", line="nylon 0.35 mm").weakest_of_line.part == "flanges"


def test_nobody_breaks_a_line_with_a_drag_set_by_the_rule() -> None:
    # Common practice, no source: a drag at a quarter to a third leaves room for knot and jerk.
    for line in ("nylon 0.30 mm", "fluorocarbon 0.40 mm", "dacron 0.60 mm"):
        knot = next(one for one in ladder("pellmar-70", line=line).rungs if one.part == "line")
        assert knot.over.low > 1.25


def test_hand_force_is_that_of_the_lever() -> None:
    # Trade, U21 (published with its arithmetic): 5 kg at 22 mm, ratio 6.3, 80 %: 15.8 kg at a 55 mm arm.
    loads = loads_of(changed("tarvak-58r", gears={"main_teeth": 63, "pinion_teeth": 10}))
    hand = 5 * KG * loads.handle_torque * (0.022 / loads.radius) / 0.8 / 0.055
    assert hand / KG == pytest.approx(15.8, abs=0.1)
