"""Friction discs that wear thin."""

from __future__ import annotations

import numpy as np

from spoolwright.judgement.disc_wear import disc_faces
from spoolwright.judgement.narrowing import know, then
from spoolwright.judgement.reel_state import after
from spoolwright.judgement.works import chosen
from spoolwright.judgement.worn_face import Face, Use, common_draws
from spoolwright.sheets import reel_sheet

DRAWS = common_draws(300, 1)
OLD = reel_sheet.load("tarvak-52")
KNOWN = know(OLD, {}, samples=300, seed=1)


def faces(works: tuple[str, ...] = (), **use: float) -> tuple[Face, ...]:
    state = after(KNOWN.state, OLD, chosen(works, OLD.reel.kind))
    return disc_faces(OLD, state, Use(**use), DRAWS, then(KNOWN, state))


def test_felt_wears_faster_than_carbon() -> None:
    felt, carbon = faces()[0], faces(("carbon-drag-set",))[0]
    assert felt.made_of == "felt, greased"
    assert "carbon" in carbon.made_of
    assert float(np.median(felt.per_week)) > 20 * float(np.median(carbon.per_week))


def test_twice_the_line_against_twice_the_drag_is_four_times_the_wear() -> None:
    assert np.allclose(faces(fish=40.0, fish_pull=40.0)[0].per_week, 4 * faces()[0].per_week)


def test_a_disc_slides_less_than_the_line_runs() -> None:
    assert float(faces()[0].slide[0]) < Use().fish / 4


def test_a_quarter_of_a_felt_disc_may_go() -> None:
    assert OLD.drag is not None
    thick = min(washer.thickness for washer in OLD.drag.stack if washer.material == "felt")
    assert float(faces()[0].limit[0]) == np.float64(0.25 * thick)
