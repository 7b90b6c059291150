"""Casts that several tests look at, each made once."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

from spoolwright.judgement.brake_setting import BrakeSetting
from spoolwright.judgement.cast_case import CastCase, cast_case
from spoolwright.judgement.cast_matters import Matters, what_matters
from spoolwright.judgement.narrowing import Known, know
from spoolwright.judgement.throw import Throw
from spoolwright.sheets import reel_sheet

SURF = Throw(0.150, 55.0, diameter=0.31e-3)
LURE = Throw(0.015, 26.0, shape="wobbler", diameter=0.25e-3)


@cache
def known(slug: str) -> Known:
    return know(reel_sheet.load(slug), {}, samples=200, seed=1)


@cache
def case(slug: str = "tarvak-58r", throw: Throw = SURF, share: float | None = None) -> CastCase:
    asked = throw if share is None else replace(throw, brake=BrakeSetting(share=share))
    return cast_case(reel_sheet.load(slug), throw=asked, known=known(slug))


@cache
def matters(slug: str = "tarvak-58r", throw: Throw = SURF) -> Matters:
    found = what_matters(case(slug, throw))
    assert found is not None
    return found
