"""A workshop drawing of one reel in section, to one scale, made from its reel sheet.

The section runs through the axes and is opened out: the worm is turned up into the plane, the drive shaft
lies at its true distance below the spool. What the sheet does not say is drawn with a broken line.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from html import escape
from typing import Literal

from spoolwright.papers import materials_key
from spoolwright.papers.ink import ACCENT
from spoolwright.papers.section import arrangement as layout
from spoolwright.papers.section import dimension_lines, legend
from spoolwright.papers.section.arrangement import BETWEEN, MARGIN, SIZES, Group, SheetSize
from spoolwright.papers.section.leaders import Placed, Zone
from spoolwright.papers.section.measures import Measures, measure
from spoolwright.papers.section.pen import LINES, Pen, View, lettering
from spoolwright.papers.section.shapes import Part, box_of
from spoolwright.papers.typesetting import Picture
from spoolwright.sheets.reel_sheet import ReelSheet

PRINTED_WIDTH = 172.0
"""Width of the drawing on a paper of the house, mm: A4 less its margins."""

Arrangement = Literal["narrow", "desk", "wide", "paper"]


@dataclass(frozen=True)
class Ringed:
    """A finding on the drawing: a ring round the part of this key, and a leader to the words."""

    part: str
    words: str


@dataclass(frozen=True)
class Shown:
    """What is shown: sizes in place of the names on the reel, the stack pulled apart, a chosen part."""

    dimensions: bool = False
    apart: bool = True
    chosen: str = ""


@dataclass(frozen=True)
class PartName:
    """A part that the drawing shows and a page can open: its key and its title."""

    key: str
    title: str


def parts(sheet: ReelSheet) -> tuple[PartName, ...]:
    """Every part that the drawing of this reel shows, in the order of drawing."""
    m = measure(sheet)
    apart = layout.stack.pulled_apart(m, 0.0, layout.stack_length(m))
    every = [*layout.reel_parts(m, m.full), *(apart.parts if apart else ())]
    titles: dict[str, str] = {}
    for part in every:
        titles.setdefault(part.key, part.title)
    return tuple(PartName(key, title) for key, title in titles.items())


def draw(
    sheet: ReelSheet,
    *,
    fill: float = 1.0,
    arrangement: Arrangement = "wide",
    findings: Sequence[Ringed] = (),
    shown: Shown = Shown(),
    system: str = "metric",
    link: str | None = "#part-{key}",
) -> str:
    """The section as SVG text.

    `fill` is the line on the spool as a share of the full spool's volume, 0 to 1. "narrow" is laid out for a
    phone and "desk" for a wide screen (the stack below the reel), "wide" sets the stack beside it, "paper" is
    for a page of A4. `link` is where a touched part leads ("{key}" is replaced); None makes no links.
    """
    if not 0.0 <= fill <= 1.0:
        raise ValueError(f"fill is {fill}; accepted: 0 (bare arbor) to 1 (full spool)")
    m, size = measure(sheet), SIZES[arrangement]
    said = _said(sheet, findings)
    level = (m.arbor**2 + fill * (m.full**2 - m.arbor**2)) ** 0.5
    sizes = dimension_lines.dimensions(m, system) if shown.dimensions else []
    reel_parts = layout.reel_parts(m, level, stack_named=not shown.apart)
    drawn = [_nameless(p, said) for p in reel_parts] if shown.dimensions else reel_parts
    groups, pairs, view = _lay_out(m, drawn, size, said, sizes, apart=shown.apart)
    return _Sheet(m, size, arrangement, link, system, shown.chosen).svg(groups, pairs, view, sizes)


def picture(sheet: ReelSheet, **how: object) -> Picture:
    """The drawing for a paper, with its description."""
    svg = draw(sheet, arrangement="paper", link=None, **how)  # type: ignore[arg-type]
    return Picture(svg, description(sheet))


def description(sheet: ReelSheet) -> str:
    """What the drawing shows, in words."""
    names = ", ".join(part.title[0].lower() + part.title[1:] for part in parts(sheet))
    reel = f"{sheet.reel.maker} {sheet.reel.model}"
    return f"{reel} in section, to scale, opened out on its axes. It shows: {names}."


def _said(sheet: ReelSheet, findings: Sequence[Ringed]) -> dict[str, str]:
    known = {part.key for part in parts(sheet)}
    said: dict[str, str] = {}
    for finding in findings:
        if finding.part not in known:
            accepted = ", ".join(sorted(known))
            raise ValueError(
                f"a finding is on {finding.part!r}, which this drawing lacks; accepted: {accepted}"
            )
        said[finding.part] = "; ".join(filter(None, (said.get(finding.part), finding.words)))
    return said


def _nameless(part: Part, said: dict[str, str]) -> Part:
    name = part.name if part.key in said else ""
    return Part(part.key, part.title, name, part.shapes, part.mark, part.side)


def _lay_out(
    m: Measures,
    reel: list[Part],
    size: SheetSize,
    said: dict[str, str],
    sizes: list[dimension_lines.Dimension],
    *,
    apart: bool,
) -> tuple[list[Group], int, View]:
    left, right, below = dimension_lines.room(sizes, size.lettering) if sizes else (0.0, 0.0, 0.0)
    hand = -1 if m.sheet.reel.winding_hand == "left" else 1
    left, right = (left, right) if hand > 0 else (right, left)
    reach = (m.off_end - 3.5, m.right_end)
    own = reach[1] - reach[0]
    length = layout.stack_length(m) if apart else 0.0
    total = own + (BETWEEN + length + 4.0 if size.beside and length else 0.0)
    boxes = [box_of(part.shapes) for part in reel]
    tall = max(box[3] for box in boxes) - min(box[1] for box in boxes)
    free = size.width - 2 * MARGIN - left - right
    scale = min(free / total, size.tallest / tall)
    start = MARGIN + left + (0.0 if size.beside else (free - total * scale) / 2)
    origin = start - reach[0] * scale if hand > 0 else start + reach[1] * scale
    view = View(scale, origin, 0.0, hand)
    # A finding on a member of the stack is ringed where the member can be seen: pulled apart, if it is.
    on_reel = {key: words for key, words in said.items() if not (length and key.startswith("drag-"))}
    edge = size.width - MARGIN
    split = start + own * scale + right + BETWEEN * scale * 0.3 if size.beside and length else edge
    groups = [layout.reel_group(m, reel, view, (MARGIN, split), size, on_reel, below)]
    pulled = _stack(m, size, said, view, groups[0], split, sizes) if length else None
    if pulled is None:
        return groups, 0, view
    return [*groups, pulled[0]], pulled[1], view


def _stack(
    m: Measures,
    size: SheetSize,
    said: dict[str, str],
    view: View,
    reel: Group,
    split: float,
    sizes: list[dimension_lines.Dimension],
) -> tuple[Group, int] | None:
    """The stack beside the reel on its own axis, or below it across the sheet."""
    own = {key: words for key, words in said.items() if key.startswith("drag-")}
    axis = 0.0 if m.stack_on_spool else m.drive_axis
    edge = size.width - MARGIN
    if size.beside:
        start = split + 5.0 * view.scale
        there = View(view.scale, start, 0.0)
        length = (edge - start) / view.scale - 3.5
        return layout.stack_group(m, there, axis, length, (split + 6, edge), size, own)
    there = View(view.scale, MARGIN + 4.0 * view.scale, 0.0)
    length = (edge - there.left) / view.scale - 3.5
    found = layout.stack_group(m, there, 0.0, length, (MARGIN, edge), size, own)
    if found is None:
        return None
    below = dimension_lines.room(sizes, size.lettering)[2] if sizes else 0.0
    drop = reel.extent[1] + below + 22.0 + size.lettering - found[0].extent[0]
    lowered = View(there.scale, there.left, drop)
    return layout.stack_group(m, lowered, 0.0, length, (MARGIN, edge), size, own)


@dataclass(frozen=True)
class _Sheet:
    """Writes the SVG of one drawing."""

    m: Measures
    size: SheetSize
    arrangement: str
    link: str | None
    system: str
    chosen: str

    @property
    def prefix(self) -> str:
        """Before the ids of this drawing, so that two of them can stand on one page."""
        return f"{self.m.sheet.reel.slug}-{self.arrangement}"

    def svg(self, groups: list[Group], pairs: int, view: View, sizes: list[dimension_lines.Dimension]) -> str:
        touched = self._touched(groups)
        top, bottom = groups[0].extent[0], max(group.extent[1] for group in groups)
        if sizes:
            bottom = max(bottom, groups[0].extent[1] + dimension_lines.room(sizes, self.size.lettering)[2])
        lines = [Pen(g.view, self.prefix).draw(line) for g in groups for line in g.lines]
        names = [self._named(zone, it) for g in groups for zone, placed in g.zones for it in placed]
        rings = [
            f'<circle class="finding" cx="{x:.1f}" cy="{y:.1f}" r="{r:.1f}" fill="none" {LINES["finding"]}/>'
            for g in groups
            for (x, y), r in g.rings
        ]
        dims = [dimension_lines.draw(it, view, self.size.lettering * 0.9) for it in sizes]
        foot, end = self._foot(touched, groups, pairs, bottom + 14.0, view)
        body = "".join([*touched.values(), *lines, *dims, *rings, *names, foot])
        used = sorted({name for name in materials_key.HATCHES if f"#{self.prefix}-{name}" in body})
        return self._framed(self._patterns(used) + body, min(top, *(g.extent[0] for g in groups)) - 6.0, end)

    def _touched(self, groups: list[Group]) -> dict[str, str]:
        """Part by part: all that is drawn of it, wherever it is drawn, as one thing to touch."""
        shapes: dict[str, list[str]] = {}
        titles: dict[str, str] = {}
        for group in groups:
            pen = Pen(group.view, self.prefix)
            for part in group.parts:
                shapes.setdefault(part.key, []).extend(pen.draw(shape) for shape in part.shapes)
                titles.setdefault(part.key, part.title)
        return {key: self._part(key, titles[key], "".join(drawn)) for key, drawn in shapes.items()}

    def _part(self, key: str, title: str, body: str) -> str:
        inside = f"<title>{escape(title)}</title>{body}"
        if self.link is None:
            return f'<g class="part" data-part="{key}">{inside}</g>'
        look = 'class="part chosen" aria-current="true"' if key == self.chosen else 'class="part"'
        return f'<a {look} data-part="{key}" href="{self._address(key)}">{inside}</a>'

    def _address(self, key: str) -> str:
        return escape((self.link or "").format(key=key), quote=True)

    def _named(self, zone: Zone, it: Placed) -> str:
        (x, y), column, finding = it.name.mark, it.name.column, it.name.finding
        kind, colour = ("finding", ACCENT) if finding else ("name", "currentColor")
        dot = (
            ""
            if finding
            else f'<circle cx="{x:.1f}" cy="{y:.1f}" r="1.3" fill="currentColor" stroke="none"/>'
        )
        way = f"M{x:.1f} {y:.1f}L{column:.1f} {zone.edge:.1f}V{zone.tip(it):.1f}"
        leader = f'<path class="leader" d="{way}" fill="none" stroke="{colour}" {LINES["leader"]}/>'
        anchor, at = {1: ("start", column + 3), -1: ("end", column - 3), 0: ("middle", column)}[it.side]
        words = "".join(
            lettering((at, base), line, zone.size, anchor, kind=kind)
            for line, base in zip(it.name.lines, zone.baselines(it), strict=True)
        )
        key = it.name.key
        of = f'data-part="{key}" data-finding="yes"' if finding else f'data-part="{key}"'
        inside = f'<g class="leader-to" {of} aria-hidden="true">{leader}{dot}{words}</g>'
        if self.link is None:
            return inside
        # A name can be touched as its part can; the keyboard stops at the part alone.
        quiet = f'href="{self._address(key)}" data-part="{key}" tabindex="-1" aria-hidden="true"'
        return f"<a {quiet}>{inside}</a>"

    def _foot(
        self, touched: dict[str, str], groups: list[Group], pairs: int, top: float, view: View
    ) -> tuple[str, float]:
        """Words about the stack, the scale's bar, the title and the key; and where they end."""
        size, reel = self.size.lettering, self.m.sheet.reel
        drawn = "".join(touched.values())
        used = [name for name in materials_key.HATCHES if f"#{self.prefix}-{name}" in drawn]
        bar = legend.scale_bar((MARGIN, top + size), view.scale, size, self.system, self._printed(view))
        title = f"{reel.maker} {reel.model}, section on the axes, opened out; broken lines: form by custom"
        rows = title.split("; ") if self.size.sparse else [title]
        if pairs:
            rows.append(f"Broken lines in the stack: it slips there, {pairs} pair{'s' if pairs > 1 else ''}")
        y = top + size * 2.9
        words = "".join(
            lettering((MARGIN, y + k * size * 1.4), row, size, kind="caption") for k, row in enumerate(rows)
        )
        y += (len(rows) - 0.3) * size * 1.4
        key, room = legend.key(used, (MARGIN, y), self.size.width - 2 * MARGIN, size, self.prefix)
        return bar + words + key, y + room + 4

    def _printed(self, view: View) -> str:
        """The scale as a ratio, where the width in print is known."""
        if self.arrangement != "paper":
            return ""
        return f", printed at {view.scale * PRINTED_WIDTH / self.size.width:.2f} : 1"

    def _patterns(self, used: list[str]) -> str:
        kinds = [(False, False), (True, False), (False, True), (True, True)]
        tiles = "".join(
            materials_key.pattern(self.prefix, name, crossed=crossed, fine=fine)
            for name in used
            for crossed, fine in kinds
        )
        return f"<defs>{tiles}</defs>"

    def _framed(self, body: str, top: float, end: float) -> str:
        reel = self.m.sheet.reel
        label = escape(f"{reel.maker} {reel.model} in section, to scale", quote=True)
        return (
            f'<svg xmlns="http://www.w3.org/2000/svg" class="section-drawing {self.arrangement}" '
            f'viewBox="0 {top:.1f} {self.size.width:g} {end - top:.1f}" role="group" '
            f'aria-label="{label}">'
            f'<g stroke="currentColor" stroke-linejoin="round" fill="none">{body}</g></svg>'
        )


__all__ = ["Arrangement", "PartName", "Ringed", "Shown", "description", "draw", "parts", "picture"]
