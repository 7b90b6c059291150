"""The drag as heat meets it, for every kind of reel and after works."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.judgement.hot_stack import HEAT_DRAWS, HotStack, hot_stack, members
from spoolwright.judgement.monte_carlo import draw
from spoolwright.judgement.narrowing import know
from spoolwright.judgement.reel_state import after, as_built
from spoolwright.judgement.works import chosen
from spoolwright.sheets import reel_sheet

WITH_DRAG = [slug for slug in reel_sheet.shipped() if reel_sheet.load(slug).drag is not None]


def stack(slug: str, works: tuple[str, ...] = ()) -> HotStack:
    sheet = reel_sheet.load(slug)
    known = know(sheet, {}, samples=100, seed=1)
    state = after(as_built(sheet), sheet, chosen(works, sheet.reel.kind))
    friction = {f"{p.face_material}, {p.lubrication}": np.full(100, 0.15) for p in state.pairs}
    return hot_stack(sheet, state, {**known.draws, **friction, **draw(HEAT_DRAWS, samples=100, seed=2)})


@pytest.mark.parametrize("slug", WITH_DRAG)
def test_every_slipping_pair_is_a_place_where_heat_is_born(slug: str) -> None:
    sheet = reel_sheet.load(slug)
    found = stack(slug)
    discs, slips = members(sheet, as_built(sheet))
    assert len(found.layers) == len(discs) == len(found.soft)
    assert len(slips) == len(as_built(sheet).pairs)
    assert sum(np.asarray(face.share) for face in found.faces) == pytest.approx(np.ones(100))
    assert found.limits.shape == (100, len(found.faces))
    assert all(np.all(np.asarray(layer.loss) >= 0) for layer in found.layers)


def test_a_loose_disc_slips_on_either_side_and_both_together_make_its_pair() -> None:
    found = stack("tarvak-52")
    first, second = (np.asarray(face.share) for face in found.faces[:2])
    assert first + second == pytest.approx(np.full(100, 1 / 3), rel=1e-9)
    assert np.min(first) < 0.05 < 0.25 < np.max(first)


def test_carbon_in_the_place_of_felt_conducts_better_and_stands_more() -> None:
    felt, carbon = stack("tarvak-52"), stack("tarvak-52", ("carbon-drag-set",))
    assert felt.materials == ("felt",)
    assert carbon.materials == ("woven carbon",)
    assert np.all(np.asarray(carbon.layers[1].conductivity) > np.asarray(felt.layers[1].conductivity))
    assert np.min(carbon.limits) > np.max(felt.limits)


def test_a_pair_that_a_work_adds_lies_under_the_gear() -> None:
    sheet = reel_sheet.load("tarvak-52")
    plain, more = stack("tarvak-52"), stack("tarvak-52", ("under-gear-disc",))
    assert len(more.layers) == len(plain.layers) + 2
    assert len(more.faces) == len(plain.faces) + 2
    assert members(sheet, as_built(sheet))[0][0].name == "main gear"
    assert more.names[0].startswith("plate under the gear")


def test_the_spool_of_a_lever_drag_takes_the_heat_of_its_face() -> None:
    lever, star = stack("pellmar-30-2"), stack("pellmar-70")
    assert len(lever.bodies) == 3
    assert len(star.bodies) == 2
    assert np.median(np.asarray(lever.bodies[2].heat_capacity)) > 100


def test_metal_is_cut_coarser_than_what_lies_between() -> None:
    assert stack("tarvak-52").cells(3, 1) == [1, 3, 1, 3, 1, 3, 1]
