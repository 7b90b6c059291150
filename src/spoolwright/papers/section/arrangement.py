"""Lays the section out on its sheet: the reel, the stack pulled apart, and their names on leaders."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from spoolwright.papers.section import drive, fixed, fly, frame, leaders, level_wind, lever, spool, stack
from spoolwright.papers.section.fixed_measures import FixedMeasures
from spoolwright.papers.section.fly_measures import FlyMeasures
from spoolwright.papers.section.leaders import Name, Placed, Zone
from spoolwright.papers.section.lever_measures import LeverMeasures
from spoolwright.papers.section.measures import MM, Measures, spring_room
from spoolwright.papers.section.pen import View, wrapped
from spoolwright.papers.section.shapes import Box, Outline, Part, Point, box_of

MARGIN = 10.0
STACK_GAP = 3.6
"""Gap between two members of a stack beside the reel, mm; a stack below it fills the sheet's width."""
BETWEEN = 9.0
"""Room between the reel and the stack beside it, mm."""
RING = (9.0, 22.0)
"""Least and greatest radius of the ring round a finding, drawing units."""
WIDTHS = (18.0, 9.0, 5.0)
"""Widest line of a name, in heights of its lettering: what is tried first, and what if that does not fit."""
OUTER = 6.2
"""Widest line of a name near an end of its row, where there is room on one side only."""


@dataclass(frozen=True)
class SheetSize:
    """A sheet to draw on, in drawing units: its width, the height of lettering, the tallest reel.

    `beside` sets the stack beside the reel, else below it; a `sparse` sheet leaves minor names out.
    """

    width: float
    lettering: float
    tallest: float
    beside: bool
    sparse: bool = False


SIZES = {
    "narrow": SheetSize(390.0, 12.5, 460.0, beside=False, sparse=True),
    "desk": SheetSize(880.0, 15.0, 560.0, beside=False),
    "wide": SheetSize(1240.0, 15.0, 620.0, beside=True),
    "paper": SheetSize(1000.0, 15.5, 520.0, beside=True),
}


@dataclass(frozen=True)
class Group:
    """Parts drawn in one view: the reel, or its stack; with centre lines, and names above and below."""

    view: View
    parts: tuple[Part, ...]
    lines: tuple[Outline, ...]
    zones: tuple[tuple[Zone, tuple[Placed, ...]], ...]
    rings: tuple[tuple[Point, float], ...] = ()

    @property
    def extent(self) -> tuple[float, float]:
        """Top and bottom of the group with its names."""
        top, bottom = _reach(self.view, self.parts)
        for zone, placed in self.zones:
            room = leaders.height(placed, zone)
            top = min(top, zone.edge - room) if zone.direction < 0 else top
            bottom = max(bottom, zone.edge + room) if zone.direction > 0 else bottom
        return top, bottom


def reel_parts(m: Measures, level: float, *, stack_named: bool = False) -> list[Part]:
    """All parts of the reel in the order of drawing; `stack_named` where none is pulled apart beside it."""
    present = [part for part in _parts_of_kind(m, level) if part is not None]
    outermost = max((k for k, part in enumerate(present) if part.key.startswith("drag-")), default=None)
    if stack_named and outermost is not None:
        present[outermost] = replace(present[outermost], name="drag stack")
    return present


def _parts_of_kind(m: Measures, level: float) -> list[Part | None]:
    if isinstance(m, LeverMeasures):
        return lever.parts(m, level)
    if isinstance(m, FixedMeasures):
        return fixed.parts(m, level)
    if isinstance(m, FlyMeasures):
        return fly.parts(m, level)
    found: list[Part | None] = []
    if m.sheet.frame:
        found += [frame.plates(m), frame.pillars(m), frame.thumb_bar(m), frame.foot(m)]
    if m.sheet.frame and m.has_cover:
        found += [frame.off_cover(m), frame.gear_cover(m), frame.cast_cap(m)]
    found += [spool.line_fill(m, level), spool.spool(m), spool.shaft(m)]
    found += [frame.brakes(m), level_wind.worm(m), level_wind.cogs(m), *_drive_parts(m)]
    return [*found, *spool.spool_bearings(m)]


def _axes_of_kind(m: Measures) -> list[Outline]:
    if isinstance(m, LeverMeasures):
        return lever.axes(m)
    if isinstance(m, FixedMeasures):
        return fixed.axes(m)
    if isinstance(m, FlyMeasures):
        return fly.axes(m)
    lines = [spool.spool_axis(m, max(m.right_end - 20, m.shaft_ends[1] + 4))]
    return [*lines, drive.drive_axis(m)] if m.has_cover else lines


def _drive_parts(m: Measures) -> list[Part | None]:
    if not m.has_cover:
        return [drive.handle(m)]
    parts: list[Part | None] = [drive.pinion(m), drive.main_gear(m), *stack.in_place(m)]
    if not m.stack_on_spool:
        parts += [drive.springs(m), drive.star(m)]
    return [*parts, drive.drive_shaft(m), drive.roller_clutch(m), *drive.drive_bearings(m), drive.handle(m)]


