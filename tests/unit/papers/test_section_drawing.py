"""The section drawing: true to its sheet, to one scale, readable, safe on a strict page."""

import re
from itertools import product

import pytest

from spoolwright.papers import section_drawing as drawing
from spoolwright.papers.section_drawing import Ringed, Shown
from tests.unit.papers.section import reading_svg, reels
from tests.unit.papers.section.reading_svg import SVG

ARRANGEMENTS = ("narrow", "desk", "wide", "paper")
FINDINGS = (
    Ringed("level-wind", "catches at the right end of its way"),
    Ringed("bearing-gear-side", "ticks once a turn of the spool"),
    Ringed("drag-4", "glazed, 0.2 mm under its limit"),
)


OF_KIND = {
    "lever drag": (Ringed("star", "creeps from strike"), Ringed("bearing-pinion", "rough under load")),
    "fixed spool": (Ringed("line-roller", "does not turn at 50 g"), Ringed("rotor", "shakes at speed")),
    "fly": (Ringed("check", "spring broken, a sliver in the frame"), Ringed("roller-clutch", "greased")),
}


def findings_on(slug: str) -> tuple[Ringed, ...]:
    own = OF_KIND.get(reels.shipped(slug).reel.kind)
    return (*own, Ringed("drag-2", "glazed, 0.2 mm under its limit")) if own else FINDINGS


def drawings() -> list[tuple[str, str, tuple[Ringed, ...]]]:
    """Round reels on every sheet; the other kinds where the room is least, and once with findings."""
    every = [
        (slug, arrangement, findings)
        for slug in reels.ROUND
        for arrangement in ARRANGEMENTS
        for findings in ((), FINDINGS)
    ]
    told = [(slug, "narrow", findings_on(slug)) for slug in reels.OTHERS]
    return [*every, *told, *((slug, "paper", ()) for slug in reels.OTHERS)]


@pytest.mark.parametrize(("slug", "arrangement", "findings"), drawings())
def test_no_name_covers_another_or_is_crossed_by_a_leader(
    slug: str, arrangement: drawing.Arrangement, findings: tuple[Ringed, ...]
) -> None:
    svg = drawing.draw(reels.shipped(slug), arrangement=arrangement, findings=findings)
    words = reading_svg.words(svg)
    width = float(reading_svg.root(svg).attrib["viewBox"].split()[2])
    assert len(words) > 15
    for number, one in enumerate(words):
        assert one.left >= 0, one
        assert one.right <= width, one
        assert not [other for other in words[number + 1 :] if one.meets(other)], one
        for x, top, bottom in reading_svg.uprights(svg):
            inside = one.left + 1 < x < one.right - 1 and top < one.bottom - 2 and bottom > one.top + 2
            assert not inside, (one, x)


@pytest.mark.parametrize(
    ("slug", "arrangement"),
    [*product(reels.ROUND, ARRANGEMENTS), *product(reels.OTHERS, ("narrow", "desk"))],
)
def test_every_member_of_the_stack_is_drawn_and_named(slug: str, arrangement: drawing.Arrangement) -> None:
    sheet = reels.shipped(slug)
    assert sheet.drag is not None
    named = reading_svg.names(drawing.draw(sheet, arrangement=arrangement))
    assert set(named) >= {washer.name for washer in sheet.drag.stack}


@pytest.mark.parametrize("slug", reels.SLUGS)
def test_it_is_safe_under_a_strict_policy(slug: str) -> None:
    svg = drawing.draw(reels.shipped(slug), findings=findings_on(slug), shown=Shown(dimensions=True))
    assert "style" not in {name for element in reading_svg.root(svg).iter() for name in element.attrib}
    assert not re.search(r"<(style|script|foreignObject|image)\b", svg)


def test_every_part_has_a_title_and_can_be_reached_by_keyboard() -> None:
    sheet = reels.shipped()
    found = reading_svg.parts(drawing.draw(sheet, link="/reel/{key}"))
    assert list(found) == [part.key for part in drawing.parts(sheet)]
    for key, elements in found.items():
        assert len(elements) == 1, key
        assert elements[0].tag == f"{SVG}a"
        assert elements[0].attrib["href"] == f"/reel/{key}"
        title = elements[0].find(f"{SVG}title")
        assert title is not None
        assert title.text


def test_on_paper_there_are_no_links() -> None:
    assert "<a " not in drawing.picture(reels.shipped()).svg
    assert "level wind" in drawing.picture(reels.shipped()).alt.lower()


def test_ids_of_two_drawings_on_one_page_differ() -> None:
    ids = [
        set(re.findall(r' id="([^"]+)"', drawing.draw(reels.shipped(), arrangement=arrangement)))
        for arrangement in ("narrow", "wide")
    ]
    assert ids[0]
    assert not ids[0] & ids[1]


