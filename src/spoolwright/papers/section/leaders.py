"""Names on leaders: where each stands so that no name covers another and no leader runs through a name."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import product
from random import Random

from spoolwright.papers.section.pen import text_width
from spoolwright.papers.section.shapes import Box, Point

GAP = 4.0
"""Room between a leader and its name, and between two names."""
APART = 7.0
"""Least distance between two leaders."""
MOST_FREE = 6
"""Up to this many names every choice of sides is tried; beyond it a few walks look for a good one."""
WALKS, WALK_SEED = 24, 7


@dataclass(frozen=True)
class Name:
    """A name to be placed: its part, its lines, where its leader starts, and the column in which it runs."""

    key: str
    lines: tuple[str, ...]
    mark: Point
    column: float
    finding: bool = False

    def width(self, size: float) -> float:
        return max(text_width(line, size) for line in self.lines)


@dataclass(frozen=True)
class Placed:
    """A name in its place: its row away from the drawing, and its side of the leader.

    The text stands to the right (1) or the left (-1) of its leader, or at the leader's end, over it (0).
    """

    name: Name
    row: int
    side: int


@dataclass(frozen=True)
class Zone:
    """Rows above (direction -1) or below (1) a drawing: where row 0 begins, and its two ends."""

    edge: float
    direction: int
    left: float
    right: float
    size: float

    @property
    def row_height(self) -> float:
        return self.size * 1.34

    def span(self, name: Name, side: int) -> tuple[float, float]:
        x, width = name.column, name.width(self.size) + GAP
        if side == 0:
            return x - width / 2, x + width / 2
        return (x + GAP * 0.6, x + width) if side > 0 else (x - width, x - GAP * 0.6)

    def baselines(self, placed: Placed) -> tuple[float, ...]:
        """Baseline of each line of the name, first line first."""
        rows = range(placed.row, placed.row + len(placed.name.lines))
        if self.direction > 0:
            return tuple(self.edge + (row + 1) * self.row_height for row in rows)
        return tuple(self.edge - row * self.row_height - 0.3 * self.size for row in reversed(rows))

    def tip(self, placed: Placed) -> float:
        """Where the leader ends: beside its name at the far side, or before it where the name is over it."""
        ends = self.baselines(placed)
        if placed.side == 0:
            return ends[0] - 0.85 * self.size if self.direction > 0 else ends[-1] + 0.3 * self.size
        return ends[-1] if self.direction > 0 else ends[0] - 0.72 * self.size


def place(names: Sequence[Name], zone: Zone, *, fan: bool = True) -> list[Placed] | None:
    """Every name in few rows, or None where they cannot be kept apart; `fan` lets leaders slant.

    A name whose letters lie across another's column must stand beyond that other's name, so each choice of
    sides is an order; the choice with the fewest rows wins. Where none will do, names may stand over the ends
    of their leaders; in the end the leaders are fanned out and all names stand on one side of them.
    """
    # Rows do not depend on heights: a drawing with another line level is laid out like the last one.
    level = tuple(replace(name, mark=(name.mark[0], 0.0)) for name in names)
    found = _placed(level, replace(zone, edge=0.0), fan)
    if found is None:
        return None
    marks = {name.key: name.mark for name in names}
    return [replace(it, name=replace(it.name, mark=marks[it.name.key])) for it in found]


@lru_cache(maxsize=256)
def _placed(names: tuple[Name, ...], zone: Zone, fan: bool) -> list[Placed] | None:
    stood: list[list[Placed]] = []
    for allowed in ((1, -1), (1, -1, 0)):
        if not stood:
            choices = _choices(names, zone, allowed)
            stood = [placed for sides in choices if (placed := _stand(names, sides, zone)) is not None]
    for side in (-1, 1) if fan and not stood else ():
        fanned = _fanned(names, side, zone)
        placed = _stand(fanned, [side] * len(fanned), zone) if fanned is not None else None
        stood += [placed] if placed is not None else []
    return min(stood, key=lambda placed: _cost(placed, zone), default=None)


def _cost(placed: Sequence[Placed], zone: Zone) -> tuple[float, ...]:
    ends = [it.row + len(it.name.lines) for it in placed]
    inward = sum(it.side == -_outward(it.name, zone) for it in placed)
    slant = sum(abs(it.name.column - it.name.mark[0]) for it in placed)
    return max(ends, default=0), sum(ends), inward, slant


def _fanned(names: Sequence[Name], side: int, zone: Zone) -> list[Name] | None:
    """The names in their order with columns moved just so far that each has room on this side."""
    ordered = sorted(names, key=lambda name: -side * name.column)
    fanned: list[Name] = []
    for name in ordered:
        width = name.width(zone.size) + GAP
        column = max(name.column, zone.left + width) if side < 0 else min(name.column, zone.right - width)
        if fanned:
            last = fanned[-1].column
            column = max(column, last + APART) if side < 0 else min(column, last - APART)
        fanned.append(replace(name, column=column))
    return fanned if all(zone.left <= name.column <= zone.right for name in fanned) else None


def _outward(name: Name, zone: Zone) -> int:
    return 1 if name.column > (zone.left + zone.right) / 2 else -1


def _choices(names: Sequence[Name], zone: Zone, allowed: tuple[int, ...]) -> Iterator[tuple[int, ...]]:
    """The sides that the names may take: all choices of a few names, a walk through the good ones of many."""
    fitting = [[side for side in allowed if _inside(zone.span(name, side), zone)] for name in names]
    if len(names) <= MOST_FREE:
        yield from product(*fitting)
    elif all(fitting):
        walk = Random(WALK_SEED)
        for _ in range(WALKS):
            yield from _walk([walk.choice(sides) for sides in fitting], fitting, names, zone)


def _walk(
    sides: list[int], fitting: list[list[int]], names: Sequence[Name], zone: Zone
) -> Iterator[tuple[int, ...]]:
    """Turns one name over at a time for as long as that saves rows; every choice on the way that stands."""
    least = _rows_of(sides, names, zone)
    for _ in range(len(names)):
        before = least
        for i, other in ((i, side) for i, able in enumerate(fitting) for side in able):
            turned = [*sides[:i], other, *sides[i + 1 :]]
            cost = _rows_of(turned, names, zone) if other != sides[i] else least
            if cost < least:
                sides, least = turned, cost
        if least == before:
            break
    yield tuple(sides)


def _rows_of(sides: Sequence[int], names: Sequence[Name], zone: Zone) -> tuple[float, ...]:
    placed = _stand(names, sides, zone)
    return (float("inf"),) if placed is None else _cost(placed, zone)


def _inside(span: tuple[float, float], zone: Zone) -> bool:
    return span[0] >= zone.left and span[1] <= zone.right


def _stand(names: Sequence[Name], sides: Sequence[int], zone: Zone) -> list[Placed] | None:
    """Rows for one choice of sides, or None where two names would each have to stand beyond the other."""
    spans = [zone.span(name, side) for name, side in zip(names, sides, strict=True)]
    nearer = {
        i: {j for j, other in enumerate(names) if j != i and a - GAP < other.column < b + GAP}
        for i, (a, b) in enumerate(spans)
    }
    rows: dict[int, int] = {}
    while len(rows) < len(names):
        ready = [i for i in nearer if i not in rows and nearer[i] <= rows.keys()]
        if not ready:
            return None
        for i in ready:
            rows[i] = _row(i, rows, nearer[i], names, spans)
    return [Placed(names[i], rows[i], sides[i]) for i in range(len(names))]


def _row(
    i: int, rows: dict[int, int], nearer: set[int], names: Sequence[Name], spans: list[tuple[float, float]]
) -> int:
    row = max((rows[j] + len(names[j].lines) for j in nearer), default=0)
    while any(_meet(i, row, j, rows[j], names, spans) for j in rows):
        row += 1
    return row


def _meet(
    i: int, row: int, j: int, other: int, names: Sequence[Name], spans: list[tuple[float, float]]
) -> bool:
    in_rows = other < row + len(names[i].lines) and row < other + len(names[j].lines)
    return in_rows and spans[j][0] < spans[i][1] + GAP and spans[i][0] < spans[j][1] + GAP


def text_box(placed: Placed, zone: Zone) -> Box:
    """The box that the name's letters fill."""
    left, right = zone.span(placed.name, placed.side)
    lines = zone.baselines(placed)
    return left, lines[0] - 0.8 * zone.size, right, lines[-1] + 0.22 * zone.size


def height(placed: Sequence[Placed], zone: Zone) -> float:
    """Height of the strip that the names take."""
    return max((it.row + len(it.name.lines) for it in placed), default=0) * zone.row_height + 0.4 * zone.size
