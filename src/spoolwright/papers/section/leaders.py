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
    field = _Field(names, zone)
    for allowed in ((1, -1), (1, -1, 0)):
        best = min(_standing(field, _choices(field, allowed)), default=None)
        if best is not None:
            return field.placed(*best[1:])
    if not fan:
        return None
    fans = [_Field(tuple(fanned), zone) for side in (-1, 1) if (fanned := _fanned(names, side, zone))]
    found = [(stood, one) for one in fans for stood in _standing(one, _one_side(one))]
    if not found:
        return None
    stood, field = min(found, key=lambda pair: pair[0])
    return field.placed(*stood[1:])


class _Field:
    """Names that want rows: for each name and side, its span and the names that must stand nearer."""

    def __init__(self, names: Sequence[Name], zone: Zone) -> None:
        self.names, self.zone = names, zone
        self.heights = [len(name.lines) for name in names]
        self.spans = [{side: zone.span(name, side) for side in (1, -1, 0)} for name in names]
        self.nearer = [{side: self._crossed(i, side) for side in (1, -1, 0)} for i in range(len(names))]
        middle = (zone.left + zone.right) / 2
        self.outward = [1 if name.column > middle else -1 for name in names]
        self.slant = sum(abs(name.column - name.mark[0]) for name in names)

    def _crossed(self, i: int, side: int) -> frozenset[int]:
        a, b = self.spans[i][side]
        others = enumerate(self.names)
        return frozenset(j for j, other in others if j != i and a - GAP < other.column < b + GAP)

    def fits(self, i: int, side: int) -> bool:
        left, right = self.spans[i][side]
        return left >= self.zone.left and right <= self.zone.right

    def placed(self, sides: Sequence[int], rows: Sequence[int]) -> list[Placed]:
        return [Placed(name, row, side) for name, side, row in zip(self.names, sides, rows, strict=True)]

    def cost(self, sides: Sequence[int], rows: Sequence[int]) -> tuple[float, ...]:
        ends = [row + high for row, high in zip(rows, self.heights, strict=True)]
        inward = sum(side == -out for side, out in zip(sides, self.outward, strict=True))
        return max(ends, default=0), sum(ends), inward, self.slant


_Stood = tuple[tuple[float, ...], tuple[int, ...], tuple[int, ...]]
"""What a choice of sides costs, the choice, and the row of each name."""


def _standing(field: _Field, choices: Iterator[tuple[int, ...]]) -> Iterator[_Stood]:
    for sides in choices:
        rows = _rows(field, sides)
        if rows is not None:
            yield field.cost(sides, rows), sides, rows


def _one_side(field: _Field) -> Iterator[tuple[int, ...]]:
    """All names on one side of their leaders, the side on which the fan left room for all of them."""
    for side in (-1, 1):
        if all(field.fits(i, side) for i in range(len(field.names))):
            yield (side,) * len(field.names)


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


def _choices(field: _Field, allowed: tuple[int, ...]) -> Iterator[tuple[int, ...]]:
    """The sides that the names may take: all choices of a few names, a walk through the good ones of many."""
    fitting = [[side for side in allowed if field.fits(i, side)] for i in range(len(field.names))]
    if len(fitting) <= MOST_FREE:
        yield from product(*fitting)
    elif all(fitting):
        walk = Random(WALK_SEED)
        for _ in range(WALKS):
            yield from _walk([walk.choice(sides) for sides in fitting], fitting, field)


def _walk(sides: list[int], fitting: list[list[int]], field: _Field) -> Iterator[tuple[int, ...]]:
    """Turns one name over at a time for as long as that saves rows, and gives what it comes to."""
    least = _cost_of(sides, field)
    for _ in range(len(sides)):
        before = least
        for i, other in ((i, side) for i, able in enumerate(fitting) for side in able):
            turned = [*sides[:i], other, *sides[i + 1 :]]
            cost = _cost_of(turned, field) if other != sides[i] else least
            if cost < least:
                sides, least = turned, cost
        if least == before:
            break
    yield tuple(sides)


def _cost_of(sides: Sequence[int], field: _Field) -> tuple[float, ...]:
    rows = _rows(field, sides)
    return (float("inf"),) if rows is None else field.cost(sides, rows)


def _rows(field: _Field, sides: Sequence[int]) -> tuple[int, ...] | None:
    """Rows for one choice of sides, or None where two names would each have to stand beyond the other."""
    nearer = [field.nearer[i][side] for i, side in enumerate(sides)]
    spans = [field.spans[i][side] for i, side in enumerate(sides)]
    rows: dict[int, int] = {}
    waiting = list(range(len(sides)))
    while waiting:
        ready = [i for i in waiting if nearer[i] <= rows.keys()]
        if not ready:
            return None
        for i in ready:
            rows[i] = _row(i, rows, nearer[i], field.heights, spans)
        waiting = [i for i in waiting if i not in rows]
    return tuple(rows[i] for i in range(len(sides)))


def _row(
    i: int,
    rows: dict[int, int],
    nearer: frozenset[int],
    heights: list[int],
    spans: list[tuple[float, float]],
) -> int:
    """The first free row beyond the nearer names, clear of every name whose letters share its stretch."""
    row = max((rows[j] + heights[j] for j in nearer), default=0)
    left, right = spans[i][0] - GAP, spans[i][1] + GAP
    beside = [(rows[j], rows[j] + heights[j]) for j in rows if spans[j][0] < right and left < spans[j][1]]
    while any(start < row + heights[i] and row < end for start, end in beside):
        row += 1
    return row


def text_box(placed: Placed, zone: Zone) -> Box:
    """The box that the name's letters fill."""
    left, right = zone.span(placed.name, placed.side)
    lines = zone.baselines(placed)
    return left, lines[0] - 0.8 * zone.size, right, lines[-1] + 0.22 * zone.size


def height(placed: Sequence[Placed], zone: Zone) -> float:
    """Height of the strip that the names take."""
    return max((it.row + len(it.name.lines) for it in placed), default=0) * zone.row_height + 0.4 * zone.size
