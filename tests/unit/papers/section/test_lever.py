"""A lever drag in section."""

import pytest

from spoolwright.papers.section import lever
from spoolwright.papers.section.lever_measures import LeverMeasures
from spoolwright.papers.section.shapes import Part, box_of
from tests.unit.papers.section import reels


@pytest.fixture(scope="module")
def drawn() -> dict[str, Part]:
    m = LeverMeasures(reels.shipped("pellmar-30-2"))
    return {part.key: part for part in lever.parts(m, m.full) if part is not None}


def test_everything_of_its_kind_is_there(drawn: dict[str, Part]) -> None:
    assert {"frame", "pillars", "foot", "gear-cover", "spool", "line", "drag-1", "drag-2", "drag-3", "pinion",
            "main-gear", "drive-shaft", "spool-shaft", "cam", "springs", "preset", "star", "handle",
            "bearing-off-side", "bearing-gear-side", "bearing-pinion"} <= drawn.keys()  # fmt: skip


def test_the_plate_has_its_size_on_the_spool(drawn: dict[str, Part]) -> None:
    """From its sheet: 78 mm outside, 3 mm thick, between the spool and the gear side."""
    left, top, right, bottom = box_of(drawn["drag-3"].shapes)
    assert (right - left, bottom - top) == pytest.approx((3.0, 78.0))
    assert left > box_of(drawn["spool"].shapes)[2]


def test_the_gears_touch_on_their_pitch_circles(drawn: dict[str, Part]) -> None:
    gears, pinions = box_of(drawn["main-gear"].shapes), box_of(drawn["pinion"].shapes)
    assert gears[1] < pinions[3]
    assert "50 and 39 teeth" in drawn["main-gear"].title
    assert "15 and 26 teeth" in drawn["pinion"].title


def test_lever_and_handle_have_their_lengths(drawn: dict[str, Part]) -> None:
    """From its sheet: the lever 42 mm from the rod, the handle 82 mm from the drive shaft."""
    assert box_of(drawn["star"].shapes)[1] == pytest.approx(-42.0 - lever.LEVER_HALF)
    spindle = next(it for it in drawn["handle"].shapes if it.line == "chain")
    assert 29.25 - spindle.points[0][1] == pytest.approx(82.0)  # type: ignore[union-attr]


def test_the_springs_stand_on_the_rod(drawn: dict[str, Part]) -> None:
    _, top, _, bottom = box_of(drawn["springs"].shapes)
    assert top == pytest.approx(-bottom)


def test_no_bar_runs_through_the_spool(drawn: dict[str, Part]) -> None:
    rim = box_of(drawn["spool"].shapes)[3]
    for shape in drawn["pillars"].shapes:
        _, top, _, bottom = box_of([shape])
        assert top >= rim or bottom <= -rim


def test_a_sheet_with_little_on_it_is_drawn() -> None:
    sheet = reels.without("pellmar-30-2", "frame", "handle", "bearings", "shaft.steps")
    m = LeverMeasures(sheet)
    assert {"spool", "star"} <= {part.key for part in lever.parts(m, m.full) if part}
