"""Spool, rotor and line roller of a fixed-spool reel in section."""

import pytest

from spoolwright.papers.section import fixed
from spoolwright.papers.section.fixed_measures import FixedMeasures
from spoolwright.papers.section.shapes import Part, box_of
from tests.unit.papers.section import reels


@pytest.fixture(scope="module")
def drawn() -> dict[str, Part]:
    m = FixedMeasures(reels.shipped("lumvik-4000"))
    return {part.key: part for part in fixed.parts(m, m.full) if part is not None}


def test_everything_of_its_kind_is_there(drawn: dict[str, Part]) -> None:
    assert {"spool", "line", "rotor", "line-roller", "rotor-nut", "roller-clutch", "spool-shaft", "springs",
            "star", "frame", "pinion", "main-gear", "gear-shaft", "oscillation", "oscillation-cogs", "handle",
            *(f"drag-{k}" for k in range(1, 8))} <= drawn.keys()  # fmt: skip


def test_lip_and_skirt_have_their_diameters(drawn: dict[str, Part]) -> None:
    """From its sheet: 50 mm over the lip, 52 mm over the skirt, which ends 14 mm behind the flange."""
    m = FixedMeasures(reels.shipped("lumvik-4000"))
    left, top, right, bottom = box_of(drawn["spool"].shapes)
    assert bottom - top == pytest.approx(52.0)
    assert right - m.spool_end == pytest.approx(14.0)
    lip = [y for half in drawn["spool"].shapes for x, y in half.points if x == left]  # type: ignore[union-attr]
    assert max(lip) == pytest.approx(25.0)


def test_the_discs_lie_in_the_well(drawn: dict[str, Part]) -> None:
    m = FixedMeasures(reels.shipped("lumvik-4000"))
    for place in range(2, 8):
        left, top, right, bottom = box_of(drawn[f"drag-{place}"].shapes)
        assert bottom - top == pytest.approx(27.0)
        assert -m.spool_end <= left < right <= m.floor_faces[0] + 1e-9


def test_the_line_roller_has_its_size_at_the_tip_of_an_arm(drawn: dict[str, Part]) -> None:
    """From its sheet: 9.5 mm across."""
    left, _, right, bottom = box_of(drawn["line-roller"].shapes)
    assert right - left == pytest.approx(9.5)
    assert bottom < -23.5, "clear of the line"


def test_the_main_shaft_runs_from_the_knob_into_the_body(drawn: dict[str, Part]) -> None:
    left, _, right, _ = box_of(drawn["spool-shaft"].shapes)
    assert left < box_of(drawn["drag-7"].shapes)[0]
    assert right > box_of(drawn["pinion"].shapes)[2]


def test_a_sheet_with_little_on_it_is_drawn() -> None:
    m = FixedMeasures(reels.fixed_spool())
    keys = {part.key for part in fixed.parts(m, m.full) if part}
    assert {"spool", "rotor", "main-gear", "pinion", "handle"} <= keys
    assert not keys & {"line-roller", "oscillation"}
    assert len(fixed.axes(m)) == 2
