"""A fly reel in section."""

import pytest

from spoolwright.papers.section import fly
from spoolwright.papers.section.fly_measures import PALM_WALL, FlyMeasures
from spoolwright.papers.section.shapes import Part, box_of
from tests.unit.papers.section import reels


@pytest.fixture(scope="module")
def drawn() -> dict[str, Part]:
    m = FlyMeasures(reels.shipped("brekkas-9-10"))
    return {part.key: part for part in fly.parts(m, m.full) if part is not None}


def test_everything_of_its_kind_is_there_and_no_gear(drawn: dict[str, Part]) -> None:
    assert {"frame", "pillars", "foot", "spool", "line", "spool-shaft", "roller-clutch", "check", "star",
            "springs", "handle", "cast-cap", "bearing-off-side", "bearing-gear-side",
            *(f"drag-{k}" for k in range(1, 6))} <= drawn.keys()  # fmt: skip
    assert not {"main-gear", "pinion", "level-wind", "drive-shaft"} & drawn.keys()


def test_the_palming_rim_stands_over_the_flange(drawn: dict[str, Part]) -> None:
    """From its sheet: 98 mm over the flange, a rim of 6 mm over it."""
    assert box_of(drawn["spool"].shapes)[3] == pytest.approx(49.0 + PALM_WALL)
    left, _, right, _ = box_of(drawn["spool"].shapes[2:])
    assert right - left == pytest.approx(6.0)


def test_the_spindle_is_stepped_as_the_sheet_says(drawn: dict[str, Part]) -> None:
    radii = {abs(y) for _, y in drawn["spool-shaft"].shapes[0].points}  # type: ignore[union-attr]
    assert radii == {4.0, 3.0}


def test_the_discs_lie_inside_the_arbor(drawn: dict[str, Part]) -> None:
    for place in range(1, 6):
        left, _, right, bottom = box_of(drawn[f"drag-{place}"].shapes)
        assert bottom < 29.0
        assert right < 13.5


def test_the_knob_runs_at_the_handles_radius(drawn: dict[str, Part]) -> None:
    assert drawn["handle"].mark[1] == pytest.approx(-40.0)


def test_a_click_reel_without_a_drag_is_drawn() -> None:
    m = FlyMeasures(reels.fly())
    keys = {part.key for part in fly.parts(m, m.full) if part}
    assert {"spool", "frame", "handle", "spool-shaft"} <= keys
    assert not keys & {"springs", "star", "check", "roller-clutch"}
    assert len(fly.axes(m)) == 1
