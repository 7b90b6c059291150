"""How the reel, its stack and their names lie on the sheet."""

import pytest

from spoolwright.papers.section import arrangement as layout
from spoolwright.papers.section.measures import measure
from spoolwright.papers.section.pen import View
from tests.unit.papers.section import reels


def laid(slug: str, arrangement: str, said: dict[str, str]) -> layout.Group:
    m, size = measure(reels.shipped(slug)), layout.SIZES[arrangement]
    view = View(4.0, 160.0, 0.0)
    return layout.reel_group(m, layout.reel_parts(m, m.full), view, (10.0, size.width - 10), size, said)


def test_minor_names_are_left_out_on_a_phone() -> None:
    def names(arrangement: str) -> set[str]:
        return {it.name.key for _, placed in laid("tarvak-58r", arrangement, {}).zones for it in placed}

    assert {"foot", "frame", "pillars"} <= names("wide") - names("narrow")
    assert {"spool", "main-gear", "handle"} <= names("narrow")


def test_a_finding_is_named_even_on_a_minor_part() -> None:
    group = laid("tarvak-58r", "narrow", {"foot": "bent"})
    said = [line for _, placed in group.zones for it in placed if it.name.finding for line in it.name.lines]
    assert said == ["foot: bent"]
    assert len(group.rings) == 1


@pytest.mark.parametrize("key", ["spool", "bearing-gear-side"])
def test_a_ring_is_neither_a_dot_nor_as_large_as_the_reel(key: str) -> None:
    (_, radius), *_ = laid("tarvak-58r", "wide", {key: "worn"}).rings
    assert layout.RING[0] <= radius <= layout.RING[1]


def test_the_group_holds_its_names() -> None:
    group = laid("tarvak-58r", "wide", {})
    top, bottom = group.extent
    for zone, placed in group.zones:
        for it in placed:
            assert all(top <= line <= bottom for line in zone.baselines(it))


@pytest.mark.parametrize("slug", reels.SLUGS)
def test_no_part_is_drawn_twice_under_one_key(slug: str) -> None:
    m = measure(reels.shipped(slug))
    keys = [part.key for part in layout.reel_parts(m, m.full)]
    assert len(keys) == len(set(keys))


def test_a_reel_without_a_drag_needs_no_room_for_a_stack() -> None:
    assert layout.stack_length(measure(reels.fly())) == 0.0
