"""The mark of a reel: small, wordless, the same reel as the large drawing shows."""

import xml.etree.ElementTree as ET

import pytest

from spoolwright.papers.section_mark import TALLEST, WIDTH, mark
from tests.unit.papers.section import reels
from tests.unit.papers.section.reading_svg import SVG


@pytest.mark.parametrize("sheet", [*map(reels.shipped, reels.SLUGS), reels.fly(), reels.fixed_spool()])
def test_it_fits_its_place_and_carries_no_words(sheet: object) -> None:
    root = ET.fromstring(mark(sheet))  # type: ignore[arg-type]
    _, _, width, height = map(float, root.attrib["viewBox"].split())
    assert width == WIDTH
    assert height <= TALLEST + 0.1
    assert not list(root.iter(f"{SVG}text"))
    assert not list(root.iter(f"{SVG}a"))
    assert root.attrib["aria-label"].endswith("in section, small")
    for path in root.iter(f"{SVG}path"):
        xs = [
            float(pair.split()[0])
            for pair in path.attrib["d"].replace("M", "L").replace("Z", "").split("L")[1:]
        ]
        assert min(xs) >= -0.1
        assert max(xs) <= WIDTH + 0.1


def test_two_reels_have_two_marks_and_a_left_hand_reel_is_turned() -> None:
    marks = {mark(reels.shipped(slug)) for slug in reels.SLUGS}
    assert len(marks) == len(reels.SLUGS)
    assert mark(reels.changed(winding_hand="left")) != mark(reels.shipped())


def test_a_name_with_markup_stays_text() -> None:
    assert "<script" not in mark(reels.changed(model="<script>alert(1)</script>"))


def test_a_chosen_part_stands_out() -> None:
    plain, chosen = mark(reels.shipped()), mark(reels.shipped(), "drag-")
    assert 'class="chosen"' in chosen
    assert chosen.startswith(plain.removesuffix("</g></svg>"))
    assert mark(reels.shipped(), "no such part") == plain
