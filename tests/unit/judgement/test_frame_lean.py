"""The frame's lean, kept solved, and what it does to the teeth."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.judgement import frame_lean
from spoolwright.judgement.frame_lean import SIZES, edge_load, frame_sizes, shaft_slope, solved
from spoolwright.mechanics.frame import Lean, spool_axis_tilt
from spoolwright.sheets import reel_sheet
from tests.unit.judgement.ladder_loads import changed, loads_of

ON_PILLARS = [slug for slug in reel_sheet.shipped() if frame_sizes(reel_sheet.load(slug))]


def row(slug: str, sizes: tuple[float, ...], lean: Lean) -> str:
    """What frame_leans.toml has to say of this sheet."""
    said = ", ".join(f"{size:.6g}" for size in sizes)
    values = "\n".join(f"{name} = {value:.5e}" for name, value in lean._asdict().items())
    return f'[[leans]]\nsheet = "{slug}"\nsizes = [{said}]\n{values}\n'


def afresh(sizes: tuple[float, ...]) -> Lean:
    told = dict(zip(SIZES, sizes, strict=True))
    where = told.pop("line_position"), told.pop("line_radius")
    return spool_axis_tilt(*where, pillars=int(told.pop("pillars")), **told)


@pytest.mark.parametrize("slug", ON_PILLARS)
def test_what_is_kept_is_what_the_frame_library_says(slug: str) -> None:
    sizes = frame_sizes(reel_sheet.load(slug))
    anew = afresh(sizes)
    assert frame_lean._key(sizes) in frame_lean._kept(), row(slug, sizes, anew)
    assert solved(sizes) == pytest.approx(anew, rel=1e-4), row(slug, sizes, anew)


def test_a_frame_that_is_not_kept_is_solved() -> None:
    sizes = frame_sizes(changed("tarvak-52", frame={"pillar_diameter": 6e-3}))
    assert frame_lean._key(sizes) not in frame_lean._kept()
    assert solved(sizes).tilt < solved(frame_sizes(reel_sheet.load("tarvak-52"))).tilt


def test_a_frame_of_one_piece_is_not_reckoned() -> None:
    assert frame_sizes(reel_sheet.load("tarvak-54c")) is None
    assert frame_sizes(reel_sheet.load("tarvak-52").model_copy(update={"frame": None})) is None


def test_the_shaft_leans_less_when_it_is_thicker_and_not_at_all_one_sided() -> None:
    thick, thin = (shaft_slope(changed("tarvak-52", shaft={"diameter": d})) for d in (5e-3, 4e-3))
    assert 0 < thick < thin
    assert shaft_slope(reel_sheet.load("lumvik-4000")) == 0.0


def test_teeth_feel_the_lean_and_never_less_than_none() -> None:
    older = edge_load(loads_of("tarvak-52"), 6.1)
    assert 1.0 < np.median(older) < 1.6
    assert older.min() >= 1.0
    # With a bearing of its own the pinion does not follow the shaft; the frame of one piece counts as stiff.
    assert np.all(edge_load(loads_of("tarvak-54c"), 6.8) == 1.0)
    assert np.all(edge_load(loads_of("brekkas-9-10"), 1.0) == 1.0)


def test_the_same_lean_hurts_small_forces_more() -> None:
    loads = loads_of("tarvak-52")
    assert np.all(edge_load(loads, 3.0) > edge_load(loads, 6.0))
