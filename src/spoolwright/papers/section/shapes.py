"""What a section is made of before it is drawn: outlines and rounds in millimetres, gathered into parts.

The spool's axis is y = 0, its middle x = 0, the gear side is to the right and y grows downwards.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

Point = tuple[float, float]
Box = tuple[float, float, float, float]
"""Left, top, right, bottom."""


@dataclass(frozen=True)
class Outline:
    """A polygon or an open line. `cut` is the hatch of cut metal, `wash` colour alone, for a shaft."""

    points: tuple[Point, ...]
    cut: str = ""
    wash: str = ""
    crossed: bool = False
    line: str = "outline"
    closed: bool = True
    holes: tuple[tuple[Point, ...], ...] = ()


@dataclass(frozen=True)
class Round:
    """A circle: a ball, a knob's end, a gear seen along its axis."""

    centre: Point
    radius: float
    wash: str = ""
    line: str = "outline"


Shape = Outline | Round


@dataclass(frozen=True)
class Part:
    """One part that can be touched: its key, its full title, the short name on the leader, its shapes.

    `mark` is where the leader touches it; `side` on which side of the drawing its name stands. The name of a
    `minor` part is left out on a narrow sheet.
    """

    key: str
    title: str
    name: str
    shapes: tuple[Shape, ...]
    mark: Point
    side: str = "above"
    minor: bool = False


def rectangle(left: float, top: float, right: float, bottom: float, **look: object) -> Outline:
    """A rectangle by its edges."""
    points = ((left, top), (right, top), (right, bottom), (left, bottom))
    return Outline(points, **look)  # type: ignore[arg-type]


def halves(points: Sequence[Point], axis: float = 0.0, **look: object) -> tuple[Outline, Outline]:
    """The two cut halves of a round part: a profile of (x, radius) above the axis, and its mirror below."""
    upper = tuple((x, axis - radius) for x, radius in points)
    lower = tuple((x, axis + radius) for x, radius in points)
    return Outline(upper, **look), Outline(lower, **look)  # type: ignore[arg-type]


def ring(
    left: float, right: float, inner: float, outer: float, axis: float = 0.0, **look: object
) -> tuple[Outline, Outline]:
    """A ring about the axis, cut: the two rectangles that the section shows."""
    return halves(((left, inner), (right, inner), (right, outer), (left, outer)), axis, **look)


def stroke(*points: Point, line: str = "thin") -> Outline:
    """An open line through the points."""
    return Outline(points, line=line, closed=False)


def box_of(shapes: Iterable[Shape]) -> Box:
    """The least box that holds the shapes."""
    xs: list[float] = []
    ys: list[float] = []
    for shape in shapes:
        if isinstance(shape, Round):
            xs += [shape.centre[0] - shape.radius, shape.centre[0] + shape.radius]
            ys += [shape.centre[1] - shape.radius, shape.centre[1] + shape.radius]
        else:
            xs += [x for x, _ in shape.points]
            ys += [y for _, y in shape.points]
    return min(xs), min(ys), max(xs), max(ys)
