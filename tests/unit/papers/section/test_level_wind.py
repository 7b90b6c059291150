"""Worm, carriage and cogs."""

import pytest

from spoolwright.papers.section import level_wind
from spoolwright.papers.section.measures import measure
from spoolwright.papers.section.shapes import Outline, box_of
from tests.unit.papers.section import reels


@pytest.mark.parametrize("slug", reels.MULTIPLIERS)
def test_the_grooves_have_the_lead_of_the_sheet(slug: str) -> None:
    sheet = reels.shipped(slug)
    assert sheet.level_wind is not None
    m = measure(sheet)
    part = level_wind.worm(m)
    assert part is not None
    slanted = [
        it
        for it in part.shapes
        if isinstance(it, Outline) and not it.closed and it.points[0][1] != it.points[1][1]
    ]
    assert {round(b[0] - a[0], 6) for a, b in (it.points for it in slanted)} == {
        round(sheet.level_wind.worm_lead * 1000 / 2, 6)
    }


@pytest.mark.parametrize("slug", reels.MULTIPLIERS)
def test_the_worm_lies_clear_of_the_spool(slug: str) -> None:
    m = measure(reels.shipped(slug))
    assert m.worm_axis + m.worm_radius < -m.rim


@pytest.mark.parametrize("slug", reels.MULTIPLIERS)
def test_the_last_cog_sits_on_the_worm(slug: str) -> None:
    m = measure(reels.shipped(slug))
    part = level_wind.cogs(m)
    assert part is not None
    top = box_of(part.shapes)[1]
    assert top == pytest.approx(m.worm_axis - m.cog_radii[-1][1])


def test_the_title_counts_the_teeth() -> None:
    part = level_wind.cogs(measure(reels.shipped("tarvak-58r")))
    assert part is not None
    assert "18 to 24 teeth, 24 to 34 teeth" in part.title


def test_no_level_wind_no_worm() -> None:
    m = measure(reels.without("tarvak-52", "level_wind"))
    assert level_wind.worm(m) is None
    assert level_wind.cogs(m) is None