def drawn_scale(svg: str) -> float:
    """Units per mm, read off the bar of 10 mm."""
    bar = next(g for g in reading_svg.root(svg).iter(f"{SVG}g") if g.get("class") == "scale-bar")
    left, right = reading_svg.spread(bar)
    return (right - left) / 10


def line_width(svg: str) -> float:
    left, right = reading_svg.spread(reading_svg.parts(svg)["line"][0])
    return (right - left) / drawn_scale(svg)


@pytest.mark.parametrize("width", [22.0, 44.0, 88.0])
@pytest.mark.parametrize("arrangement", ARRANGEMENTS)
def test_the_spool_is_as_wide_as_the_sheet_says(width: float, arrangement: drawing.Arrangement) -> None:
    """Measured on the drawing against its own bar; twice the width on the sheet is twice the width drawn."""
    sheet = reels.changed(width=f"{width} mm", plate_spacing="200 mm", span="230 mm")
    assert line_width(drawing.draw(sheet, arrangement=arrangement)) == pytest.approx(width, rel=0.01)


@pytest.mark.parametrize("slug", reels.MULTIPLIERS)
def test_reel_and_stack_have_one_scale(slug: str) -> None:
    """The gear's rim is drawn twice, in place and pulled apart, and is equally wide in both."""
    svg = drawing.draw(reels.shipped(slug))
    gear = reading_svg.parts(svg)["main-gear"][0]
    rims = [path.attrib["d"] for path in gear.iter(f"{SVG}path") if "url" in path.attrib["fill"]]
    widths = [
        max(xs) - min(xs) for d in rims if (xs := [float(x) for x in re.findall(r"[ML](-?[\d.]+) ", d)])
    ]
    assert len(widths) == 4
    assert max(widths) - min(widths) < 0.05


@pytest.mark.parametrize("slug", ["pellmar-30-2", "lumvik-4000", "brekkas-9-10"])
def test_a_disc_on_the_spool_is_drawn_in_place_and_apart_to_one_scale(slug: str) -> None:
    sheet = reels.shipped(slug)
    assert sheet.drag is not None
    svg = drawing.draw(sheet)
    disc = reading_svg.parts(svg)["drag-2"][0]
    cut = [path.attrib["d"] for path in disc.iter(f"{SVG}path") if "url" in path.attrib["fill"]]
    widths = [max(xs) - min(xs) for d in cut if (xs := [float(x) for x in re.findall(r"[ML](-?[\d.]+) ", d)])]
    assert len(widths) == 4
    drawn = sheet.drag.stack[1].thickness * 1000 * drawn_scale(svg)
    assert widths == pytest.approx([drawn] * 4, abs=0.05)


@pytest.mark.parametrize("fill", [0.0, 0.3, 1.0])
def test_the_line_reaches_to_its_level(fill: float) -> None:
    """By hand: half the volume lies below the root of the mean of the squared radii."""
    sheet = reels.shipped()
    svg = drawing.draw(sheet, fill=fill)
    level = (sheet.spool.arbor_radius**2 * (1 - fill) + sheet.spool.full_radius**2 * fill) ** 0.5 * 1000
    path = next(reading_svg.parts(svg)["line"][0].iter(f"{SVG}path")).attrib["d"]
    ys = [float(y) for y in re.findall(r"[ML]-?[\d.]+ (-?[\d.]+)", path)]
    drawn = (max(ys) - min(ys)) / drawn_scale(svg)
    assert drawn == pytest.approx(level - sheet.spool.arbor_radius * 1000, abs=0.05)


def test_a_fill_that_cannot_be_is_refused() -> None:
    with pytest.raises(ValueError, match="0 .bare arbor. to 1"):
        drawing.draw(reels.shipped(), fill=1.1)


def test_a_finding_on_a_part_that_is_not_there_is_refused_with_those_that_are() -> None:
    with pytest.raises(ValueError, match=r"'bail'.*accepted:.*spool-shaft"):
        drawing.draw(reels.shipped(), findings=[Ringed("bail", "bent")])


def test_a_finding_is_a_ring_and_its_words() -> None:
    svg = drawing.draw(reels.shipped(), findings=FINDINGS)
    assert svg.count('<circle class="finding"') == len(FINDINGS)
    said = " ".join(it.text for it in reading_svg.words(svg, ("finding",)))
    assert "catches at the right end" in said
    assert "glazed" in said


def test_markup_in_a_finding_and_in_a_sheet_stays_text() -> None:
    sheet = reels.changed(name='disc <b>&\\"x\\"', model="<script>")
    svg = drawing.draw(sheet, findings=[Ringed("spool", '<img onerror=x> & "q"')])
    assert reading_svg.root(svg) is not None
    assert "<script" not in svg
    assert "<img" not in svg


