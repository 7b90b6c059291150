"""Which coefficients a state speaks of, and what the sheets say of each."""

from __future__ import annotations

import pytest

from spoolwright.judgement import book_kinds
from spoolwright.judgement.free_spin import SPIN_DRAWS
from spoolwright.judgement.monte_carlo import Triangular
from spoolwright.judgement.reel_state import after, as_built, as_found
from spoolwright.judgement.works import all_works
from spoolwright.sheets import materials, reel_sheet

SHEET = reel_sheet.load("tarvak-58r")
FACTORS = {
    name: drawn for name, drawn in SPIN_DRAWS.items() if isinstance(drawn, Triangular) and "_factor" in name
}


@pytest.mark.parametrize(
    ("works", "condition"),
    [((), "as found"), (("dress-drag",), "in order"), (("carbon-drag-set",), "new discs")],
)
def test_the_condition_of_a_stack_follows_the_works(works: tuple[str, ...], condition: str) -> None:
    state = after(as_found(SHEET), SHEET, [all_works()[name] for name in works])
    assert book_kinds.condition_of(state) == condition
    (kind,) = book_kinds.friction_kinds(state).values()
    assert kind.title.endswith(f"{condition}, as the pull shows it")


def test_the_prior_of_friction_is_the_range_of_its_material() -> None:
    (kind,) = book_kinds.friction_kinds(as_built(SHEET)).values()
    name, wet = kind.draws.split(", ")
    held = materials.friction_material(name).friction(wet)
    assert (kind.low, kind.high, kind.mark) == (held.low, held.high, held.how)


def test_a_start_up_range_is_shared_between_not_knowing_and_reel_to_reel() -> None:
    kind = book_kinds.start_kind(as_built(SHEET))
    assert kind is not None
    whole = book_kinds.log_deviation(kind.low, kind.high)
    assert kind.spread**2 + kind.within**2 == pytest.approx(whole**2)


def test_grease_and_oil_have_priors_of_their_own() -> None:
    oil, grease = (book_kinds.bearing_kind("hybrid", name, FACTORS) for name in ("O1", "G1"))
    assert (oil.draws, grease.draws) == ("oil_factor", "grease_factor")
    assert grease.middle > oil.middle


def test_keys_are_fit_for_an_address() -> None:
    assert book_kinds.slug("start-up", "woven carbon, dry and felt, greased") == (
        "start-up-woven-carbon-dry-and-felt-greased"
    )


def test_a_range_without_width_has_no_spread() -> None:
    assert book_kinds.log_deviation(1.0, 1.0) == 0.0
