"""What must hold for any drag stack, however it was put together."""

from __future__ import annotations

from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from spoolwright.sheets.drag_stack import slipping_pairs
from spoolwright.sheets.sheet_tables import Washer

MATERIALS = ["woven carbon", "felt", "hard fibre", "stainless steel", "brass"]


def washer(turns_with: str, material: str, lubrication: str, outer: int, number: int = 0) -> Washer:
    return Washer.model_validate(
        {
            "name": f"washer {number}",
            "outer_diameter": f"{outer} mm",
            "inner_diameter": "8 mm",
            "thickness": "1 mm",
            "material": material,
            "turns_with": turns_with,
            "lubrication": lubrication,
        }
    )


def washers(turns_with: st.SearchStrategy[str]) -> st.SearchStrategy[Washer]:
    return st.builds(
        washer,
        turns_with,
        st.sampled_from(MATERIALS),
        st.sampled_from(["dry", "greased"]),
        st.integers(12, 40),
    )


ANY = washers(st.sampled_from(["gear", "shaft", "neither"]))
LOOSE = washers(st.just("neither"))
STACKS = st.lists(ANY, min_size=2, max_size=20)


@given(STACKS)
def test_there_is_one_pair_for_each_change_of_member_and_no_more(stack: list[Washer]) -> None:
    fixed = [w.turns_with for w in stack if w.turns_with != "neither"]
    changes = sum(a != b for a, b in pairwise(fixed))
    assert len(slipping_pairs(stack).pairs) == changes


@given(STACKS)
def test_turned_over_it_has_as_many_pairs_and_the_same_torque(stack: list[Washer]) -> None:
    def torque(order: list[Washer]) -> float:
        return sum(p.friction.middle * p.effective_radius for p in slipping_pairs(order).pairs)

    there, back = slipping_pairs(stack), slipping_pairs(stack[::-1])
    assert len(there.pairs) == len(back.pairs)
    assert abs(torque(stack) - torque(stack[::-1])) < 1e-12


@given(STACKS, st.lists(LOOSE, min_size=1, max_size=4), st.data())
def test_loose_washers_added_never_add_a_pair(
    stack: list[Washer], more: list[Washer], data: st.DataObject
) -> None:
    place = data.draw(st.integers(0, len(stack)))
    assert len(slipping_pairs([*stack[:place], *more, *stack[place:]]).pairs) == len(
        slipping_pairs(stack).pairs
    )


@given(STACKS, st.data())
def test_a_loose_washer_put_into_a_pair_never_makes_it_stronger(
    stack: list[Washer], data: st.DataObject
) -> None:
    """The weaker face slips, so another face can only lower what a boundary of friction material carries."""
    lining = washer("neither", "woven carbon", "greased", 40)
    lined = [lining if w.turns_with == "neither" else w for w in stack]
    loose = [place for place, w in enumerate(lined) if w is lining]
    if not loose:
        return
    place = data.draw(st.sampled_from(loose))
    before = slipping_pairs(lined).pairs
    after = slipping_pairs([*lined[:place], data.draw(LOOSE), *lined[place:]]).pairs
    assert len(before) == len(after)


@given(STACKS)
def test_every_face_lies_inside_both_of_its_discs(stack: list[Washer]) -> None:
    for pair in slipping_pairs(stack).pairs:
        assert 0 < pair.inner_radius < pair.effective_radius < pair.outer_radius
        assert pair.outer_radius <= max(w.outer_diameter for w in stack) / 2


@given(STACKS)
def test_a_stack_without_a_pair_says_so(stack: list[Washer]) -> None:
    reading = slipping_pairs(stack)
    assert bool(reading.pairs) or any("nothing, then locked" in w for w in reading.warnings)


@given(STACKS, st.data())
def test_two_neighbours_that_turn_alike_are_always_told(stack: list[Washer], data: st.DataObject) -> None:
    place = data.draw(st.integers(0, len(stack)))
    twins = [washer("shaft", "stainless steel", "dry", 20, number) for number in (101, 102)]
    told = slipping_pairs([*stack[:place], *twins, *stack[place:]]).warnings
    assert any("washer 101" in w and "washer 102" in w and "locked" in w for w in told)
