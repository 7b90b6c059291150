"""Readings that are typed: tries, means, what the tool leaves open, and what is refused."""

import numpy as np
import pytest

from spoolwright.bench import typed
from spoolwright.bench.instrument import ByStudy, Instrument
from spoolwright.bench.unreadable import Unreadable
from spoolwright.quantities import NotAQuantity, read
from spoolwright.sheets import reading_kinds


def test_several_tries_give_their_mean() -> None:
    found = typed.read("click_pull", "210 g; 230 g; 250 g")
    assert found.measured.value == pytest.approx(read("230 g", "force"))
    assert found.tries == pytest.approx([read(f"{n} g", "force") for n in (210, 230, 250)])


def test_scatter_and_tool_add_in_squares() -> None:
    found = typed.read("click_pull", "210 g; 230 g; 250 g")
    tool = reading_kinds.kind("click_pull").standard_uncertainty(found.measured.value)
    # JCGM 100:2008, table G.2, from memory: t(2) at 95.45 % is 4.53, taken with k = 2.
    scatter = np.std(found.tries, ddof=1) / np.sqrt(3) * 4.527 / 2
    assert found.measured.uncertainty == pytest.approx(np.hypot(tool, scatter), rel=1e-3)
    assert {row.way for row in found.budget} == {"A", "B"}


def test_one_try_rests_on_the_tool_alone() -> None:
    found = typed.read("end_float", "0.42 mm")
    assert found.measured.uncertainty == pytest.approx(reading_kinds.kind("end_float").uncertainty)
    assert [row.way for row in found.budget] == ["B"]


def test_what_was_typed_coarsely_is_no_surer_than_its_last_digit() -> None:
    found = typed.read("end_float", "1 mm")
    assert found.measured.uncertainty == pytest.approx(1e-3 / np.sqrt(12))


def test_units_may_differ_from_try_to_try() -> None:
    found = typed.read("mass", "338 g; 0.338 kg")
    assert found.measured.value == pytest.approx(0.338)


def test_counts_must_agree() -> None:
    assert typed.read("teeth", "52; 52").measured.value == 52
    with pytest.raises(Unreadable, match=r"counts differ \(52; 53\)"):
        typed.read("teeth", "52; 53")


def test_a_temperature_may_be_below_zero_and_a_float_may_not() -> None:
    assert typed.read("temperature", "-10 °C").measured.value == pytest.approx(263.15)
    with pytest.raises(Unreadable, match="below zero"):
        typed.read("end_float", "-0.1 mm")


def test_a_score_stays_on_its_scale() -> None:
    assert typed.read("corrosion", "3").measured.value == 3
    with pytest.raises(Unreadable, match="not on the scale.*eaten away"):
        typed.read("corrosion", "7")


@pytest.mark.parametrize("text", ["", " ; ;", "0.42", "0.42 kg", "wide", "0.42 mm; 0.4", "nan mm"])
def test_no_value_no_unit_or_the_wrong_one_is_refused_with_what_is_accepted(text: str) -> None:
    with pytest.raises((NotAQuantity, Unreadable)) as refused:
        typed.read("end_float", text)
    assert refused.value.accepted  # type: ignore[attr-defined]


def test_the_refusal_speaks_the_units_of_the_person() -> None:
    with pytest.raises(NotAQuantity, match="for example in in"):
        typed.read("end_float", "wide", "imperial")


def test_more_tries_than_anybody_makes_are_refused() -> None:
    with pytest.raises(Unreadable, match="21 values"):
        typed.read("mass", "; ".join(["338 g"] * 21))


def test_a_kind_that_does_not_exist_is_refused() -> None:
    with pytest.raises(KeyError):
        typed.read("shininess", "3")


@pytest.mark.parametrize("kind", [k for k, it in reading_kinds.kinds().items() if it.way == "typed"])
def test_every_typed_kind_can_be_typed(kind: str) -> None:
    dimension = reading_kinds.kind(kind).dimension
    example = {"length": "1.5 mm", "mass": "338 g", "force": "210 g", "torque": "12 mN m", "angle": "8 deg"}
    others = {"count": "2", "score": "2", "ratio": "0.3", "temperature": "20 °C", "time": "31 s"}
    assert typed.read(kind, {**example, **others}[dimension]).measured.dimension == dimension


def test_an_instrument_of_the_shops_own_takes_the_place_of_the_usual_tool() -> None:
    fine = Instrument("caliper C1", "length", resolution=1e-5, limit=3e-5)
    usual, own = typed.read("caliper", "4.01 mm"), typed.read("caliper", "4.01 mm", instrument=fine)
    assert own.measured.value == usual.measured.value
    assert own.measured.uncertainty == pytest.approx(fine.measured("caliper", [4.01e-3]).measured.uncertainty)
    assert own.budget != usual.budget


def test_an_instrument_for_something_else_changes_nothing() -> None:
    scale = Instrument("scale", "mass", resolution=1e-3)
    assert typed.read("caliper", "4.01 mm", instrument=scale) == typed.read("caliper", "4.01 mm")


def test_the_way_it_is_taken_stays_until_a_study_has_seen_it() -> None:
    watch = Instrument("stopwatch W1", "time", resolution=0.01, limit=0.2)
    stated = typed.read("spin_time", "20 s", instrument=watch)
    assert stated.measured.uncertainty > 0.05 * 20
    studied = Instrument("stopwatch W1", "time", 0.01, 0.2, study=ByStudy(0.15, 0.1, 40))
    assert typed.read("spin_time", "20.00 s", instrument=studied).measured.uncertainty < 0.3


@pytest.mark.parametrize("tries", [2, 3])
@pytest.mark.parametrize("scatter", [5e-5, 1e-3])
def test_truth_in_truth_out_by_the_usual_tool(tries: int, scatter: float) -> None:
    """A size, its tool off by a draw, tries typed as the display rounds them: 95 % of the intervals hold it.

    Where they scatter as the tool does they hold it more often, never less: each part is widened alone.
    """
    rng = np.random.default_rng(5)
    tool = reading_kinds.kind("caliper").standard_uncertainty(0.02)
    trials = 400
    seen = 0.02 + rng.normal(0, tool, (trials, 1)) + rng.normal(0, scatter, (trials, tries))
    read_ = [typed.read("caliper", "; ".join(f"{1e3 * one:.2f} mm" for one in row)) for row in seen]
    held = np.mean([abs(one.measured.value - 0.02) <= one.measured.expanded for one in read_])
    # 400 throws of 0.9545: three standard deviations are 0.031.
    assert held > 0.923
    if scatter > 10 * tool:
        assert held == pytest.approx(0.9545, abs=0.031)