def stack_length(m: Measures) -> float:
    """Length of the stack pulled apart beside the reel, mm."""
    if not m.sheet.drag:
        return 0.0
    metal = sum(w.thickness * MM for w in m.stack) + spring_room(m.sheet)
    return metal + len(m.stack) * STACK_GAP + 4.0


def reel_group(
    m: Measures,
    parts: Sequence[Part],
    view: View,
    room: tuple[float, float],
    size: SheetSize,
    said: dict[str, str],
    below: float = 0.0,
) -> Group:
    """The reel with names above and below between `room` (left and right end of the rows).

    `below` is what sizes take under the reel: names stand under them.
    """
    return _named(Group(view, tuple(parts), tuple(_axes_of_kind(m)), ()), room, size, said, below)


def stack_group(
    m: Measures,
    view: View,
    axis: float,
    length: float,
    room: tuple[float, float],
    size: SheetSize,
    said: dict[str, str],
) -> tuple[Group, int] | None:
    """The stack pulled apart with its names, and the number of its slipping pairs."""
    apart = stack.pulled_apart(m, axis, length)
    if apart is None:
        return None
    group = Group(view, apart.parts, (apart.line, *apart.slips), ())
    return _named(group, room, size, said), apart.pairs


def _named(
    group: Group, room: tuple[float, float], size: SheetSize, said: dict[str, str], below: float = 0.0
) -> Group:
    top, bottom = _reach(group.view, group.parts)
    zones, rings = [], []
    for direction, side, edge in ((-1, "above", top - 8), (1, "below", bottom + below + 8)):
        zone = Zone(edge, direction, room[0], room[1], size.lettering)
        parts = [p for p in group.parts if p.side == side and _is_named(p, size, said)]
        zones.append((zone, tuple(_stand(parts, group.view, zone, said))))
        rings += [_ring(part, group.view) for part in parts if part.key in said]
    return replace(group, zones=tuple(zones), rings=tuple(rings))


def _stand(parts: list[Part], view: View, zone: Zone, said: dict[str, str]) -> list[Placed]:
    """Names in their places; too long ones are broken, and in the end the longest is left out."""
    ordered = sorted(parts, key=lambda part: view.point(part.mark)[0])
    for fan, widths in _tries(len(parts)):
        names = [
            _name(part, view, zone, said, w * zone.size) for part, w in zip(ordered, widths, strict=True)
        ]
        placed = leaders.place(_spread(names), zone, fan=fan)
        if placed is not None:
            return placed
    longest = max(parts, key=lambda part: (part.key not in said, len(part.name)))
    return _stand([part for part in parts if part is not longest], view, zone, said)


def _tries(count: int) -> Iterator[tuple[bool, list[float]]]:
    """Widths of names to try: whole, the outer ones broken, then ever narrower with leaders fanned out."""
    yield False, [WIDTHS[0]] * count
    for outer in (1, 2):
        yield False, [OUTER if min(k, count - 1 - k) < outer else WIDTHS[0] for k in range(count)]
    for width in WIDTHS:
        yield True, [width] * count


def _is_named(part: Part, size: SheetSize, said: dict[str, str]) -> bool:
    return part.key in said or bool(part.name and not (size.sparse and part.minor))


def _name(part: Part, view: View, zone: Zone, said: dict[str, str], width: float) -> Name:
    mark = view.point(part.mark)
    if part.key not in said:
        return Name(part.key, wrapped(part.name, zone.size, width), mark, mark[0])
    title = part.name or part.title[:1].lower() + part.title[1:]
    lines = wrapped(f"{title}: {said[part.key]}", zone.size, min(width, 15 * zone.size))
    start = (mark[0], mark[1] + zone.direction * _ring(part, view)[1])
    return Name(part.key, lines, start, mark[0], finding=True)


def _ring(part: Part, view: View) -> tuple[Point, float]:
    left, top, right, bottom = view.box(box_of(part.shapes))
    radius = ((right - left) ** 2 + (bottom - top) ** 2) ** 0.5 / 2
    return view.point(part.mark), min(max(radius, RING[0]), RING[1])


def _spread(names: Iterable[Name]) -> list[Name]:
    """Columns of the leaders pushed apart so that no two run on one another."""
    ordered = sorted(names, key=lambda name: (name.mark[0], name.key))
    spread: list[Name] = []
    for name in ordered:
        least = spread[-1].column + leaders.APART if spread else name.column
        spread.append(replace(name, column=max(name.column, least)))
    return spread


def _reach(view: View, parts: Iterable[Part]) -> tuple[float, float]:
    boxes: list[Box] = [view.box(box_of(part.shapes)) for part in parts]
    return min(b[1] for b in boxes), max(b[3] for b in boxes)