def test_dimensions_stand_in_the_readers_units() -> None:
    for system, expected in (("metric", "Ø 50.0 mm"), ("imperial", "Ø 1.97 in")):
        svg = drawing.draw(reels.shipped(), shown=Shown(dimensions=True), system=system)
        assert expected in {it.text for it in reading_svg.words(svg, ("size",))}


@pytest.mark.parametrize("slug", reels.SLUGS)
def test_dimensions_and_names_do_not_cover_one_another(slug: str) -> None:
    svg = drawing.draw(reels.shipped(slug), shown=Shown(dimensions=True), findings=findings_on(slug))
    lying = [
        it
        for it in reading_svg.words(svg, ("size", "name", "finding", "scale", "caption"))
        if it.left > 1 or it.top > 1
    ]
    upright = [it for it in lying if it.left + it.right != 0]
    for number, one in enumerate(upright):
        assert not [other for other in upright[number + 1 :] if one.meets(other)], one


def test_a_left_hand_reel_is_the_other_way_round() -> None:
    sides = []
    for hand in ("right", "left"):
        found = reading_svg.parts(drawing.draw(reels.changed(winding_hand=hand)))
        sides.append(reading_svg.spread(found["handle"][0])[0] > reading_svg.spread(found["spool"][0])[1])
    assert sides == [True, False]


@pytest.mark.parametrize("arrangement", ARRANGEMENTS)
@pytest.mark.parametrize(
    "sheet", [reels.fly(), reels.fixed_spool(), reels.without("tarvak-54c", "level_wind", "brakes", "handle")]
)
def test_a_reel_with_less_to_show_is_drawn_all_the_same(
    sheet: object, arrangement: drawing.Arrangement
) -> None:
    svg = drawing.draw(sheet, arrangement=arrangement)  # type: ignore[arg-type]
    assert {"spool", "line", "spool-shaft"} <= reading_svg.parts(svg).keys()


def test_the_drawing_is_the_same_every_time() -> None:
    assert drawing.draw(reels.shipped()) == drawing.draw(reels.shipped())


def test_very_long_names_are_broken_and_stay_apart() -> None:
    sheet = reels.changed("tarvak-54c", name="W" * 190)
    svg = drawing.draw(sheet, arrangement="narrow", findings=[Ringed("drag-2", "worn " * 60)])
    words = reading_svg.words(svg)
    assert all(it.right <= 390 for it in words)
    assert not [1 for n, one in enumerate(words) for other in words[n + 1 :] if one.meets(other)]


def test_the_number_of_slipping_pairs_is_said() -> None:
    """Counted by hand: five friction discs, each between members that turn differently."""
    svg = drawing.draw(reels.shipped())
    assert "it slips there, 5 pairs" in svg
    assert svg.count('class="slip"') == 5


def test_put_together_the_stack_is_drawn_once_and_has_one_name() -> None:
    sheet = reels.shipped("tarvak-54c")
    apart, together = drawing.draw(sheet), drawing.draw(sheet, shown=Shown(apart=False))
    assert "drag stack" in reading_svg.names(together)
    assert "drag stack" not in reading_svg.names(apart)
    assert 'class="slip"' not in together
    assert reading_svg.parts(together).keys() == reading_svg.parts(apart).keys()
    assert len(together) < len(apart)


def test_a_finding_on_a_disc_is_ringed_in_its_place_when_the_stack_is_together() -> None:
    svg = drawing.draw(reels.shipped(), shown=Shown(apart=False), findings=FINDINGS)
    assert svg.count('<circle class="finding"') == len(FINDINGS)


def test_the_chosen_part_is_marked_for_the_eye_and_for_the_ear() -> None:
    svg = drawing.draw(reels.shipped(), shown=Shown(chosen="pinion"))
    chosen = [e for e in reading_svg.root(svg).iter() if "chosen" in e.get("class", "").split()]
    assert [e.attrib["data-part"] for e in chosen] == ["pinion"]
    assert chosen[0].attrib["aria-current"] == "true"


def test_a_name_leads_where_its_part_leads_and_is_no_second_stop_for_the_keyboard() -> None:
    svg = drawing.draw(reels.shipped(), link="?part={key}&apart=yes#known")
    links = [a for a in reading_svg.root(svg).iter(f"{SVG}a") if a.get("tabindex") == "-1"]
    assert len(links) == len(reading_svg.names(svg))
    for link in links:
        assert link.attrib["href"] == f"?part={link.attrib['data-part']}&apart=yes#known"
        assert link.attrib["aria-hidden"] == "true"


def test_the_line_level_changes_the_line_and_moves_no_name() -> None:
    full, half = (drawing.draw(reels.shipped(), fill=fill) for fill in (1.0, 0.5))
    assert reading_svg.words(full) == reading_svg.words(half)
    assert full != half
