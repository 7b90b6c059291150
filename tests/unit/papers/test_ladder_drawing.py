"""The ladder as a ladder: where a rung lies, how it is told from the others, what is written beside it."""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache
from math import log
from xml.etree import ElementTree

import pytest

from spoolwright.judgement.load_ladder import Ladder, load_ladder
from spoolwright.papers import ladder_drawing
from spoolwright.papers.figures import Span
from spoolwright.papers.ladder_drawing import BOARDS, STILE, Setting
from spoolwright.sheets import reel_sheet

NS = "{http://www.w3.org/2000/svg}"


@cache
def ladder(line: str = "nylon 0.40 mm", works: tuple[str, ...] = ()) -> Ladder:
    return load_ladder(reel_sheet.load("tarvak-58r"), {}, works, line=line, samples=300)


def drawn(found: Ladder, **more: object) -> ElementTree.Element:
    return ElementTree.fromstring(ladder_drawing.draw(found, **more))  # type: ignore[arg-type]


def spans(svg: ElementTree.Element, kind: str) -> list[ElementTree.Element]:
    return [rect for rect in svg.iter(f"{NS}rect") if rect.get("class") == f"span {kind}"]


def texts(svg: ElementTree.Element, kind: str) -> list[str]:
    return [text.text or "" for text in svg.iter(f"{NS}text") if text.get("class") == kind]


@pytest.mark.parametrize("arrangement", sorted(BOARDS))
def test_every_rung_has_its_name_and_its_pull(arrangement: str) -> None:
    svg = drawn(ladder(), arrangement=arrangement)
    words = " ".join(texts(svg, "name")).lower()
    assert all(one.name.split()[-1] in words for one in ladder().rungs)
    assert len(texts(svg, "value")) == len(ladder().rungs)


def test_the_weakest_rung_is_the_lowest() -> None:
    svg = drawn(ladder(), arrangement="desk")
    levels = [float(rect.get("y", "")) for kind in ("drag", "reel", "line") for rect in spans(svg, kind)]
    lowest = max(levels)
    first = ladder().rungs[0]
    rect = next(r for r in spans(svg, first.borne) if float(r.get("y", "")) == lowest)
    assert float(rect.get("x", "")) == min(
        float(r.get("x", "")) for r in svg.iter(f"{NS}rect") if r.get("class") == rect.get("class")
    )


def test_equal_ratios_of_pull_are_equal_steps() -> None:
    """By hand: on a logarithmic ruler x = left + room log(pull / low) / log(high / low)."""
    svg = drawn(ladder(line=""), arrangement="desk")
    board, found = BOARDS["desk"], ladder(line="")
    assert found.drag is not None
    low = 0.5 * min(one.limit.middle for one in found.rungs)
    high = min(1.1 * max(one.limit.high for one in found.rungs), 8 * found.drag.limit.middle)
    room = board.right - board.left - 2 * STILE
    by_hand = board.left + STILE + room * log(found.drag.limit.low / low) / log(high / low)
    assert float(spans(svg, "drag")[0].get("x", "")) == pytest.approx(by_hand, abs=0.06)


def test_the_drag_is_told_by_the_hatch_of_its_discs_and_line_by_dots() -> None:
    svg = drawn(ladder(), friction="woven carbon")
    assert {rect.get("fill") for rect in spans(svg, "drag")} == {"url(#ladder-narrow-carbon)"}
    assert {rect.get("fill") for rect in spans(svg, "line")} == {"url(#ladder-narrow-line)"}
    assert {rect.get("fill") for rect in spans(svg, "reel")} == {"currentColor"}
    ids = [pattern.get("id") for pattern in svg.iter(f"{NS}pattern")]
    assert len(ids) == len(set(ids)) == 2


@pytest.mark.parametrize("arrangement", sorted(BOARDS))
def test_the_margin_is_written_out(arrangement: str) -> None:
    found = ladder()
    assert found.weakest is not None
    svg = drawn(found, arrangement=arrangement)
    tags = texts(svg, "tag")
    assert any(f"{found.weakest.over.middle:.2f} times the drag" in tag for tag in tags)
    assert any("weakest" in tag for tag in tags)
    assert [path for path in svg.iter(f"{NS}path") if path.get("class") == "margin-line"]


def test_a_rung_that_works_have_moved_is_drawn_as_it_was_too() -> None:
    assert not [r for r in drawn(ladder()).iter(f"{NS}rect") if r.get("class") == "was"]
    moved = drawn(ladder(works=("carbon-drag-set",)))
    assert [r for r in moved.iter(f"{NS}rect") if r.get("class") == "was"]


def test_where_the_star_stands_is_ruled_and_said() -> None:
    svg = drawn(ladder(), setting=Setting(Span(30.0, 26.0, 34.0, "force"), "star 2.5 turns from free"))
    assert "star 2.5 turns from free: 3.06 kg" in texts(svg, "tag")


def test_what_gives_far_beyond_the_drag_is_an_arrow_at_the_end() -> None:
    found = ladder(line="")
    strong = next(one for one in found.rungs if one.limit.low > 8 * found.drag.limit.middle)  # type: ignore[union-attr]
    svg = drawn(found)
    drawn_spans = [rect for kind in ("drag", "reel") for rect in spans(svg, kind)]
    assert len(drawn_spans) < len(found.rungs)
    assert strong.name.split()[0] in " ".join(texts(svg, "name")).lower()


def test_in_pounds_for_who_reads_pounds() -> None:
    svg = drawn(ladder(), system="imperial")
    assert any("pull at the line, lb" in text for text in texts(svg, "tick"))
    assert "lb" in texts(svg, "value")[0]


def test_a_page_with_a_strict_policy_may_carry_it() -> None:
    text = ladder_drawing.draw(ladder())
    assert not re.search(r"style=|<style|<script|\son[a-z]+=", text)
    assert 'role="img"' in text
    assert "A list follows" in text


def test_a_ladder_without_a_meaning_is_refused() -> None:
    with pytest.raises(ValueError, match="ladder"):
        ladder_drawing.draw(replace(ladder(), drag=None))
